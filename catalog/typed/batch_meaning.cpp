// What the texts of a batch mean: every measurement read, every word known or asked about.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "catalog/text/bad_text.hpp"
#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/colour_reading.hpp"
#include "catalog/typed/equipment_reading.hpp"
#include "catalog/typed/fibre_reading.hpp"
#include "catalog/typed/ply_reading.hpp"
#include "catalog/typed/skein_own.hpp"
#include "catalog/typed/written_reading.hpp"
#include "engine/units/constants.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"
#include "engine/units/scanner.hpp"
#include "engine/yarn/loft.hpp"

namespace gristwright::catalog {
namespace {

using namespace constants;

// By the unit behind the first number: the sign in "1'250 m" parts thousands.
bool imperial(const std::string& length) {
    const auto typed = plain(length);
    Scanner from(typed);
    take_about(from);
    const auto* unit = from.number(Fractions::any) ? take_unit(from) : nullptr;
    return unit && unit->imperial;
}

class Meaning {
  public:
    Meaning(const BatchText& text, const Catalogue& catalogue)
        : text_(text), catalogue_(catalogue) {}

    MeasuredBatch read() {
        out_.notes = text_.notes;
        read_skeins();
        read_make_up();
        read_fibre();
        read_own(text_, catalogue_, wraps_how_, out_);
        out_.owned = read_equipment(text_, catalogue_.spoken);
        return std::move(out_);
    }

  private:
    const Written* one(std::string_view key) const { return one_text(text_, key); }

    // What a sheet says row by row of a batch that has it once: all must mean the same.
    template <class Read>
    const Written* alike(std::string_view key, Read read) {
        const auto found = text_.fields.find(key);
        if (found == text_.fields.end()) return nullptr;
        const Written* first = nullptr;
        for (const auto& at : found->second) {
            if (at.text.empty()) continue;
            if (!first) first = &at;
            if (read(at) != read(*first))
                throw wrong(at, fmt::format("'{}', but {}: '{}': which? A batch is of one: say it "
                                            "once, or keep the others in a sheet of their own",
                                            at.text, first->where, first->text));
        }
        return first;
    }

    void read_skeins() {
        auto& batch = out_.batch;
        if (text_.skeins.empty())
            throw Refused("a batch has at least one skein: --skein 171m/38.5g, or a file");
        const auto all = one("measured") ? state_of(*one("measured")) : LengthState::unknown;
        Mass finest = kilograms(1);
        Length ruler = metres(1000);
        for (const auto& s : text_.skeins) {
            const auto [length, mass] = skein(s);
            const auto name = s.name.text.empty() ? fmt::format("skein {}", batch.skeins.size() + 1)
                                                  : s.name.text;
            if (std::any_of(batch.skeins.begin(), batch.skeins.end(),
                            [&](const Skein& other) { return other.name == name; }))
                throw wrong(s.name, fmt::format("two skeins are called '{}'", name));
            batch.skeins.push_back({name,
                                    length.value,
                                    mass.value,
                                    s.state.text.empty() ? all : state_of(s.state),
                                    {},
                                    {},
                                    {}});
            out_.yards = out_.yards || imperial(s.length.text);
            finest = std::min(finest, mass.step);
            ruler = std::min(ruler, length.step);
        }
        batch.measuring.scale_step =
            one("scale")
                ? measured(*one("scale"), [](const std::string& t) { return read_mass(t); }).value
                : finest;
        batch.measuring.length_step = ruler;
    }

    // Both halves of a skein; a complaint about one says where that one stands.
    std::pair<Reading<Length>, Reading<Mass>> skein(const SkeinText& s) const {
        if (is_a_count(s.length.text)) return skein_by_count(s);
        if (s.mass.text.empty()) try {  // "210yd/4oz" in one cell
                return read_skein(s.length.text);
            } catch (const Unreadable&) {  // told below, with its place
            }
        try {
            return read_skein(s.length.text, s.mass.text);
        } catch (const Unreadable& both) {
            measured(s.length, [](const std::string& t) { return read_length(t); });
            measured(s.mass, [](const std::string& t) { return read_mass(t); });
            throw wrong(s.length, both.what());
        }
    }

    // What the word at `at` means in that list: one of `words`; a note is said with it.
    std::string meant(const Written& at, std::string_view list,
                      const std::vector<std::string>& words) {
        auto said = catalogue_.spoken.find(list, at.text);
        if (!said && (list == "preparation" || list == "draw")) said = within(at, list);
        if (!said) throw wrong(at, not_one_of(at.text, words));
        if (said->means.empty())
            throw wrong(at, fmt::format("'{}': {}: which?", at.text, said->note));
        if (!said->note.empty()) note(said->note);
        return said->means;
    }

    // "commercial top, predrafted", "roving (pin drafted)": the one word of the list in a text of
    // several; two that differ are asked.
    std::optional<Spoken> within(const Written& at, std::string_view list) {
        std::optional<Spoken> out;
        for (const auto& phrase : catalogue_.spoken.found_in(list, at.text)) {
            const auto said = catalogue_.spoken.find(list, phrase);
            if (said->means.empty()) return said;
            if (out && out->means != said->means)
                throw wrong(at, fmt::format("'{}' says {} and {}: which?", at.text, out->means,
                                            said->means));
            out = said;
        }
        if (out && !out->means.empty())
            note(fmt::format("'{}' is taken as {}", at.text, out->means));
        return out;
    }

    void note(const std::string& said) { note_once(said, out_); }

    LengthState state_of(const Written& at) {
        if (at.text.empty()) return LengthState::unknown;
        const auto word = meant(at, "measured", {"washed", "off the reel", "on the reel"});
        if (word == "washed") return LengthState::washed;
        return word == "on the reel" ? LengthState::on_reel : LengthState::off_reel;
    }

    void read_made(const Written& at) {
        if (at.text.empty()) return;
        const auto made = made_named(at.text);
        if (!made) {
            std::vector<std::string> known;
            for (std::size_t m = 0; m < made_count; ++m)
                known.emplace_back(words(static_cast<Made>(m)));
            throw wrong(at, not_one_of(at.text, known));
        }
        out_.batch.made[static_cast<std::size_t>(*made)] = true;
    }

    void read_make_up() {
        auto& batch = out_.batch;
        if (const auto* at = one("name")) batch.name = at->text;
        if (const auto made = text_.fields.find("made"); made != text_.fields.end())
            for (const auto& at : made->second) read_made(at);
        if (const auto* at = one("variegated"))
            batch.variegated = one_of<bool>(*at, {{"yes", true}, {"no", false}});
        read_colour();
        read_spinning();
        if (const auto* at = alike("plies", [&](const Written& w) { return plies_of(w); }))
            batch.plies = plies_of(*at);
        read_wraps();
        if (const auto* at = one("twist")) read_ply_twist(*at);
        if (const auto* at = one("gauge")) {
            const auto gauge =
                measured(*at, [](const std::string& t) { return read_gauge_and_rows(t); });
            batch.washed_gauge = gauge.stitches;
            if (gauge.rows) note("the rows of the gauge are not used; a swatch takes them");
        }
    }

    // Several follow each other along the yarn, so they break up the surface, unless it is said
    // that they do not.
    void read_colour() {
        const auto found = text_.fields.find("colour");
        if (found == text_.fields.end()) return;
        for (const auto& at : found->second) {
            if (at.text.empty()) continue;
            for (const auto& colour : measured(at, [&](const std::string& text) {
                     return read_colours(text, catalogue_.spoken);
                 }))
                out_.colours.push_back(colour);
        }
        if (out_.colours.size() < 2 || one("variegated")) return;
        out_.batch.variegated = true;
        note(
            "several colours are taken as following each other along the yarn; where they are "
            "plied "
            "together, say variegated = false in the batch's file");
    }

    // A word such as woollen says both; what is said by itself comes first.
    void read_spinning() {
        const auto* prepared = alike("preparation", [&](const Written& at) {
            return meant(at, "preparation", {"carded", "combed"});
        });
        const auto* drawn = alike("draw", [&](const Written& at) {
            return meant(at, "draw", {"long", "short"});
        });
        if (prepared)
            out_.batch.preparation =
                meant(*prepared, "preparation", {"carded", "combed"}) == "carded"
                    ? Preparation::carded
                    : Preparation::combed;
        const bool both = !drawn && prepared && catalogue_.spoken.find("draw", prepared->text);
        if (both) drawn = prepared;
        if (drawn)
            out_.batch.draw = meant(*drawn, "draw", {"long", "short"}) == "long" ? Draw::long_draw
                                                                                 : Draw::short_draw;
        if (both)
            note(fmt::format("{} is taken as {} and drawn {}", prepared->text,
                             meant(*prepared, "preparation", {}), meant(*drawn, "draw", {})));
    }

    int plies_of(const Written& at) {
        if (const auto said = catalogue_.spoken.find("plies", at.text); said)
            return whole_number({meant(at, "plies", {}), at.where}, 1, 12);
        const bool noughts = at.text.size() > 1 && at.text[0] == '0';
        const int count = noughts ? 0 : count_of_plies(at.text, catalogue_.spoken);
        if (count > 0) return count;
        throw wrong(at, fmt::format("'{}' is no number of plies from 1 to 12, such as 2, 3-ply, "
                                    "singles or chain",
                                    at.text));
    }

    bool any_skein_says(std::string_view key) const {
        return std::any_of(text_.skeins.begin(), text_.skeins.end(),
                           [&](const SkeinText& s) { return s.own.find(key) != s.own.end(); });
    }

    void read_wraps() {
        auto& batch = out_.batch;
        if (const auto* at = one("wraps")) batch.wraps = read_wraps_said(*at, out_);
        if (const auto* at = one("wraps_how")) {
            const auto how = meant(*at, "wraps_how", {"laid", "packed"});
            if (!batch.wraps && !any_skein_says("wraps"))
                throw wrong(*at, "says how wraps were counted, but there are none");
            wraps_how_ = how == "packed" ? WrapsHow::packed : WrapsHow::laid;
            if (batch.wraps) batch.wraps->how = wraps_how_;
        }
    }

    // An angle is the plies' to the yarn's axis: its tangent is the girth times the turns.
    void read_ply_twist(const Written& at) {
        const auto read = measured(at, [](const std::string& t) { return read_twist_or_angle(t); });
        if (read.direction) note("the direction of the twist changes no figure");
        out_.batch.ply_twist = read.twist;
        if (read.twist) return;
        if (!out_.batch.wraps || out_.batch.wraps->how == WrapsHow::packed)
            throw wrong(at,
                        "an angle gives the turns only with wraps laid side by side: give "
                        "wraps too, or the turns, such as 5tpi");
        const double girth = std::numbers::pi * diameter_from_wraps(out_.batch.wraps->count).si();
        out_.batch.ply_twist =
            Twist::from_si(std::tan(*read.degrees * std::numbers::pi / 180) / girth);
    }

    void read_fibre() {
        auto& fibre = out_.batch.fibre;
        if (const auto named = text_.fields.find("fibre"); named != text_.fields.end()) {
            auto read = read_blend(named->second, catalogue_);
            fibre = std::move(read.parts);
            for (const auto& said : read.notes) note(said);
        }
        const auto* micron = one("micron");
        const auto* staple = one("staple");
        if ((micron || staple) && any_skein_says("fibre"))
            throw wrong(micron ? *micron : *staple,
                        "give micron and staple, or a fibre for each skein, not both");
        if ((micron || staple) && fibre.empty()) {
            fibre.push_back({});
            fibre[0].kind = "sheep";  // the profile says that wool is assumed
        }
        if ((micron || staple) && fibre.size() > 1)
            throw wrong(micron ? *micron : *staple, "give micron and staple, or a blend, not both");
        if (micron) {
            const auto range =
                measured(*micron, [](const std::string& t) { return read_micron_range(t); });
            fibre[0].micron_low = range.first;
            fibre[0].micron_high = range.second;
        }
        if (staple) {
            const auto range =
                measured(*staple, [](const std::string& t) { return read_length_range(t); });
            if (range.first < millimetres(shortest_staple) ||
                range.second > millimetres(longest_staple))
                throw out_of_range(*staple, "staples are", shortest_staple, longest_staple);
            fibre[0].staple_low = range.first;
            fibre[0].staple_high = range.second;
        }
    }

    const BatchText& text_;
    const Catalogue& catalogue_;
    MeasuredBatch out_;
    WrapsHow wraps_how_ = WrapsHow::assumed_laid;
};

}  // namespace

MeasuredBatch interpret(const BatchText& text, const Catalogue& catalogue) {
    return Meaning(text, catalogue).read();
}

}  // namespace gristwright::catalog
