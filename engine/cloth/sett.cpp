// Setts: T. R. Ashenhurst's diameters and R / (R + I) (read); weft = picks x reed width: Taylor,
// Brooks 1892.
#include "engine/cloth/sett.hpp"

#include "engine/cloth/sett_share.hpp"
#include "engine/cloth/weaving_constants.hpp"

#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

// A count that is whole but for rounding stays itself.
int whole_up(double count) { return static_cast<int>(std::ceil(count - 1e-9)); }

}  // namespace

Sett greatest_sett(Length packed_diameter, Interlacing weave) {
    return Sett::from_si(weave.threads / (weave.threads + weave.intersections) /
                         packed_diameter.si());
}

const Constant& share_for(Spacing purpose) {
    switch (purpose) {
        case Spacing::open:
            return open_share;
        case Spacing::scarf:
            return scarf_share;
        case Spacing::general:
            return general_share;
        case Spacing::firm:
            break;
    }
    return firm_share;
}

ShareBand share_band(Spacing purpose) {
    const auto& share = share_for(purpose);
    return {share.low, share.high};
}

double take_up(Sett crossing, Length packed_diameter) {
    const double s = crossing * packed_diameter;
    return crimp_factor * s * s;
}

PanelMetres panel_metres(const Panel& panel) {
    PanelMetres out;
    const double wanted = panel.ends * before_loss(panel.width, panel.width_loss);
    out.ends = panel.end_repeat * whole_up(wanted / panel.end_repeat);
    out.reed_width = Length::from_si(out.ends / panel.ends.si());
    out.woven_length = before_loss(panel.length, panel.length_loss);
    out.picks = panel.pick_repeat * whole_up(panel.picks * out.woven_length / panel.pick_repeat);
    out.warp_per_end = (out.woven_length + panel.hems) * (1 + panel.warp_take_up) + panel.fringe +
                       panel.loom_waste;
    out.warp = out.warp_per_end * out.ends;
    const int in_hems = whole_up(panel.picks * panel.hems);
    out.weft = out.reed_width * ((1 + panel.weft_slack) * (out.picks + in_hems));
    return out;
}

}  // namespace gristwright
