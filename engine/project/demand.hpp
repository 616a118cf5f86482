// What a kind of article needs of a yarn whatever else speaks for it. A wish can be bought back by
// others; a need cannot. Data: catalog/tables/needs.csv says for which articles each holds.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/yarn/traits.hpp"

namespace gristwright {

struct Demand {
    std::optional<TraitName> trait;  // nothing: the number of plies
    double enough = 1;               // from here on nothing is lost
    double lacking = 0;  // from here on it is wholly unmet; above `enough`: less is wanted
    double left = 0.5;   // share of the suitability that an unmet need leaves
    std::string reason;  // "does not felt"
    std::string remedy;  // "three plies, or firm twist"
    Mark mark = Mark::judgement;
    std::string source;

    // 1 met, 0 wholly unmet, straight between.
    double met(double had) const;
};

// What is asked of such an article, and how ordinary handspun yarns serve it
// (suitability/standing.hpp); no levels: not compared. What its kind is to handspinners
// (demand_for.hpp): the place it keeps among what a yarn is for, and how many of it a person wants.
struct Calling {
    std::vector<std::shared_ptr<const Demand>> demands;
    std::vector<double> levels = {};
    double place = 1;
    int alike = 1;
};

}  // namespace gristwright
