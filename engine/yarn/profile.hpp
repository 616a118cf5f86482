// What yarn this is: everything the measurements of a batch say, with margins and reasons.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/estimate/constant.hpp"
#include "engine/estimate/estimate.hpp"
#include "engine/yarn/agreement.hpp"
#include "engine/yarn/batch.hpp"
#include "engine/yarn/weight_class.hpp"

namespace gristwright {

// 0 (none) .. 1 (as much as a yarn can have), with the reasons that moved it, strongest first.
struct Trait {
    double value = 0.5;
    double spread = 0.15;  // absolute margin, 1 sd
    std::vector<std::string> reasons;
    Mark mark = Mark::judgement;
};

// One row of the trait table: what a make-up adds to a trait (see catalog/tables/traits.csv).
// `when` is one of: base, carded, combed, long draw, short draw, singles, two ply, three ply,
// many ply, high twist, low twist, lofty, dense, fine fibre, coarse fibre, variegated, long staple,
// short staple, lustrous, crimpy.
struct TraitRow {
    std::string trait, when;
    double adds = 0;
    std::string reason;
    Mark mark = Mark::judgement;
};

struct Loft {
    Estimate<double> packing;          // share of the wrapped cylinder that is fibre, below 0.9069
    Estimate<double> specific_volume;  // cm3/g
    double band_low = 0, band_high = 0;  // packing usual for this preparation and draw
    std::string verdict;                 // "loftier than carded long-draw yarns usually are", ...
    std::string convention;  // "laid side by side", "laid side by side (assumed)", "packed"
};

struct GristOfSkein {
    std::string name;
    Estimate<LinearDensity> linear_density;  // spread: the whole margin
    double own_spread = 0;                   // the part not shared with the other skeins
};

struct YarnProfile {
    Length total_length;
    Mass total_mass;
    std::vector<GristOfSkein> skeins;        // in the batch's order
    Estimate<LinearDensity> linear_density;  // of the batch
    Estimate<Length> usable;                 // metres to hand, washed, with their margin
    Agreement agreement;

    bool wraps_measured = false;
    Estimate<Wraps> laid_wraps;  // measured, or guessed from the grist (then with a wide margin)
    Length laid_diameter;        // 1 / laid wraps
    Estimate<Length> packed_diameter;         // squeezed, as it lies in cloth (Ashenhurst)
    Loft loft;                                // meaningful when wraps_measured
    std::vector<WeightClass> class_by_grist;  // one, or two where bands overlap; empty: none fits
    std::vector<WeightClass> class_by_wraps;  // empty when no wraps were measured

    Estimate<Length> fibre_diameter;  // mean; guessed when the fibre is unknown
    double share_over_prickle = 0;    // share of fibres over 30.5 micron
    Length staple;                    // 0 when unknown
    Trait softness, wear, definition, bloom, elasticity, warp_fitness, warmth;
    double consistency = 1;            // 1: the skeins agree; falls with the spread between skeins
    std::vector<std::string> assumed;  // what was missing and what was taken instead
    std::vector<std::string> sharpen;  // the measurements that would narrow most, best first
    std::vector<std::string> cautions;
};

// `classes` and `traits` come from the reference tables. Throws ImplausibleYarn (bad_yarn.hpp) for
// a batch no yarn can be: nothing to measure, packing above 0.9069, a length and mass swapped.
// With `insist`, merely unlikely values pass and become cautions.
YarnProfile profile(const Batch& batch, const std::vector<WeightClass>& classes,
                    const std::vector<TraitRow>& traits, bool insist = false);

}  // namespace gristwright
