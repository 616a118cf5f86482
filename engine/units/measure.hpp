// A number and its unit, of whatever kind: what lengths, masses, grists and skeins are made of. An
// implementation header of the readers of this room.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "engine/units/scanner.hpp"

namespace gristwright {

enum class Dimension { length, mass };

struct UnitWord {
    std::string_view word;
    Dimension dimension;
    double si;
    bool imperial = false;  // its writers put commas between thousands and a point before tenths
};

const UnitWord* unit_word(std::string_view word);
// What a unit measures, in words, also where no reader of lengths or masses takes it: "a length".
std::string_view measured_by(std::string_view word);

// "220m", "1 lb 2 oz". `other` is its value when a point or comma is taken as a thousands mark.
struct Measure {
    UnitWord unit{};
    double si = 0, step = 0;
    std::optional<double> other, other_step;

    // The one way or both in which it can be read.
    std::vector<double> ways() const;
    // "1.2 m", "1200 m".
    std::string way(double si) const;
};

// What is wanted, for complaints: "a length", "such as 171m or 187yd".
struct WantedMeasure {
    std::string_view name, right;
};
inline constexpr WantedMeasure length_wanted{
    "a length", "such as 171m or 187yd (units: m, cm, mm, yd, ft, in)"};
inline constexpr WantedMeasure mass_wanted{"a mass",
                                           "such as 38.5g or 1 3/4 oz (units: g, kg, oz, lb)"};

// Takes one measure from the front. Throws Unreadable; `text` is quoted.
Measure take_measure(Scanner& from, std::string_view text, const WantedMeasure& wanted);

// The unit behind a number: its word and a full stop. Nothing when it is not a known one.
const UnitWord* take_unit(Scanner& from);

}  // namespace gristwright
