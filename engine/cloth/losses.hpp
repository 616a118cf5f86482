// What cloth loses on its way from the reed to use. Each loss is of one named state against the
// one before: in the reed, off the loom (tension let off, not washed), washed.
#pragma once

#include "engine/units/quantity.hpp"

namespace gristwright {

enum class Finish { light, open_or_fulled, hard_fulled };

// Shares lost, 0..1: the middle and the range met in practice.
struct Loss {
    double mid = 0, low = 0, high = 0;
};

// `hair`: share of the yarn, by mass, that is wool or other hair. It draws together in washing and
// fulls; plant fibre, silk and man-made fibre only relax, whatever the finish. In the width the
// weft's decides, in the length the warp's.
Loss draw_in();                                       // width, reed to off the loom
Loss washing_width_loss(Finish finish, double hair);  // off the loom to washed
Loss width_loss(Finish finish, double hair);          // reed to washed: both of these
Loss length_loss(Finish finish, double hair);         // off the loom to washed

// In a cloth in which one system packs close and hides the other there is less room to lose.
Loss packed_close(Loss balanced);

// One loss after another; their ends do not meet at once, so their ranges add as squares.
Loss after(Loss first, Loss then);

// Spread of what is kept, as a standard deviation of its logarithm.
double spread_kept(Loss loss);

// A loss is divided out, never added: 8 in finished at 20 % needs 10 in.
constexpr Length before_loss(Length finished, double loss) { return finished / (1 - loss); }

}  // namespace gristwright
