#include "engine/units/reading.hpp"

#include <fmt/core.h>

#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <span>

#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

constexpr std::string_view digits = "0123456789";

struct Number {
    double value, step;
};

struct Unit {
    std::string_view name;
    double si;
};

constexpr std::array length_units{Unit{"m", 1},        Unit{"metre", 1},     Unit{"metres", 1},
                                  Unit{"cm", 0.01},    Unit{"mm", 0.001},    Unit{"yd", 0.9144},
                                  Unit{"yds", 0.9144}, Unit{"yard", 0.9144}, Unit{"yards", 0.9144},
                                  Unit{"ft", 0.3048},  Unit{"in", 0.0254},   Unit{"inch", 0.0254}};
constexpr std::array mass_units{Unit{"g", 1e-3},
                                Unit{"gram", 1e-3},
                                Unit{"grams", 1e-3},
                                Unit{"kg", 1},
                                Unit{"oz", in_kilograms(ounces(1))},
                                Unit{"lb", in_kilograms(pounds(1))}};
constexpr std::array wraps_units{Unit{"wpi", 1 / 0.0254}, Unit{"wraps/in", 1 / 0.0254},
                                 Unit{"wraps/cm", 100}};
constexpr std::array twist_units{Unit{"tpi", 1 / 0.0254}, Unit{"turns/in", 1 / 0.0254},
                                 Unit{"turns/m", 1}, Unit{"turns/cm", 100}};
// What may stand between the count and the stroke of a gauge or a sett.
constexpr std::array gauge_units{Unit{"", 1},         Unit{"st", 1},   Unit{"sts", 1},
                                 Unit{"stitches", 1}, Unit{"rows", 1}, Unit{"row", 1}};
constexpr std::array sett_units{Unit{"", 1},  Unit{"ends", 1}, Unit{"picks", 1},
                                Unit{"e", 1}, Unit{"p", 1},    Unit{"threads", 1}};
constexpr std::array per_inch_units{Unit{"epi", 1 / 0.0254}, Unit{"ppi", 1 / 0.0254}};

struct Kind {
    std::string_view name, right;
    std::span<const Unit> units;
};

constexpr Kind length_kind{"a length", "such as 171m or 187yd (units: m, cm, mm, yd, ft, in)",
                           length_units};
constexpr Kind mass_kind{"a mass", "such as 38.5g or 1 3/4 oz (units: g, kg, oz, lb)", mass_units};
constexpr Kind wraps_kind{"a wraps count", "such as 16wpi or 6.3 wraps/cm", wraps_units};
constexpr Kind twist_kind{"a twist", "such as 5tpi or 200 turns/m", twist_units};
constexpr Kind gauge_kind{"a gauge", "such as 28st/10cm or 7 st/in", gauge_units};
constexpr Kind sett_kind{"a sett", "such as 40/10cm, 10 epi or 12 ends/in", sett_units};

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

// Takes the leading characters of `text` that are in `set`.
std::string_view take(std::string_view& text, std::string_view set) {
    const auto taken = text.substr(0, text.find_first_not_of(set));
    text.remove_prefix(taken.size());
    return taken;
}

double whole(std::string_view text) {
    double value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

// "171", "38.5", "38,5"; nothing for no digits, 010, or an ambiguous comma.
std::optional<Number> take_decimal(std::string_view& text) {
    const auto head = take(text, digits);
    if (head.size() > 12 || (head.size() > 1 && head[0] == '0')) return {};
    std::string_view tail;
    if (!text.empty() && (text[0] == '.' || text[0] == ',')) {
        const bool comma = text[0] == ',';
        text.remove_prefix(1);
        tail = take(text, digits);
        if (tail.empty() || tail.size() > 12 || (comma && tail.size() == 3)) return {};
    }
    if (head.empty() && tail.empty()) return {};
    const double step = std::pow(10.0, -static_cast<double>(tail.size()));
    return Number{whole(head) + whole(tail) * step, step};
}

// A decimal, or "3/4", or "1 3/4".
std::optional<Number> take_number(std::string_view& text) {
    auto number = take_decimal(text);
    if (!number) return {};
    std::string_view rest = trimmed(text);
    std::optional<Number> over;
    const bool fraction_only = !rest.empty() && rest[0] == '/';
    if (!fraction_only) over = take_decimal(rest);
    if ((!fraction_only && !over) || rest.empty() || rest[0] != '/') return number;
    rest.remove_prefix(1);
    const auto under = take_decimal(rest);
    if (!under || under->value == 0) return {};
    const double base = over ? number->value : 0;
    const double top = over ? over->value : number->value;
    text = rest;
    return Number{base + top / under->value, 1 / under->value};
}

std::optional<double> unit_size(std::span<const Unit> units, std::string_view name) {
    for (const auto& unit : units)
        if (unit.name == name) return unit.si;
    return {};
}

// Text for a message: control and non-ASCII bytes as '?', at most 60 of them.
std::string shown(std::string_view text) {
    std::string safe(text.substr(0, 60));
    for (char& c : safe)
        if (c < ' ' || c > '~') c = '?';
    return safe;
}

std::string complaint(const Kind& kind, std::string_view unit) {
    if (unit.empty()) return fmt::format("{} needs a unit", kind.name);
    for (const auto& other : {length_kind, mass_kind, wraps_kind})
        if (unit_size(other.units, unit))
            return fmt::format("this is {}, and {} is wanted here", other.name, kind.name);
    return fmt::format("'{}' is no unit for {}", shown(unit), kind.name);
}

template <class Q>
Reading<Q> read(std::string_view text, const Kind& kind) {
    auto rest = trimmed(text);
    const auto number = take_number(rest);
    if (!number) throw Unreadable(text, "the number is missing or unclear", kind.right);
    const auto unit = trimmed(rest);
    const auto size = unit_size(kind.units, unit);
    if (!size) throw Unreadable(text, complaint(kind, unit), kind.right);
    if (number->value <= 0) throw Unreadable(text, "it must be more than zero", kind.right);
    return {Q::from_si(number->value * *size), Q::from_si(number->step * *size)};
}

// "28 st/10 cm", "7 st/in": a count over a length, in counts per metre.
double read_count_per_length(std::string_view text, const Kind& kind) {
    auto rest = trimmed(text);
    const auto count = take_decimal(rest);
    if (!count || count->value <= 0)
        throw Unreadable(text, "the number is missing or unclear", kind.right);
    if (const auto per_inch = unit_size(per_inch_units, trimmed(rest));
        per_inch && kind.name == sett_kind.name)
        return count->value * *per_inch;
    const auto stroke = rest.find('/');
    if (stroke == std::string_view::npos || !unit_size(kind.units, trimmed(rest.substr(0, stroke))))
        throw Unreadable(text, fmt::format("this is not {}", kind.name), kind.right);
    auto under = trimmed(rest.substr(stroke + 1));
    const auto number = take_decimal(under).value_or(Number{1, 1});
    const auto unit = unit_size(length_units, trimmed(under));
    if (!unit || number.value <= 0)
        throw Unreadable(text, "the length it is counted over is unclear", kind.right);
    return count->value / (number.value * *unit);
}

}  // namespace

Unreadable::Unreadable(std::string_view text, std::string_view why, std::string_view right)
    : Refused(fmt::format("cannot read '{}': {}; write it {}", shown(text), why, right)) {}

Reading<Length> read_length(std::string_view text) { return read<Length>(text, length_kind); }

Reading<Mass> read_mass(std::string_view text) { return read<Mass>(text, mass_kind); }

Wraps read_wraps(std::string_view text) { return read<Wraps>(text, wraps_kind).value; }

Twist read_twist(std::string_view text) { return read<Twist>(text, twist_kind).value; }

Gauge read_gauge(std::string_view text) {
    return Gauge::from_si(read_count_per_length(text, gauge_kind));
}

Sett read_sett(std::string_view text) {
    return Sett::from_si(read_count_per_length(text, sett_kind));
}

double read_share(std::string_view text) {
    auto rest = trimmed(text);
    const auto number = take_decimal(rest);
    rest = trimmed(rest);
    if (!number || !(rest.empty() || rest == "%") || number->value > 100)
        throw Unreadable(text, "this is no share", "such as 90 or 90% (0 to 100)");
    return std::round(number->value * 1e6) / 1e8;  // 99.9 % is 0.999, and no more
}

std::pair<std::string_view, std::string_view> split_skein(std::string_view text) {
    // A fraction's stroke stands between digits; the one between length and mass follows a unit.
    auto stroke = text.find('/');
    while (stroke != std::string_view::npos && stroke > 0 &&
           digits.find(text[stroke - 1]) != std::string_view::npos)
        stroke = text.find('/', stroke + 1);
    if (stroke == std::string_view::npos)
        throw Unreadable(text, "a skein is a length and a mass", "such as 171m/38.5g");
    return {text.substr(0, stroke), text.substr(stroke + 1)};
}

std::pair<Reading<Length>, Reading<Mass>> read_skein(std::string_view text) {
    const auto [length, mass] = split_skein(text);
    return {read_length(length), read_mass(mass)};
}

std::pair<Length, Length> read_micron_range(std::string_view text) {
    constexpr std::string_view right = "such as 25 or 24-27 (micron, 5 to 100)";
    auto rest = trimmed(text);
    const auto low = take_decimal(rest);
    auto high = low;
    if (low && !rest.empty() && rest[0] == '-') {
        rest.remove_prefix(1);
        high = take_decimal(rest);
    }
    const auto unit = trimmed(rest);
    if (!low || !high || !(unit.empty() || unit == "micron" || unit == "um"))
        throw Unreadable(text, "this is no fibre diameter", right);
    if (low->value < 5 || high->value > 100 || low->value > high->value)
        throw Unreadable(text, "no spinning fibre has this diameter", right);
    return {microns(low->value), microns(high->value)};
}

}  // namespace gristwright
