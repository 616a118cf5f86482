#include "catalog/typed/skein_own.hpp"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <sstream>

#include "catalog/text/named_reading.hpp"
#include "catalog/typed/colour_reading.hpp"
#include "catalog/typed/fibre_reading.hpp"
#include "catalog/typed/number_words.hpp"
#include "catalog/typed/several_skeins.hpp"
#include "catalog/typed/written_reading.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/described.hpp"
#include "engine/yarn/kinds.hpp"

namespace gristwright::catalog {
namespace {

using WrittenWords = std::vector<Written>;
using Parts = std::vector<std::string>;

constexpr std::string_view between = " \t,;";  // a skein's words

struct Key {
    std::string_view word, key;
};
constexpr Key keys[] = {{"wraps", "wraps"},
                        {"fibre", "fibre"},
                        {"fiber", "fibre"},
                        {"colour", "colour"},
                        {"color", "colour"}};

// The next of these words from `from` on, a word by itself.
std::pair<std::size_t, const Key*> next_key(const std::string& text, std::size_t from) {
    std::pair<std::size_t, const Key*> out{text.size(), nullptr};
    for (const auto& key : keys)
        for (auto at = text.find(key.word, from); at < out.first;
             at = text.find(key.word, at + 1)) {
            const auto after = at + key.word.size();
            const bool whole = (at == 0 || !ascii::is_letter(text[at - 1])) &&
                               (after == text.size() || !ascii::is_letter(text[after]));
            if (whole) out = {at, &key};
        }
    return out;
}

const WrittenWords* own(const SkeinText& text, std::string_view key) {
    const auto found = text.own.find(key);
    return found == text.own.end() || found->second.empty() ? nullptr : &found->second;
}

void read_wraps(const SkeinText& text, WrapsHow how, Skein& skein, MeasuredBatch& out) {
    const auto* said = own(text, "wraps");
    if (!said) return;
    skein.wraps = read_wraps_said(said->back(), out);
    skein.wraps->how = how;
}

// The fibre that bought yarn is sold by, "8/2 cotton": the last of its words that is a fibre's
// name.
std::string fibre_sold_by(const std::string& count, const Catalogue& catalogue) {
    std::istringstream words(count);
    std::string found;
    for (std::string word; words >> word;) {
        if (ascii::is_digit(word[0])) continue;
        try {
            if (!read_fibres_said(word, catalogue).parts.empty()) found = word;
        } catch (const Refused&) {  // "count", "mercerised": no fibre
        }
    }
    return found;
}

// What the skein says of its fibre; of bought yarn, where the batch says nothing, the word of the
// shop.
WrittenWords fibre_words(const SkeinText& text, const BatchText& batch,
                         const Catalogue& catalogue) {
    if (const auto* said = own(text, "fibre")) return *said;
    const bool named = batch.fields.count("fibre") || batch.fields.count("micron");
    if (named || !is_a_count(text.length.text)) return {};
    const auto word = fibre_sold_by(text.length.text, catalogue);
    return word.empty() ? WrittenWords{} : WrittenWords{{word, text.length.where}};
}

void read_fibre(const WrittenWords& said, const Catalogue& catalogue, Skein& skein,
                MeasuredBatch& out) {
    auto read = read_blend(said, catalogue);
    skein.fibre = std::move(read.parts);
    for (const auto& one : read.notes) note_once(one, out);
}

// Any name parts skeins; those that pictures know are drawn.
void read_colour(const SkeinText& text, const Catalogue& catalogue, Skein& skein,
                 std::vector<Colour>& drawn, MeasuredBatch& out) {
    const auto* said = own(text, "colour");
    if (!said) return;
    for (const auto& at : *said) {
        skein.colour += (skein.colour.empty() ? "" : ", ") + as_spoken(at.text);
        try {
            for (const auto& colour : read_colours(at.text, catalogue.spoken))
                drawn.push_back(colour);
        } catch (const Refused&) {
            note_once(fmt::format("colour '{}' tells skeins apart, and is drawn undyed: pictures "
                                  "know names such as teal, and #4a8c8c",
                                  at.text),
                      out);
        }
    }
}

// What the skeins say of one thing, and what those are that do not say it.
template <class Value>
struct Said {
    const char* what;
    Value Skein::*of;
    bool (*is_said)(const Value&);
    bool (*alike)(const Value&, const Value&);
};

template <class Value>
void settle(const Said<Value>& said, const Value& of_batch, MeasuredBatch& out) {
    auto& skeins = out.batch.skeins;
    const auto says = [&](const Skein& s) { return said.is_said(s.*said.of); };
    const auto first = std::find_if(skeins.begin(), skeins.end(), says);
    if (first == skeins.end()) return;
    const auto theirs = said.is_said(of_batch) ? of_batch : (*first).*said.of;
    const bool one = std::all_of(skeins.begin(), skeins.end(), [&](const Skein& s) {
        return !says(s) || said.alike(s.*said.of, theirs);
    });
    for (auto& skein : skeins) {
        if (says(skein)) continue;
        if (!one && !said.is_said(of_batch))
            throw Refused(fmt::format("{}: its {} is not said, and the others differ in it: say it",
                                      skein.name, said.what));
        if (!said.is_said(of_batch))
            note_once(fmt::format("{} of {} is taken as the others'", said.what, skein.name), out);
        skein.*said.of = theirs;
    }
}

using Fibre = std::vector<FibrePart>;

bool near_wraps(const std::optional<WrapsReading>& a, const std::optional<WrapsReading>& b) {
    const double ratio = a->count / b->count;
    return std::max(ratio, 1 / ratio) <= constants::alike_wraps;
}

void settle_all(const BatchText& text, MeasuredBatch& out) {
    settle<Fibre>({"fibre", &Skein::fibre, [](const Fibre& f) { return !f.empty(); }, same_fibre},
                  out.batch.fibre, out);
    std::string colour;
    if (const auto found = text.fields.find("colour"); found != text.fields.end())
        for (const auto& at : found->second)
            colour += (colour.empty() ? "" : ", ") + as_spoken(at.text);
    settle<std::string>({"colour", &Skein::colour, [](const std::string& c) { return !c.empty(); },
                         [](const std::string& a, const std::string& b) { return a == b; }},
                        colour, out);
    settle<std::optional<WrapsReading>>(
        {"count of wraps", &Skein::wraps, [](const auto& w) { return w.has_value(); }, near_wraps},
        out.batch.wraps, out);
}

// "250g of 8/2 cotton", "8/2 cotton, 250 g", "Nm 6/1 250 g": its count with the words for it, and
// its mass. Empty: the text holds no count.
std::pair<std::string, std::string> split_count(const std::string& text) {
    std::istringstream parts(text);
    Parts words, count, mass;
    for (std::string word; parts >> word;)
        if (word = trimmed(word, between); !word.empty() && word != "of") words.push_back(word);
    bool counted = false;
    for (std::size_t w = 0; w < words.size(); ++w) {
        const auto& word = words[w];
        if (!counted && w + 1 < words.size() && begins_as_a_count(word + " " + words[w + 1])) {
            counted = true;
            count.insert(count.end(), {word, words[++w]});
            continue;
        }
        const auto* known = mass.empty() ? nullptr : unit_word(ascii::lowered(word));
        const bool unit = known && known->dimension == Dimension::mass;
        const bool one = is_a_count(word);
        counted = counted || one;
        (unit || (ascii::is_digit(word[0]) && !one) ? mass : count).push_back(word);
    }
    if (!counted) return {};
    return {fmt::format("{}", fmt::join(count, " ")), fmt::format("{}", fmt::join(mass, ""))};
}

}  // namespace

bool is_a_count(const std::string& length) {
    if (begins_as_a_count(length)) return true;
    std::size_t at = 0;
    const auto digits = [&] {
        const auto from = at;
        while (at < length.size() && ascii::is_digit(length[at])) ++at;
        return at > from;
    };
    if (!digits() || at >= length.size() || length[at++] != '/' || !digits()) return false;
    if (at < length.size() && length[at] == 's') ++at;  // "2/12s"
    if (at < length.size() && length[at] != ' ') return false;
    std::istringstream after(ascii::lowered(length.substr(at)));
    std::string word;
    after >> word;
    return !unit_word(word);  // "3/4 oz" is a fraction
}

std::pair<Reading<Length>, Reading<Mass>> skein_by_count(const SkeinText& skein) {
    const auto grist = read_named(skein.length.where, skein.length.text,
                                  [](const std::string& t) { return read_described_yarn(t); });
    if (skein.mass.text.empty())
        throw Refused(fmt::format("{}: {} weighs how much? Such as '{} 250g'", skein.length.where,
                                  skein.length.text, skein.length.text));
    const auto mass = read_named(skein.mass.where, skein.mass.text,
                                 [](const std::string& t) { return read_mass(t); });
    return {{mass.value / grist, mass.step / grist}, mass};
}

namespace {

// A length and a mass; where it is none, a count and a mass.
std::pair<std::string, std::string> size_of(const std::string& text) {
    try {
        return split_skein(text);
    } catch (const Unclear&) {
        throw;
    } catch (const Unreadable&) {
        auto counted = split_count(text);
        if (counted.first.empty()) throw;
        return counted;
    }
}

struct SizesInText {
    Several said;
    std::string length, mass;
};

SizesInText sizes_in_figures(const std::string& text) {
    const auto said = several_skeins(text);
    const auto [length, mass] = size_of(said.one);
    return {said, length, mass};
}

// "two skeins of half a pound, 600 yd each": numbers in words are looked up where figures alone
// do not do.
SizesInText sizes_of(const std::string& text, const SpokenWords& spoken) {
    try {
        return sizes_in_figures(text);
    } catch (const Unclear&) {
        throw;
    } catch (const Unreadable&) {
        const auto figures = in_figures(text, spoken);
        if (figures == text) throw;
        return sizes_in_figures(figures);
    }
}

}  // namespace

std::vector<SkeinText> read_skeins_said(const std::string& text, const std::string& where,
                                        const SpokenWords& spoken) {
    const auto lower = ascii::lowered(text);
    auto [at, key] = next_key(lower, 0);
    const auto [said, length, mass] = sizes_of(trimmed(text.substr(0, at), between), spoken);
    SkeinText out{{said.name, where}, {length, where}, {mass, where}, {}, {}};
    while (key) {
        const auto from = at + key->word.size();
        const auto [next, following] = next_key(lower, from);
        const auto value = trimmed(text.substr(from, next - from), between);
        if (value.empty())
            throw Unreadable(text, fmt::format("nothing stands after '{}'", key->word),
                             "such as 139m/38.5g wraps 14wpi fibre BFL colour teal");
        out.own[std::string(key->key)].push_back({value, where + ": " + std::string(key->word)});
        at = next;
        key = following;
    }
    return std::vector<SkeinText>(static_cast<std::size_t>(said.count), out);
}

void read_own(const BatchText& text, const Catalogue& catalogue, WrapsHow how, MeasuredBatch& out) {
    auto& skeins = out.batch.skeins;
    std::vector<std::vector<Colour>> drawn(skeins.size());
    for (std::size_t s = 0; s < skeins.size(); ++s) {
        read_wraps(text.skeins[s], how, skeins[s], out);
        read_fibre(fibre_words(text.skeins[s], text, catalogue), catalogue, skeins[s], out);
        read_colour(text.skeins[s], catalogue, skeins[s], drawn[s], out);
    }
    const bool any = std::any_of(skeins.begin(), skeins.end(), [](const Skein& s) {
        return s.wraps || !s.fibre.empty() || !s.colour.empty();
    });
    if (!any) return;
    settle_all(text, out);
    for (auto& colours : drawn)
        if (colours.empty()) colours = out.colours;
    out.skein_colours = std::move(drawn);
    out.batch = as_its_skeins_say(out.batch);
}

}  // namespace gristwright::catalog
