// What the notebook holds of a remembered batch beside its measurements: swatches, the work that is
// begun, weighings.
#include <kainjow/mustache.hpp>

#include "catalog/typed/swatch_text.hpp"
#include "cli/output/article_drawing.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/page_sections.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/roles.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t longest_text = 120;  // characters

std::string kept(const std::string& text) { return shortened(inert(text), longest_text); }

PageData swatch_data(const catalog::SwatchText& swatch) {
    std::vector<std::string> measured;
    for (const auto& [what, text] : swatch.measured) measured.push_back(what + " " + kept(text));
    PageData out;
    out.set("kind", swatch.kind == catalog::SwatchText::Kind::knitted ? "Knitted" : "Woven");
    out.set("measured", joined(measured, "; "));
    out.set("date", kept(swatch.date));
    return out;
}

PageData weighing_data(const catalog::WeighingText& weighing) {
    PageData out;
    out.set("worked",
            weighing.row.empty() ? kept(weighing.length) + " woven" : "row " + kept(weighing.row));
    out.set("ball", kept(weighing.ball));
    out.set("date", kept(weighing.date));
    return out;
}

PageData begun_data(const KeptWork& work, Question q) {
    const auto plan = plan_begun(work.arguments, *work.project, q);
    PageData out;
    out.set("title", plan.article->title);
    out.set("size", size_in_words(plan, q.units));
    set_text(out, "started", kept(work.project->started));
    out.set("drawing", card_drawing(plan, q.units).inlined("begun"));
    std::vector<Weighing> weighings;
    for (const auto& text : work.weighings) weighings.push_back(catalog::read_weighing(text));
    if (!weighings.empty() && can_be_charted(plan))
        out.set("chart", weigh_chart(plan, q.yarn, weighings).inlined("weighed"));
    return out;
}

template <class Texts, class Data>
void set_rows(PageData& data, const char* name, const Texts& texts, Data data_of) {
    if (texts.empty()) return;
    PageData rows{PageData::type::list}, section;
    for (const auto& text : texts) rows << data_of(text);
    section.set("each", rows);
    data.set(name, section);
}

}  // namespace

std::string kept_section(const KeptWork& work, const Question& q) {
    if (work.swatches.empty() && !work.project && work.weighings.empty()) return "";
    PageData out;
    set_rows(out, "swatches", work.swatches, swatch_data);
    set_rows(out, "weighings", work.weighings, weighing_data);
    set_text(out, "stands", joined(standings(q.yarn.evidence), "; "));
    if (work.project) out.set("begun", begun_data(work, q));
    return rendered(embedded::page_kept, out);
}

}  // namespace gristwright::cli
