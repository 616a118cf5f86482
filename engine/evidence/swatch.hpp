// Reading swatches: what was counted, measured and weighed on them, and what that is worth.
#pragma once

#include "engine/cloth/knitting.hpp"
#include "engine/cloth/weaving.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/yarn/evidence.hpp"

namespace gristwright {

// A count over a length of the swatch.
struct Counted {
    double threads = 0;  // > 0
    Length over;         // > 0
};

struct KnittedSwatch {
    Counted stitches;
    std::optional<Counted> rows;
    std::optional<Length> width, length;  // whole swatch
    std::optional<Mass> mass;
    Mass scale_step = grams(constants::swatch_scale);
    bool washed = true;
    std::optional<double> look;         // 0..1: how clearly its stitches read
    std::optional<Firmness> firmness;   // what it was knitted for, where that was said
    std::optional<Length> needle = {};  // that it was knitted on
    bool insisted = false;              // its mass counts however little yarn that leaves a stitch
};

struct WovenSwatch {
    std::optional<Length> reed_width, woven_length;  // in the heddle, off tension
    Length width, length;                            // finished
    std::optional<double> look;
};

// Adds what a swatch tells to what is known. `fabric` is what it was knitted in. A gauge that
// contradicts the expected one (from grist, wraps and earlier swatches) is questioned, not dropped.
// A mass that leaves its stitches less yarn than they can be made of is questioned and not counted.
// Throws Refused for a count or a size that is not above zero.
void observe(const KnittedSwatch& swatch, const KnitFabric& fabric, const YarnProfile& yarn,
             Evidence& known);
// `hair`: share of the yarn that is wool or other hair.
void observe(const WovenSwatch& swatch, Finish finish, double hair, Evidence& known);

// What a washed swatch tells about the hands: its gauge against the table's for that yarn, before
// any evidence. Nothing when it is not washed, or so far off that it is questioned.
std::optional<Estimate<double>> gauge_against_table(const KnittedSwatch& swatch,
                                                    const KnitFabric& fabric,
                                                    const YarnProfile& yarn);

// The profile with what is known put in: gauge, habit, metres, losses, and how stitches were
// rated, on its own swatches and on yarns made up alike.
YarnProfile informed(YarnProfile yarn, const Evidence& known);

}  // namespace gristwright
