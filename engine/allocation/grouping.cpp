#include "engine/allocation/grouping.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <stdexcept>

#include "engine/allocation/checker.hpp"
#include "engine/allocation/ideal.hpp"
#include "engine/allocation/part.hpp"
#include "engine/allocation/search.hpp"

namespace gristwright::allocation {
namespace {

constexpr std::size_t most_members = 22;
constexpr int first_nodes = 150;  // for a group
// What takes as long as a node of the search: looks at a group, promises, steps of a division.
constexpr double looks_a_node = 10'000, promises_a_node = 150, steps_a_node = 10'000;

std::vector<std::size_t> members(Set set) {
    std::vector<std::size_t> out;
    for (; set != 0; set &= set - 1) out.push_back(static_cast<std::size_t>(std::countr_zero(set)));
    return out;
}

std::size_t first_of(Set set) { return static_cast<std::size_t>(std::countr_zero(set)); }
bool contains(Set set, Set part) { return (set & part) == part; }

}  // namespace

bool Grouping::can_hold(const Model& model) { return model.skeins + model.pieces <= most_members; }

double Grouping::least_nodes(const Model& model) {
    return std::exp2(static_cast<double>(model.skeins + model.pieces)) / looks_a_node;
}

Grouping::Grouping(const Problem& problem, const Model& model, const Decisions& decisions,
                   Points enough, double nodes)
    : problem_(problem), m_(model), d_(decisions), by_first_(model.pieces), allowed_(nodes) {
    if (!can_hold(model))
        throw std::length_error("too many skeins and pieces to be divided into groups");
    keep_promising(enough);
    divide();
}

void Grouping::keep_promising(Points enough) {
    const Ideal ideal(m_, d_);
    GroupPromise promise(m_, d_);
    const Set skeins = all(m_.skeins), pieces = all(m_.pieces);
    const auto hopeless = [&](const Group& group, Points worth) {
        return worth <= never / 2 || ideal.worth() - ideal.shortfall(group, worth) <= enough;
    };
    place_.resize(key(skeins, pieces) + 1);
    spent_ += least_nodes(m_);
    for (Set s = 1; s <= skeins && !gave_up_; ++s) {
        for (Set p = 1; p <= pieces; ++p) {
            const Group group{s, p};
            if (hopeless(group, ideal.at_most(group))) continue;
            spent_ += 1 / promises_a_node;
            const auto worth = promise.of(group);
            if (hopeless(group, worth)) continue;
            promised_.push_back({group, worth});
            const auto count = static_cast<std::uint32_t>(promised_.size());
            place_[key(s, p)] = count;
            if (!does_without_a_skein(promised_.back()))
                by_first_[first_of(p)].push_back(count - 1);
        }
        gave_up_ = spent_ > allowed_;
    }
}

// As much is promised to it without one of its skeins, and the bonus of that one beside.
bool Grouping::does_without_a_skein(const Promised& promise) const {
    for (const auto i : members(promise.group.skeins)) {
        if (d_.opened[i] == Say::yes) continue;
        const auto* less = promised({promise.group.skeins & ~(Set{1} << i), promise.group.pieces});
        if (less && less->worth + m_.bonus[i] >= promise.worth) return true;
    }
    return false;
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

// What these skeins and pieces are worth at most: the first piece is left out, or in some group.
Points Grouping::divided(Set skeins, Set pieces) {
    if (pieces == 0) return whole(skeins);
    const auto at = key(skeins, pieces);
    if (const auto known = divided_.find(at); known != divided_.end()) return known->second.first;
    const auto first = first_of(pieces);
    Points best = never;
    Choice choice;
    if (d_.made[first] != Say::yes) {
        choice.pieces = pieces & (pieces - 1);
        best = divided(skeins, choice.pieces);
    }
    spent_ += static_cast<double>(by_first_[first].size()) / steps_a_node;
    gave_up_ = gave_up_ || spent_ > allowed_;
    for (const auto place : by_first_[first]) {
        if (gave_up_) break;
        const auto& [group, worth] = promised_[place];
        if (!contains(skeins, group.skeins) || !contains(pieces, group.pieces) || worth == never)
            continue;
        const auto rest = beside(group.pieces, pieces ^ group.pieces);
        if (!rest) continue;
        const auto sum = worth + divided(skeins ^ group.skeins, *rest);
        if (sum > best) best = sum, choice = {group, *rest};
    }
    best = std::max(best, never);
    divided_[at] = {best, choice};
    return best;
}

void Grouping::divide() {
    divided_.clear();
    bound_ = divided(all(m_.skeins), all(m_.pieces));
}

std::optional<Points> Grouping::bound() const {
    return bound_ < never / 2 ? std::nullopt : std::optional(bound_);
}

std::vector<Group> Grouping::division() const {
    std::vector<Group> out;
    Set skeins = all(m_.skeins), pieces = all(m_.pieces);
    while (pieces != 0) {
        const auto at = divided_.find(key(skeins, pieces));
        if (at == divided_.end()) break;
        const auto& choice = at->second.second;
        if (choice.group.skeins != 0) out.push_back(choice.group);
        skeins ^= choice.group.skeins;
        pieces = choice.pieces;
    }
    return out;
}

// Now it is known to be worth less: what did no better with a skein more may do so now.
void Grouping::lower(const Group& group, Points worth) {
    promised_[place_[key(group.skeins, group.pieces)] - 1].worth = worth;
    auto& groups = by_first_[first_of(group.pieces)];
    for (std::size_t i = 0; i < m_.skeins; ++i) {
        const auto* with = promised({group.skeins | Set{1} << i, group.pieces});
        if (holds(group.skeins, i) || !with || does_without_a_skein(*with)) continue;
        const auto place = static_cast<std::uint32_t>(with - promised_.data());
        if (std::find(groups.begin(), groups.end(), place) == groups.end()) groups.push_back(place);
    }
}

// Gives what the group is worth at most, as is known then.
Points Grouping::solve(const Group& group, Points at_most, Worked& worked) {
    Part part{members(group.skeins), members(group.pieces), false};
    if (m_.has_reserve && part.pieces.back() == m_.pieces - 1) {
        part.reserve = true;
        part.pieces.pop_back();
    }
    auto problem = part.problem(problem_);
    for (auto& piece : problem.pieces) piece.required = true;
    Start start{{}, at_most, false};
    if (worked.list) {
        start.incumbent = part.from_whole(*worked.list);
        start.incumbent->worth = worth(problem, *start.incumbent);
    }
    worked.nodes = worked.nodes == 0 ? first_nodes : worked.nodes * 4;
    const auto size = static_cast<double>(problem.skeins.size() * part.pieces.size());
    const auto whole_size = static_cast<double>(m_.skeins * m_.pieces);
    const double by_size = std::pow(size / whole_size, 1.5);  // of one of its nodes
    const double most = std::min<double>(worked.nodes, (allowed_ - spent_) / by_size + 1);
    const auto answer = Search(problem, std::move(start)).run(static_cast<int>(most));
    spent_ += answer.nodes * by_size;
    worked.proven = answer.outcome == Allocation::Outcome::proven_best ||
                    answer.outcome == Allocation::Outcome::impossible;
    if (answer.outcome == Allocation::Outcome::impossible) return never;
    if (!answer.found()) return at_most;
    worked.list = CutList{};
    part.add_to_whole(answer.list, *worked.list);
    return std::min(at_most, answer.bound);
}

// False when all of them were solved before.
bool Grouping::solve_division(const std::vector<Group>& division) {
    bool anything_new = false;
    for (const auto& group : division) {
        auto& worked = worked_[key(group.skeins, group.pieces)];
        if (worked.proven) continue;
        anything_new = true;
        if (spent_ >= allowed_) break;
        const auto before = promised(group)->worth;
        const auto now = solve(group, before, worked);
        if (now < before) lower(group, now);
    }
    return anything_new;
}

// The plan that the groups make, if all of them can be cut.
std::optional<CutList> Grouping::together(const std::vector<Group>& division) {
    CutList list;
    for (const auto& group : division) {
        const auto& worked = worked_[key(group.skeins, group.pieces)];
        if (!worked.list) return {};
        list.cuts.insert(list.cuts.end(), worked.list->cuts.begin(), worked.list->cuts.end());
        if (worked.list->reserve) list.reserve = worked.list->reserve;
    }
    std::sort(list.cuts.begin(), list.cuts.end(), [](const Cut& a, const Cut& b) {
        return std::pair(a.piece, a.skein) < std::pair(b.piece, b.skein);
    });
    list.worth = worth(problem_, list);
    if (!broken_rule(problem_, list).empty()) return {};
    return list;
}

std::optional<CutList> Grouping::work_out(double nodes) {
    allowed_ = spent_ + nodes;
    const auto groups = division();
    finished_ = !solve_division(groups);
    auto list = together(groups);
    if (!finished_) divide();
    return list;
}

}  // namespace gristwright::allocation
