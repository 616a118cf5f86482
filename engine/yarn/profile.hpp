// What yarn this is: everything the measurements of a batch say, with margins and reasons.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "engine/estimate/estimate.hpp"
#include "engine/yarn/agreement.hpp"
#include "engine/yarn/bad_yarn.hpp"
#include "engine/yarn/batch.hpp"
#include "engine/yarn/evidence.hpp"
#include "engine/yarn/grist_margin.hpp"
#include "engine/yarn/loft.hpp"
#include "engine/yarn/traits.hpp"
#include "engine/yarn/weight_class.hpp"
#include "engine/yarn/wool_grade.hpp"

namespace gristwright {

struct SkeinGrist {
    std::string name;
    Length length;  // as washed: a length taken on the reel is shortened
    Mass mass;
    Estimate<LinearDensity> linear_density;  // spread: the whole margin
    GristMargin margin;
};

// What was missing, and what was taken instead.
enum class Assumed {
    lengths_washed,
    wool,
    own_fibre_is_wool,
    preparation_between,
    draw_between,
    plies_between,
    twist_ordinary,
    scale_step,
    wraps_from_grist,
    wraps_laid,
};
struct Assumption {
    Assumed what{};
    Wraps wraps{};  // guessed from the grist
    Mass step{};    // of the scale

    auto operator<=>(const Assumption&) const = default;
};

// What to beware of in the yarn itself.
enum class Beware {
    insisted,       // an unlikely measurement was taken as it is
    states_differ,  // skeins measured in different states are not compared
    several_yarns,
    alternate,  // skeins that differ in grist
    felts,
    live_twist,
    plied_z,
    chain_plied,
    lively_singles,
    two_strands,  // reckoned as two strands held, or plied, as one
};
struct YarnCaution {
    Beware what{};
    std::string said = "";    // two_strands: how
    UnlikelyMeasure doubt{};  // insisted

    auto operator<=>(const YarnCaution&) const = default;
};

struct YarnProfile {
    std::vector<SkeinGrist> skeins;  // in the batch's order
    Mass mass;
    Estimate<Length> length;  // metres to hand, washed
    double state_doubt = 0;   // part of its spread: what lengths not taken washed may lose
    Estimate<LinearDensity> linear_density;
    Agreement agreement;

    bool wraps_measured = false;
    bool wraps_packed = false;      // counted packed, turned into laid wraps
    bool wraps_tell_gauge = false;  // counted on wool: the trade's rule is of wool
    Estimate<Wraps> laid_wraps;     // measured, or guessed from the grist (with a wide margin)
    Length laid_diameter;           // 1 / laid wraps
    double close_packing = 0;       // Ashenhurst's C, moved by what the wraps say of the loft
    Length packed_diameter;         // squeezed, as it lies in cloth: by that C
    double hair = 1;             // share that is wool or other hair and draws together in washing
    Estimate<double> packing;    // share of the laid cylinder that is fibre; needs wraps
    double specific_volume = 0;  // cm3/g; needs wraps
    PackingBand usual;           // packing usual for the make-up; {0, 0}: not known
    std::vector<WeightClass> class_by_grist;
    std::vector<WeightClass> class_by_wraps;  // empty when no wraps were measured

    std::optional<Length> fibre_diameter;  // mean
    double share_over_prickle = 0;         // 0 when the diameter is not known
    std::string grade;                   // "58s (3/8 blood)"; empty: outside the grades, or no wool
    std::optional<double> twist_factor;  // plied turns per inch / sqrt(worsted count)
    std::array<Trait, trait_count> traits;
    double consistency = 1;  // 1: one yarn; falls with the spread between skeins
    int plies = 0;           // 0: not known
    bool plied = false;
    std::string felting;  // high, medium, low; empty: not known
    std::optional<Gauge> washed_gauge;
    Evidence evidence;  // of swatches; empty: none

    std::vector<Assumption> assumed;  // what was missing and what was taken instead
    std::vector<YarnCaution> cautions;

    const Trait& trait(TraitName name) const { return traits[static_cast<std::size_t>(name)]; }
};

struct YarnTables {
    std::vector<WoolGrade> grades;
    std::vector<WeightClass> classes;
    std::vector<TraitRow> traits;
};

// Throws ImplausibleYarn (bad_yarn.hpp) for a batch no yarn can be: no skein, packing above the
// closest possible, a length and a mass that look swapped. With `insist`, what is merely unlikely
// passes and becomes a caution.
YarnProfile profile(const Batch& batch, const YarnTables& tables, bool insist = false);

}  // namespace gristwright
