#include "cli/plan_asked.hpp"

#include "cli/article_asked.hpp"
#include "cli/for_whom.hpp"
#include "cli/roles.hpp"

namespace gristwright::cli {

PlanAsked plan_asked(const Arguments& arguments, const std::string& article, Question& q) {
    const auto played = part_played(arguments, find_template(*q.catalogue, article), q);
    auto sized = size_for(arguments, played, q);
    check_size(arguments, q, played);
    return {judged_plan(played, q), std::move(sized)};
}

}  // namespace gristwright::cli
