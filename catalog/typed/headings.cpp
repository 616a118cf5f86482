#include "catalog/typed/headings.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <optional>
#include <sstream>

#include "catalog/text/words_of.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/has.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::catalog {
namespace {

struct General {
    const char* word;
    Holds holds;
};

// Words for what a column holds; units say it too, and decide.
constexpr General general[] = {
    {"name", Holds::name},       {"skein", Holds::name},      {"hank", Holds::name},
    {"strang", Holds::name},     {"länge", Holds::length},    {"lauflänge", Holds::length},
    {"gewicht", Holds::mass},    {"poids", Holds::mass},      {"vikt", Holds::mass},
    {"längd", Holds::length},    {"longueur", Holds::length}, {"métrage", Holds::length},
    {"grms", Holds::mass},       {"gramm", Holds::mass},      {"grm", Holds::mass},
    {"h\u00E4rva", Holds::name}, {"docka", Holds::name},      {"ball", Holds::name},
    {"label", Holds::name},      {"id", Holds::name},         {"bobbin", Holds::name},
    {"no", Holds::name},         {"number", Holds::name},     {"length", Holds::length},
    {"yardage", Holds::length},  {"meterage", Holds::length}, {"metreage", Holds::length},
    {"mass", Holds::mass},       {"weight", Holds::mass},     {"state", Holds::state},
    {"measured", Holds::state},
};

struct Other {
    const char *word, *why;
};

// Words that make a column something else, whatever unit stands in it.
constexpr Other others[] = {
    {"grist", "it is a grist"},
    {"per", "it is a rate"},
    {"ypp", "it is a grist"},
    {"twist", "it is a twist"},
    {"turns", "it is a twist"},
    {"tpi", "it is a twist"},
    {"tpm", "it is a twist"},
    {"gauge", "it is a gauge"},
    {"sett", "it is a sett"},
    {"epi", "it is a sett"},
    {"price", "it is money"},
    {"cost", "it is money"},
    {"value", "it is money"},
    {"paid", "it is money"},
    {"needle", "it is a needle"},
    {"needles", "it is a needle"},
    {"staple", "it is a staple"},
    {"micron", "it is a diameter"},
    {"fibre", "it is what was spun from"},
    {"fiber", "it is what was spun from"},
    {"fleece", "it is what was spun from"},
    {"roving", "it is what was spun from"},
    {"top", "it is what was spun from"},
    {"batt", "it is what was spun from"},
    {"greasy", "it is what was spun from"},
    {"class", "it is a weight class"},
    {"category", "it is a weight class"},
    {"left", "it is what is left"},
    {"used", "it is what was used"},
    {"diameter", "it is a diameter"},
    {"width", "it is a width"},
    {"circumference", "it is a girth"},
};

// "m/100g", "yd/lb": a length over a mass, or the other way.
bool is_rate(const std::string& header) {
    const auto text = plain(header);
    for (auto at = text.find('/'); at != std::string::npos; at = text.find('/', at + 1)) {
        const auto before = words_of(text.substr(0, at));
        const auto after = words_of(text.substr(at + 1));
        if (before.empty() || after.empty()) continue;
        const auto* over = unit_word(before.back());
        const auto* under = unit_word(after.front());
        if (over && under && over->dimension != under->dimension) return true;
    }
    return false;
}

Holds held_by(const UnitWord& unit) {
    return unit.dimension == Dimension::length ? Holds::length : Holds::mass;
}

// "Length (in)", "needs, in", "in" alone; but "What's in it" measures nothing.
bool in_is_a_unit(const std::string& header, const std::vector<std::string>& words) {
    const auto typed = plain(header);
    const auto at = typed.rfind("in");
    if (words.size() == 1) return true;
    const bool last = words.back() == "in";
    const bool signed_off =
        at != std::string::npos && at > 0 && typed.find_last_of("([,;/-", at) != std::string::npos;
    const bool measure = std::any_of(words.begin(), words.end(), [](const auto& word) {
        return word == "length" || word == "size" || word == "width" || word == "dims" ||
               word == "dimensions";
    });
    return last && (signed_off || measure);
}

void read_word(const std::string& word, Heading& out) {
    for (const auto& g : general)
        if (word == g.word && (out.holds == Holds::nothing_known || out.holds == Holds::name))
            out.holds = g.holds;
    // "in" is a word before it is a unit: "length in yards"; the last unit decides
    if (const auto* unit = unit_word(word); unit && (word != "in" || out.unit.empty())) {
        if (out.holds == Holds::nothing_known || out.holds == Holds::name)
            out.holds = held_by(*unit);
        if (out.holds == held_by(*unit)) out.unit = word;
    }
    if (word == "before" || word == "unwashed") out.before_washing = true;
    for (const char* done : {"after", "washed", "finished", "yarn", "skein", "final"})
        if (word == done) out.finished = true;
}

using AnyOf = std::initializer_list<const char*>;

// "Qty", "# skeins", "Number of skeins": how many there are alike; "Skein no." is a name.
bool counts_skeins(const std::string& header, const std::vector<std::string>& words) {
    if (words.size() == 1 && has_any(AnyOf{"qty", "quantity", "count"}, words)) return true;
    const bool several = has_any(AnyOf{"skeins", "hanks", "balls", "cakes"}, words);
    return several && (has_any(AnyOf{"no", "number", "many", "qty", "count"}, words) ||
                       header.find('#') != std::string::npos);
}

// "yds per skein", "grams ea": of one, and no rate; what says so is taken off.
bool take_each(std::vector<std::string>& words) {
    for (std::size_t w = 0; w < words.size(); ++w) {
        const bool per = words[w] == "per" && w + 1 < words.size() &&
                         has(AnyOf{"skein", "hank", "ball", "cake", "one"}, words[w + 1]);
        if (!per && words[w] != "each" && words[w] != "ea") continue;
        const auto from = words.begin() + static_cast<std::ptrdiff_t>(w);
        words.erase(from, from + (per ? 2 : 1));
        return true;
    }
    return false;
}

// What a skein is: one of `these` words at least, and nothing but `besides` with them.
struct OfItself {
    Holds holds;
    AnyOf these, besides;
};
constexpr AnyOf of_the{"of", "the", "yarn", "skein", "in", "or", "how", "type", "used"};
constexpr OfItself of_itself[] = {
    {Holds::wraps, {"wpi", "wraps"}, {"per", "inch", "cm"}},
    {Holds::preparation,
     {"prep", "preparation", "prepared", "vorbereitung", "aufbereitung", "pr\u00E9paration"},
     {"fibre", "fiber", "wool", "was", "carded", "combed", "method"}},
    {Holds::draw,
     {"draw", "drafting", "drafted", "auszug"},
     {"method", "style", "technique", "spun", "spinning", "was"}},
    {Holds::plies,
     {"ply", "plies", "zwirn", "tr\u00E5d", "tr\u00E5dar", "strands"},
     {"no", "number", "many", "count"}},
    {Holds::fibre,
     {"fibre", "fiber", "fibres", "fibers", "breed", "faser", "fasern", "mati\u00E8re"},
     {"content", "blend", "composition"}},
    {Holds::colour,
     {"colour", "color", "colours", "colors", "colourway", "colorway", "farbe", "couleur",
      "f\u00E4rg"},
     {"name"}},
};

// The same where each of the words says little by itself.
struct Phrase {
    Holds holds;
    AnyOf words;
};
constexpr Phrase phrases[] = {
    {Holds::preparation, {"carded", "combed"}},
    {Holds::preparation, {"carded", "or", "combed"}},
    {Holds::preparation, {"kardat", "kammat"}},
    {Holds::draw, {"how", "spun"}},
    {Holds::draw, {"spun", "how"}},
    {Holds::draw, {"spinning", "method"}},
    {Holds::draw, {"spinning", "style"}},
    {Holds::draw, {"spinning", "technique"}},
    {Holds::fibre, {"what", "s", "in", "it"}},
};

// "WPI", "Wraps per inch", "Fibre prep", "Colour name": what a skein is, and nothing else with it.
std::optional<Heading> of_skein_itself(const std::vector<std::string>& words) {
    const auto heading = [](Holds holds, const char* unit = "") {
        return Heading{holds, unit, false, false, false, ""};
    };
    for (const auto& phrase : phrases)
        if (std::equal(words.begin(), words.end(), phrase.words.begin(), phrase.words.end()))
            return heading(phrase.holds);
    for (const auto& one : of_itself) {
        const bool only = std::all_of(words.begin(), words.end(), [&](const auto& word) {
            return has(one.these, word) || has(one.besides, word) || has(of_the, word);
        });
        if (!only || !has_any(one.these, words)) continue;
        if (one.holds != Holds::wraps) return heading(one.holds);
        return heading(one.holds, has_any(AnyOf{"cm"}, words) ? "wraps/cm" : "wpi");
    }
    return {};
}

// The way a size is measured: "22 head", "60 long x 8 wide".
bool is_way_measured(const std::string& word) {
    constexpr std::array ways{
        "head",     "chest",      "bust",   "waist", "hip",          "hips",   "hand",
        "wrist",    "long",       "wide",   "high",  "tall",         "deep",   "across",
        "around",   "round",      "square", "sq",    "diameter",     "length", "width",
        "wingspan", "wingspread", "span",   "circ",  "circumference"};
    const auto bare = ascii::lowered_letters(word);
    return has(ways, bare);
}

}  // namespace

Heading heading_of(const std::string& header) {
    Heading out;
    auto words = words_of(header);
    if (counts_skeins(header, words)) return {Holds::count, "", false, false, false, ""};
    out.of_each = take_each(words);
    if (const auto itself = of_skein_itself(words)) return *itself;
    const bool of_yarn = has(words, "yarn") || has(words, "skein");
    for (const auto& word : words) {
        for (const auto& other : others)
            if (word == other.word && out.why_not.empty()) out.why_not = other.why;
        if (word != "in" || in_is_a_unit(header, words)) read_word(word, out);
    }
    if (is_rate(header)) out.why_not = "it is a grist";
    const bool spun_from = out.why_not == "it is what was spun from";
    if (spun_from && of_yarn) out.why_not.clear();
    if (!out.why_not.empty()) out.holds = Holds::other;
    return out;
}

bool names_a_total(const std::string& cell) {
    const auto words = words_of(cell);
    constexpr std::array totals{"total",      "totals", "sum",     "subtotal", "all",   "average",
                                "mean",       "grand",  "overall", "together", "summe", "gesamt",
                                "altogether", "summa",  "somme",   "sub"};
    constexpr std::array besides{"skeins", "yarn", "of",  "the", "in",    "m",    "g",
                                 "sk",     "yd",   "yds", "oz",  "hanks", "balls"};
    const auto in = [](const auto& list, const std::string& word) { return has(list, word); };
    return std::any_of(words.begin(), words.end(), [&](const auto& w) { return in(totals, w); }) &&
           std::all_of(words.begin(), words.end(),
                       [&](const auto& w) { return in(totals, w) || in(besides, w); });
}

bool is_ditto(const std::string& cell) {
    constexpr std::array marks{"\"",       "-\"-",          "ditto", "dito", "do.", "do",    "same",
                               "as above", "same as above", "idem",  "id.",  "^",   "\u3003"};
    constexpr std::size_t longest = 20;  // "same as above", with some space about it
    return cell.size() <= longest && has(marks, plain(cell));
}

bool says_nothing(const std::string& cell) {
    constexpr std::array nothing{"-",
                                 "--",
                                 "?",
                                 "??",
                                 "n/a",
                                 "na",
                                 "none",
                                 "unknown",
                                 "tbd",
                                 "tba",
                                 "not sure",
                                 "don't know",
                                 "dont know",
                                 "no idea",
                                 "any",
                                 "whatever",
                                 "one size",
                                 "os",
                                 "one size fits all",
                                 "various",
                                 "varies",
                                 "whoever",
                                 "anyone",
                                 "anybody"};
    return has(nothing, plain(cell));
}

bool names_a_tool(const std::string& cell) {
    const auto words = words_of(cell);
    const AnyOf tools{"wheel", "spindle", "spinner", "espinner", "charkha"};
    const AnyOf which{"drop", "support", "supported", "turkish", "e", "electric", "great", "on"};
    return has_any(tools, words) && std::all_of(words.begin(), words.end(), [&](const auto& word) {
               return has(tools, word) || has(which, word);
           });
}

bool bare_number(const std::string& cell) {
    const auto text = plain(cell);
    return text.find_first_of("0123456789") != std::string::npos &&
           text.find_first_not_of("0123456789.,/-~' ") == std::string::npos;
}

bool lacks_unit(const std::string& cell) {
    if (bare_number(cell)) return true;
    const auto text = plain(cell);
    const bool figure = !text.empty() && text.back() >= '0' && text.back() <= '9';
    if (!figure && !text.ends_with("+")) return false;
    const auto words = words_of(text);
    return text.find_first_of("'\"") == std::string::npos &&
           std::none_of(words.begin(), words.end(), [](const auto& w) { return unit_word(w); });
}

std::string with_unit(const std::string& cell, const std::string& unit) {
    const auto words = words_of(cell);
    constexpr std::array others{"shoe", "shoes", "age", "aged", "eu", "us", "uk"};  // no lengths
    if (std::any_of(words.begin(), words.end(),
                    [&](const auto& w) { return unit_word(w) || has(others, w); }) ||
        cell.find_first_of("'\"") != std::string::npos)
        return cell;
    std::istringstream parts(cell);
    std::string out, before;
    for (std::string part; parts >> part; before = part) {
        if (bare_number(before) && is_way_measured(part)) out += " " + unit;
        out += (out.empty() ? "" : " ") + part;
    }
    return lacks_unit(cell) ? out + " " + unit : out;
}

}  // namespace gristwright::catalog
