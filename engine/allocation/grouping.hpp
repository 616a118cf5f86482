// A third bound, for few skeins and pieces, and with it a plan: what shares yarn hangs together.
//
// Every plan divides skeins and pieces into groups that share no yarn. The best way to divide them,
// each group at what it promises (group.hpp), bounds all plans: dynamic programming over subsets
// (Held and Karp, Journal of SIAM 10, 1962 - from memory). Then the groups of that division are
// worked out as problems of their own and it is divided anew, until they keep what they promised:
// together they are the best plan.
#pragma once

#include <map>
#include <optional>

#include "engine/allocation/group.hpp"

namespace gristwright::allocation {

class Grouping {
  public:
    // What the first bound costs, by the nodes of a search that takes as long; infinite where it
    // cannot be had.
    static double nodes(const Model& model);

    // Under (concluded) decisions; all three outlive it. Memory is 2 to the power of skeins and
    // pieces: std::length_error for more than 22 of them.
    Grouping(const Problem& problem, const Model& model, const Decisions& decisions);

    // No plan is worth more; nothing: there is no plan.
    std::optional<Points> bound() const;

    // Works out the groups of the best division, the more thoroughly the more often they are in it,
    // and divides anew. Gives the plan they make, if all can be cut.
    std::optional<CutList> work_out();

    bool finished() const { return finished_; }  // nothing is left to work out
    double spent() const { return spent_; }      // so far, in nodes

  private:
    struct Worked {
        int nodes = 0;                // that it may take the next time, if it is not proven
        bool proven = false;          // its list is the best, or there is none
        std::optional<CutList> list;  // of the whole problem
    };

    std::size_t at(Set skeins, Set pieces) const {
        return (std::size_t{pieces} << m_.skeins) + skeins;
    }
    std::size_t at(const Group& group) const { return at(group.skeins, group.pieces); }
    Points whole(Set skeins) const;
    bool is_asked(Set skeins, Set pieces) const;
    std::optional<Set> beside(Set pieces, Set others) const;
    template <class Look>
    void each_first(Set skeins, Set pieces, Look look) const;
    Points divided(Set skeins, Set pieces) const;
    void divide_with(const std::vector<Group>& changed);
    std::vector<Group> division() const;
    Points work_out(const Group& group, Worked& worked);

    const Problem& problem_;
    const Model& m_;
    const Decisions& d_;
    std::vector<Points> worth_;  // of each group, at most
    std::vector<Points> best_;   // of these skeins and pieces, divided as well as can be
    std::map<std::size_t, Worked> worked_;
    bool finished_ = false;
    double spent_ = 0;
};

}  // namespace gristwright::allocation
