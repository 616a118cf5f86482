#include "cli/commands/spin_for.hpp"

#include <fmt/core.h>

#include <nlohmann/json.hpp>
#include <set>

#include "cli/article_asked.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/spinning.hpp"
#include "engine/evidence/spin.hpp"
#include "engine/suitability/recipe.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

// At this grist, for a twist factor.
double turns_per_inch(LinearDensity grist, double factor) {
    return factor * std::sqrt(count_of(grist, count_system("worsted count")));
}

// What one ply is before plying, for a yarn of this grist.
LinearDensity singles_of(const SpinTarget& t, const Recipe& recipe) {
    return t.grist * recipe.singles_share();
}

std::string preparation_words(const Recipe& r) {
    const char* draw = r.draw == Draw::long_draw ? "long draw" : "short draw";
    return fmt::format("{}, {}", r.preparation == Preparation::combed ? "combed" : "carded", draw);
}

std::string plies_words(int plies) {
    return plies == 1 ? "singles, set in a hot soak under tension" : fmt::format("{}-ply", plies);
}

std::string recipe_text(const Recipe& r) {
    auto out = labelled("Fibre:", joined(r.fibres) + ", or what behaves like them", 2) + "\n";
    out += labelled("Spin:", fmt::format("{}; {}", preparation_words(r), plies_words(r.plies)), 2) +
           "\n";
    if (r.plies > 1)
        out += labelled("Ply:",
                        "singles Z (clockwise), plied S; balanced when a loop of it hangs open "
                        "after washing (for crochet many turn both the other way)",
                        2) +
               "\n";
    return out;
}

std::string twist_line(const SpinTarget& t, const Recipe& r, const Units& units) {
    const double low = turns_per_inch(t.grist, r.twist_low);
    const double high = turns_per_inch(t.grist, r.twist_high);
    const auto turns = [&](double times) {
        return units.twists(gristwright::turns_per_inch(low * times),
                            gristwright::turns_per_inch(high * times));
    };
    if (r.plies == 1) return fmt::format("singles, {} (judgement)", turns(1));
    return fmt::format("singles of {} with {}; {} of them plied with {} (judgement)",
                       units.grist(singles_of(t, r)), turns(r.singles_turns), r.plies, turns(1));
}

std::string target_text(const SpinTarget& t, const Recipe& recipe, const Units& units) {
    return "\n" + heading(capital(t.weight)) + "\n" +
           wrapped(
               fmt::format("{}, from {} still works; about {:.0f} wpi, laid", units.grist(t.grist),
                           units.grists(t.grist_high, t.grist_low), in_wraps_per_inch(t.wraps)),
               2) +
           "\n" + wrapped(twist_line(t, recipe, units), 2) + "\n" +
           wrapped(fmt::format("{}; spin from {} of fibre", units.yarn_range(t.metres),
                               units.mass(t.fibre)),
                   2) +
           "\n";
}

Json target_json(const SpinTarget& t, const Recipe& r) {
    const double low = turns_per_inch(t.grist, r.twist_low);
    const double high = turns_per_inch(t.grist, r.twist_high);
    return {{"weight", t.weight},
            {"tex", number(in_tex(t.grist))},
            {"tex_from", number(in_tex(t.grist_low))},
            {"tex_to", number(in_tex(t.grist_high))},
            {"wraps_per_inch", number(in_wraps_per_inch(t.wraps))},
            {"plies", r.plies},
            {"singles_tex", number(in_tex(singles_of(t, r)))},
            {"singles_turns_per_inch_from", number(low * r.singles_turns)},
            {"singles_turns_per_inch_to", number(high * r.singles_turns)},
            {"turns_per_inch_from", number(low)},
            {"turns_per_inch_to", number(high)},
            {"metres", range({in_metres(t.metres.mid), t.metres.spread})},
            {"grams_of_fibre", number(in_grams(t.fibre))}};
}

// Fibres that handspinners ordinarily spin unblended, the commonest first.
std::vector<FibrePart> ordinary_fibres(const catalog::Catalogue& catalogue) {
    std::vector<FibrePart> out;
    std::set<std::string> seen;
    for (const auto& yarn : catalogue.ordinary)
        if (const auto* fibre = catalogue.fibre_named(yarn.fibre))
            if (seen.insert(fibre->name).second) out.push_back(*fibre);
    return out;
}

// For the middle of the weights that the article is usually made in.
Recipe recipe_of(const Template& article, const std::vector<SpinTarget>& targets,
                 const catalog::Catalogue& catalogue) {
    if (targets.empty())
        throw Refused(fmt::format("{} is made in no weight that the tables know", article.name));
    return recipe_for(article, targets[targets.size() / 2].grist, ordinary_fibres(catalogue),
                      catalogue.yarn, catalogue.fabrics);
}

Json recipe_json(const Recipe& r, const std::vector<SpinTarget>& targets) {
    auto out = json_answer("spin-for");
    out["fibres"] = texts(r.fibres);
    out["preparation"] = r.preparation == Preparation::combed ? "combed" : "carded";
    out["draw"] = r.draw == Draw::long_draw ? "long" : "short";
    out["suitability"] = number(r.score);
    out["yarns"] = Json::array();
    for (const auto& t : targets) out["yarns"].push_back(target_json(t, r));
    return out;
}

Answer target(const Arguments& arguments) {
    auto catalogue = whole_catalogue();
    const auto article = find_template(catalogue, arguments.words[0]);
    const auto size = arguments.has("size") ? read_length_option(arguments, "size") : article.ideal;
    check_size(arguments, size, article);
    const auto units = units_of(arguments, "both");
    YarnProfile hands;  // of no yarn yet
    auto notes = notes_on(catalogue);
    learn_from(hands_if_known(arguments, catalogue, notes), {}, hands.evidence);
    const auto targets = spin_for(article, size, catalogue.yarn.classes, catalogue.fabrics,
                                  losses(arguments), hands.evidence.habit);
    const auto recipe = recipe_of(article, targets, catalogue);
    if (arguments.has("json")) {
        auto out = recipe_json(recipe, targets);
        out["template"] = article.name;
        out["size_cm"] = number(in_centimetres(size));
        out["stands_on"] = texts(standings(hands.evidence));
        out["cautions"] = texts(whole(cautions_on_spinning(catalogue, article)));
        return {dumped(out), joined(notes, "\n")};
    }
    auto out = fmt::format("{} of {} {}: a yarn to spin for it\n", article.title, article.measure,
                           units.size(size)) +
               recipe_text(recipe);
    for (const auto& t : targets) out += target_text(t, recipe, units);
    out += "\n" + care_line(cautions_on_spinning(catalogue, article));
    if (!hands.evidence.empty()) out += stands_on(hands);
    return {out, joined(notes, "\n")};
}

}  // namespace

Command spin_for_command() {
    return {"spin-for",
            "How to spin a yarn for an article: fibre, preparation, draw, grist, twist and plies.",
            "TEMPLATE",
            1,
            1,
            {{"size", "150cm", "the size wished, else the ideal one"},
             losses_option,
             {"units", "both", "metric, imperial or both", false, "metric|imperial|both", "both"},
             json_option,
             notebook_option},
            target,
            "woven-shawl --size 180cm"};
}

}  // namespace gristwright::cli
