#include "cli/output/page.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <kainjow/mustache.hpp>
#include <map>

#include "cli/output/charts.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/html.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/yarn_words.hpp"
#include "engine/suitability/reasons.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

using Data = PageData;

constexpr std::size_t most_best = 4, most_pairs = 2, most_row = 12;
constexpr std::size_t longest_name = 120;  // characters

// A section that stands only when there is something in it.
void set_list(Data& data, const std::string& name, const std::vector<std::string>& said) {
    if (said.empty()) return;
    Data section;
    section.set("each", lines_of(said));
    data.set(name, section);
}

Data term(const std::string& name, const std::string& said) {
    Data out;
    out.set("term", name);
    out.set("said", said);
    return out;
}

std::string grist_words(const Estimate<LinearDensity>& d, std::string_view system, int decimals) {
    const auto& s = count_system(system);
    const double a = count_of(d.low(), s), b = count_of(d.high(), s);
    return fmt::format("{:.{}f} {} ({:.{}f} to {:.{}f})", count_of(d.mid, s), decimals, s.symbol,
                       std::min(a, b), decimals, std::max(a, b), decimals);
}

Data facts(const Question& q) {
    const auto& y = q.yarn;
    Data out{Data::type::list};
    out << term("Length, washed", q.units.yarn_range(y.length))
        << term("Mass", q.units.mass(y.mass))
        << term("Grist", grist_words(y.linear_density, "metres per gram", 2) + "; " +
                             grist_words(y.linear_density, "yards per pound", 0) + "; " +
                             grist_words(y.linear_density, "tex", 0));
    if (y.wraps_measured)
        out << term("Wraps, laid", fmt::format("{:.1f} per inch ({:.1f} to {:.1f})",
                                               in_wraps_per_inch(y.laid_wraps.mid),
                                               in_wraps_per_inch(y.laid_wraps.low()),
                                               in_wraps_per_inch(y.laid_wraps.high())));
    out << term("Weight class", capital(class_line(y)));
    if (y.fibre_diameter)
        out << term("Fibre", fmt::format("{:.1f} micron{}", in_microns(*y.fibre_diameter),
                                         y.grade.empty() ? "" : ", wool grade " + y.grade));
    out << term("Skeins", capital(agreement_line(y.agreement)));
    return out;
}

Data traits(const YarnProfile& yarn) {
    Data out{Data::type::list};
    for (std::size_t t = 0; t < trait_count; ++t) {
        const auto name = std::string(words(static_cast<TraitName>(t)));
        auto reasons = yarn.traits[t].reasons;
        reasons.resize(std::min<std::size_t>(2, reasons.size()));
        Data row;
        row.set("name", capital(name));
        row.set("value", fmt::format("{:.2f}", yarn.traits[t].value));
        row.set("bar", share_bar(yarn.traits[t].value, name).inlined(fmt::format("trait{}", t)));
        row.set("reasons", joined(reasons));
        out << row;
    }
    return out;
}

std::string score_bar(const JudgedPlan& judged, const std::string& id) {
    return share_bar(judged.judgement.score / 100,
                     fmt::format("suitability {:.0f} of 100", judged.judgement.score))
        .inlined(id);
}

Data plan_data(const JudgedPlan& judged, const Question& q, const std::string& id) {
    const auto& p = judged.plan;
    Data out;
    out.set("title", p.article->title);
    out.set("craft", std::string(words(p.article->craft)));
    out.set("about", p.article->about);
    out.set("score", fmt::format("{:.0f}", judged.judgement.score));
    out.set("serves", std::string(words(serves(judged.judgement.score))));
    out.set("bar", score_bar(judged, "bar" + id));
    out.set("measure", p.article->measure);
    out.set("size", q.units.size(p.size));
    out.set("reach", capital(reach_line(p, q.units)));
    out.set("uses", q.units.yarn_range(p.need));
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

void set_text(Data& data, const std::string& name, const std::string& text) {
    if (!text.empty()) data.set(name, text);
}

Data best_data(const JudgedPlan& judged, const Question& q, const std::string& id) {
    auto out = plan_data(judged, q, id);
    out.set("curve", certainty_chart(judged.plan, q.units).inlined("curve" + id));
    out.set("factors", factor_chart(judged.judgement).inlined("factors" + id));
    set_text(out, "pro", capital(joined(in_favour(judged.judgement, q.yarn))));
    set_text(out, "con", capital(joined(against(judged.judgement, judged.plan, q.yarn))));
    set_text(out, "stands", capital(obstacles(judged.plan)));
    set_list(out, "beware", own_cautions(judged.plan, q.yarn));
    return out;
}

// Of all that the page offers, each caution once.
std::vector<std::string> minded(const Ranked& ranked, const Question& q) {
    std::vector<const Template*> articles;
    for (const auto* part : {&ranked.best, &ranked.also, &ranked.samples, &ranked.short_of})
        for (const auto& judged : *part) articles.push_back(judged.plan.article.get());
    auto out = yarn_cautions(q.yarn);
    for (auto& said : whole(cautions_on(q, articles))) out.push_back(std::move(said));
    return out;
}

std::vector<const JudgedPlan*> best_few(const Ranked& ranked) {
    std::vector<const JudgedPlan*> out;
    for (const auto& judged : ranked.best)
        if (out.size() + 1 < most_best) out.push_back(&judged);
    for (const auto& judged : ranked.also)
        if (out.size() < most_best) out.push_back(&judged);
    return out;
}

Data all_best(const std::vector<const JudgedPlan*>& best, const Question& q) {
    Data out{Data::type::list};
    for (std::size_t i = 0; i < best.size(); ++i)
        out << best_data(*best[i], q, fmt::format("best{}", i));
    return out;
}

Data part_data(const std::string& title, const std::vector<JudgedPlan>& plans, const Question& q,
               const std::string& id) {
    Data rows{Data::type::list};
    for (std::size_t i = 0; i < std::min(plans.size(), most_row); ++i)
        rows << plan_data(plans[i], q, fmt::format("{}{}", id, i));
    Data out;
    out.set("title", title);
    out.set("rows", rows);
    if (plans.size() > most_row) out.set("more", fmt::format("{}", plans.size() - most_row));
    return out;
}

Data parts(const Ranked& ranked, const Question& q) {
    Data out{Data::type::list};
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
    if (out.size() > most_row) out.resize(most_row);
    return out;
}

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

// A pair is worth showing by its lesser half, and first when the metres reach for both.
std::pair<bool, double> worth(const Pair& pair) {
    return {
        pair.knitted->plan.reach != Reach::short_of && pair.woven->plan.reach != Reach::short_of,
        std::min(pair.knitted->judgement.score, pair.woven->judgement.score)};
}

Data pair_rows(const Pair& pair, const Question& q) {
    Data rows{Data::type::list};
    const auto row = [&](const std::string& label, auto say) {
        Data out;
        out.set("label", label);
        out.set("left", capital(say(*pair.knitted)));
        out.set("right", capital(say(*pair.woven)));
        rows << out;
    };
    row("Suitability", [](const JudgedPlan& j) {
        return fmt::format("{:.0f}, {}", j.judgement.score, words(serves(j.judgement.score)));
    });
    row("Size", [&](const JudgedPlan& j) { return reach_line(j.plan, q.units); });
    row("Made with",
        [&](const JudgedPlan& j) { return making_line(j.plan.pieces.front(), q.units); });
    row("Metres", [&](const JudgedPlan& j) { return q.units.yarn_range(j.plan.need); });
    row("Left over", [&](const JudgedPlan& j) { return q.units.yarn(j.plan.left()); });
    row("Certainty", [](const JudgedPlan& j) { return percent(j.plan.certainty); });
    row("For", [&](const JudgedPlan& j) {
        const auto said = joined(in_favour(j.judgement, q.yarn));
        return said.empty() ? std::string("nothing in particular") : said;
    });
    row("Against", [&](const JudgedPlan& j) {
        const auto said = joined(against(j.judgement, j.plan, q.yarn));
        return said.empty() ? std::string("nothing much") : said;
    });
    return rows;
}

Data pair_data(const Pair& pair, const Question& q) {
    Data out;
    out.set("article", capital(pair.knitted->plan.article->article));
    out.set("left", pair.knitted->plan.article->title);
    out.set("right", pair.woven->plan.article->title);
    out.set("verdict", pair_verdict(*pair.knitted, *pair.woven));
    out.set("rows", pair_rows(pair, q));
    return out;
}

Data pairs(const Ranked& ranked, const Question& q) {
    auto kinds = kinds_of(ranked);
    std::stable_sort(kinds.begin(), kinds.end(), [](const auto& a, const auto& b) {
        return worth(best_pair(a)) > worth(best_pair(b));
    });
    Data out{Data::type::list};
    for (std::size_t i = 0; i < std::min(kinds.size(), most_pairs); ++i)
        out << pair_data(best_pair(kinds[i]), q);
    return out;
}

Data sources(const Question& q, const std::vector<const JudgedPlan*>& best) {
    Data out{Data::type::list};
    for (const auto& one : leaned_on(q, best)) {
        Data row;
        row.set("what", capital(one.what));
        row.set("mark", one.mark);
        row.set("source", one.source);
        out << row;
    }
    return out;
}

Data everything(const Question& q, const Ranked& ranked) {
    const auto& name = q.measured.batch.name;
    const auto best = best_few(ranked);
    Data out;
    out.set("name", name.empty() ? "Your batch" : shortened(inert(name), longest_name));
    out.set("page_style", std::string(embedded::page_style));
    out.set("picture_style", std::string(embedded::picture_style));
    out.set("glance", fmt::format("{} in {} skein{}", q.units.yarn(q.yarn.length.mid),
                                  q.yarn.skeins.size(), q.yarn.skeins.size() == 1 ? "" : "s"));
    out.set("facts", facts(q));
    out.set("classes", class_chart(q.yarn, q.catalogue.yarn, q.units).inlined("classes"));
    if (q.yarn.skeins.size() > 1) out.set("skeins", skein_chart(q.yarn, q.units).inlined("skeins"));
    out.set("traits", traits(q.yarn));
    out.set("asked", percent(q.request.certainty));
    out.set("best", all_best(best, q));
    out.set("parts", parts(ranked, q));
    out.set("pairs", pairs(ranked, q));
    set_list(out, "set", set_lines(best_set_of(ranked), q));
    set_list(out, "short", short_lines(ranked, q));
    set_list(out, "mind", minded(ranked, q));
    set_list(out, "assumed", assumptions(q.yarn, q.units));
    set_list(out, "sharpen", hints(q.yarn));
    out.set("sources", sources(q, best));
    return out;
}

}  // namespace

std::string page(const Question& q, const Ranked& ranked, const PageSections& sections) {
    auto data = everything(q, ranked);
    set_text(data, "split", sections.split);
    set_text(data, "answers", sections.answers);
    return rendered(embedded::page_template, data);
}

}  // namespace gristwright::cli
