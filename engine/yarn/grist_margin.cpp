#include "engine/yarn/grist_margin.hpp"

#include <cmath>

#include "engine/estimate/constant.hpp"
#include "engine/estimate/estimate.hpp"

namespace gristwright {
namespace {

constexpr Constant relaxation_half_width{
    "relaxation of a skein",
    0.02,
    0.01,
    0.28,
    "relative",
    Mark::judgement,
    "half-width for a rested skein; a skein straight off the reel lost 28 % on washing in one "
    "spinner's published record (2014)"};
constexpr Constant humidity_half_width{"humidity at the scale",
                                       0.15,
                                       0.05,
                                       0.25,
                                       "relative humidity",
                                       Mark::judgement,
                                       "half-width of an unheated or a heated room"};
constexpr Constant mass_per_humidity{"mass of wool per relative humidity",
                                     0.18,
                                     0.15,
                                     0.20,
                                     "relative mass per unit RH",
                                     Mark::memory,
                                     "Morton and Hearle, Physical Properties of Textile Fibres"};

// A reading that is equally likely anywhere within +- half_width (GUM 4.3.7).
double rectangular(double half_width) { return half_width / std::sqrt(3.0); }

}  // namespace

double GristMargin::whole() const { return together(own(), together(loop, humidity)); }

double GristMargin::own() const { return together(together(mass, length), relaxation); }

GristMargin grist_margin(const Skein& skein, const Measuring& how) {
    const double readings = how.tared ? std::sqrt(2.0) : 1.0;
    return {
        .mass = rectangular(how.scale_step / skein.mass / 2) * readings,
        .length = rectangular(how.length_step / skein.length / 2),
        .loop = rectangular(how.loop),
        .relaxation = rectangular(relaxation_half_width),
        .humidity = rectangular(humidity_half_width * mass_per_humidity),
    };
}

}  // namespace gristwright
