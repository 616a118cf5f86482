#include "engine/units/measure.hpp"

#include <fmt/core.h>

#include <array>

#include "engine/units/quantity.hpp"
#include "engine/units/reading.hpp"

namespace gristwright {
namespace {

constexpr auto length = Dimension::length, mass = Dimension::mass;
constexpr double yard = in_metres(yards(1)), foot = in_metres(inches(12)),
                 one_inch = in_metres(inches(1)), pound = in_kilograms(pounds(1)),
                 ounce = in_kilograms(ounces(1));

constexpr std::array unit_words{
    UnitWord{"m", length, 1},
    UnitWord{"metre", length, 1},
    UnitWord{"metres", length, 1},
    UnitWord{"meter", length, 1},
    UnitWord{"meters", length, 1},
    UnitWord{"mtr", length, 1},
    UnitWord{"mtrs", length, 1},
    UnitWord{"mt", length, 1},
    UnitWord{"mts", length, 1},
    UnitWord{"km", length, 1000},
    UnitWord{"kilometre", length, 1000},
    UnitWord{"kilometres", length, 1000},
    UnitWord{"kilometer", length, 1000},
    UnitWord{"kilometers", length, 1000},
    UnitWord{"cm", length, 0.01},
    UnitWord{"cms", length, 0.01},
    UnitWord{"centimetre", length, 0.01},
    UnitWord{"centimetres", length, 0.01},
    UnitWord{"centimeter", length, 0.01},
    UnitWord{"centimeters", length, 0.01},
    UnitWord{"mm", length, 0.001},
    UnitWord{"mms", length, 0.001},
    UnitWord{"millimetre", length, 0.001},
    UnitWord{"millimetres", length, 0.001},
    UnitWord{"millimeter", length, 0.001},
    UnitWord{"millimeters", length, 0.001},
    UnitWord{"y", length, yard, true},
    UnitWord{"yd", length, yard, true},
    UnitWord{"yds", length, yard, true},
    UnitWord{"yrd", length, yard, true},
    UnitWord{"yrds", length, yard, true},
    UnitWord{"yard", length, yard, true},
    UnitWord{"yards", length, yard, true},
    UnitWord{"mile", length, 1760 * yard, true},
    UnitWord{"miles", length, 1760 * yard, true},
    UnitWord{"ft", length, foot, true},
    UnitWord{"foot", length, foot, true},
    UnitWord{"feet", length, foot, true},
    UnitWord{"'", length, foot, true},
    UnitWord{"in", length, one_inch, true},
    UnitWord{"ins", length, one_inch, true},
    UnitWord{"inch", length, one_inch, true},
    UnitWord{"inches", length, one_inch, true},
    UnitWord{"\"", length, one_inch, true},
    UnitWord{"g", mass, 1e-3},
    UnitWord{"gr", mass, 1e-3},
    UnitWord{"grs", mass, 1e-3},
    UnitWord{"gm", mass, 1e-3},
    UnitWord{"gms", mass, 1e-3},
    UnitWord{"gram", mass, 1e-3},
    UnitWord{"grams", mass, 1e-3},
    UnitWord{"grms", mass, 1e-3},
    UnitWord{"gramm", mass, 1e-3},
    UnitWord{"gramme", mass, 1e-3},
    UnitWord{"grammes", mass, 1e-3},
    UnitWord{"kg", mass, 1},
    UnitWord{"kgs", mass, 1},
    UnitWord{"kilo", mass, 1},
    UnitWord{"kilos", mass, 1},
    UnitWord{"kilogram", mass, 1},
    UnitWord{"kilograms", mass, 1},
    UnitWord{"oz", mass, ounce, true},
    UnitWord{"ozs", mass, ounce, true},
    UnitWord{"ounce", mass, ounce, true},
    UnitWord{"ounces", mass, ounce, true},
    UnitWord{"lb", mass, pound, true},
    UnitWord{"lbs", mass, pound, true},
    UnitWord{"pound", mass, pound, true},
    UnitWord{"pounds", mass, pound, true},
};

struct RateWord {
    std::string_view word, measures;
};

constexpr std::array rate_words{RateWord{"wpi", "a wraps count"}, RateWord{"tpi", "a twist"},
                                RateWord{"tpm", "a twist"},       RateWord{"epi", "a sett"},
                                RateWord{"ppi", "a sett"},        RateWord{"dpi", "a sett"},
                                RateWord{"st", "a gauge"},        RateWord{"sts", "a gauge"}};

Number settled(Number number, bool imperial) {
    if (!number.thousands || !imperial) return number;
    const bool comma = number.mark == ',';
    return Number{comma ? *number.thousands : number.value, comma ? 1 : number.step, {}, 0};
}

std::string complaint(std::string_view word, std::string_view rest, const WantedMeasure& wanted) {
    if (word.empty() && rest.empty()) return fmt::format("{} needs a unit", wanted.name);
    if (const auto other = measured_by(word); !other.empty())
        return fmt::format("this is {}, and {} is wanted here", other, wanted.name);
    return fmt::format("'{}' is no unit for {}", shown(word.empty() ? rest : word), wanted.name);
}

Measure one_measure(Scanner& from, std::string_view text, const WantedMeasure& wanted) {
    const bool near = take_about(from);
    auto number = from.number(Fractions::any);
    if (!number) throw Unreadable(text, "the number is missing or unclear", wanted.right);
    if (near) number = rounded(*number);
    const auto word = from.next_word();
    auto rest = from.rest();
    if (rest.substr(0, 1) == "/") rest = {};  // of a skein: "171/38.5g"
    const auto* unit = take_unit(from);
    if (!unit) throw Unreadable(text, complaint(word, rest, wanted), wanted.right);
    if (!(number->value > 0)) throw Unreadable(text, "it must be more than zero", wanted.right);
    const auto read = settled(*number, unit->imperial);
    Measure out{*unit, read.value * unit->si, read.step * unit->si, {}, {}};
    if (read.thousands) {
        out.other = *read.thousands * unit->si;
        out.other_step = unit->si;
    }
    return out;
}

// "2 oz" behind "1 lb": the same kind of unit, smaller, and less than one of the first.
bool joins(const Measure& first, Scanner& from, std::string_view text, const WantedMeasure& wanted,
           Measure& second) {
    auto ahead = from;
    ahead.sign(',');
    ahead.any(std::array<std::string_view, 2>{"and", "&"});
    auto probe = ahead;
    if (!probe.number(Fractions::any) || !take_unit(probe)) return false;
    second = one_measure(ahead, text, wanted);
    if (second.unit.dimension != first.unit.dimension || second.unit.si >= first.unit.si ||
        second.si >= first.unit.si)
        return false;
    from = ahead;
    return true;
}

}  // namespace

const UnitWord* unit_word(std::string_view word) {
    for (const auto& unit : unit_words)
        if (unit.word == word) return &unit;
    return nullptr;
}

std::string_view measured_by(std::string_view word) {
    if (const auto* unit = unit_word(word))
        return unit->dimension == Dimension::length ? "a length" : "a mass";
    for (const auto& rate : rate_words)
        if (rate.word == word) return rate.measures;
    return {};
}

const UnitWord* take_unit(Scanner& from) {
    const auto* unit = unit_word(from.next_word());
    if (!unit) return nullptr;
    from.word();
    from.sign('.');
    return unit;
}

std::vector<double> Measure::ways() const {
    return other ? std::vector{si, *other} : std::vector{si};
}

std::string Measure::way(double value) const {
    return fmt::format("{} {}", plainly(value / unit.si), unit.word);
}

Measure take_measure(Scanner& from, std::string_view text, const WantedMeasure& wanted) {
    auto out = one_measure(from, text, wanted);
    for (Measure more; !out.other && joins(out, from, text, wanted, more) && !more.other;) {
        const auto unit = more.unit;
        out.si += more.si;
        out.step = more.step;
        out.unit = unit;
    }
    return out;
}

}  // namespace gristwright
