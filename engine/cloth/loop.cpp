// Loop constants: D. L. Munden 1959, J. Text. Inst. 50 T448, and J. J. F. Knapton et al. 1968,
// Text. Res. J. 38:999 (from memory). Ordinary tightness: the trade's weight table.
#include "engine/cloth/loop.hpp"

#include "engine/cloth/knitting_constants.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

const LoopConstants& loop_of(Relaxation state) {
    return loop_constants[static_cast<std::size_t>(state)];
}

}  // namespace

Length loop_from_stitches(Gauge stitches, Relaxation state) {
    return Length::from_si(loop_of(state).kw / stitches.si());
}

Gauge stitches_from_loop(Length loop, Relaxation state) {
    return Gauge::from_si(loop_of(state).kw / loop.si());
}

Gauge rows_from_loop(Length loop, Relaxation state) {
    return Gauge::from_si(loop_of(state).kc / loop.si());
}

LengthPerArea plain_metres_per_area(Length loop, Relaxation state) {
    const auto& k = loop_of(state);
    return metres_per_square_metre(k.kw * k.kc / loop.si());
}

double tightness(LinearDensity d, Length loop) {
    return std::sqrt(in_tex(d)) / in_millimetres(loop);
}

Length loop_for_tightness(LinearDensity d, double k) {
    return millimetres(std::sqrt(in_tex(d)) / k);
}

Gauge rows_by_hand(Gauge stitches) { return stitches * rows_to_stitches; }

double usual_tightness(LinearDensity d) {
    const double per_gram = 1000 / in_tex(d);
    const double finer = std::max(1.0, per_gram / fine_from);
    const double thicker = std::max(1.0, coarse_from / per_gram);
    return ordinary_tightness * std::pow(finer, -fine_eases) * std::pow(thicker, -coarse_eases);
}

Estimate<Gauge> gauge_by_grist(LinearDensity d) {
    const auto loop = loop_for_tightness(d, usual_tightness(d));
    return {stitches_from_loop(loop, Relaxation::full),
            band_spread(ordinary_tightness.low, ordinary_tightness.high)};
}

Estimate<Gauge> gauge_by_wraps(Wraps laid, double wraps_spread) {
    const double wpi = in_wraps_per_inch(laid);
    const double beyond =
        std::max({0.0, std::log(wpi / wraps_rule_to), std::log(wraps_rule_from / wpi)});
    const double told =
        together(band_spread(wraps_to_stitches.low, wraps_to_stitches.high), wraps_spread);
    return {Gauge::from_si(wraps_to_stitches * laid.si()), together(told, wraps_fade * beyond)};
}

}  // namespace gristwright
