// The line-up on the page: the best few and the next best of other kinds beside a standing figure;
// folded, all the others at the same scale. Each drawing leads to what is said of its article.
#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <set>

#include "cli/output/article_words.hpp"
#include "cli/output/figure.hpp"
#include "cli/output/line_up.hpp"
#include "cli/output/page_parts.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_open = 13;
constexpr double line_up_units = 2;    // to the cm, so that lines are neither thick nor thin
constexpr double line_up_letter = 20;  // units to the size of a letter: 10 cm

struct Halves {
    std::vector<OnPage> open, folded;
};

bool takes_more(const OnPage& a, const OnPage& b) {
    return a.judged->plan.need.mid > b.judged->plan.need.mid;
}

// Open are the cards, then the best of every other kind of article in each craft, those that take
// most of the batch first; what is made to learn from is folded.
Halves halves_of(const Ranked& ranked) {
    const auto cards = best_few(ranked).size();
    std::set<std::pair<std::string, Craft>> kinds;
    std::vector<OnPage> others;
    Halves out;
    for (auto& one : on_page(ranked)) {
        const auto& article = *one.judged->plan.article;
        const bool new_kind =
            !article.sample && kinds.insert({article.article, article.craft}).second;
        auto& place = out.open.size() < cards ? out.open : new_kind ? others : out.folded;
        place.push_back(std::move(one));
    }
    std::stable_sort(others.begin(), others.end(), takes_more);
    for (auto& one : others)
        (out.open.size() < most_open ? out.open : out.folded).push_back(std::move(one));
    return out;
}

PageData line_up_of(const std::vector<OnPage>& half, const Question& q, const std::string& id) {
    std::map<const JudgedPlan*, std::string> places;
    std::vector<const JudgedPlan*> made;
    for (const auto& one : half) {
        made.push_back(one.judged);
        places[one.judged] = one.id;
    }
    PageData each{PageData::type::list}, out;
    for (const auto& lined_up : line_up(made, q)) {
        PageData one;
        one.set("to", places[lined_up.judged]);
        one.set("title", lined_up.judged->plan.article->title);
        one.set("size", size_in_words(lined_up, q.units));
        one.set("drawing", drawn(lined_up, line_up_units).silent(line_up_letter));
        each << one;
    }
    out.set("each", each);
    out.set("figure", drawn_figure(line_up_units).inlined(id, line_up_letter));
    out.set("tall", q.units.size(centimetres(figure_height)));
    return out;
}

}  // namespace

void add_line_up(PageData& data, const Ranked& ranked, const Question& q) {
    const auto half = halves_of(ranked).open;
    if (!half.empty()) data.set("lineup", line_up_of(half, q, "figure"));
}

void add_line_up_of_rest(PageData& data, const Ranked& ranked, const Question& q) {
    const auto half = halves_of(ranked).folded;
    if (!half.empty()) data.set("lineuprest", line_up_of(half, q, "figurerest"));
}

}  // namespace gristwright::cli
