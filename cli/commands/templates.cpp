#include "cli/commands/templates.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "catalog/reference/choices.hpp"
#include "catalog/reference/own_templates.hpp"
#include "catalog/reference/source.hpp"
#include "catalog/text/nearest.hpp"
#include "cli/article_asked.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/question.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

std::string sizes(const Template& t, const Units& units) {
    return fmt::format("{} {} to {}, ideal {}", t.measure, units.size(t.smallest),
                       units.size(t.largest), units.size(t.ideal));
}

std::string list(const catalog::Catalogue& catalogue, const Units& units) {
    std::string out;
    for (const auto craft : {Craft::knitted, Craft::woven}) {
        out += heading(capital(std::string(words(craft)))) + "\n";
        for (const auto& t : catalogue.templates)
            if (t.craft == craft)
                out += fmt::format("  {}{}\n", padded(t.name, 26), sizes(t, units)) +
                       (t.origin == "built in" ? "" : "    yours: " + inert(t.origin) + "\n");
    }
    return out + fmt::format("{} templates. One of them: gristwright templates show NAME\n",
                             catalogue.templates.size());
}

std::string piece_line(const PieceTemplate& p, const Units& units) {
    const auto size = one_measure(p.outline.shape) ? units.size(p.outline.width)
                                                   : units.sizes(p.outline.width, p.outline.length);
    return fmt::format("{}{}: {}, {}, {}{}", p.name,
                       p.count > 1 ? fmt::format(" ({} alike)", p.count) : "", p.fabric,
                       words(p.outline.shape), size, p.yarn == 1 ? "" : ", in another yarn");
}

std::string show(const Template& t, const Units& units) {
    constexpr const char* asked[] = {"definition", "drape",      "softness",     "wear",
                                     "warmth",     "elasticity", "warp fitness", "consistency"};
    auto out = fmt::format("{} ({}; {})\n{}\n", heading(t.title), words(t.craft),
                           catalog::word_for(catalog::skills, t.skill), wrapped(t.about, 0));
    out += "\nSize     " + sizes(t, units) + "\n";
    for (const auto& p : t.pieces) out += labelled("Piece   ", piece_line(p, units), 0) + "\n";
    std::vector<std::string> wants;
    for (std::size_t w = 0; w < asked_count; ++w)
        if (t.wishes[w].weight > 0)
            wants.push_back(fmt::format("{} {:.2f} (matters {:.1f})", asked[w],
                                        t.wishes[w].at_least, t.wishes[w].weight));
    if (!wants.empty()) out += labelled("Wants   ", joined(wants), 0) + "\n";
    for (const auto& said : t.cautions) out += labelled("Mind    ", said, 0) + "\n";
    out += "\nSteps, with words in braces filled in by gristwright plan\n";
    for (const auto& step : t.steps) out += labelled("-", step, 2) + "\n";
    return out;
}

std::string list_json(const catalog::Catalogue& catalogue) {
    auto out = json_answer("templates");
    out["templates"] = Json::array();
    for (const auto& t : catalogue.templates)
        out["templates"].push_back({{"name", t.name},
                                    {"title", inert(t.title)},
                                    {"article", inert(t.article)},
                                    {"craft", words(t.craft)},
                                    {"skill", catalog::word_for(catalog::skills, t.skill)},
                                    {"measure", inert(t.measure)},
                                    {"smallest_cm", in_centimetres(t.smallest)},
                                    {"ideal_cm", in_centimetres(t.ideal)},
                                    {"largest_cm", in_centimetres(t.largest)}});
    return dumped(out);
}

// Why it would be left out as a template of the person's own; one of the same file name that is
// there already it would replace.
std::string taken_by_another(const Template& own) {
    auto catalogue = whole_catalogue();
    auto others = catalogue.templates.rows();
    std::erase_if(others, [&](const Template& known) {
        return known.name == own.name && known.origin != "built in";
    });
    catalogue.templates = std::move(others);
    try {
        catalog::check_among_others(catalogue, own);
    } catch (const Refused& taken) {
        return fmt::format("as your own it would be left out: {}", taken.what());
    }
    return "";
}

Answer run_templates(const Arguments& arguments) {
    const auto units = units_of(arguments, "metric");
    const auto& typed = arguments.words;
    if (typed.empty()) {
        const auto catalogue = whole_catalogue();
        return {arguments.has("json") ? list_json(catalogue) : list(catalogue, units),
                joined(notes_on(catalogue), "\n")};
    }
    if (typed[0] != "show" && typed[0] != "check")
        throw Misused(fmt::format("templates takes show NAME or check FILE, not '{}'{}", typed[0],
                                  catalog::did_you_mean(typed[0], {"show", "check"})));
    if (typed.size() < 2)
        throw Misused(fmt::format("templates {} needs a {}", typed[0],
                                  typed[0] == "show" ? "template's name" : "file"));
    if (typed[0] == "check") {
        const auto own = catalog::read_template_file(typed[1], catalog::built_in().fabrics);
        return {fmt::format("{}: {} ({}), {} piece{}: a good template\n", inert(typed[1]),
                            inert(own.title), words(own.craft), own.pieces.size(),
                            own.pieces.size() == 1 ? "" : "s"),
                taken_by_another(own)};
    }
    auto catalogue = whole_catalogue();
    return {show(find_template(catalogue, typed[1]), units), joined(notes_on(catalogue), "\n")};
}

}  // namespace

Command templates_command() {
    return {"templates",
            "The catalogue of articles; one of it; or a check of your own template file.",
            "[show TEMPLATE | check FILE]",
            0,
            2,
            {{"units", "metric", "metric, imperial or both", false, "metric|imperial|both"},
             {"json", "", "the list as JSON"}},
            run_templates,
            "show triangle-shawl"};
}

}  // namespace gristwright::cli
