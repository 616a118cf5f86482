#include "cli/other_cuts.hpp"

#include "cli/roles.hpp"
#include "engine/project/role.hpp"

namespace gristwright::cli {

std::optional<Plan> shared_plan(const allocation::Split& split, const SplitAsked& asked) {
    for (std::size_t w = 0; w < split.parts.size(); ++w) {
        const auto& wish = asked.request.wishes[w];
        if (!wish.main || !split.parts[w].made) continue;
        auto plan = wish.at_size(split.parts[w].size);
        if (plan.second_yarn.si() > 0) return plan;
    }
    return {};
}

std::optional<OtherCuts> other_cuts(const Arguments& arguments, const Plan& shared,
                                    const SplitAsked& first, const Question& q) {
    if (yarn_of_same_batch(arguments).empty()) return {};
    OtherCuts out{of_other_yarn(arguments, q), {}, {}};
    out.question.request.other = as_other("the first", q.yarn);
    auto article = rest_of(*shared.article);
    article.smallest = article.largest = shared.size;
    out.asked.request = first.request;
    out.asked.request.wishes.clear();
    out.asked.request.reserve = {};
    out.asked.effort = first.effort;
    add_article(out.asked, out.question, article, true);
    out.split = split_for(out.asked, out.question);
    return out;
}

}  // namespace gristwright::cli
