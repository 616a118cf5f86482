// Reads the measurements people type: `226yd`, `1 3/4 oz`, `38,5 g`, `16wpi`, `171m/38.5g`.
//
// Capitals are small letters, signs (½, ×, µ, a space that does not break) what a keyboard has for
// them. A number has a decimal point or comma, groups of thousands, or a fraction, and must be
// above zero and finite. A point or comma before exactly three digits may be either mark: with
// yards, feet, inches, ounces and pounds the comma parts thousands; else the one reading that can
// be is taken, and where both can be it is asked (Unclear). Nothing depends on the locale.
#pragma once

#include <optional>
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

  protected:
    explicit Unreadable(const std::string& whole) : Refused(whole) {}
};

// A text that can be read in more than one way: asks which is meant.
struct Unclear : Unreadable {
    Unclear(std::string_view text, std::string_view ways, std::string_view right);
};

// A text to be quoted in a message: without control characters, at most 60 bytes.
std::string shown(std::string_view text);

// A value and one unit of the last digit written: 38.5 g was read to 0.1 g, 1 3/4 oz to 1/4 oz,
// "about 220 m" to 10 m.
template <class Q>
struct Reading {
    Q value{};
    Q step{};
};

// What a measurement can be where it is asked for; decides between two readings of a point.
template <class Q>
struct Within {
    Q least = Q::from_si(0);
    Q most = Q::from_si(1e300);
};

// m, cm, mm, km, yd, ft, in; also "5 ft 6 in".
Reading<Length> read_length(std::string_view text, Within<Length> can_be = {});
// g, kg, oz, lb; also "1 lb 2 oz".
Reading<Mass> read_mass(std::string_view text, Within<Mass> can_be = {});
// "75mm", "70-90mm", "3 to 4 inches": low first.
std::pair<Length, Length> read_length_range(std::string_view text);
double read_share(std::string_view text);  // "90", "90%" or "90 percent" gives 0.9; 0 to 100

// A skein in either order: "171m/38.5g", "300 yards 3.5oz", "100 g (220 m)".
std::pair<Reading<Length>, Reading<Mass>> read_skein(std::string_view text);
// The same from two texts; each helps to read the other.
std::pair<Reading<Length>, Reading<Mass>> read_skein(std::string_view length,
                                                     std::string_view mass);

// The text of each half of a skein: "171m", "38.5g".
std::pair<std::string, std::string> split_skein(std::string_view text);

// "24-27" or "25", with or without "micron": the range of fibre diameters, low first.
std::pair<Length, Length> read_micron_range(std::string_view text);

// "400m/100g", "1200 yd/lb", "2.2 m/g", "1200 ypp", "220m per 100g".
LinearDensity read_grist(std::string_view text);

// A count of wraps and the length of ruler that was wrapped: "16wpi" (over 1 in), "28/2in".
struct WrapsCount {
    Wraps count;
    Length over = inches(1);
    bool bare = false;  // "14": wraps per inch is taken
};
WrapsCount read_wraps_count(std::string_view text);
Wraps read_wraps(std::string_view text);  // wpi, wraps/in, wraps/cm

// "5tpi", "200 turns/m", "4-5 tpi Z"; or the angle of the ply to the yarn, "30 degrees".
struct TwistReading {
    std::optional<Twist> twist;     // one of these two
    std::optional<double> degrees;  // 1 to 80
    char direction = 0;             // 'S', 'Z', or not said
};
TwistReading read_twist_or_angle(std::string_view text);
Twist read_twist(std::string_view text);  // tpi, tpm, turns/in, turns/m, turns/cm

// "28st/10cm", "7 st/in", "22 st x 30 rows/10cm"; a count of rows alone is no gauge.
struct GaugeReading {
    Gauge stitches;
    std::optional<Gauge> rows;
};
GaugeReading read_gauge_and_rows(std::string_view text);
Gauge read_gauge(std::string_view text);  // the stitches

Sett read_sett(std::string_view text);    // 10 epi, 40/10cm, 12 ends/in, 40/10
Sett read_heddle(std::string_view text);  // also as they are sold: 10 dpi, 10 dent

}  // namespace gristwright
