#include "engine/units/reading.hpp"

#include <fmt/core.h>

#include <array>
#include <cmath>

#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"

#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

// The one way in which it can be: that lies within, or the only one there is.
template <class Q>
Reading<Q> chosen(const Measure& m, std::string_view text, const Within<Q>& can_be) {
    const Reading<Q> usual{Q::from_si(m.si), Q::from_si(m.step)};
    if (!m.other) return usual;
    const Reading<Q> thousands{Q::from_si(*m.other), Q::from_si(*m.other_step)};
    const auto fits = [&](Q q) { return can_be.least <= q && q <= can_be.most; };
    if (fits(usual.value) == fits(thousands.value))
        throw Unclear(text, fmt::format("{} or {}", m.way(m.si), m.way(*m.other)),
                      "without the mark");
    return fits(usual.value) ? usual : thousands;
}

template <class Q>
Reading<Q> read(std::string_view text, Dimension dimension, const WantedMeasure& wanted,
                const Within<Q>& can_be) {
    const auto typed = plain(text);
    Scanner from(typed);
    const auto measure = take_measure(from, text, wanted);
    if (measure.unit.dimension != dimension)
        throw Unreadable(text,
                         fmt::format("this is {}, and {} is wanted here",
                                     measured_by(measure.unit.word), wanted.name),
                         wanted.right);
    if (!from.done())
        throw Unreadable(text, fmt::format("'{}' is left over", shown(from.rest())), wanted.right);
    return chosen(measure, text, can_be);
}

// A number where no thousands are met, or nothing.
std::optional<double> small_number(Scanner& from) {
    const auto number = from.number(Fractions::any);
    if (!number) return {};
    return number->value;
}

bool take_to(Scanner& from) {
    return from.sign('-') || from.take("to") || from.take("until") || from.take("and");
}

// "70-" in front of "90mm".
std::optional<double> bare_low(Scanner& from) {
    auto probe = from;
    const auto low = small_number(probe);
    if (!low || !take_to(probe)) return {};
    from = probe;
    return low;
}

}  // namespace

Unreadable::Unreadable(std::string_view text, std::string_view why, std::string_view right)
    : Refused(fmt::format("cannot read '{}': {}; write it {}", shown(text), why, right)) {}

Unclear::Unclear(std::string_view text, std::string_view ways, std::string_view right)
    : Unreadable(fmt::format("'{}' can mean {}: which? Write it {}", shown(text), ways, right)) {}

std::string shown(std::string_view text) {
    constexpr std::size_t most = 60;
    auto end = std::min(text.size(), most);
    const auto inside = [&](std::size_t at) {  // of a sign of several bytes
        return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80;
    };
    while (end > 0 && inside(end)) --end;
    std::string safe(text.substr(0, end));
    for (char& c : safe)
        if (static_cast<unsigned char>(c) < ' ' || c == '\x7F') c = '?';
    return safe;
}

Reading<Length> read_length(std::string_view text, Within<Length> can_be) {
    return read(text, Dimension::length, length_wanted, can_be);
}

Reading<Mass> read_mass(std::string_view text, Within<Mass> can_be) {
    return read(text, Dimension::mass, mass_wanted, can_be);
}

std::pair<Length, Length> read_length_range(std::string_view text) {
    constexpr WantedMeasure wanted{"a range of lengths", "such as 75mm, 75-100mm or 3-4 in"};
    const auto typed = plain(text);
    Scanner from(typed);
    const auto bare = bare_low(from);
    const auto one = take_measure(from, text, wanted);
    const auto two = !bare && take_to(from) ? take_measure(from, text, wanted) : one;
    if (!from.done() || one.unit.dimension != Dimension::length ||
        two.unit.dimension != Dimension::length)
        throw Unreadable(text, "this is no range of lengths", wanted.right);
    const std::pair range{metres(bare ? *bare * one.unit.si : one.si), metres(two.si)};
    if (range.first > range.second || !(range.first.si() > 0))
        throw Unreadable(text, "the range runs backwards", wanted.right);
    return range;
}

double read_share(std::string_view text) {
    constexpr std::string_view right = "such as 90 or 90% (0 to 100)";
    const auto typed = plain(text);
    Scanner from(typed);
    const auto number = from.number(Fractions::none);
    const bool said =
        from.sign('%') || from.any(std::array<std::string_view, 3>{"percent", "per cent", "pc"});
    if (!number || !from.done() || number->value > 100)
        throw Unreadable(text, "this is no share", right);
    if (!said && number->value > 0 && number->value < 1)
        throw Unclear(
            text, fmt::format("{}% or {}%", plainly(number->value), plainly(number->value * 100)),
            "with its % sign");
    return std::round(number->value * 1e6) / 1e8;  // 99.9 % is 0.999, and no more
}

std::pair<Length, Length> read_micron_range(std::string_view text) {
    constexpr std::string_view right = "such as 25 or 24-27 (micron, 5 to 100)";
    constexpr std::array<std::string_view, 7> units{"microns", "micron",      "um", "mic",
                                                    "mu",      "micrometres", "u"};
    const auto typed = plain(text);
    Scanner from(typed);
    take_about(from);
    const auto low = small_number(from);
    auto high = low;
    if (low && take_to(from)) high = small_number(from);
    if (from.any(units)) from.sign('.');
    if (!low || !high || !from.done()) throw Unreadable(text, "this is no fibre diameter", right);
    if (*low < 5 || *high > 100 || *low > *high)
        throw Unreadable(text, "no spinning fibre has this diameter", right);
    return {microns(*low), microns(*high)};
}

}  // namespace gristwright
