#include "engine/allocation/why.hpp"

#include <algorithm>

#include "engine/allocation/possible.hpp"

namespace gristwright::allocation {
namespace {

const Effort look{2000, 0, {}};  // enough to decide small problems; a larger one stays undecided

bool fits(const Problem& problem) { return possible(problem, look.nodes); }

Problem with_more(Problem problem, std::size_t skein, Cm more) {
    problem.skeins[skein].length += more;
    return problem;
}

// The least in (none, enough], to the decimetre, then the centimetre.
Cm bisected(const Problem& problem, std::size_t skein, Cm none, Cm enough) {
    while (enough - none > 1) {
        const Cm middle = none + (enough - none) / 2;
        (fits(with_more(problem, skein, middle)) ? enough : none) = middle;
    }
    return enough;
}

}  // namespace

std::optional<More> least_more(const Problem& problem, Cm most) {
    std::optional<More> best;
    for (std::size_t i = 0; i < problem.skeins.size(); ++i) {
        const Cm enough = best ? best->length - 1 : most;
        if (enough <= 0 || !fits(with_more(problem, i, enough))) continue;
        best = More{i, bisected(problem, i, 0, enough)};
    }
    return best;
}

std::vector<Unmet> unmet(const Problem& problem, const Allocation& answer) {
    std::vector<Unmet> out;
    for (std::size_t j = 0; j < problem.pieces.size(); ++j) {
        if (answer.list.makes(j)) continue;
        auto forced = problem;
        forced.pieces[j].required = true;
        const auto instead = allocate(forced, look);
        const bool undecided = instead.outcome == Allocation::Outcome::nothing_found;
        const bool can_be_made = instead.found() || (undecided && fits(forced));
        Unmet one{j, binding_limit(problem, answer, j, can_be_made), {}, false, 0, {}};
        if (instead.found()) {
            one.instead = true;
            one.price = answer.list.worth - instead.list.worth;
            for (std::size_t k = 0; k < problem.pieces.size(); ++k)
                if (answer.list.makes(k) && !instead.list.makes(k)) one.loses.push_back(k);
        }
        for (std::size_t k = 0; k < problem.pieces.size(); ++k)
            if (answer.list.makes(k)) forced.pieces[k].required = true;
        if (!fits(forced)) one.beside = least_more(forced);
        out.push_back(std::move(one));
    }
    return out;
}

std::vector<Points> worth_of_a_metre(const Problem& problem, const Allocation& answer) {
    std::vector<Points> out;
    for (std::size_t i = 0; i < problem.skeins.size(); ++i) {
        const auto more = allocate(with_more(problem, i, 100), look, answer.list);
        out.push_back(more.found() ? std::max<Points>(0, more.list.worth - answer.list.worth) : 0);
    }
    return out;
}

}  // namespace gristwright::allocation
