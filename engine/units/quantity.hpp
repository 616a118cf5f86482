// Quantities of the trade as types of their own.
//
// Every quantity is a double in SI behind a type: a length cannot be added to a mass, nor a bare
// number slip in. The unit is named when a quantity is made (`metres(171)`) and named again when it
// is read (`in_metres(length)`). Values may be zero or negative where a difference makes sense;
// whoever takes a measurement from a person checks its range (see reading.hpp).
#pragma once

#include <compare>

namespace gristwright {

template <class Tag>
class Quantity {
  public:
    constexpr Quantity() = default;
    static constexpr Quantity from_si(double value) { return Quantity{value}; }
    constexpr double si() const { return value_; }

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator-() const { return Quantity{-value_}; }
    constexpr Quantity& operator+=(Quantity other) { return value_ += other.value_, *this; }
    constexpr Quantity& operator-=(Quantity other) { return value_ -= other.value_, *this; }

    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }
    friend constexpr Quantity operator*(Quantity a, double k) { return Quantity{a.value_ * k}; }
    friend constexpr Quantity operator*(double k, Quantity a) { return a * k; }
    friend constexpr Quantity operator/(Quantity a, double k) { return Quantity{a.value_ / k}; }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }

  private:
    constexpr explicit Quantity(double value) : value_(value) {}
    double value_ = 0;
};

using Length = Quantity<struct LengthTag>;                // m
using Area = Quantity<struct AreaTag>;                    // m2
using Mass = Quantity<struct MassTag>;                    // kg
using LinearDensity = Quantity<struct LinearDensityTag>;  // kg/m; 1 tex = 1e-6 kg/m
using ArealDensity = Quantity<struct ArealDensityTag>;    // kg/m2
using LengthPerArea = Quantity<struct LengthPerAreaTag>;  // m of yarn per m2 of cloth
using Density = Quantity<struct DensityTag>;              // kg/m3, of fibre substance
using Wraps = Quantity<struct WrapsTag>;                  // wraps per metre
using Twist = Quantity<struct TwistTag>;                  // turns per metre
using Sett = Quantity<struct SettTag>;                    // ends or picks per metre
using Gauge = Quantity<struct GaugeTag>;                  // stitches or rows per metre

// Making.
constexpr Length metres(double v) { return Length::from_si(v); }
constexpr Length centimetres(double v) { return Length::from_si(v * 1e-2); }
constexpr Length millimetres(double v) { return Length::from_si(v * 1e-3); }
constexpr Length microns(double v) { return Length::from_si(v * 1e-6); }
constexpr Length inches(double v) { return Length::from_si(v * 0.0254); }
constexpr Length yards(double v) { return Length::from_si(v * 0.9144); }
constexpr Area square_metres(double v) { return Area::from_si(v); }
constexpr Mass kilograms(double v) { return Mass::from_si(v); }
constexpr Mass grams(double v) { return Mass::from_si(v * 1e-3); }
constexpr Mass pounds(double v) { return Mass::from_si(v * 0.45359237); }
constexpr Mass ounces(double v) { return pounds(v / 16); }
constexpr LinearDensity tex(double v) { return LinearDensity::from_si(v * 1e-6); }
constexpr ArealDensity grams_per_square_metre(double v) { return ArealDensity::from_si(v * 1e-3); }
constexpr LengthPerArea metres_per_square_metre(double v) { return LengthPerArea::from_si(v); }
constexpr Density grams_per_cm3(double v) { return Density::from_si(v * 1e3); }
constexpr Wraps wraps_per_inch(double v) { return Wraps::from_si(v / 0.0254); }
constexpr Wraps wraps_per_cm(double v) { return Wraps::from_si(v * 100); }
constexpr Twist turns_per_metre(double v) { return Twist::from_si(v); }
constexpr Twist turns_per_inch(double v) { return Twist::from_si(v / 0.0254); }
constexpr Sett ends_per_inch(double v) { return Sett::from_si(v / 0.0254); }
constexpr Sett ends_per_cm(double v) { return Sett::from_si(v * 100); }
constexpr Sett ends_per_10cm(double v) { return Sett::from_si(v * 10); }
constexpr Gauge stitches_per_inch(double v) { return Gauge::from_si(v / 0.0254); }
constexpr Gauge stitches_per_10cm(double v) { return Gauge::from_si(v * 10); }

// Reading.
constexpr double in_metres(Length q) { return q.si(); }
constexpr double in_centimetres(Length q) { return q.si() * 1e2; }
constexpr double in_millimetres(Length q) { return q.si() * 1e3; }
constexpr double in_microns(Length q) { return q.si() * 1e6; }
constexpr double in_inches(Length q) { return q.si() / 0.0254; }
constexpr double in_yards(Length q) { return q.si() / 0.9144; }
constexpr double in_square_metres(Area q) { return q.si(); }
constexpr double in_kilograms(Mass q) { return q.si(); }
constexpr double in_grams(Mass q) { return q.si() * 1e3; }
constexpr double in_ounces(Mass q) { return q.si() / 0.45359237 * 16; }
constexpr double in_tex(LinearDensity q) { return q.si() * 1e6; }
constexpr double in_grams_per_square_metre(ArealDensity q) { return q.si() * 1e3; }
constexpr double in_metres_per_square_metre(LengthPerArea q) { return q.si(); }
constexpr double in_grams_per_cm3(Density q) { return q.si() * 1e-3; }
constexpr double in_wraps_per_inch(Wraps q) { return q.si() * 0.0254; }
constexpr double in_wraps_per_cm(Wraps q) { return q.si() * 1e-2; }
constexpr double in_turns_per_metre(Twist q) { return q.si(); }
constexpr double in_turns_per_inch(Twist q) { return q.si() * 0.0254; }
constexpr double in_ends_per_inch(Sett q) { return q.si() * 0.0254; }
constexpr double in_ends_per_cm(Sett q) { return q.si() * 1e-2; }
constexpr double in_ends_per_10cm(Sett q) { return q.si() * 1e-1; }
constexpr double in_stitches_per_inch(Gauge q) { return q.si() * 0.0254; }
constexpr double in_stitches_per_10cm(Gauge q) { return q.si() * 1e-1; }

// The products and quotients that mean something in the trade; all others do not compile.
constexpr Area operator*(Length a, Length b) { return Area::from_si(a.si() * b.si()); }
constexpr Length operator/(Area a, Length b) { return Length::from_si(a.si() / b.si()); }
constexpr LinearDensity operator/(Mass m, Length l) {
    return LinearDensity::from_si(m.si() / l.si());
}
constexpr Length operator/(Mass m, LinearDensity d) { return Length::from_si(m.si() / d.si()); }
constexpr Mass operator*(LinearDensity d, Length l) { return Mass::from_si(d.si() * l.si()); }
constexpr Mass operator*(Length l, LinearDensity d) { return d * l; }
constexpr ArealDensity operator/(Mass m, Area a) { return ArealDensity::from_si(m.si() / a.si()); }
constexpr Mass operator*(ArealDensity d, Area a) { return Mass::from_si(d.si() * a.si()); }
constexpr Length operator*(LengthPerArea p, Area a) { return Length::from_si(p.si() * a.si()); }
constexpr LengthPerArea operator/(Length l, Area a) {
    return LengthPerArea::from_si(l.si() / a.si());
}
constexpr ArealDensity operator*(LengthPerArea p, LinearDensity d) {
    return ArealDensity::from_si(p.si() * d.si());
}
constexpr double operator*(Gauge g, Length l) { return g.si() * l.si(); }  // a count of stitches
constexpr double operator*(Sett s, Length l) { return s.si() * l.si(); }   // a count of threads
constexpr double operator*(Wraps w, Length l) { return w.si() * l.si(); }
constexpr double operator*(Twist t, Length l) { return t.si() * l.si(); }

}  // namespace gristwright
