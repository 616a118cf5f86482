// Woven cloth from its yarn's packed diameter: setts, take-up, losses, warp and weft metres.
#pragma once

#include "engine/units/quantity.hpp"

namespace gristwright {

// One repeat of a weave: `threads` it works over and `intersections` it makes there, averaged over
// the picks of the repeat (plain 2 and 2, 2/2 twill 4 and 2).
struct Interlacing {
    double threads, intersections;
};
inline constexpr Interlacing plain_weave{2, 2};
inline constexpr Interlacing twill_2_1{3, 2};
inline constexpr Interlacing twill_2_2{4, 2};

// The closest that threads can lie: D R / (R + I).
Sett greatest_sett(Length packed_diameter, Interlacing weave);

// The share of the greatest sett that a purpose wants.
enum class Spacing { open, scarf, general, firm };
struct ShareBand {
    double low, high;
};
ShareBand share_band(Spacing purpose);

// Crimp of one system as a share of its straight length in plain weave, from the crossing system's
// sett: (9/16) s^2 with s = sett x diameter, derived from Peirce's geometry. Good to s = 0.5.
double take_up(Sett crossing, Length packed_diameter);

// Loss in washing as a share of the unwashed size.
enum class Finish { light, open_or_fulled, hard_fulled };
struct Loss {
    double mid, low, high;
};
Loss width_loss(Finish finish);   // reed width to finished width
Loss length_loss(Finish finish);  // off the loom to finished

// A loss is divided out, never added: 8 in finished at 20 % needs 10 in.
constexpr Length before_loss(Length finished, double loss) { return finished / (1 - loss); }

struct Panel {
    Length width, length;       // finished
    Length fringe, loom_waste;  // of one end: both fringes together, and what cannot be woven
    Sett ends, picks;           // on the loom
    double width_loss = 0, length_loss = 0;
    double warp_take_up = 0, weft_slack = 0;
    int end_repeat = 1;
};

struct PanelMetres {
    int ends = 0, picks = 0;
    Length reed_width, woven_length, warp_per_end;
    Length warp, weft;
};

// Ends are whole repeats, rounded up, so the panel is never narrower than asked.
PanelMetres panel_metres(const Panel& panel);

}  // namespace gristwright
