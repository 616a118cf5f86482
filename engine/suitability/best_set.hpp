// The best set of articles that one batch makes together: a shawl and mitts, a scarf and a hat.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "engine/suitability/judgement.hpp"

namespace gristwright {

struct SetMember {
    std::shared_ptr<const Template> article;
    Length size;
    Length need;  // median
};

struct [[nodiscard]] BestSet {
    std::vector<SetMember> members;  // largest need first; empty: nothing fits
    Length need;                     // median, of all
    double certainty = 0;            // that the batch reaches for all of them
    double worth = 0;                // metres used, each counted by its article's suitability
    double alone = 0;                // the same of the best article by itself
};

struct Judged {
    const Plan* plan = nullptr;  // looked at while the set is sought
    double score = 0;            // 0..100
};

// Exact, by depth-first search with a bound: the set of two to `most` articles of different kinds,
// each at one of five sizes between its smallest and its largest, that puts the most metres to good
// use while their chance of reaching holds. Plans that are short, or that serve poorly or not at
// all, are left out. Equal worth: the set found first in the order given.
BestSet best_set(const std::vector<Judged>& plans, std::size_t most = 3);

}  // namespace gristwright
