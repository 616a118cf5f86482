#include "cli/output/sheet.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <kainjow/mustache.hpp>

#include "cli/output/article_drawing.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/ball_ladder.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/shaping_words.hpp"
#include "cli/output/sheet_parts.hpp"
#include "cli/output/steps.hpp"
#include "engine/cloth/spacing_words.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t longest_name_on_sheet = 40;  // characters

PageData figure(const std::string& value, const std::string& label) {
    PageData out;
    out.set("value", value);
    out.set("label", label);
    return out;
}

void add_knitted(PageData& out, const PlanPiece& p, const KnitCloth& k, const Units& units) {
    const bool inch = units.imperial();
    const auto needle = needle_known(k);
    out << figure(needle_words(needle, units),
                  needle.si() > 0 ? "needles, after a swatch" : "needles")
        << figure(inch ? fmt::format("{:.1f} x {:.1f}", in_stitches_per_inch(k.stitches),
                                     in_stitches_per_inch(k.rows))
                       : fmt::format("{:.0f} x {:.0f}", in_stitches_per_10cm(k.stitches),
                                     in_stitches_per_10cm(k.rows)),
                  fmt::format("stitches and {}s to {}, washed", row_word(p),
                              inch ? "an inch" : "10 cm"))
        << figure(fmt::format("{} st", p.stitches),
                  fmt::format("of the {}{}", p.piece->name,
                              stitches_words(p).ends_with("widest") ? ", at its widest" : ""))
        << figure(fmt::format("{}", p.rows),
                  fmt::format("{}s of the {}", row_word(p), p.piece->name));
}

void add_woven(PageData& out, const PlanPiece& p, const WovenCloth& w, const Units& units) {
    const bool inch = units.imperial();
    const double picks = p.panel.picks / p.panel.woven_length.si();  // to a metre
    out << figure(fmt::format("{} ends", p.panel.ends), fmt::format("in the {}", spacing_words(w)))
        << figure(units.size(p.warp / p.panel.ends), "each end of the warp, its waste included")
        << figure(units.size(p.panel.reed_width), "wide on the loom")
        << figure(fmt::format("{:.0f}", inch ? picks * in_metres(inches(1)) : picks / 10),
                  fmt::format("picks to {}, tension let off", inch ? "an inch" : "10 cm"));
}

// How much of a side the words take decides how small they are printed.
const char* room_for(const std::vector<std::string>& steps, const Plan& plan,
                     const std::string& mind) {
    constexpr std::size_t line = 75, roomy = 24, dense = 34;  // characters; lines
    std::size_t lines = plan.pieces.size() * 3 + mind.size() / (2 * line);
    for (const auto& step : steps) lines += 1 + step.size() / line;
    return lines <= roomy ? "roomy" : lines <= dense ? "dense" : "full";
}

std::string sentence_of(std::string said) {
    said = capital(std::move(said));
    return said.empty() || said.back() == '.' ? said : said + ".";
}

std::string minded(const Plan& plan, const Question& q) {
    std::vector<std::string> said;
    for (const auto& one : own_cautions(plan, q.yarn, q.units)) said.push_back(sentence_of(one));
    auto care = briefs(cautions_on(q, {plan.article.get()}));
    if (!care.empty()) said.push_back(capital(joined(care, "; ")) + ".");
    return joined(said, " ");
}

}  // namespace

PageData five_figures(const Plan& plan, const Question& q) {
    PageData out{PageData::type::list};
    const auto& first = plan.pieces.front();
    if (first.knit) add_knitted(out, first, *first.knit, q.units);
    if (first.woven) add_woven(out, first, *first.woven, q.units);
    const auto aside = set_aside_for(plan);
    out << figure(
        q.units.yarn(aside),
        fmt::format("of yarn to set aside, {}", q.units.mass(aside * q.yarn.linear_density.mid)));
    return out;
}

std::string sheet(const JudgedPlan& judged, const Question& q) {
    const auto& plan = judged.plan;
    const auto& name = q.measured.batch.name;
    const auto steps = steps_of(plan, q.units);
    const auto mind = minded(plan, q);
    PageData out;
    out.set("style", std::string(embedded::picture_style) + std::string(embedded::sheet_style));
    out.set("title", plan.article->title);
    out.set("batch", name.empty() ? "Your batch" : shortened(inert(name), longest_name_on_sheet));
    out.set("size", size_in_words(plan, q.units));
    out.set("chance", percent(plan.certainty));
    out.set("room", std::string(room_for(steps, plan, mind)));
    out.set("drawing", card_drawing(plan, q.units).inlined("article"));
    out.set("five", five_figures(plan, q));
    out.set("steps", lines_of(steps));
    if (plan.reach == Reach::short_of) out.set("short", capital(reach_line(plan, q.units)) + ".");
    add_wind_off(out, plan, q);
    add_rungs(out, plan, q);
    add_squares(out, plan, q);
    if (!mind.empty()) out.set("mind", mind);
    return rendered(embedded::sheet_template, out);
}

}  // namespace gristwright::cli
