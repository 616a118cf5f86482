#include "cli/output/answer_words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/output/reply.hpp"
#include "cli/output/reply_names.hpp"
#include "cli/output/taken.hpp"
#include "cli/output/working.hpp"
#include "engine/suggestion/constants.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t idea_shown = 400;  // bytes

std::string kept_words(const SuggestionAnswer& a, const Units& units) {
    using Kept = SuggestionAnswer::Kept;
    const auto suits = "; " + units.stitch_gauge(a.suiting) + " suits, and ";
    switch (a.kept) {
        case Kept::stitches:
            return suits + fmt::format("with the stitches kept the {} becomes {}",
                                       a.article->measure, units.size(a.size));
        case Kept::size:
            return suits + fmt::format("keeps the size with {} stitches",
                                       a.tightness < 1 ? "more" : "fewer");
        case Kept::gauge:
            break;
    }
    return ", which this yarn can keep";
}

std::string basis_words(const SuggestionAnswer& a) {
    switch (a.basis) {
        case SuggestionAnswer::Basis::stated_length:
            return "from the length that was stated";
        case SuggestionAnswer::Basis::stated_mass:
            return "from the mass that was stated, by its own grist";
        case SuggestionAnswer::Basis::template_plan:
            break;
    }
    return "from our own template, since no amount was stated";
}

std::string needle_line(const Suggestion& s, const SuggestionAnswer& a, const Question& q) {
    const auto& owned = q.measured.owned.needles;
    const auto needle = s.needle ? s.needle : a.taken.needle;
    if (!needle || owned.empty()) return "";
    const auto nearest = *std::min_element(owned.begin(), owned.end(), [&](Length x, Length y) {
        return std::abs((x - *needle).si()) < std::abs((y - *needle).si());
    });
    return labelled("Needle: ",
                    fmt::format("{} was said; of yours the nearest is {}", q.units.needle(*needle),
                                q.units.needle(nearest)),
                    0) +
           "\n";
}

std::string numbers_text(const SuggestionAnswer& a, const Question& q) {
    auto out = labelled("Yarn:   ",
                        fmt::format("{} needed ({}), {} to hand: {}; chance that they reach {}",
                                    q.units.yarn_range(a.need), basis_words(a),
                                    q.units.yarn(q.yarn.length.mid), metres_verdict(a, q.units),
                                    percent(a.certainty)),
                        0) +
               "\n";
    if (a.reach == Reach::enough_if_smaller &&
        a.size_that_fits < a.size * (1 - constants::blocking_slack))
        out += labelled("Smaller:",
                        fmt::format("{} {} fits, not {}", a.article->measure,
                                    q.units.size(a.size_that_fits), q.units.size(a.size)),
                        0) +
               "\n";
    if (a.fewer_repeats > 0)
        out += labelled("Repeats:",
                        fmt::format("{} fewer repeat{} of the pattern come to about that",
                                    a.fewer_repeats, a.fewer_repeats == 1 ? "" : "s"),
                        0) +
               "\n";
    if (a.largest_offered.si() > 0)
        out += labelled("Sizes:  ",
                        fmt::format("of those it comes in {} is the largest that fits",
                                    q.units.size(a.largest_offered)),
                        0) +
               "\n";
    if (a.spin_more >= grams(1))
        out += labelled("Or spin:",
                        fmt::format("{} of fibre more, {:.0f} % losses included",
                                    q.units.mass(a.spin_more), 100 * constants::spinning_losses),
                        0) +
               "\n";
    if (a.other_craft_reaches)
        out += labelled("Or:     ",
                        fmt::format("a {} {}: the yarn would reach",
                                    a.article->craft == Craft::knitted ? "woven" : "knitted",
                                    a.article->article),
                        0) +
               "\n";
    if (a.tightness > 0)
        out += labelled("Gauge:  ",
                        fmt::format("tightness {:.2f} at the {}{}", a.tightness,
                                    a.gauge_of_class ? "usual gauge of that weight"
                                                     : "gauge that was stated",
                                    kept_words(a, q.units)),
                        0) +
               "\n";
    if (a.share > 0)
        out += labelled(
                   "Sett:   ",
                   fmt::format("{:.0f} % of the greatest; {:.0f} to {:.0f} % suits", 100 * a.share,
                               100 * a.suiting_share.low, 100 * a.suiting_share.high),
                   0) +
               "\n";
    return out;
}

Plan shown_plan(const SuggestionAnswer& a, const Question& q) {
    auto request = q.request;
    request.size = a.article->ideal;
    auto owned = q.measured.owned;
    owned.sett = a.taken.sett;
    return plan(*a.article, q.yarn, q.catalogue->fabrics, owned, request);
}

std::string reasons_text(const SuggestionAnswer& a, const Question& q) {
    const auto planned = shown_plan(a, q);
    std::string out;
    const auto con = said_against(a.judgement, planned, q.yarn);
    const auto pro = said_in_favour(a.judgement, q.yarn);
    if (!pro.empty()) out += labelled("For:    ", joined(pro), 0) + "\n";
    if (!con.empty()) out += labelled("Against:", joined(con), 0) + "\n";
    const auto& definition = a.judgement.factor(FactorName::definition);
    if (definition.weight > 0)
        out += labelled("Stitches:", sentence(FactorName::definition, a.judgement, planned, q.yarn),
                        0) +
               "\n";
    for (const auto obstacle : a.obstacles)
        out += labelled("In the way:", words(obstacle), 0) + "\n";
    return out;
}

std::vector<std::string> not_known(const SuggestionAnswer& a) {
    std::vector<std::string> out;
    for (const auto& unmade : a.taken.not_known) out.push_back(unmade.said);
    return out;
}

}  // namespace

std::string verdict_words(const SuggestionAnswer& a, const Units& units) {
    auto lacking = left_out(a);
    for (const auto& said : a.taken.left_out) lacking.push_back(said);
    const auto grade =
        fmt::format("{}; {}", words(serves(a.judgement.score)), metres_verdict(a, units));
    if (lacking.empty()) return grade;
    const auto not_reckoned = "not reckoned: " + joined(lacking);
    return is_of_the_nearest(a)
               ? fmt::format("{}. The nearest, {}: {}", not_reckoned, template_words(a), grade)
               : fmt::format("{}; {}", not_reckoned, grade);
}

std::vector<Caution> cautions_on_answer(const Suggestion& s, const SuggestionAnswer& a,
                                        const Question& q) {
    if (a.taken.not_an_idea) return {};
    if (!a.answered) return cautions_on_words(q, s.idea + " " + s.who);
    return cautions_on(q, {&*a.article}, s.idea + " " + s.who);
}

std::string reply_with_care(const Suggestion& s, const SuggestionAnswer& a,
                            const std::vector<Caution>& cautions, const Question& q) {
    return with_care(reply(s, a, q.yarn, q.units), cautions, reply_length);
}

std::string answer_text(const Suggestion& s, const SuggestionAnswer& a, const Question& q) {
    const auto cautions = cautions_on_answer(s, a, q);
    auto out = wrapped(batch_line(q), 0) + "\n\n" +
               labelled("Idea:   ", inert(first_bytes(s.idea, idea_shown)), 0) + "\n" +
               labelled("Taken:  ", taken_line(a, q.units), 0) + "\n";
    if (!a.answered)
        return out + (a.ask.empty() ? "" : labelled("Asked back:", a.ask, 0) + "\n") +
               care_line(cautions) + "\n" + heading("A reply to paste") + "\n" +
               wrapped(reply_with_care(s, a, cautions, q), 2) + "\n";
    out += labelled("Verdict:", verdict_words(a, q.units), 0) + "\n\n" + numbers_text(a, q) +
           needle_line(s, a, q) + reasons_text(a, q) + care_line(cautions) + stands_on(q.yarn);
    return out + "\n" + heading("A reply to paste") + "\n" +
           wrapped(reply_with_care(s, a, cautions, q), 2) + "\n";
}

std::string answer_working(const SuggestionAnswer& a) {
    auto out = "\n" + heading("Working") + "\n";
    for (const auto& c :
         {constants::stated_amount, constants::gauge_slack, constants::spinning_losses})
        out += figure_line(c, 2);
    for (std::size_t f = 0; a.answered && f < factor_count; ++f) {
        const auto& factor = a.judgement.factors[f];
        if (factor.weight > 0)
            out += fmt::format("  {:<14}had {:.2f}  wanted {:.2f}  weight {:.1f}  costs {:.0f}\n",
                               words(static_cast<FactorName>(f)), factor.had, factor.wanted,
                               factor.weight, factor.cost);
    }
    return out + not_shown();
}

nlohmann::ordered_json answer_json(const Suggestion& s, const SuggestionAnswer& a,
                                   const Question& q) {
    Json out{{"idea", inert(first_bytes(s.idea, idea_shown))},
             {"answered", a.answered},
             {"ask", inert(a.ask)},
             {"article", a.answered ? a.article->article : ""},
             {"unknown_words", texts(not_known(a))},
             {"template", a.answered ? Json(a.article->name) : Json(nullptr)},
             {"craft", a.answered ? Json(words(a.article->craft)) : Json(nullptr)}};
    if (a.answered) {
        out["fabric"] = a.fabric;
        out["suitability"] = number(a.judgement.score);
        out["serves"] = words(serves(a.judgement.score));
        out["reach"] = words(a.reach);
        out["certainty"] = number(a.certainty);
        out["metres_needed"] = number(in_metres(a.need.mid));
        out["metres_left"] = number(in_metres(a.left));
        out["metres_short"] = number(in_metres(a.short_by));
        out["size_cm"] = number(in_centimetres(a.size));
        out["grams_to_spin"] = number(in_grams(a.spin_more));
    }
    const auto cautions = cautions_on_answer(s, a, q);
    out["cautions"] = texts(whole(cautions));
    out["taken"] = taken_json(a);
    out["reply"] = inert(reply_with_care(s, a, cautions, q));
    return out;
}

}  // namespace gristwright::cli
