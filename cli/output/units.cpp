#include "cli/output/units.hpp"

#include <fmt/core.h>

#include <cmath>

#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

double in_tenths(double value) { return std::round(10 * value) / 10; }

// Three figures are as many as these estimates bear. An answer writes hundreds of them, and whole
// numbers are written the quickest.
std::string figures(double value) {
    if (value < 9.995) return fmt::format("{:.1f}", in_tenths(value));
    const double whole = std::round(value);  // 30.5 is 31
    return whole < 1e15 ? std::to_string(static_cast<long long>(whole))
                        : fmt::format("{:.0f}", whole);
}

std::string tenth(double value) { return fmt::format("{:g}", in_tenths(value)); }

double count(LinearDensity d, std::string_view system) { return count_of(d, count_system(system)); }

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

std::string Units::measured(Length q) const {
    return choose(fmt::format("{:.1f} m", in_metres(q)), fmt::format("{:.1f} yd", in_yards(q)));
}

std::string Units::size(Length q) const {
    return choose(figures(in_centimetres(q)) + " cm", figures(in_inches(q)) + " in");
}

std::string Units::typed_size(Length q) const {
    return imperial() ? fmt::format("{:g}in", std::floor(10 * in_inches(q)) / 10)
                      : fmt::format("{:.0f}cm", std::floor(in_centimetres(q)));
}

std::string Units::sizes(Length a, Length b) const {
    return choose(fmt::format("{} x {} cm", figures(in_centimetres(a)), figures(in_centimetres(b))),
                  fmt::format("{} x {} in", figures(in_inches(a)), figures(in_inches(b))));
}

std::string Units::mass(Mass q) const {
    return choose(figures(in_grams(q)) + " g", fmt::format("{:.1f} oz", in_tenths(in_ounces(q))));
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

std::string Units::span(Length q) const {
    return choose(fmt::format("{:.0f} mm", in_millimetres(q)),
                  fmt::format("{:.1f} in", in_inches(q)));
}

std::string Units::small(Length q) const {
    return choose(fmt::format("{:.2f} mm", in_millimetres(q)),
                  fmt::format("{:.3f} in", in_inches(q)));
}

std::string Units::weighed(Mass q) const {
    return choose(fmt::format("{:.1f} g", in_grams(q)), fmt::format("{:.2f} oz", in_ounces(q)));
}

std::string Units::typed_mass(Mass q) const {
    return imperial() ? fmt::format("{:.2f}oz", in_ounces(q)) : fmt::format("{:.0f}g", in_grams(q));
}

std::string Units::grist(LinearDensity d) const {
    const auto metric = fmt::format("{:.2f} m/g", count(d, "metres per gram"));
    const auto imperial = fmt::format("{:.0f} yd/lb", count(d, "yards per pound"));
    return choose(metric, imperial) +
           (this->imperial() ? "" : fmt::format(", {:.0f} tex", in_tex(d)));
}

std::string Units::thickness(LinearDensity d) const {
    return choose(fmt::format("{:.0f} tex", in_tex(d)),
                  fmt::format("{:.0f} yd/lb", count(d, "yards per pound")));
}

std::string Units::grists(LinearDensity thick, LinearDensity fine) const {
    return choose(fmt::format("{:.2f} to {:.2f} m/g", count(thick, "metres per gram"),
                              count(fine, "metres per gram")),
                  fmt::format("{:.0f} to {:.0f} yd/lb", count(thick, "yards per pound"),
                              count(fine, "yards per pound")));
}

std::string Units::twist(Twist q) const {
    return choose(fmt::format("{:.1f} turns/cm", in_turns_per_metre(q) / 100),
                  fmt::format("{:.1f} turns/in", in_turns_per_inch(q)));
}

std::string Units::twists(Twist low, Twist high) const {
    return choose(
        fmt::format("{:.1f} to {:.1f} turns/cm", in_turns_per_metre(low) / 100,
                    in_turns_per_metre(high) / 100),
        fmt::format("{:.1f} to {:.1f} turns/in", in_turns_per_inch(low), in_turns_per_inch(high)));
}

std::string Units::counted_gauge(Gauge q) const {
    return choose(fmt::format("{:.1f} st/10 cm", in_stitches_per_10cm(q)),
                  fmt::format("{:.2f} st/in", in_stitches_per_inch(q)));
}

std::string Units::gauges(Gauge low, Gauge high) const {
    return choose(fmt::format("{:.0f} to {:.0f} st/10 cm", in_stitches_per_10cm(low),
                              in_stitches_per_10cm(high)),
                  fmt::format("{:.1f} to {:.1f} st/in", in_stitches_per_inch(low),
                              in_stitches_per_inch(high)));
}

std::string Units::setts(Sett low, Sett high) const {
    return choose(
        fmt::format("{:.0f} to {:.0f} ends/10 cm", in_ends_per_10cm(low), in_ends_per_10cm(high)),
        fmt::format("{:.1f} to {:.1f} epi", in_ends_per_inch(low), in_ends_per_inch(high)));
}

std::string Units::dents(Sett q) const {
    return choose(tenth(in_ends_per_10cm(q)) + "/10 cm", tenth(in_ends_per_inch(q)) + " dents/in");
}

std::string Units::needle(Length q) const {
    const auto metric = fmt::format("{:g} mm", in_millimetres(q));
    const auto us = us_size(needles_, q);
    if (us.empty() || choice_ == UnitChoice::metric) return metric;
    return imperial() ? fmt::format("{} ({})", us, metric) : fmt::format("{} ({})", metric, us);
}

std::string Units::paces() const { return imperial() ? "yards" : "metres"; }

}  // namespace gristwright::cli
