// Loop constants: D. L. Munden 1959, J. Text. Inst. 50 T448, and J. J. F. Knapton et al. 1968,
// Text. Res. J. 38:999 (from memory). Tightness bands: judgement, beside a published machine range.
#include "engine/cloth/loop.hpp"

#include "engine/cloth/constants.hpp"

#include <array>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

constexpr std::array<TightnessBand, 5> bands{
    {{0.50, 0.75}, {0.80, 0.95}, {0.95, 1.15}, {1.15, 1.30}, {1.30, 1.50}}};

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

TightnessBand tightness_band(Firmness purpose) { return bands[static_cast<std::size_t>(purpose)]; }

Estimate<Gauge> gauge_by_grist(LinearDensity d, Firmness purpose) {
    const auto band = tightness_band(purpose);
    const auto loop = loop_for_tightness(d, band.middle());
    return {stitches_from_loop(loop, Relaxation::full),
            together(band_spread(band.low, band.high), between_knitters)};
}

Estimate<Gauge> gauge_by_wraps(Wraps laid, double wraps_spread, Firmness purpose) {
    const double firmer =
        tightness_band(purpose).middle() / tightness_band(Firmness::ordinary).middle();
    const double spread =
        together(band_spread(wraps_to_stitches.low, wraps_to_stitches.high), wraps_spread);
    return {Gauge::from_si(wraps_to_stitches * firmer * laid.si()),
            together(spread, between_knitters)};
}

Length needle_for(Length loop) {
    return millimetres(needle_slope * in_millimetres(loop) + needle_offset);
}

}  // namespace gristwright
