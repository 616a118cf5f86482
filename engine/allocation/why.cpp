#include "engine/allocation/why.hpp"

#include <algorithm>
#include <cmath>

#include "engine/allocation/limit.hpp"
#include "engine/allocation/part.hpp"
#include "engine/allocation/possible.hpp"

namespace gristwright::allocation {
namespace {

// Nodes for one question, enough to settle a small problem; and for all of them together, the fewer
// the larger it is. What is found counts, proven or not.
constexpr int each = 100;
constexpr double together_times_size = 3e6;

Looks looks_for(const Problem& p, const Effort& effort) {
    const auto size = static_cast<double>(p.skeins.size() * p.pieces.size() + 1);
    const double together = together_times_size * effort.times / std::pow(size, 1.5);
    return {static_cast<int>(each * effort.times), static_cast<int>(together), effort};
}

Problem with_more(Problem problem, std::size_t skein, Cm more) {
    problem.skeins[skein].length += more;
    return problem;
}

// Only what must be made, and none of it worth anything.
Problem only_required(const Problem& problem) {
    Part part;
    part.reserve = true;
    for (std::size_t i = 0; i < problem.skeins.size(); ++i) part.skeins.push_back(i);
    for (std::size_t j = 0; j < problem.pieces.size(); ++j)
        if (problem.pieces[j].required) part.pieces.push_back(j);
    return worth_nothing(part.problem(problem));
}

// What the skeins lack at least, however they are cut; negative: what they have over.
Cm lacking(const Problem& required) {
    Cm sum = required.reserve;
    for (const auto& piece : required.pieces) sum += piece.least + required.tail;
    for (const auto& skein : required.skeins) sum -= skein.length;
    return sum;
}

// The least length more in this skein. It gets `most` more, and whatever of that the pieces leave
// is taken up by one more piece, the longer the better: a single search instead of many.
std::optional<Cm> least_more_in(Problem required, std::size_t skein, Cm most, Looks& looks) {
    const Cm given = most + 1;  // of which 1 cm must be left
    const auto filler = required.pieces.size();
    required.pieces.push_back({"what is left", 1, 1, {{most, 1}}, 0, 0, true});
    required.skeins[skein].length += given + required.tail;
    for (std::size_t i = 0; i < required.skeins.size(); ++i)
        required.mismatch[i].push_back(i == skein ? std::optional<Points>{0} : std::nullopt);
    const auto answer = looks.best(required);
    for (const auto& cut : answer.list.cuts)
        if (cut.piece == filler) return given - (cut.gross - required.tail);
    return {};
}

std::optional<More> least_more(const Problem& problem, Cm most, Looks& looks) {
    const auto required = only_required(problem);
    const Cm least = std::max<Cm>(lacking(required), 0);
    std::optional<More> best;
    for (std::size_t i = 0; i < problem.skeins.size(); ++i) {
        const Cm enough = best ? best->length - 1 : most;
        if (enough < least) break;
        if (const auto more = least_more_in(required, i, enough, looks)) best = More{i, *more};
    }
    return best;
}

// What the plan would lose if the piece were made as well.
void price(const Problem& problem, const Allocation& answer, const Allocation& instead,
           Unmet& out) {
    out.instead = true;
    out.price = answer.list.worth - instead.list.worth;
    for (std::size_t k = 0; k < problem.pieces.size(); ++k)
        if (answer.list.makes(k) && !instead.list.makes(k)) out.loses.push_back(k);
}

Unmet reason(const Problem& problem, const Allocation& answer, std::size_t piece, Limits& limits,
             Looks& looks) {
    looks.begin();
    auto forced = problem;
    forced.pieces[piece].required = true;
    const auto instead = looks.best(forced);
    const bool undecided = instead.outcome == Allocation::Outcome::nothing_found;
    const bool can_be_made = instead.found() || (undecided && looks.possible(forced));
    Unmet out;
    out.piece = piece;
    out.limit = limits.binding(piece, can_be_made);
    if (instead.found()) price(problem, answer, instead, out);
    for (std::size_t k = 0; k < problem.pieces.size(); ++k)
        if (answer.list.makes(k)) forced.pieces[k].required = true;
    const auto beside = least_more(forced, most_more, looks);
    if (beside && beside->length > 0) out.beside = beside;
    out.settled = !looks.unsettled();
    return out;
}

}  // namespace

std::optional<More> least_more(const Problem& problem, Cm most, const Effort& effort) {
    auto looks = looks_for(problem, effort);
    return least_more(problem, most, looks);
}

std::vector<Unmet> unmet(const Problem& problem, const Allocation& answer, const Effort& effort) {
    std::vector<Unmet> out;
    auto looks = looks_for(problem, effort);
    Limits limits(problem, answer, looks);
    for (std::size_t j = 0; j < problem.pieces.size(); ++j)
        if (!answer.list.makes(j)) out.push_back(reason(problem, answer, j, limits, looks));
    return out;
}

std::vector<Points> worth_of_a_metre(const Problem& problem, const Allocation& answer) {
    std::vector<Points> out;
    for (std::size_t i = 0; i < problem.skeins.size(); ++i) {
        const auto more = allocate(with_more(problem, i, 100), {each}, answer.list);
        out.push_back(more.found() ? std::max<Points>(0, more.list.worth - answer.list.worth) : 0);
    }
    return out;
}

}  // namespace gristwright::allocation
