#include "cli/output/units.hpp"

#include <fmt/core.h>

#include <cmath>

namespace gristwright::cli {
namespace {

// Three figures are as many as these estimates bear.
std::string figures(double value) {
    if (value >= 99.95) return fmt::format("{:.0f}", value);
    return value >= 9.995 ? fmt::format("{:.0f}", value) : fmt::format("{:.1f}", value);
}

std::string tenth(double value) {
    const double rounded = std::round(10 * value) / 10;
    return fmt::format("{:g}", rounded);
}

}  // namespace

std::string Units::choose(const std::string& metric, const std::string& imperial) const {
    if (choice_ == UnitChoice::metric) return metric;
    if (choice_ == UnitChoice::imperial) return imperial;
    return metric + " (" + imperial + ")";
}

std::string Units::yarn(Length q) const {
    return choose(figures(in_metres(q)) + " m", figures(in_yards(q)) + " yd");
}

std::string Units::yarn_range(const Estimate<Length>& q) const {
    const auto metric = fmt::format("{} m ({} to {})", figures(in_metres(q.mid)),
                                    figures(in_metres(q.low())), figures(in_metres(q.high())));
    const auto imperial = fmt::format("{} yd ({} to {})", figures(in_yards(q.mid)),
                                      figures(in_yards(q.low())), figures(in_yards(q.high())));
    if (choice_ == UnitChoice::both) return metric + ", " + imperial;
    return choose(metric, imperial);
}

std::string Units::size(Length q) const {
    return choose(figures(in_centimetres(q)) + " cm", figures(in_inches(q)) + " in");
}

std::string Units::typed_size(Length q) const {
    return imperial() ? fmt::format("{:.0f}in", std::floor(in_inches(q)))
                      : fmt::format("{:.0f}cm", std::floor(in_centimetres(q)));
}

std::string Units::sizes(Length a, Length b) const {
    return choose(fmt::format("{} x {} cm", figures(in_centimetres(a)), figures(in_centimetres(b))),
                  fmt::format("{} x {} in", figures(in_inches(a)), figures(in_inches(b))));
}

std::string Units::mass(Mass q) const {
    return choose(figures(in_grams(q)) + " g", fmt::format("{:.1f} oz", in_ounces(q)));
}

std::string Units::step(Mass q) const {
    return choose(fmt::format("{:.2g} g", in_grams(q)), fmt::format("{:.2g} oz", in_ounces(q)));
}

std::string Units::gauge(Gauge stitches, Gauge rows) const {
    return choose(fmt::format("{:.0f} st and {:.0f} rows/10 cm", in_stitches_per_10cm(stitches),
                              in_stitches_per_10cm(rows)),
                  fmt::format("{:.1f} st and {:.1f} rows/in", in_stitches_per_inch(stitches),
                              in_stitches_per_inch(rows)));
}

std::string Units::stitch_gauge(Gauge q) const {
    return choose(fmt::format("{:.0f} st/10 cm", in_stitches_per_10cm(q)),
                  fmt::format("{:.1f} st/in", in_stitches_per_inch(q)));
}

std::string Units::sett(Sett q) const {
    return choose(tenth(in_ends_per_10cm(q)) + "/10 cm", tenth(in_ends_per_inch(q)) + " epi");
}

std::string needle_size(Length q) { return fmt::format("{:g} mm", in_millimetres(q)); }

}  // namespace gristwright::cli
