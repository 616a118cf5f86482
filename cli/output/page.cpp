#include "cli/output/page.hpp"

#include <fmt/core.h>

#include "catalog/typed/colour_reading.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/svg.hpp"
#include "cli/output/yarn_words.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t longest_name_on_page = 120;  // characters
constexpr std::size_t most_best = 4;

PageData link(const char* to, const char* words) {
    PageData out;
    out.set("to", to);
    out.set("words", words);
    return out;
}

void add_contents(PageData& data, const PageSections& sections) {
    PageData out{PageData::type::list};
    out << link("cloth", "Cloth") << link("makes", "What it makes")
        << link("both", "Knit or weave");
    if (!sections.two.empty()) out << link("two", "Two yarns");
    if (!sections.split.empty()) out << link("split", "The split");
    if (!sections.answers.empty()) out << link("answers", "Answers");
    if (!sections.kept.empty()) out << link("kept", "The work so far");
    out << link("yarn", "The yarn") << link("mind", "Mind") << link("ground", "What this rests on");
    data.set("contents", out);
}

void add_head(PageData& data, const std::vector<const JudgedPlan*>& best, const Question& q) {
    const auto& name = q.measured.batch.name;
    data.set("name", name.empty() ? "Your batch" : shortened(inert(name), longest_name_on_page));
    data.set("page_style", std::string(embedded::page_style));
    data.set("picture_style", std::string(embedded::picture_style));
    data.set("answer", answer_in_words(q, best));
    set_text(data, "which", capital(q.which_yarn));
    data.set("asked", percent(q.request.certainty));
}

// Drawings in the yarn's own colour, lines that stand out from it; a strip of all its colours.
void add_colours(PageData& data, const Question& q) {
    const auto& colours = q.measured.colours;
    if (colours.empty()) return;
    const auto& first = colours.front();
    const bool dark = 0.2126 * first.red + 0.7152 * first.green + 0.0722 * first.blue < 0.45;
    data.set("own_style", fmt::format(".piece:not(.other) {{ fill: {}; stroke: {}; }}",
                                      catalog::hexadecimal(first), dark ? "#f8f3e8" : "#33271e"));
    Svg strip(240, 14, "", "");
    const double wide = strip.width() / double(colours.size());
    for (std::size_t i = 0; i < colours.size(); ++i)
        strip.fill({wide * double(i), 0}, wide, strip.height(), catalog::hexadecimal(colours[i]));
    data.set("strip", strip.silent(16));
}

PageData everything(const Question& q, const Ranked& ranked, const SheetCommand& sheet) {
    const auto best = best_few(ranked);
    const Minded minded(q, best);
    PageData out;
    add_head(out, best, q);
    add_colours(out, q);
    add_cloth(out, ranked, q);
    add_line_up(out, ranked, q);
    add_plans(out, ranked, minded, q, sheet);
    add_rest(out, ranked, minded, q);
    add_pairs(out, ranked, q);
    add_yarn(out, q);
    set_list(out, "mind", minded.all());
    add_ground(out, best, q);
    return out;
}

}  // namespace

void set_list(PageData& data, const std::string& name, const std::vector<std::string>& said) {
    if (said.empty()) return;
    PageData section;
    section.set("each", lines_of(said));
    data.set(name, section);
}

void set_text(PageData& data, const std::string& name, const std::string& text) {
    if (!text.empty()) data.set(name, text);
}

PageData term(const std::string& name, const std::string& said) {
    PageData out;
    out.set("term", name);
    out.set("said", said);
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

std::vector<const JudgedPlan*> all_made(const Ranked& ranked) {
    std::vector<const JudgedPlan*> out;
    for (const auto* part : {&ranked.best, &ranked.also, &ranked.samples})
        for (const auto& judged : *part) out.push_back(&judged);
    return out;
}

std::string page(const Question& q, const Ranked& ranked, const PageSections& sections) {
    auto data = everything(q, ranked, sections.sheet);
    add_contents(data, sections);
    set_text(data, "two", sections.two);
    set_text(data, "split", sections.split);
    set_text(data, "answers", sections.answers);
    set_text(data, "kept", sections.kept);
    set_text(data, "poster", sections.poster);
    return rendered(embedded::page_template, data);
}

}  // namespace gristwright::cli
