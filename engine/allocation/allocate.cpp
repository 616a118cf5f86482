#include "engine/allocation/allocate.hpp"

#include <algorithm>
#include <stdexcept>

#include "engine/allocation/checker.hpp"
#include "engine/allocation/constants.hpp"
#include "engine/allocation/search.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::allocation {
namespace {

using constants::close_enough;

// A node takes the longer, the larger the problem is, and more are needed: their number falls as
// the size. A first look finds the plan to start with.
constexpr double nodes_times_size = 600'000;
constexpr double first_nodes_times_size = 180'000;
constexpr int most_times = 3;  // times the usual nodes, where those leave much open

std::size_t size(const Problem& p) {
    return std::max<std::size_t>(1, p.skeins.size() * p.pieces.size());
}

int nodes_for(const Problem& p, double times_size) {
    return 1 + static_cast<int>(times_size / static_cast<double>(size(p)));
}

int most_nodes(const Problem& p, const Effort& effort) {
    return effort.nodes >= 0 ? effort.nodes : nodes_for(p, nodes_times_size * effort.times);
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

// Where the search finds no plan at once: with what must be made only wished for, it may, and what
// it finds may make it all. Adds the nodes it took.
std::optional<CutList> by_wishing(const Problem& problem, int most, const Effort& effort,
                                  int& nodes) {
    const auto wished = wished_for(problem);
    const auto first = Search(wished).run(most, effort);
    nodes += first.nodes;
    auto list = first.list;
    list.worth = worth(problem, list);
    if (!first.found() || !broken_rule(problem, list).empty()) return {};
    return list;
}

// Most problems are proven or nearly so with the usual effort; one that is not is worth more of it.
Allocation finished(Search& search, int most, const Effort& effort) {
    auto out = search.run(most, effort);
    const auto open = [&] { return out.found() && out.gap() > close_enough; };
    for (int times = 2; times <= most_times && effort.nodes < 0 && open(); ++times)
        out = search.run(times * most, effort);
    return out;
}

Allocation run(const Problem& problem, const Effort& effort, std::optional<CutList> start) {
    check(problem);
    const int most = most_nodes(problem, effort);
    const int first_look = std::min(most, nodes_for(problem, first_nodes_times_size));
    Search search(problem, {std::move(start)});
    auto out = search.run(first_look, effort);
    int elsewhere = 0;  // nodes of other searches
    if (out.outcome == Allocation::Outcome::nothing_found && size(problem) > small_size)
        if (auto list =
                by_wishing(problem, std::min(first_look, most - out.nodes), effort, elsewhere)) {
            search.learn(std::move(*list));
            out = search.run(0, effort);
        }
    if (out.outcome == Allocation::Outcome::best_found && most > first_look &&
        size(problem) > small_size) {  // begun anew, its bound is closer from the first node on
        elsewhere += out.nodes;
        Search again(problem, {std::move(out.list), out.bound});
        out = finished(again, most - elsewhere, effort);
    } else {
        out = finished(search, most - elsewhere, effort);
    }
    out.nodes += elsewhere;
    return looked_over(problem, std::move(out));
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
