// Woven cloth from its yarn's packed diameter: setts, take-up, warp and weft metres.
#pragma once

#include "engine/cloth/losses.hpp"

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

// Crimp of one system in plain weave as a share of the cloth's length, from the crossing system's
// sett: (9/16) s^2 with s = sett x diameter, derived from Peirce's geometry. Good to s = 0.5.
double take_up(Sett crossing, Length packed_diameter);

struct Panel {
    Length width, length;       // finished
    Length hems;                // woven beyond the length, both together, as on the loom
    Length fringe, loom_waste;  // of one end: both fringes together, and what cannot be woven
    Sett ends, picks;           // on the loom
    double width_loss = 0, length_loss = 0;  // reed to washed, off the loom to washed
    double warp_take_up = 0, weft_slack = 0;
    int end_repeat = 1, pick_repeat = 1;
};

struct PanelMetres {
    int ends = 0, picks = 0;                        // picks: without the hems
    Length reed_width, woven_length, warp_per_end;  // woven length: tension let off
    Length warp, weft;
};

// Ends and picks are whole repeats, rounded up, so the panel is never smaller than asked. Weft is
// picks x width in the reed: the weft's take-up is what draws the cloth in, so the reed width
// already holds it (Taylor; Brooks 1892).
PanelMetres panel_metres(const Panel& panel);

}  // namespace gristwright
