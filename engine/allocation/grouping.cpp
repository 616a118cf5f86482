#include "engine/allocation/grouping.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "engine/allocation/checker.hpp"
#include "engine/allocation/part.hpp"
#include "engine/allocation/search.hpp"

namespace gristwright::allocation {
namespace {

constexpr std::size_t most_members = 22;
constexpr int first_nodes = 150;  // for a group
constexpr double steps_a_node = 35'000, promises_a_node = 400;

std::vector<std::size_t> members(Set set) {
    std::vector<std::size_t> out;
    for (; set != 0; set &= set - 1) out.push_back(static_cast<std::size_t>(std::countr_zero(set)));
    return out;
}

bool contains(Set set, Set part) { return (set & part) == part; }

}  // namespace

double Grouping::nodes(const Model& model) {
    if (model.skeins + model.pieces > most_members) return std::numeric_limits<double>::infinity();
    const auto both = static_cast<double>(model.skeins + model.pieces);
    return std::exp2(both) / promises_a_node + std::pow(3.0, both - 1) / 2 / steps_a_node;
}

Grouping::Grouping(const Problem& problem, const Model& model, const Decisions& decisions)
    : problem_(problem), m_(model), d_(decisions) {
    if (m_.skeins + m_.pieces > most_members)
        throw std::length_error("too many skeins and pieces to be divided into groups");
    const Set skeins = all(m_.skeins), pieces = all(m_.pieces);
    worth_.assign(at(skeins, pieces) + 1, never);
    best_ = worth_;
    GroupPromise promise(m_, d_);
    for (Set s = 1; s <= skeins; ++s)
        for (Set p = 1; p <= pieces; ++p) worth_[at(s, p)] = promise.of({s, p});
    for (Set s = 0; s <= skeins; ++s) best_[at(s, 0)] = whole(s);
    divide_with({{0, 0}});
}

// Skeins that serve nothing.
Points Grouping::whole(Set skeins) const {
    Points sum = 0;
    for (const auto i : members(skeins)) {
        if (d_.opened[i] == Say::yes) return never;
        sum += m_.bonus[i];
    }
    return sum;
}

// Of the other pieces those that these leave: of a pair from the same skeins, one alone means that
// the other is not made.
std::optional<Set> Grouping::beside(Set pieces, Set others) const {
    for (const auto& [a, b] : m_.same)
        for (const auto& [x, y] : {std::pair{a, b}, std::pair{b, a}}) {
            if (!holds(pieces, x) || !holds(others, y)) continue;
            if (d_.made[y] == Say::yes) return {};
            others &= ~(Set{1} << y);
        }
    return others;
}

// Every group that the first of these pieces may be in, and the pieces that remain beside it.
template <class Look>
void Grouping::each_first(Set skeins, Set pieces, Look look) const {
    const Set first = pieces & (~pieces + 1), others = pieces ^ first;
    for (Set with = others;; with = (with - 1) & others) {
        if (const auto rest = beside(with | first, others ^ with))
            for (Set from = skeins; from != 0; from = (from - 1) & skeins)
                look(Group{from, with | first}, *rest);
        if (with == 0) break;
    }
}

// Whether a division of all ever comes to this: its first piece goes first, with the whole.
bool Grouping::is_asked(Set skeins, Set pieces) const {
    return (pieces & 1) == 0 || (pieces == all(m_.pieces) && skeins == all(m_.skeins));
}

Points Grouping::divided(Set skeins, Set pieces) const {
    const auto first = static_cast<std::size_t>(std::countr_zero(pieces));
    Points best = never;
    if (d_.made[first] != Say::yes) best = best_[at(skeins, pieces & (pieces - 1))];
    each_first(skeins, pieces, [&](const Group& group, Set rest) {
        best = std::max(best, worth_[at(group)] + best_[at(skeins ^ group.skeins, rest)]);
    });
    return best;
}

// Anew, whatever one of these groups may be part of.
void Grouping::divide_with(const std::vector<Group>& changed) {
    const Set skeins = all(m_.skeins), pieces = all(m_.pieces);
    double steps = 0;
    for (Set p = 1; p <= pieces; ++p)
        for (Set s = 0; s <= skeins; ++s) {
            if (!is_asked(s, p) ||
                std::none_of(changed.begin(), changed.end(), [&](const Group& group) {
                    return contains(s, group.skeins) && contains(p, group.pieces);
                }))
                continue;
            best_[at(s, p)] = divided(s, p);
            steps += std::exp2(std::popcount(s) + std::popcount(p) - 1);
        }
    spent_ += steps / steps_a_node;
}

std::optional<Points> Grouping::bound() const {
    const auto out = best_.back();
    return out < never / 2 ? std::nullopt : std::optional(out);
}

std::vector<Group> Grouping::division() const {
    std::vector<Group> out;
    Set skeins = all(m_.skeins), pieces = all(m_.pieces);
    while (pieces != 0) {
        const auto goal = best_[at(skeins, pieces)];
        const auto first = static_cast<std::size_t>(std::countr_zero(pieces));
        const Set others = pieces & (pieces - 1);
        if (d_.made[first] != Say::yes && best_[at(skeins, others)] == goal) {
            pieces = others;
            continue;
        }
        Group chosen;
        Set remain = 0;
        each_first(skeins, pieces, [&](const Group& group, Set rest) {
            if (chosen.skeins == 0 &&
                worth_[at(group)] + best_[at(skeins ^ group.skeins, rest)] == goal)
                chosen = group, remain = rest;
        });
        out.push_back(chosen);
        skeins ^= chosen.skeins;
        pieces = remain;
    }
    return out;
}

// Gives what the group is worth at most, as is known then.
Points Grouping::work_out(const Group& group, Worked& worked) {
    Part part{members(group.skeins), members(group.pieces), false};
    if (m_.has_reserve && part.pieces.back() == m_.pieces - 1) {
        part.reserve = true;
        part.pieces.pop_back();
    }
    auto problem = part.problem(problem_);
    for (auto& piece : problem.pieces) piece.required = true;
    Start start{{}, worth_[at(group)], false};
    if (worked.list) {
        start.incumbent = part.from_whole(*worked.list);
        start.incumbent->worth = worth(problem, *start.incumbent);
    }
    worked.nodes = worked.nodes == 0 ? first_nodes : worked.nodes * 4;
    const auto answer = Search(problem, std::move(start)).run(worked.nodes);
    const auto size = static_cast<double>(problem.skeins.size() * part.pieces.size());
    const auto whole_size = static_cast<double>(m_.skeins * m_.pieces);
    spent_ += answer.nodes * std::pow(size / whole_size, 1.5);
    worked.proven = answer.outcome == Allocation::Outcome::proven_best ||
                    answer.outcome == Allocation::Outcome::impossible;
    if (answer.outcome == Allocation::Outcome::impossible) return never;
    if (!answer.found()) return worth_[at(group)];
    worked.list = CutList{};
    part.add_to_whole(answer.list, *worked.list);
    return std::min(worth_[at(group)], answer.bound);
}

std::optional<CutList> Grouping::work_out() {
    std::vector<Group> changed;
    CutList list;
    bool cut = true;
    finished_ = true;
    for (const auto& group : division()) {
        auto& worked = worked_[at(group)];
        if (!worked.proven) {
            const auto most = work_out(group, worked);
            if (most < worth_[at(group)]) changed.push_back(group);
            worth_[at(group)] = most;
            finished_ = false;
        }
        cut = cut && worked.list;
        if (!cut) continue;
        list.cuts.insert(list.cuts.end(), worked.list->cuts.begin(), worked.list->cuts.end());
        if (worked.list->reserve) list.reserve = worked.list->reserve;
    }
    divide_with(changed);
    if (!cut) return {};
    std::sort(list.cuts.begin(), list.cuts.end(), [](const Cut& a, const Cut& b) {
        return std::pair(a.piece, a.skein) < std::pair(b.piece, b.skein);
    });
    list.worth = worth(problem_, list);
    if (!broken_rule(problem_, list).empty()) return {};
    return list;
}

}  // namespace gristwright::allocation
