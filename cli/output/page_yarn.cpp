// The yarn in figures, and what all of it rests on.
#include <fmt/core.h>

#include <algorithm>

#include "cli/output/charts.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/yarn_words.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t longest_skein_on_page = 60;  // characters

std::string grists(const Estimate<LinearDensity>& d, const Units& units) {
    const auto yards = grist_words(d, "yards per pound", 0);
    if (units.imperial()) return yards;
    return grist_words(d, "metres per gram", 2) + (units.both() ? "; " + yards : "") + "; " +
           grist_words(d, "tex", 0);
}

PageData facts(const Question& q) {
    const auto& y = q.yarn;
    PageData out{PageData::type::list};
    out << term("Length, washed", q.units.yarn_range(y.length))
        << term("Mass", q.units.mass(y.mass)) << term("Grist", grists(y.linear_density, q.units));
    if (y.wraps_measured)
        out << term("Wraps, laid", fmt::format("{:.1f} wpi ({:.1f} to {:.1f})",
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

PageData skein_rows(const Question& q) {
    PageData out{PageData::type::list};
    const char* system = q.units.imperial() ? "yards per pound" : "metres per gram";
    for (const auto& skein : q.yarn.skeins) {
        PageData row;
        row.set("name", shortened(inert(skein.name), longest_skein_on_page));
        row.set("length", q.units.yarn(skein.length));
        row.set("mass", q.units.weighed(skein.mass));
        row.set("grist", grist_words(skein.linear_density, system, q.units.imperial() ? 0 : 2));
        out << row;
    }
    return out;
}

PageData trait_rows(const YarnProfile& yarn) {
    PageData out{PageData::type::list};
    for (std::size_t t = 0; t < trait_count; ++t) {
        auto reasons = yarn.traits[t].reasons;
        reasons.resize(std::min<std::size_t>(2, reasons.size()));
        PageData row;
        row.set("name", capital(std::string(words(static_cast<TraitName>(t)))));
        row.set("value", fmt::format("{:.2f}", yarn.traits[t].value));
        row.set("bar", share_bar(yarn.traits[t].value).silent());
        row.set("reasons", joined(reasons));
        out << row;
    }
    return out;
}

}  // namespace

void add_yarn(PageData& data, const Question& q) {
    data.set("facts", facts(q));
    data.set("classes", class_chart(q.yarn, q.catalogue->yarn, q.units).inlined("classes"));
    data.set("table", skein_rows(q));
    if (q.yarn.skeins.size() > 1)
        data.set("skeins", skein_chart(q.yarn, q.units).inlined("skeins"));
    data.set("traits", trait_rows(q.yarn));
}

void add_ground(PageData& data, const std::vector<const JudgedPlan*>& best, const Question& q) {
    set_list(data, "assumed", assumptions(q.yarn, q.units));
    set_list(data, "sharpen", hints(q.yarn));
    PageData sources{PageData::type::list};
    for (const auto& one : leaned_on(q, best)) {
        PageData row;
        row.set("what", capital(one.what));
        row.set("mark", one.mark);
        row.set("source", one.source);
        sources << row;
    }
    data.set("sources", sources);
}

}  // namespace gristwright::cli
