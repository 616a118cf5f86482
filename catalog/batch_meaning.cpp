// What the texts of a batch mean: every measurement read, every word known or asked about.
#include <algorithm>
#include <charconv>

#include "catalog/bad_text.hpp"
#include "catalog/batch_text.hpp"
#include "catalog/named_reading.hpp"
#include "catalog/nearest.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

Refused wrong(const Written& at, const std::string& why) {
    return Refused(fmt::format("{}: {}", at.where, why));
}

template <class Read>
auto measured(const Written& at, Read read) {
    return read_named(at.where, at.text, read);
}

template <class Enum>
Enum one_of(const Written& at, std::initializer_list<std::pair<const char*, Enum>> list) {
    std::vector<std::string> words;
    for (const auto& [word, value] : list) {
        if (at.text == word) return value;
        words.emplace_back(word);
    }
    throw wrong(at, not_one_of(at.text, words));
}

LengthState state_of(const Written& at) {
    if (at.text.empty()) return LengthState::unknown;
    return one_of<LengthState>(at, {{"washed", LengthState::washed},
                                    {"off the reel", LengthState::off_reel},
                                    {"on the reel", LengthState::on_reel}});
}

int whole(const Written& at, int low, int high) {
    int value = 0;
    const auto end = at.text.data() + at.text.size();
    const auto read = std::from_chars(at.text.data(), end, value);
    if (read.ec != std::errc{} || read.ptr != end || value < low || value > high ||
        (at.text.size() > 1 && at.text[0] == '0'))
        throw wrong(at,
                    fmt::format("'{}' is not a whole number from {} to {}", at.text, low, high));
    return value;
}

// "75-100mm" or "75mm".
std::pair<Length, Length> read_length_range(const std::string& text) {
    const auto dash = text.find('-');
    if (dash == std::string::npos) {
        const auto one = read_length(text).value;
        return {one, one};
    }
    const auto unit = text.find_first_not_of("0123456789.,/- ");
    auto low = text.substr(0, dash);
    if (low.find_first_not_of("0123456789., ") == std::string::npos && unit != std::string::npos)
        low += text.substr(unit);
    const auto from = read_length(low).value, to = read_length(text.substr(dash + 1)).value;
    if (to < from) throw Unreadable(text, "the range runs backwards", "such as 75-100mm");
    return {from, to};
}

bool imperial(const std::string& length) {
    for (const char* unit : {"yd", "yard", "ft", "in"})
        if (length.find(unit) != std::string::npos) return true;
    return false;
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
        read_equipment();
        return std::move(out_);
    }

  private:
    const Written* one(std::string_view key) const {
        const auto found = text_.fields.find(key);
        if (found == text_.fields.end() || found->second.empty()) return nullptr;
        return &found->second.back();
    }

    void read_skeins() {
        auto& batch = out_.batch;
        if (text_.skeins.empty())
            throw Refused("a batch has at least one skein: --skein 171m/38.5g, or a file");
        const auto all = one("measured") ? state_of(*one("measured")) : LengthState::unknown;
        Mass finest = kilograms(1);
        Length ruler = metres(1000);
        for (const auto& s : text_.skeins) {
            const auto length = measured(s.length, read_length);
            const auto mass = measured(s.mass, read_mass);
            const auto name = s.name.text.empty() ? fmt::format("skein {}", batch.skeins.size() + 1)
                                                  : s.name.text;
            if (std::any_of(batch.skeins.begin(), batch.skeins.end(),
                            [&](const Skein& other) { return other.name == name; }))
                throw wrong(s.name, fmt::format("two skeins are called '{}'", name));
            batch.skeins.push_back(
                {name, length.value, mass.value, s.state.text.empty() ? all : state_of(s.state)});
            out_.yards = out_.yards || imperial(s.length.text);
            finest = std::min(finest, mass.step);
            ruler = std::min(ruler, length.step);
        }
        batch.measuring.scale_step =
            one("scale") ? measured(*one("scale"), read_mass).value : finest;
        batch.measuring.length_step = ruler;
    }

    void read_make_up() {
        auto& batch = out_.batch;
        if (const auto* at = one("name")) batch.name = at->text;
        if (const auto* at = one("preparation"))
            batch.preparation = one_of<Preparation>(
                *at, {{"carded", Preparation::carded}, {"combed", Preparation::combed}});
        if (const auto* at = one("draw"))
            batch.draw =
                one_of<Draw>(*at, {{"long", Draw::long_draw}, {"short", Draw::short_draw}});
        if (const auto* at = one("plies")) batch.plies = whole(*at, 1, 12);
        if (const auto* at = one("twist")) batch.ply_twist = measured(*at, read_twist);
        if (const auto* at = one("gauge")) batch.washed_gauge = measured(*at, read_gauge);
        if (const auto* at = one("variegated"))
            batch.variegated = one_of<bool>(*at, {{"yes", true}, {"no", false}});
        if (const auto* at = one("wraps")) batch.wraps = WrapsReading{measured(*at, read_wraps)};
        if (const auto* at = one("wraps_how")) {
            const auto how =
                one_of<WrapsHow>(*at, {{"laid", WrapsHow::laid}, {"packed", WrapsHow::packed}});
            if (!batch.wraps) throw wrong(*at, "says how wraps were counted, but there are none");
            batch.wraps->how = how;
        }
    }

    // "Corriedale", "Corriedale 70%".
    FibrePart fibre_of(const Written& at) const {
        auto name = at.text;
        double share = 1;
        const auto space = name.find_last_of(' ');
        if (name.back() == '%' && space != std::string::npos) {
            share = measured({name.substr(space + 1), at.where},
                             [](const std::string& t) { return read_share(t); });
            name.resize(space);
        }
        const auto* known = catalogue_.fibre_named(name);
        if (!known)
            throw wrong(at, fmt::format("there is no fibre '{}' in the table{} (gristwright help "
                                        "fibres lists it; or give your own by micron and staple)",
                                        name, did_you_mean(name, catalogue_.fibre_names())));
        auto part = *known;
        part.share = share;
        return part;
    }

    void read_fibre() {
        auto& fibre = out_.batch.fibre;
        const auto named = text_.fields.find("fibre");
        double shares = 0;
        if (named != text_.fields.end())
            for (const auto& at : named->second)
                if (!at.text.empty()) fibre.push_back(fibre_of(at)), shares += fibre.back().share;
        if (!fibre.empty() && std::abs(shares - 1) > 0.005)
            throw wrong(named->second.back(),
                        fmt::format("the shares of the blend sum to {:.0f} %, not 100: write "
                                    "'Corriedale 70%' and the rest",
                                    100 * shares));
        const auto* micron = one("micron");
        const auto* staple = one("staple");
        if ((micron || staple) && fibre.empty()) {
            fibre.push_back({});
            fibre[0].kind = "sheep";  // the profile says that wool is assumed
        }
        if ((micron || staple) && fibre.size() > 1)
            throw wrong(micron ? *micron : *staple, "give micron and staple, or a blend, not both");
        if (micron) {
            const auto range = measured(*micron, read_micron_range);
            fibre[0].micron_low = range.first;
            fibre[0].micron_high = range.second;
        }
        if (staple) {
            const auto range = measured(*staple, read_length_range);
            fibre[0].staple_low = range.first;
            fibre[0].staple_high = range.second;
        }
    }

    void read_equipment() {
        const auto each = [&](const char* key, auto take) {
            const auto found = text_.fields.find(key);
            if (found == text_.fields.end()) return;
            for (const auto& at : found->second) {
                std::string_view rest = at.text;
                while (!rest.empty()) {
                    const auto part = rest.substr(0, rest.find(','));
                    rest.remove_prefix(std::min(rest.size(), part.size() + 1));
                    take(Written{std::string(part), at.where});
                }
            }
        };
        each("heddles",
             [&](const Written& at) { out_.owned.heddles.push_back(measured(at, read_sett)); });
        each("needles", [&](const Written& at) {
            out_.owned.needles.push_back(
                measured(at, [](const std::string& t) { return read_length(t).value; }));
        });
        if (const auto* at = one("loom_width"))
            out_.owned.loom_width =
                measured(*at, [](const std::string& t) { return read_length(t).value; });
        if (const auto* at = one("shafts")) out_.owned.shafts = whole(*at, 2, 32);
    }

    const BatchText& text_;
    const Catalogue& catalogue_;
    MeasuredBatch out_;
};

}  // namespace

MeasuredBatch interpret(const BatchText& text, const Catalogue& catalogue) {
    return Meaning(text, catalogue).read();
}

}  // namespace gristwright::catalog
