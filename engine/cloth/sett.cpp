// Setts: T. R. Ashenhurst's diameters and R / (R + I) (read); shares by purpose: P. Osterkamp 2011
// for general cloth (read), the rest common practice; losses: nine weavers' published records
// (weave_cases_open.csv, rows M); weft = picks x reed width: Taylor, Brooks 1892.
#include "engine/cloth/sett.hpp"

#include "engine/cloth/constants.hpp"

#include <array>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

constexpr std::array<ShareBand, 4> shares{{{0.50, 0.60}, {0.60, 0.70}, {0.75, 0.80}, {0.80, 0.90}}};

constexpr std::array<Loss, 3> width_losses{
    {{0.135, 0.12, 0.15}, {0.25, 0.20, 0.30}, {0.35, 0.30, 0.40}}};
constexpr std::array<Loss, 3> length_losses{
    {{0.10, 0.06, 0.15}, {0.12, 0.08, 0.15}, {0.145, 0.10, 0.20}}};

template <class Array, class Enum>
auto at(const Array& table, Enum row) {
    return table[static_cast<std::size_t>(row)];
}

// A count that is whole but for rounding stays itself.
int whole_up(double count) { return static_cast<int>(std::ceil(count - 1e-9)); }

}  // namespace

Sett greatest_sett(Length packed_diameter, Interlacing weave) {
    return Sett::from_si(weave.threads / (weave.threads + weave.intersections) /
                         packed_diameter.si());
}

ShareBand share_band(Spacing purpose) { return at(shares, purpose); }

double take_up(Sett crossing, Length packed_diameter) {
    const double s = crossing * packed_diameter;
    return crimp_factor * s * s;
}

Loss width_loss(Finish finish) { return at(width_losses, finish); }
Loss length_loss(Finish finish) { return at(length_losses, finish); }

PanelMetres panel_metres(const Panel& panel) {
    PanelMetres out;
    const double wanted = panel.ends * before_loss(panel.width, panel.width_loss);
    out.ends = panel.end_repeat * whole_up(wanted / panel.end_repeat);
    out.reed_width = Length::from_si(out.ends / panel.ends.si());
    out.woven_length = before_loss(panel.length, panel.length_loss);
    out.picks = whole_up(panel.picks * out.woven_length);
    out.warp_per_end =
        out.woven_length * (1 + panel.warp_take_up) + panel.fringe + panel.loom_waste;
    out.warp = out.warp_per_end * out.ends;
    out.weft = out.reed_width * ((1 + panel.weft_slack) * out.picks);
    return out;
}

}  // namespace gristwright
