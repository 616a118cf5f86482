#include "cli/output/reply.hpp"

#include <fmt/core.h>

#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

std::string named(const SuggestionAnswer& a) {
    // Mitts and socks come in pairs: "knitted socks", but "a knitted hat".
    const bool several = a.article->article.back() == 's';
    return fmt::format("{}{} {}", several ? "" : "a ", words(a.article->craft), a.article->article);
}

std::string serves_sentence(Serves s) {
    switch (s) {
        case Serves::well:
            return "This yarn serves it well.";
        case Serves::fairly:
            return "This yarn serves it.";
        case Serves::poorly:
            return "This yarn serves it poorly.";
        case Serves::not_at_all:
            break;
    }
    return "This yarn does not serve it.";
}

std::string metres_sentence(const SuggestionAnswer& a, const YarnProfile& yarn,
                            const Units& units) {
    const auto needs = fmt::format("it would take about {} of this yarn and I have {}",
                                   units.yarn(a.need.mid), units.yarn(yarn.length.mid));
    switch (a.reach) {
        case Reach::enough:
            return fmt::format("{}: enough, with about {} to spare.", capital(needs),
                               units.yarn(a.left));
        case Reach::enough_if_smaller:
            return fmt::format("{}: enough if the {} is {}, not {}.", capital(needs),
                               a.article->measure, units.size(a.size_that_fits),
                               units.size(a.size));
        case Reach::short_of:
            return fmt::format("{}: short by {}; about {} of fibre more would do.", capital(needs),
                               units.yarn(a.short_by), units.mass(a.spin_more));
    }
    return "";
}

// The dearest factor in a few plain words; empty when nothing is lost.
std::string character_sentence(const SuggestionAnswer& a) {
    const Factor* dearest = nullptr;
    auto name = FactorName::definition;
    for (std::size_t f = 0; f < factor_count; ++f) {
        const auto& factor = a.judgement.factors[f];
        const bool trait = f < static_cast<std::size_t>(FactorName::cover);
        if (trait && factor.had > factor.wanted - 0.04) continue;
        if (factor.cost < 3 || (dearest && factor.cost <= dearest->cost)) continue;
        dearest = &factor;
        name = static_cast<FactorName>(f);
    }
    if (!dearest) return "";
    if (name == FactorName::equipment) return "My needles or loom do not quite fit it.";
    if (name == FactorName::cover) return "The cloth would not close as it should.";
    if (name == FactorName::fineness) return "It is usually made in another weight of yarn.";
    return fmt::format("It has {:.0f} of the {:.0f} points of {} that I would want for it.",
                       100 * dearest->had, 100 * dearest->wanted, words(name));
}

std::string gauge_sentence(const SuggestionAnswer& a, const Units& units) {
    if (a.stitches_kept)
        return fmt::format("At that gauge my yarn would be {}; at {} it comes out at {}.",
                           a.tightness < 1 ? "too open" : "too firm", units.stitch_gauge(a.suiting),
                           units.size(a.size));
    if (a.share > 0 && (a.share < a.suiting_share.low || a.share > a.suiting_share.high))
        return fmt::format(
            "At that sett it would be {:.0f} % of the closest; {:.0f} to {:.0f} % "
            "suits better.",
            100 * a.share, 100 * a.suiting_share.low, 100 * a.suiting_share.high);
    return "";
}

}  // namespace

std::string metres_verdict(const SuggestionAnswer& a, const Units& units) {
    if (!a.answered) return "asked back";
    if (a.reach == Reach::short_of) return "short by " + units.yarn(a.short_by);
    return std::string(words(a.reach));
}

std::string reply(const Suggestion& s, const SuggestionAnswer& a, const YarnProfile& yarn,
                  const Units& units, std::size_t most) {
    std::vector<std::string> sentences;
    if (!a.answered) {
        sentences = {"Thank you for the idea!", capital(a.ask)};
    } else {
        sentences.push_back(fmt::format("Thank you for the idea of {}!", named(a)));
        sentences.push_back(serves_sentence(serves(a.judgement.score)));
        sentences.push_back(metres_sentence(a, yarn, units));
        sentences.push_back(gauge_sentence(a, units));
        sentences.push_back(character_sentence(a));
        if (a.other_craft_reaches)
            sentences.push_back(
                fmt::format("The metres would do for a {} one.",
                            a.article->craft == Craft::knitted ? "woven" : "knitted"));
        if (!a.obstacles.empty())
            sentences.push_back("In the way: " + std::string(words(a.obstacles.front())) + ".");
        if (s.colours > 1) sentences.push_back("It would need another colour besides this batch.");
    }
    std::string out;
    for (const auto& sentence : sentences) {
        if (sentence.empty() || characters(out) + characters(sentence) + 1 > most) continue;
        out += (out.empty() ? "" : " ") + sentence;
    }
    return out;
}

}  // namespace gristwright::cli
