// Loop constants: D. L. Munden 1959, J. Text. Inst. 50 T448, and J. J. F. Knapton et al. 1968,
// Text. Res. J. 38:999 (from memory). Tightness bands: judgement, beside a published machine range.
#include "engine/cloth/loop.hpp"

#include <array>
#include <cmath>

#include "engine/estimate/constant.hpp"

namespace gristwright {
namespace {

constexpr std::string_view munden = "Munden 1959; Knapton et al. 1968 (plain wool)";

struct LoopConstants {
    Constant kw, kc;
};

constexpr std::array loop_constants{
    LoopConstants{{"kw, dry-relaxed", 3.8, 3.7, 3.9, "1", Mark::memory, munden},
                  {"kc, dry-relaxed", 5.0, 4.8, 5.2, "1", Mark::memory, munden}},
    LoopConstants{{"kw, wet-relaxed", 4.1, 4.0, 4.2, "1", Mark::memory, munden},
                  {"kc, wet-relaxed", 5.3, 5.1, 5.5, "1", Mark::memory, munden}},
    LoopConstants{{"kw, fully relaxed", 4.2, 4.1, 4.3, "1", Mark::memory, munden},
                  {"kc, fully relaxed", 5.5, 5.3, 5.7, "1", Mark::memory, munden}},
};

constexpr std::array<TightnessBand, 5> bands{
    {{0.50, 0.75}, {0.80, 0.95}, {0.95, 1.15}, {1.15, 1.30}, {1.30, 1.50}}};

constexpr Constant wraps_to_stitches{
    "stitches per laid wrap, ordinary cloth",        0.43, 0.40, 0.45, "1", Mark::derived,
    "the trade's weight table (gauge against wraps)"};
constexpr Constant between_knitters{"gauge between knitters, same yarn and needle",
                                    0.056,
                                    0.04,
                                    0.08,
                                    "relative",
                                    Mark::read,
                                    "a swatch trial of 2016, median"};
constexpr std::string_view needle_fit = "least squares on the trade's weight table, rows 0 to 5";
constexpr Constant needle_slope{
    "needle per loop length", 0.2405, 0.23, 0.25, "mm/mm", Mark::derived, needle_fit};
constexpr Constant needle_offset{"needle at no loop", -0.724,    -1.0, -0.4, "mm",
                                 Mark::derived,       needle_fit};

const LoopConstants& constants(Relaxation state) {
    return loop_constants[static_cast<std::size_t>(state)];
}

// Half the width of a rectangular band as a standard deviation of the logarithm.
double band_spread(double low, double high) { return std::log(high / low) / std::sqrt(12.0); }

}  // namespace

Length loop_from_stitches(Gauge stitches, Relaxation state) {
    return Length::from_si(constants(state).kw / stitches.si());
}

Gauge stitches_from_loop(Length loop, Relaxation state) {
    return Gauge::from_si(constants(state).kw / loop.si());
}

Gauge rows_from_loop(Length loop, Relaxation state) {
    return Gauge::from_si(constants(state).kc / loop.si());
}

LengthPerArea plain_metres_per_area(Length loop, Relaxation state) {
    const auto& k = constants(state);
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
