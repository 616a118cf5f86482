// The second bound, from what shares yarn, and with it a plan.
//
// Every plan divides skeins and pieces into groups that share no yarn. The best way to divide them,
// each group at what it promises (group.hpp), bounds all plans: dynamic programming over subsets
// (Held and Karp, Journal of SIAM 10, 1962 - from memory). Then the groups of that division are
// solved as problems of their own and it is divided anew, until they keep what they promised:
// together they are the best plan.
//
// Most groups are never looked at twice. At a price per centimetre that is the same for all yarn,
// every group falls short of the ideal by some points; one that falls short by more than the ideal
// exceeds a plan already known is in no better plan. Nor is one that leaves more over than all
// required pieces together leave, or one that does as well with a skein less.
#pragma once

#include <limits>
#include <map>
#include <optional>
#include <unordered_map>

#include "engine/allocation/group.hpp"

namespace gristwright::allocation {

class Grouping {
  public:
    // Whether so many skeins and pieces can be looked through at all, and what that costs at least,
    // in nodes of a search that takes as long.
    static bool can_hold(const Model& model);
    static double least_nodes(const Model& model);

    // Under (concluded) decisions; all three outlive it. Only plans worth more than `enough` are
    // looked for, and no longer than `nodes`. std::length_error for what it cannot hold.
    Grouping(const Problem& problem, const Model& model, const Decisions& decisions,
             Points enough = never, double nodes = std::numeric_limits<double>::infinity());

    bool gave_up() const { return gave_up_; }  // after `nodes`: then it knows nothing

    // No plan is worth more; nothing: no plan is worth more than `enough`.
    std::optional<Points> bound() const;

    // Solves the groups of the best division, the more thoroughly the more often they are in it,
    // and divides anew. Gives the plan they make, if all can be cut. Looks at no more than `nodes`.
    std::optional<CutList> work_out(double nodes = std::numeric_limits<double>::infinity());

    bool finished() const { return finished_; }  // nothing is left to work out
    double spent() const { return spent_; }      // so far, in nodes

  private:
    struct Promised {
        Group group;
        Points worth = 0;  // at most
    };
    struct Worked {
        int nodes = 0;                // that it may take the next time, if it is not proven
        bool proven = false;          // its list is the best, or there is none
        std::optional<CutList> list;  // of the whole problem
    };
    struct Choice {  // the first group of a division, or the first piece left out, and what remains
        Group group;
        Set pieces = 0;
    };

    std::size_t key(Set skeins, Set pieces) const {
        return (std::size_t{pieces} << m_.skeins) + skeins;
    }
    const Promised* promised(const Group& group) const {
        const auto place = place_[key(group.skeins, group.pieces)];
        return place == 0 ? nullptr : &promised_[place - 1];
    }
    void keep_promising(Points enough);
    bool does_without_a_skein(const Promised& promise) const;
    Points whole(Set skeins) const;
    std::optional<Set> beside(Set pieces, Set others) const;
    Points divided(Set skeins, Set pieces);
    void divide();
    std::vector<Group> division() const;
    void lower(const Group& group, Points worth);
    bool solve_division(const std::vector<Group>& division);
    std::optional<CutList> together(const std::vector<Group>& division);
    Points solve(const Group& group, Points at_most, Worked& worked);

    const Problem& problem_;
    const Model& m_;
    const Decisions& d_;
    std::vector<Promised> promised_;    // what each group that may be in a better plan promises
    std::vector<std::uint32_t> place_;  // by key: where it stands in it, and 1; 0: nowhere
    std::vector<std::vector<std::uint32_t>>
        by_first_;  // those to divide with, by their first piece
    // By skeins and pieces: what they are worth at most, and the choice that makes them so.
    std::unordered_map<std::size_t, std::pair<Points, Choice>> divided_;
    std::map<std::size_t, Worked> worked_;
    Points bound_ = never;
    double allowed_;
    bool gave_up_ = false, finished_ = false;
    double spent_ = 0;
};

}  // namespace gristwright::allocation
