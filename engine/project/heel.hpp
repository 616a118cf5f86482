// A heel turned with short rows out of a flap, and the gusset beside it. Common practice, no
// source: the first row goes a few stitches past the middle of the flap, takes two together, knits
// one and turns; every later row goes to the gap, takes together the stitches on its two sides, and
// one more stitch, until all are used. Along the flap a stitch is taken up for every two rows, and
// the gusset is what lies on the needles then beyond the stitches of the foot.
#pragma once

namespace gristwright {

struct HeelTurn {
    int first = 0;     // stitches of its shortest row
    int stitches = 0;  // left of the flap's at its end
    int rows = 0;
};

// Of a flap of so many stitches, at least 4 and even.
HeelTurn turned(int flap);

// Stitches taken up along one side of a flap of so many rows.
int taken_up(int rows);

// The stitches of both sides and of the turn beyond those that the flap was made of: even.
int gusset_of(int flap, int rows);

}  // namespace gristwright
