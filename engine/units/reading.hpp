// Reads the measurements people type: `226yd`, `1 3/4 oz`, `38,5 g`, `16wpi`, `171m/38.5g`.
//
// A number is digits with an optional decimal point or comma, or a whole number and a fraction. All
// measurements must be above zero and finite. A comma before exactly three digits is refused: it
// could be a decimal comma or a thousands mark. Nothing depends on the locale.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

#include "engine/units/failure.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

// The text that could not be read, why, and what would have been right.
struct Unreadable : Refused {
    Unreadable(std::string_view text, std::string_view why, std::string_view right);
};

// A value and one unit of the last digit written: 38.5 g was read to 0.1 g, 1 3/4 oz to 1/4 oz.
template <class Q>
struct [[nodiscard]] Reading {
    Q value{};
    Q step{};
};

Reading<Length> read_length(std::string_view text);  // m, cm, mm, yd, ft, in
Reading<Mass> read_mass(std::string_view text);      // g, kg, oz, lb
Wraps read_wraps(std::string_view text);             // wpi, wraps/in, wraps/cm
Twist read_twist(std::string_view text);             // tpi, turns/in, turns/m, turns/cm
Gauge read_gauge(std::string_view text);             // 28st/10cm, 7 st/in, 40 rows/10cm
Sett read_sett(std::string_view text);               // 10 epi, 40/10cm, 12 ends/in
double read_share(std::string_view text);            // "90" or "90%" gives 0.9; 0 to 100

// "171m/38.5g": the texts of a skein's length and mass, not yet read.
std::pair<std::string_view, std::string_view> split_skein(std::string_view text);
// The same, read.
std::pair<Reading<Length>, Reading<Mass>> read_skein(std::string_view text);

// "24-27" or "25", with or without "micron": the range of fibre diameters, low first.
std::pair<Length, Length> read_micron_range(std::string_view text);

}  // namespace gristwright
