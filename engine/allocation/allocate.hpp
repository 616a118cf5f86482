// Shares skeins out over pieces as well as can be, and says whether that is proven.
//
// Branch and bound in whole centimetres over what is made, from how many and from which skeins. The
// bound is a min-cost flow (flow_bound.hpp) and, once a problem proves stubborn, the closer ones by
// cutting patterns (cutting.hpp) and by groups that share yarn (grouping.hpp). The same problem
// gives the same answer: effort is counted in nodes, never in seconds. Every answer is looked over
// by the checker.
#pragma once

#include <functional>
#include <stop_token>

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

// How far a search is.
struct Progress {
    enum class Stage { what_is_made, where_from, why_not } stage = Stage::what_is_made;
    int nodes = 0, of = 0;
    double gap = 1;  // of what is found so far; 1: nothing is found
};

struct Effort {
    int nodes = -1;          // of the search, at most; -1: as usual for the size, a second or so,
                             // or two where that leaves more than half a per cent open
    double times = 1;        // the usual
    std::stop_token stop{};  // stopped, it answers with what it has
    std::function<void(const Progress&)> watch{};  // told at every node
};

struct [[nodiscard]] Allocation {
    enum class Outcome { proven_best, best_found, impossible, nothing_found };
    Outcome outcome = Outcome::nothing_found;
    CutList list;      // empty when impossible or nothing was found
    Points bound = 0;  // no plan is worth more
    int nodes = 0;

    bool found() const { return outcome == Outcome::proven_best || outcome == Outcome::best_found; }
    double gap() const;  // (bound - worth) / bound; 0 when proven
};

// Throws Refused for what is no problem (problem.hpp), OurMistake when the
// checker finds a rule broken: a mistake of ours that must never pass as an answer.
Allocation allocate(const Problem& problem, const Effort& effort = {});

// The same from a plan that is already known (it must break no rule).
Allocation allocate(const Problem& problem, const Effort& effort, const CutList& start);

}  // namespace gristwright::allocation
