// A template realised with one batch at the largest size that the metres cover with the certainty
// asked for.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/project/template.hpp"

namespace gristwright {

enum class Metres { enough, enough_if_smaller, short_of };

struct PlanPiece {
    std::string name;
    Shape shape{};
    int count = 1;
    std::string fabric;
    Length width, length;        // finished, of one
    int stitches = 0, rows = 0;  // knitted: at the widest, in total (cast-on before decreases)
    int ends = 0, picks = 0;     // woven
    Length reed_width, woven_length, warp_per_end;
    Estimate<Length> metres;      // of all `count`
    Estimate<Length> warp, weft;  // woven
    Mass mass;
    int yarn = 1;
};

struct Plan {
    const Template* article = nullptr;  // outlives the plan
    double factor = 0;                  // size factor
    Length size;                        // of the template's named measure
    Metres verdict{};
    Length short_by;       // at the smallest useful size and the certainty asked
    double certainty = 0;  // chance that the metres suffice at this size
    double asked = 0.9;
    Estimate<Length> needed;  // from this batch
    Estimate<Length> usable;
    Length left;  // usable median - needed median, not below 0
    Mass mass;
    std::vector<PlanPiece> pieces;
    std::optional<KnitCloth> knit;       // cloth of the first knitted piece
    std::optional<WovenCloth> woven;     // cloth of the first woven piece
    std::vector<std::string> obstacles;  // equipment that is missing or cannot do it
};

struct PlanOptions {
    double certainty = 0.90;       // 0.5 .. 0.999
    double knit_prior = 0.12;      // relative margin of metres without a swatch (judgement)
    double woven_prior = 0.08;     // the same for weaving (judgement)
    std::optional<double> factor;  // fixed size instead of the largest
};

struct Fabrics {
    std::vector<KnitFabric> knit;
    std::vector<Weave> weaves;
};

// Throws std::out_of_range when the template names a fabric that the tables do not hold.
Plan plan(const Template& article, const YarnProfile& yarn, const Fabrics& fabrics,
          const Equipment& owned, const PlanOptions& options);

}  // namespace gristwright
