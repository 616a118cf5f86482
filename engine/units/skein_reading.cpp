// Skeins and grists: a length and a mass in either order.
#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "engine/units/ascii.hpp"
#include "engine/units/constants.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright {
namespace {

constexpr WantedMeasure skein_wanted{
    "a length or a mass", "such as 171m/38.5g (units: m, cm, mm, yd, ft, in; g, kg, oz, lb)"};
constexpr WantedMeasure grist_wanted{"a grist", "such as 400m/100g or 1200 yd/lb"};

bool at_negative_number(const Scanner& from) {
    const auto rest = from.rest();
    return rest.size() > 1 && rest[0] == '-' && ascii::is_digit(rest[1]);
}

// What may stand between the length and the mass of a skein: "90m - 30g" is two measures,
// "90m/-30g" has a sign that no mass has.
void take_between(Scanner& from) {
    constexpr std::array words{"and", "weighing", "weighs", "weigh",   "in",  "at",
                               "for", "of",       "auf",    "p\u00E5", "pour"};
    bool taken = false;
    while (!(taken && at_negative_number(from)) &&
           (from.any(std::array{"/", ",", ";", ":", "=", "-", "@", "|", "+", "&", "("}) ||
            from.any(words)))
        taken = true;
}

// "length 90 m, weight 41 g", "(90 m)": what may stand in front of a measure.
void take_label_of_skein(Scanner& from) {
    constexpr std::array labels{"length", "len", "yardage", "weight", "wt.", "wt", "mass"};
    if (from.any(labels)) from.any(std::array{":", "="});
    from.any(std::array{"(", "["});
}

bool take_per(Scanner& from) { return from.any(std::array{"per", "to the", "to", "a", "each"}); }

// "220 m (240 yd)", as labels have it: the same twice, the second is let go.
bool says_it_again(const Measure& first, Scanner& from, std::string_view text) {
    auto probe = from;
    take_between(probe);
    auto again = probe;
    if (!probe.number(Fractions::any) || !take_unit(probe)) return false;
    const auto second = take_measure(again, text, skein_wanted);
    if (second.unit.dimension != first.unit.dimension) return false;
    if (std::abs(second.si / first.si - 1) > constants::label_rounding)
        throw Unclear(text,
                      fmt::format("{} or {}, which are not the same", first.way(first.si),
                                  second.way(second.si)),
                      "once");
    again.sign(')');
    from = again;
    return true;
}

struct Pair {
    Measure length, mass;
    std::string length_text, mass_text;  // of the plain text
};

// A measure and its own text.
Measure take_quoted(Scanner& from, std::string_view text, const WantedMeasure& wanted,
                    std::string& own) {
    const auto before = from.rest();
    const auto out = take_measure(from, text, wanted);
    own = before.substr(0, before.size() - from.rest().size());
    while (own.back() == ' ') own.pop_back();
    return out;
}

[[noreturn]] void refuse_grist(std::string_view text) {
    throw Unclear(text, "a grist or a skein",
                  "such as 220m/100g, with the skein's own metres and grams");
}

Pair take_pair(std::string_view text) {
    const auto typed = plain(text);
    Scanner from(typed);
    std::string own_one, own_two;
    take_label_of_skein(from);
    auto one = take_quoted(from, text, skein_wanted, own_one);
    if (take_per(from)) refuse_grist(text);
    says_it_again(one, from, text);
    from.any(std::array{")", "]"});
    take_between(from);
    take_label_of_skein(from);
    if (take_per(from)) refuse_grist(text);
    if (from.done() || (unit_word(from.next_word()) && from.rest()[0] != '\''))
        throw Unreadable(
            text, from.done() ? "a skein is a length and a mass" : "this is a grist, no skein",
            skein_wanted.right);
    auto two = take_quoted(
        from, text, one.unit.dimension == Dimension::length ? mass_wanted : length_wanted, own_two);
    says_it_again(two, from, text);
    from.any(std::array{")", "]"});
    if (!from.done())
        throw Unreadable(text, fmt::format("'{}' is left over", shown(from.rest())),
                         skein_wanted.right);
    if (one.unit.dimension == two.unit.dimension)
        throw Unreadable(text,
                         fmt::format("these are two {}", one.unit.dimension == Dimension::length
                                                             ? "lengths; the mass is missing"
                                                             : "masses; the length is missing"),
                         skein_wanted.right);
    if (one.unit.dimension == Dimension::length) return {one, two, own_one, own_two};
    return {two, one, own_two, own_one};
}

bool can_be_yarn(double length, double mass) {
    const double grist = in_tex(kilograms(mass) / metres(length));
    return constants::finest_grist <= grist && grist <= constants::thickest_grist;
}

using Read = std::pair<Reading<Length>, Reading<Mass>>;

Read reading(const Pair& p, double length, double mass) {
    const auto step = [](const Measure& m, double si) {
        return si == m.si ? m.step : *m.other_step;
    };
    return {{metres(length), metres(step(p.length, length))},
            {kilograms(mass), kilograms(step(p.mass, mass))}};
}

// "1.200 m" is asked about, whatever it weighs: both can be measured off.
void ask_about_thousands(const Measure& length, std::string_view text) {
    if (!length.other || std::max(length.si, *length.other) > constants::longest_skein) return;
    throw Unclear(text, fmt::format("{} or {}", length.way(length.si), length.way(*length.other)),
                  "without the mark");
}

// Of the ways to read a skein the only one that can be yarn.
Read chosen(const Pair& p, std::string_view text) {
    if (!p.length.other && !p.mass.other) return reading(p, p.length.si, p.mass.si);
    std::vector<Read> found;
    std::string ways;
    for (const double length : p.length.ways())
        for (const double mass : p.mass.ways()) {
            if (!can_be_yarn(length, mass)) continue;
            found.push_back(reading(p, length, mass));
            ways += fmt::format("{}{} weighing {}", ways.empty() ? "" : " or ",
                                p.length.way(length), p.mass.way(mass));
        }
    if (found.size() == 1) return found[0];
    throw Unclear(text, found.empty() ? "two things, and neither is yarn" : ways,
                  "without the mark");
}

}  // namespace

Read read_skein(std::string_view text) {
    const auto pair = take_pair(text);
    ask_about_thousands(pair.length, text);
    return chosen(pair, text);
}

std::pair<std::string, std::string> split_skein(std::string_view text) {
    const auto pair = take_pair(text);
    ask_about_thousands(pair.length, text);
    chosen(pair, text);  // or complains
    return {pair.length_text, pair.mass_text};
}

Read read_skein(std::string_view length, std::string_view mass) {
    const auto one = [](std::string_view text, Dimension dimension, const WantedMeasure& wanted) {
        const auto typed = plain(text);
        Scanner from(typed);
        const auto measure = take_measure(from, text, wanted);
        says_it_again(measure, from, text);
        if (!from.done() || measure.unit.dimension != dimension) {
            if (dimension == Dimension::length)
                read_length(text);  // says why
            else
                read_mass(text);
            throw Unreadable(text, "it is unclear", wanted.right);
        }
        return measure;
    };
    const Pair pair{one(length, Dimension::length, length_wanted),
                    one(mass, Dimension::mass, mass_wanted),
                    {},
                    {}};
    ask_about_thousands(pair.length, length);
    return chosen(pair, fmt::format("{} {}", length, mass));
}

namespace {

// "yd/lb", "m per 100g", "metres to 50 grams": the second half of a grist.
Measure take_under(Scanner& from, std::string_view text) {
    auto probe = from;
    if (probe.number(Fractions::any)) return take_measure(from, text, grist_wanted);
    const auto* unit = take_unit(from);
    if (!unit) throw Unreadable(text, "this is no grist", grist_wanted.right);
    return {*unit, unit->si, unit->si, {}, {}};
}

std::optional<LinearDensity> in_one_word(Scanner from) {
    const auto number = from.number(Fractions::none);
    if (!number || !(number->value > 0)) return {};
    const double count = number->thousands ? *number->thousands : number->value;
    if (from.any(std::array{"ypp", "yards per pound", "yd per lb"}) && from.done())
        return pounds(1 / count) / yards(1);
    if (from.take("tex") && from.done()) return tex(number->value);
    return {};
}

}  // namespace

LinearDensity read_grist(std::string_view text) {
    const auto typed = plain(text);
    Scanner from(typed);
    if (const auto one = in_one_word(from)) return *one;
    auto over = take_measure(from, text, grist_wanted);
    take_between(from);
    take_per(from);
    auto under = take_under(from, text);
    if (!from.done() || over.unit.dimension == under.unit.dimension)
        throw Unreadable(text, "this is no grist", grist_wanted.right);
    if (over.unit.dimension == Dimension::mass) std::swap(over, under);
    const auto read = chosen({over, under, {}, {}}, text);
    return read.second.value / read.first.value;
}

}  // namespace gristwright
