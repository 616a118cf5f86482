// Samples that teach: how well a swatch of a given size tells its gauge.
//
// A sample of side a takes fixed + linear a + square a^2 metres. Counting over the middle share q
// of the side reads N = q a x count per length threads: with an error s of reading both ends and a
// stitch-to-stitch variation v, r^2 = (s / N)^2 + v^2 / N. A woven sample also tells its shrinkage,
// between two marks read to m each: r = m sqrt(2) / (q a); the worse of the two counts.
// Derivation and a worked example: tests/engine/evidence/samples_test.cpp.
#pragma once

#include <vector>

#include "engine/cloth/knitting.hpp"
#include "engine/cloth/weaving.hpp"
#include "engine/evidence/constants.hpp"

namespace gristwright {

struct [[nodiscard]] Sample {
    bool knitted = true;                       // else woven
    double fixed = 0, linear = 0, square = 0;  // metres, metres per m, metres per m2
    double count = 0;                          // stitches or picks per metre
    double second_count = 0;                   // rows or ends per metre
    double read_error = 0;                     // threads, both ends of a count together
    double mark_error = 0;  // metres, of one mark; 0: nothing is measured between marks
    double variation = 0;   // between neighbouring threads, relative
    double measured = constants::counted_over;  // share of the side that is counted over

    Length metres(Length side) const;
    Length side(Length metres) const;  // 0 when the metres do not even cover what is fixed
    double error(Length side) const;   // relative, 1 sd; infinite at side 0
    double second_error(Length side) const;
};

Sample knitted_sample(const KnitCloth& cloth);
// With the warp wound from the same yarn, its loom waste is paid first.
Sample woven_sample(const WovenCloth& cloth, Length loom_waste);

// A sensible sample: from a hand's width, to where more metres tell hardly more.
struct SampleRange {
    Length least, most;  // sides
};
SampleRange sensible(const Sample& sample, double good_enough = constants::good_enough);

}  // namespace gristwright
