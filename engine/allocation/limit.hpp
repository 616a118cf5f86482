// Which rule keeps a wish from being met: the one that, relaxed alone, lets it in. Found by asking
// again whether any plan exists, so that what is proven is proven.
#pragma once

#include <optional>

#include "engine/allocation/possible.hpp"

namespace gristwright::allocation {

// Tried in this order, so that the rule named is the one a spinner can change most easily;
// `metres`, which no change of rules helps, comes last.
enum class Limit {
    worth,        // it could be made; other wishes are worth more
    whole_skein,  // it could be made; a skein is worth more whole
    reserve,      // the reserve holds the metres
    relation,     // same skein, other skein or a pair that may not meet
    shortest,     // the remnants that are there are shorter than the shortest segment
    joins,        // more joins would do
    cut_up,       // metres enough in all, but only for several of these rules together
    metres        // too little yarn, however it is cut
};

// Asked for the pieces that `answer` (which was found) leaves out; all three outlive it.
class Limits {
  public:
    Limits(const Problem& problem, const Allocation& answer, Looks& looks)
        : problem_(problem), answer_(answer), looks_(looks) {}

    // `can_be_made`: it could be, beside all that is required. A question that is not settled
    // counts as no.
    Limit binding(std::size_t piece, bool can_be_made);

  private:
    const Problem& problem_;
    const Allocation& answer_;
    Looks& looks_;
    std::optional<CutList> any_skein_broken_;  // the best plan when no skein is worth more whole
};

}  // namespace gristwright::allocation
