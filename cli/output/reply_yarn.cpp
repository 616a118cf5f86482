#include "cli/output/reply_yarn.hpp"

#include <fmt/core.h>

#include "cli/output/layout.hpp"
#include "cli/output/reply_topics.hpp"
#include "engine/suitability/constants.hpp"

namespace gristwright::cli {

// "held with", "carry along": two strands at once, and not by turns.
static bool is_held_with(std::string_view said) {
    for (const std::string_view word : {"held", "hold", "carr", "along", "strand of"})
        if (said.find(word) != std::string_view::npos) return true;
    return false;
}

std::string role_sentence(const SuggestionAnswer& a, const Units& units) {
    switch (a.taken.role) {
        case YarnRole::weft_only:
            return a.role_reckoned ? "The warp is then another yarn."
                                   : "As weft I have not reckoned it.";
        case YarnRole::warp_only:
            return a.role_reckoned ? "The weft is then another yarn."
                                   : "As warp I have not reckoned it.";
        case YarnRole::border:
            return a.role_reckoned ? "That is the border; the middle is another yarn."
                                   : fmt::format(
                                         "The border or edge alone ({}) I have not reckoned: the "
                                         "figure is for the whole piece.",
                                         a.taken.role_said);
        case YarnRole::doubled:
            return a.role_reckoned
                       ? "That is held double: two strands of it in every stitch."
                       : "Doubled I have not reckoned it: the figure is for a single strand.";
        case YarnRole::with_another:
            if (is_held_with(a.taken.role_said))
                return "Held together with another yarn it makes a thicker cloth: the figure is "
                       "for this yarn alone, so make a sample first.";
            return fmt::format(
                "A second yarn would share the work: the figure is for all of it in this one; half "
                "and half it takes about {}.",
                units.yarn(a.need.mid / 2));
        case YarnRole::plied_again:
            return a.role_reckoned ? "That is plied again, two of it together: it is another yarn "
                                     "then, so measure it before you begin."
                                   : "Plied again it is another yarn, which I have not reckoned: "
                                     "measure it anew.";
        case YarnRole::fulled:
            return "Fulling cannot be undone: full a sample first.";
        case YarnRole::all:
            return a.largest < a.article->smallest
                       ? fmt::format("All of it comes to {}, smaller than it is made.",
                                     measured(*a.article, units.size(a.largest)))
                       : fmt::format("With all of it used it comes to about {}.",
                                     measured(*a.article, units.size(a.largest)));
        case YarnRole::part:
            if (a.part > Length{})
                return fmt::format("That is all of it; '{}' would take about {}: {}.",
                                   inert(a.taken.role_said), units.yarn(a.part),
                                   a.part_reaches ? "enough" : "not surely enough");
            return fmt::format("As to '{}': the figure is for the whole piece.",
                               inert(a.taken.role_said));
        case YarnRole::unsaid:
            break;
    }
    return "";
}

std::string character_sentence(const SuggestionAnswer& a) {
    const Factor* dearest = nullptr;
    auto name = FactorName::definition;
    for (std::size_t f = 0; f < factor_count; ++f) {
        const auto& factor = a.judgement.factors[f];
        const bool trait = f < static_cast<std::size_t>(FactorName::cover);
        if (trait && factor.had > factor.wanted - constants::factor_worth_saying) continue;
        if (factor.cost < 3 || (dearest && factor.cost <= dearest->cost)) continue;
        dearest = &factor;
        name = static_cast<FactorName>(f);
    }
    if (!dearest) return "";
    switch (name) {
        case FactorName::definition:
            return "Its stitches would blur.";
        case FactorName::drape:
            return "It would hang more stiffly than I would want.";
        case FactorName::softness:
            return "It is less soft than I would want for it.";
        case FactorName::wear:
            return "It would not wear as long as I would want.";
        case FactorName::warmth:
            return "It is less warm than I would want.";
        case FactorName::elasticity:
            return "It has little spring for it.";
        case FactorName::warp_fitness:
            return "As warp it is delicate.";
        case FactorName::consistency:
            return "The skeins differ, and that would show.";
        case FactorName::cover:
            return "The cloth would not close as it should.";
        case FactorName::fineness:
            return "It is usually made in another weight of yarn.";
        case FactorName::equipment:
            return "My needles or loom do not quite fit it.";
    }
    return "";
}

}  // namespace gristwright::cli
