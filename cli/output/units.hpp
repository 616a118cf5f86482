// Quantities written in the person's units.
#pragma once

#include <string>

#include "cli/output/needle_names.hpp"
#include "engine/estimate/estimate.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright::cli {

enum class UnitChoice { metric, imperial, both };

class Units {
  public:
    explicit Units(UnitChoice choice, NeedleNames needles = {})
        : choice_(choice), needles_(std::move(needles)) {}

    std::string yarn(Length q) const;                         // "659 m", "721 yd", "659 m (721 yd)"
    std::string yarn_range(const Estimate<Length>& q) const;  // "540 m (440 to 660)"
    std::string measured(Length q) const;                     // of a skein: "139.0 m"
    std::string size(Length q) const;                         // "139 cm", "55 in"
    std::string typed_size(Length q) const;                   // as --size takes it: "139cm"
    std::string sizes(Length a, Length b) const;              // "20 x 160 cm"
    std::string span(Length q) const;                         // of a float: "12 mm", "0.5 in"
    std::string small(Length q) const;                        // "0.85 mm", "0.033 in"
    std::string mass(Mass q) const;                           // "148 g", "5.2 oz"
    std::string weighed(Mass q) const;             // as a scale shows it: "38.5 g", "1.36 oz"
    std::string typed_mass(Mass q) const;          // as --ball takes it: "38g", "1.36oz"
    std::string step(Mass q) const;                // "0.1 g", "0.0035 oz", of a scale
    std::string grist(LinearDensity d) const;      // "3.61 m/g, 277 tex", "1792 yd/lb"
    std::string thickness(LinearDensity d) const;  // "277 tex", "1792 yd/lb"
    // "3.50 to 3.70 m/g", "1740 to 1840 yd/lb", the finer last.
    std::string grists(LinearDensity thick, LinearDensity fine) const;
    std::string twist(Twist q) const;                     // "2.0 turns/cm", "5.0 turns/in"
    std::string twists(Twist low, Twist high) const;      // "3.0 to 4.0 turns/cm", or to the inch
    std::string gauge(Gauge stitches, Gauge rows) const;  // "27 st and 36 rows/10 cm"
    std::string stitch_gauge(Gauge q) const;              // "27 st/10 cm"
    std::string counted_gauge(Gauge q) const;             // on a swatch: "27.3 st/10 cm"
    std::string gauges(Gauge low, Gauge high) const;      // "25 to 29 st/10 cm", "6.4 to 7.4 st/in"
    std::string sett(Sett q) const;                       // "40/10 cm", "10.2 epi"
    std::string setts(Sett low, Sett high) const;  // "38 to 46 ends/10 cm", "9.6 to 11.6 epi"
    std::string dents(Sett q) const;               // of a heddle: "40/10 cm", "10.2 dents/in"
    std::string needle(Length q) const;            // "3.5 mm", "US 4 (3.5 mm)"
    std::string paces() const;                     // what yarn is counted in: "metres", "yards"

    Units in(UnitChoice choice) const { return Units(choice, needles_); }
    bool both() const { return choice_ == UnitChoice::both; }
    bool imperial() const { return choice_ == UnitChoice::imperial; }

  private:
    std::string choose(const std::string& metric, const std::string& imperial) const;
    UnitChoice choice_;
    NeedleNames needles_;
};

}  // namespace gristwright::cli
