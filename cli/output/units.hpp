// Quantities written in the person's units.
#pragma once

#include <string>

#include "engine/estimate/estimate.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright::cli {

enum class UnitChoice { metric, imperial, both };

class Units {
  public:
    explicit Units(UnitChoice choice) : choice_(choice) {}

    std::string yarn(Length q) const;                         // "659 m", "721 yd", "659 m (721 yd)"
    std::string yarn_range(const Estimate<Length>& q) const;  // "540 m (440 to 660)"
    std::string size(Length q) const;                         // "139 cm", "55 in"
    std::string typed_size(Length q) const;                   // as --size takes it: "139cm"
    std::string sizes(Length a, Length b) const;              // "20 x 160 cm"
    std::string mass(Mass q) const;                           // "148 g", "5.2 oz"
    std::string step(Mass q) const;                           // "0.1 g", "0.0035 oz", of a scale
    std::string gauge(Gauge stitches, Gauge rows) const;      // "27 st and 36 rows/10 cm"
    std::string stitch_gauge(Gauge q) const;                  // "27 st/10 cm"
    std::string sett(Sett q) const;                           // "40/10 cm", "10.2 epi"

    bool imperial() const { return choice_ == UnitChoice::imperial; }

  private:
    std::string choose(const std::string& metric, const std::string& imperial) const;
    UnitChoice choice_;
};

// A needle's size, always in mm: "3.5 mm".
std::string needle_size(Length q);

}  // namespace gristwright::cli
