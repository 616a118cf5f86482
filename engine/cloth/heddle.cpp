// Steps of the trade: a reed substitution chart and a rule of thumb that pairs metric reeds with
// reeds by the inch (read); rigid heddles by the inch and pins: from memory.
#include "engine/cloth/heddle.hpp"

#include <fmt/core.h>

#include <array>
#include <cmath>

#include "engine/cloth/weaving_constants.hpp"

namespace gristwright {
namespace {

constexpr std::array heddles_to_10_cm{20.0, 25.0, 30.0, 40.0, 50.0, 60.0};
constexpr std::array heddles_by_the_inch{5.0, 7.5, 8.0, 10.0, 12.0, 12.5, 15.0};
constexpr std::array reeds_to_10_cm{20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0};
constexpr std::array reeds_by_the_inch{5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 16.0, 18.0, 20.0};
constexpr std::array pins_to_10_cm{15.0, 25.0, 30.0, 45.0};
constexpr std::array pins_by_the_inch{4.0, 6.0, 8.0, 12.0};

template <std::size_t n>
std::vector<Sett> setts(const std::array<double, n>& counts, Sett (*unit)(double)) {
    std::vector<Sett> out;
    for (const double count : counts) out.push_back(unit(count));
    return out;
}

Sett to_10_cm(double count) { return ends_per_10cm(count); }
Sett by_inch(double count) { return ends_per_inch(count); }

bool whole(double count) { return std::abs(count - std::round(count)) < 1e-6; }

}  // namespace

std::vector<Sett> sold(Spaced by, SoldBy sold_by) {
    const bool metric = sold_by == SoldBy::to_10_cm;
    switch (by) {
        case Spaced::heddle:
            return metric ? setts(heddles_to_10_cm, to_10_cm) : setts(heddles_by_the_inch, by_inch);
        case Spaced::reed:
            return metric ? setts(reeds_to_10_cm, to_10_cm) : setts(reeds_by_the_inch, by_inch);
        case Spaced::pins:
            return metric ? setts(pins_to_10_cm, to_10_cm) : setts(pins_by_the_inch, by_inch);
        case Spaced::weft:
            break;
    }
    return {};
}

std::string heddle_name(Sett count) {
    const double by_the_inch = in_ends_per_inch(count);
    if (whole(2 * by_the_inch)) return fmt::format("{:g} epi", std::round(2 * by_the_inch) / 2);
    return fmt::format("{:g}/10 cm", std::round(10 * in_ends_per_10cm(count)) / 10);
}

Length hole_of(const Heddle& heddle) {
    if (heddle.hole.si() > 0) return heddle.hole;
    return Length::from_si(constants::hole_share / heddle.count.si());
}

}  // namespace gristwright
