#include "engine/yarn/grist_margin.hpp"

#include "engine/yarn/constants.hpp"

#include <cmath>

#include "engine/estimate/estimate.hpp"

namespace gristwright {
namespace {

using namespace constants;

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
