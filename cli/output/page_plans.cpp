// What the batch makes: the best few as cards with a drawing, then everything in tables.
#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "cli/output/article_drawing.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/figure.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/line_up.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/reason_words.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_row = 40, most_short = 12;

constexpr double line_up_units = 2;    // to the cm, so that lines are neither thick nor thin
constexpr double line_up_letter = 20;  // units to the size of a letter: 10 cm

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
    out.set("reach", capital(reach_line(p, q.units)));
    out.set("uses", q.units.yarn_range(p.need));
    out.set("share", percent(p.need.mid / p.have.mid));
    out.set("bar", batch_share_bar(p).silent());
    out.set("left", q.units.yarn(p.left()));
    out.set("making", making_line(p.pieces.front(), q.units));
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
                   std::size_t place) {
    auto out = plan_data(judged, q);
    const auto id = card_id(place);
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
    out.set("minded", minded.of(judged, q));
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

void add_line_up(PageData& data, const Ranked& ranked, const Question& q) {
    std::map<const JudgedPlan*, std::string> places;
    std::vector<const JudgedPlan*> made;
    for (const auto& one : on_page(ranked)) {
        made.push_back(one.judged);
        places[one.judged] = one.id;
    }
    const auto all = line_up(made, q);
    if (all.empty()) return;
    PageData each{PageData::type::list}, out;
    for (const auto& lined_up : all) {
        PageData one;
        one.set("to", places[lined_up.judged]);
        one.set("title", lined_up.judged->plan.article->title);
        one.set("size", size_in_words(lined_up, q.units));
        one.set("drawing", drawn(lined_up, line_up_units).silent(line_up_letter));
        each << one;
    }
    out.set("each", each);
    out.set("figure", drawn_figure(line_up_units).inlined("figure", line_up_letter));
    out.set("tall", q.units.size(centimetres(figure_height)));
    data.set("lineup", out);
}

void add_plans(PageData& data, const Ranked& ranked, const Minded& minded, const Question& q) {
    PageData cards{PageData::type::list};
    const auto best = best_few(ranked);
    for (std::size_t i = 0; i < best.size(); ++i) cards << card_data(*best[i], minded, q, i);
    data.set("best", cards);
    data.set("parts", parts(ranked, q));
    set_list(data, "set", set_lines(best_set_of(ranked), q));
    set_list(data, "short", short_lines(ranked, q));
}

}  // namespace gristwright::cli
