#include "engine/allocation/limit.hpp"

#include <utility>

#include "engine/allocation/checker.hpp"
#include "engine/allocation/possible.hpp"

namespace gristwright::allocation {
namespace {

Problem without_bonus(Problem p) {
    for (auto& skein : p.skeins) skein.bonus = 0;
    return p;
}
Problem without_reserve(Problem p) {
    p.reserve = 0;
    return p;
}
Problem without_relations(Problem p) {
    p.same.clear();
    p.different.clear();
    p.mismatch.clear();
    return p;
}
Problem without_shortest(Problem p) {
    p.shortest = 0;
    return p;
}
Problem with_joins(Problem p) {
    for (auto& piece : p.pieces) piece.max_joins = static_cast<int>(p.skeins.size());
    return p;
}

}  // namespace

Limit Limits::binding(std::size_t piece, bool can_be_made) {
    if (can_be_made) {
        if (!any_skein_broken_) {
            const auto free = without_bonus(problem_);
            auto known = answer_.list;
            known.worth = worth(free, known);
            any_skein_broken_ = looks_.best(free, &known).list;
        }
        return any_skein_broken_->makes(piece) ? Limit::whole_skein : Limit::worth;
    }
    auto forced = problem_;
    forced.pieces.at(piece).required = true;
    for (const auto& [limit, relaxed] :
         {std::pair{Limit::reserve, without_reserve(forced)},
          {Limit::relation, without_relations(forced)},
          {Limit::shortest, without_shortest(forced)},
          {Limit::joins, with_joins(forced)},
          {Limit::cut_up,
           without_reserve(without_shortest(with_joins(without_relations(forced))))}})
        if (looks_.possible(relaxed)) return limit;
    return Limit::metres;
}

}  // namespace gristwright::allocation
