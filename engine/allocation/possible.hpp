// Many small questions with one effort: whether any plan exists at all, or what the best one is.
#pragma once

#include "engine/allocation/allocate.hpp"

namespace gristwright::allocation {

// The problem with nothing worth anything: the first plan found is as good as any.
Problem worth_nothing(Problem problem);

class Looks {
  public:
    // `each` nodes for a question, `together` for all of them. Of the effort only who stops and who
    // watches it counts.
    Looks(int each, int together, const Effort& effort = {})
        : each_(each), together_(together), effort_(effort) {}

    Allocation best(const Problem& problem, const CutList* start = nullptr);
    // False also when the nodes neither find a plan nor rule one out: then `unsettled` as well.
    bool possible(const Problem& problem);

    bool unsettled() const { return unsettled_; }  // some question so far
    void begin() { unsettled_ = false; }           // of other questions

  private:
    int each_, together_, spent_ = 0;
    Effort effort_;
    bool unsettled_ = false;
};

}  // namespace gristwright::allocation
