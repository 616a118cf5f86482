#include "engine/allocation/allocate.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "engine/allocation/checker.hpp"
#include "engine/allocation/search.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::allocation {
namespace {

// Small problems are mostly proven at once; the others gain from a good plan to start with.
constexpr int rounds_for_each = 3;  // skein and piece of a larger problem; of a small one 1

// A node takes the longer, the larger the problem is: about as its size to the power 1.5. A first
// look finds the plan to start with.
constexpr double nodes_times_size = 2e7;
constexpr double first_nodes_times_size = 1e6;

std::size_t size(const Problem& p) {
    return std::max<std::size_t>(1, p.skeins.size() * p.pieces.size());
}

int nodes_for(const Problem& p, double times_size) {
    return 1 + static_cast<int>(times_size / std::pow(static_cast<double>(size(p)), 1.5));
}

Effort spelt_out(const Problem& p, Effort effort) {
    if (effort.nodes < 0) effort.nodes = nodes_for(p, nodes_times_size);
    return effort;
}

int rounds(const Problem& p, const Effort& effort) {
    if (effort.rounds >= 0) return effort.rounds;
    const auto each = static_cast<int>(p.skeins.size() + p.pieces.size());
    return size(p) <= small_size ? each : rounds_for_each * each;
}

Allocation looked_over(const Problem& problem, Allocation out) {
    if (!out.found()) return out;
    if (const auto broken = broken_rule(problem, out.list); !broken.empty())
        throw OurMistake("the allocation broke a rule: " + broken);
    return out;
}

// What must be made as no more than wished for, dearly: any plan will do to begin with.
Problem wished_for(Problem p) {
    Points all = 0, required = 0;
    for (const auto& skein : p.skeins) all += skein.bonus;
    for (const auto& piece : p.pieces) {
        all += piece.value;
        for (const auto& s : piece.stretch) all += s.length * s.per_cm;
        required += piece.required ? 1 : 0;
    }
    for (auto& piece : p.pieces) {
        if (!piece.required) continue;
        const auto dear = std::min(dearest_per_cm * piece.least, (dearest - all) / required);
        piece.value = std::max(piece.value, std::min(all, dear));
        piece.required = false;
    }
    return p;
}

// A plan for a problem in which the search finds none at once.
std::optional<CutList> roundabout(const Problem& problem, const Effort& effort) {
    const auto wished = wished_for(problem);
    const auto first = Search(wished).run(nodes_for(problem, first_nodes_times_size), effort.stop);
    if (!first.found()) return {};
    auto list = improved(wished, first.list, rounds(problem, effort), effort.stop);
    list.worth = worth(problem, list);
    if (!broken_rule(problem, list).empty()) return {};
    return list;
}

Allocation run(const Problem& problem, const Effort& asked, std::optional<CutList> start) {
    check(problem);
    const auto effort = spelt_out(problem, asked);
    Search search(problem, {std::move(start)});
    const int first_look = nodes_for(problem, first_nodes_times_size);
    auto out = search.run(std::min(first_look, effort.nodes), effort.stop);
    if (out.outcome == Allocation::Outcome::nothing_found && size(problem) > small_size)
        if (auto list = roundabout(problem, effort)) {
            search.learn(std::move(*list));
            out = search.run(0, effort.stop);
        }
    if (out.outcome != Allocation::Outcome::best_found || effort.nodes <= first_look)
        return looked_over(problem, search.run(effort.nodes, effort.stop));
    auto better = improved(problem, out.list, rounds(problem, effort), effort.stop);
    if (size(problem) > small_size) {  // begun anew, its bound is closer from the first node on
        Search again(problem, {std::move(better), out.bound});
        return looked_over(problem, again.run(effort.nodes, effort.stop));
    }
    search.learn(std::move(better));
    return looked_over(problem, search.run(effort.nodes, effort.stop));
}

}  // namespace

double Allocation::gap() const {
    if (outcome == Outcome::proven_best || bound <= 0) return 0;
    return static_cast<double>(bound - list.worth) / static_cast<double>(bound);
}

Allocation allocate(const Problem& problem, const Effort& effort) {
    return run(problem, effort, {});
}

Allocation allocate(const Problem& problem, const Effort& effort, const CutList& start) {
    if (const auto broken = broken_rule(problem, start); !broken.empty())
        throw Refused("the plan to start from breaks a rule: " + broken);
    return run(problem, effort, start);
}

}  // namespace gristwright::allocation
