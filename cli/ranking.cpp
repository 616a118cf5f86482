#include "cli/ranking.hpp"

namespace gristwright::cli {

Ranked rank(const Question& q, std::string_view craft) {
    std::vector<JudgedPlan> plans;
    for (const auto& article : q.catalogue.templates)
        if (craft.empty() || craft == words(article.craft))
            plans.push_back(judged_plan(article, q));
    return sorted_out(std::move(plans));
}

}  // namespace gristwright::cli
