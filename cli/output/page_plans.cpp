// What the batch makes: the best few as cards with a drawing, then everything in tables.
#include <fmt/core.h>

#include <algorithm>

#include "cli/output/article_drawing.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/reason_words.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_row = 40, most_short = 12;

std::string card_id(std::size_t place) { return fmt::format("best{}", place); }

PageData plan_data(const JudgedPlan& judged, const Question& q) {
    const auto& p = judged.plan;
    PageData out;
    out.set("title", p.article->title);
    out.set("craft", std::string(words(p.article->craft)));
    out.set("about", p.article->about);
    out.set("score", fmt::format("{:.0f}", judged.judgement.score));
    out.set("serves", std::string(words(serves(judged.judgement.score))));
    out.set("size", size_in_words(p, q.units));
    out.set("reach", kept_together(capital(reach_line(p, q.units))));
    out.set("uses", kept_together(q.units.yarn_range(p.need)));
    out.set("share", kept_together(percent(p.need.mid / p.have.mid)));
    out.set("bar", batch_share_bar(p).silent());
    out.set("left", q.units.yarn(p.left()));
    out.set("making", kept_together(making_line(p.pieces.front(), q.units)));
    out.set("chance", percent(p.certainty));
    return out;
}

std::string obstacles(const Plan& plan) {
    std::vector<std::string> said;
    for (const auto obstacle : plan.obstacles) said.emplace_back(words(obstacle));
    return joined(said, "; ");
}

// Where there is more than enough at every size a curve says nothing.
bool curve_tells(const Plan& plan) { return plan.certainty_at(plan.article->largest) < 0.995; }

std::string lost_words(const Judgement& judged) {
    const auto met = fully_met(judged);
    return met.empty() ? "" : "Fully met: " + joined(met) + ".";
}

PageData card_data(const JudgedPlan& judged, const Minded& minded, const Question& q,
                   const std::string& id) {
    auto out = plan_data(judged, q);
    out.set("id", id);
    out.set("drawing", card_drawing(judged.plan, q.units).inlined("drawing" + id));
    if (curve_tells(judged.plan))
        out.set("curve", certainty_chart(judged.plan, q.units).inlined("curve" + id));
    else
        out.set("plenty", fmt::format("Over 99 % sure at any size up to {}.",
                                      q.units.size(judged.plan.article->largest)));
    if (!points_lost(judged.judgement).empty())
        out.set("factors", lost_chart(judged.judgement).inlined("factors" + id));
    set_text(out, "met", lost_words(judged.judgement));
    set_text(out, "pro", capital(joined(said_in_favour(judged.judgement, q.yarn))));
    set_text(out, "con", capital(joined(said_against(judged.judgement, judged.plan, q.yarn))));
    set_text(out, "stands", capital(obstacles(judged.plan)));
    if (auto own = minded.of(judged); own.list_value().size() > 0) {
        PageData also;
        also.set("each", own);
        out.set("also", also);
    }
    return out;
}

PageData part_data(const std::string& title, const std::vector<JudgedPlan>& plans,
                   const Question& q, const std::string& id) {
    PageData rows{PageData::type::list};
    for (std::size_t i = 0; i < std::min(plans.size(), most_row); ++i) {
        auto row = plan_data(plans[i], q);
        row.set("id", fmt::format("{}{}", id, i));
        rows << row;
    }
    PageData out;
    out.set("title", title);
    out.set("rows", rows);
    if (plans.size() > most_row) out.set("more", fmt::format("{}", plans.size() - most_row));
    return out;
}

PageData parts(const Ranked& ranked, const Question& q) {
    PageData out{PageData::type::list};
    const auto add = [&](const char* title, const auto& plans, const char* id) {
        if (!plans.empty()) out << part_data(title, plans, q, id);
    };
    add("What it is for", ranked.best, "large");
    add("Also serves", ranked.also, "small");
    add("To learn from", ranked.samples, "sample");
    return out;
}

std::vector<std::string> set_lines(const BestSet& set, const Question& q) {
    std::vector<std::string> out;
    if (set.members.size() < 2) return out;
    for (const auto& m : set.members)
        out.push_back(fmt::format("{} ({}), {} {}, {}", m.article->title, words(m.article->craft),
                                  m.article->measure, q.units.size(m.size), q.units.yarn(m.need)));
    out.push_back(fmt::format("Together {} of {}; chance that it reaches {}",
                              q.units.yarn(set.need), q.units.yarn(q.yarn.length.mid),
                              percent(set.certainty)));
    return out;
}

std::vector<std::string> short_lines(const Ranked& ranked, const Question& q) {
    std::vector<std::string> out;
    for (const auto& judged : ranked.short_of)
        out.push_back(fmt::format("{} ({}) by {}", judged.plan.article->title,
                                  words(judged.plan.article->craft),
                                  q.units.yarn(judged.plan.short_by)));
    if (out.size() > most_short) out.resize(most_short);
    return out;
}

}  // namespace

std::vector<OnPage> on_page(const Ranked& ranked) {
    std::vector<OnPage> out;
    const auto best = best_few(ranked);
    for (std::size_t i = 0; i < best.size(); ++i) out.push_back({best[i], card_id(i)});
    const auto add = [&](const std::vector<JudgedPlan>& plans, const char* id) {
        for (std::size_t i = 0; i < std::min(plans.size(), most_row); ++i)
            if (std::find(best.begin(), best.end(), &plans[i]) == best.end())
                out.push_back({&plans[i], fmt::format("{}{}", id, i)});
    };
    add(ranked.best, "large");
    add(ranked.also, "small");
    add(ranked.samples, "sample");
    return out;
}

void add_plans(PageData& data, const Ranked& ranked, const Minded& minded, const Question& q,
               const SheetCommand& sheet) {
    PageData cards{PageData::type::list};
    const auto best = best_few(ranked);
    for (std::size_t i = 0; i < best.size(); ++i) {
        auto card = card_data(*best[i], minded, q, card_id(i));
        if (sheet) set_text(card, "sheet", sheet(best[i]->plan.article->name));
        cards << card;
    }
    data.set("best", cards);
    if (auto shared = minded.of_all(); shared.list_value().size() > 0) {
        PageData section;
        section.set("each", shared);
        data.set("shared", section);
    }
    set_list(data, "set", set_lines(best_set_of(ranked), q));
}

void add_rest(PageData& data, const Ranked& ranked, const Minded& minded, const Question& q) {
    const auto made = all_made(ranked);
    if (made.size() <= best_few(ranked).size() && ranked.short_of.empty()) return;
    PageData out;
    out.set("count", fmt::format("{}", made.size()));
    add_line_up_of_rest(out, ranked, q);
    out.set("parts", parts(ranked, q));
    set_list(out, "short", short_lines(ranked, q));
    const auto more = more_to_mind(q, made, minded);
    set_list(out, "more_mind", more);
    out.set("from", fmt::format("{}", minded.all().size() + 1));
    data.set("rest", out);
}

}  // namespace gristwright::cli
