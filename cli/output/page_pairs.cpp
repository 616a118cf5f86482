// The same kind of article knitted and woven, side by side.
#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "cli/output/article_words.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/reason_words.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_pairs = 2;

// Each kind of article that the catalogue has in both crafts.
std::vector<std::vector<JudgedPlan>> kinds_of(const Ranked& ranked) {
    std::map<std::string, std::vector<JudgedPlan>> kinds;
    for (const auto* part : {&ranked.best, &ranked.also, &ranked.short_of, &ranked.unfit})
        for (const auto& judged : *part) kinds[judged.plan.article->article].push_back(judged);
    std::vector<std::vector<JudgedPlan>> out;
    for (auto& [kind, plans] : kinds) {
        const auto pair = best_pair(plans);
        if (pair.knitted && pair.woven) out.push_back(std::move(plans));
    }
    return out;
}

// First where the metres reach for both and both serve, then by what puts the yarn to use.
std::tuple<bool, bool, double> worth(const Pair& pair) {
    const double lesser = std::min(pair.knitted->judgement.score, pair.woven->judgement.score);
    return {
        pair.knitted->plan.reach != Reach::short_of && pair.woven->plan.reach != Reach::short_of,
        serves(lesser) < Serves::poorly,
        std::min(pair.knitted->plan.need.mid.si(), pair.woven->plan.need.mid.si())};
}

PageData pair_rows(const Pair& pair, const Question& q) {
    PageData rows{PageData::type::list};
    const auto row = [&](const std::string& label, auto say) {
        PageData out;
        out.set("label", label);
        out.set("left", capital(say(*pair.knitted)));
        out.set("right", capital(say(*pair.woven)));
        rows << out;
    };
    row("Suitability", [](const JudgedPlan& j) {
        return fmt::format("{:.0f}, {}", j.judgement.score, words(serves(j.judgement.score)));
    });
    row("Size", [&](const JudgedPlan& j) { return size_in_words(j.plan, q.units); });
    row("Metres enough?", [&](const JudgedPlan& j) { return reach_line(j.plan, q.units); });
    row("Made with",
        [&](const JudgedPlan& j) { return making_line(j.plan.pieces.front(), q.units); });
    row("Metres", [&](const JudgedPlan& j) { return q.units.yarn_range(j.plan.need); });
    row("Left over", [&](const JudgedPlan& j) { return q.units.yarn(j.plan.left()); });
    row("Certainty", [](const JudgedPlan& j) { return percent(j.plan.certainty); });
    row("For", [&](const JudgedPlan& j) {
        const auto said = joined(said_in_favour(j.judgement, q.yarn));
        return said.empty() ? std::string("nothing in particular") : said;
    });
    row("Against", [&](const JudgedPlan& j) {
        const auto said = joined(said_against(j.judgement, j.plan, q.yarn));
        return said.empty() ? std::string("nothing much") : said;
    });
    return rows;
}

PageData pair_data(const Pair& pair, const Question& q) {
    PageData out;
    out.set("article", capital(pair.knitted->plan.article->article));
    out.set("left", pair.knitted->plan.article->title);
    out.set("right", pair.woven->plan.article->title);
    out.set("verdict", pair_verdict(*pair.knitted, *pair.woven));
    out.set("rows", pair_rows(pair, q));
    return out;
}

}  // namespace

void add_pairs(PageData& data, const Ranked& ranked, const Question& q) {
    auto kinds = kinds_of(ranked);
    std::stable_sort(kinds.begin(), kinds.end(), [](const auto& a, const auto& b) {
        return worth(best_pair(a)) > worth(best_pair(b));
    });
    PageData out{PageData::type::list};
    for (std::size_t i = 0; i < std::min(kinds.size(), most_pairs); ++i)
        out << pair_data(best_pair(kinds[i]), q);
    data.set("pairs", out);
}

}  // namespace gristwright::cli
