#include "cli/output/reply.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/reply_measures.hpp"
#include "cli/output/reply_names.hpp"
#include "cli/output/reply_topics.hpp"
#include "cli/output/reply_yarn.hpp"
#include "engine/suggestion/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

std::string thanks(const SuggestionAnswer& a) {
    std::vector<std::string> all;
    for (const auto& thing : a.things) all.push_back(said_of(thing));
    return fmt::format("Thank you for the idea of {}!",
                       listed(all, a.taken.alternatives ? "or" : "and"));
}

// What was asked for and is not reckoned, said before any number; then what was taken instead.
std::string not_known_sentence(const SuggestionAnswer& a) {
    const auto lacking = left_out(a);
    if (lacking.empty()) return "";
    // Beside another thing that was wanted and is made, nothing stands in for it.
    if (!is_of_the_nearest(a))
        return fmt::format("I have no figures for {}.", listed(lacking, "or"));
    return fmt::format("I have no figures for {}; the nearest I know is {}.", listed(lacking, "or"),
                       template_words(a));
}

std::string serves_sentence(const SuggestionAnswer& a) {
    const auto* it = is_of_the_nearest(a) ? "that one" : "it";
    switch (serves(a.judgement.score)) {
        case Serves::well:
            return fmt::format("This yarn serves {} well.", it);
        case Serves::fairly:
            return fmt::format("This yarn serves {}.", it);
        case Serves::poorly:
            return fmt::format("This yarn serves {} poorly.", it);
        case Serves::not_at_all:
            break;
    }
    return fmt::format("This yarn does not serve {}.", it);
}

// "A woven scarf of 152 cm", "Both together", "The weft of a woven cushion".
std::string subject(const SuggestionAnswer& a, const Units& units) {
    const auto& main = a.things[a.main];
    std::string out;
    if (a.things.size() > 1 && !a.taken.alternatives) return "Together they";
    out = named(main);
    const bool sized = main.wanted.count < 2 || !main.wanted.sizes.empty();
    if (sized && a.article->measure == "length")
        out += " of " + units.size(a.size);
    else if (sized)
        out += fmt::format(" ({})", measured(*a.article, units.size(a.size)));
    if (a.taken.role == YarnRole::weft_only) out = "the weft of " + out;
    if (a.taken.role == YarnRole::warp_only) out = "the warp of " + out;
    return capital(out);
}

std::string needs_words(const SuggestionAnswer& a, const Units& units) {
    const auto mid = units.yarn(a.need.mid);
    if (a.basis == SuggestionAnswer::Basis::template_plan) return "would take about " + mid;
    const auto& main = a.things[a.main].wanted;
    const bool plural = main.count > 1 || main.kind.back() == 's' || a.things.size() > 1;
    const auto said = plural ? "are said to take" : "is said to take";
    if (a.kept != SuggestionAnswer::Kept::gauge)
        return fmt::format(
            "{} {}, in this yarn about {},", said,
            a.stated_mass.si() > 0 ? units.mass(a.stated_mass) : units.yarn(a.stated), mid);
    if (a.basis == SuggestionAnswer::Basis::stated_length) return fmt::format("{} {}", said, mid);
    return fmt::format("{} {}, here about {},", said, units.mass(a.stated_mass), mid);
}

std::string metres_sentence(const SuggestionAnswer& a, const YarnProfile& yarn,
                            const Units& units) {
    const auto needs = fmt::format("{} {} and I have {}", subject(a, units), needs_words(a, units),
                                   units.yarn(yarn.length.mid));
    const auto& t = *a.article;
    switch (a.reach) {
        case Reach::enough:
            return a.left > Length{} ? fmt::format("{}: enough, with about {} to spare.", needs,
                                                   units.yarn(a.left))
                                     : needs + ": just enough, as stated amounts hold a reserve.";
        case Reach::enough_if_smaller:
            if (a.size_that_fits >= a.size * (1 - constants::blocking_slack))
                return fmt::format("{}: enough for {}, and blocking moves it by more than that.",
                                   needs, units.size(a.size_that_fits));
            return fmt::format("{}: enough if it is {}, not {}.", needs,
                               measured(t, units.size(a.size_that_fits)), units.size(a.size));
        case Reach::short_of:
            return fmt::format(
                "{}: with {} for safety it is short by {}; about {} of fibre more would do.", needs,
                units.yarn(a.margin), units.yarn(a.short_by), units.mass(a.spin_more));
    }
    return "";
}

// Each of several things by itself.
std::string each_sentence(const SuggestionAnswer& a, const Units& units) {
    const auto& main = a.things[a.main];
    std::string each;
    if (main.wanted.count > 1)
        each = fmt::format("That is about {} {}.", units.yarn(main.need.mid / main.wanted.count),
                           main.wanted.known.in_pairs ? "for each pair" : "each");
    // "hats": of one, since nobody said how many.
    const auto& wanted = main.wanted;
    if (wanted.plural && wanted.count < 2 && !wanted.known.in_pairs && a.things.size() < 2 &&
        !a.taken.about(Topic::count))
        return fmt::format("That is for one {}.", wanted.kind);
    if (a.things.size() < 2) return each;
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < a.things.size(); ++i) {
        const auto& thing = a.things[i];
        if (!thing.article || (a.taken.alternatives && i == a.main)) continue;
        const int count = thing.wanted.count;
        const auto one = count > 1 && i != a.main
                             ? fmt::format(" ({} each)", units.yarn(thing.need.mid / count))
                             : "";
        const auto size =
            thing.wanted.sizes.empty()
                ? ""
                : fmt::format(" ({})", measured(*thing.article, units.size(thing.size)));
        parts.push_back(
            fmt::format("{}{} about {}{}", named(thing), size, units.yarn(thing.need.mid), one));
    }
    if (parts.empty()) return each;
    return (each.empty() ? "" : each + " ") +
           capital(
               fmt::format("{}{}.", listed(parts, "and"), a.taken.alternatives ? " instead" : ""));
}

// What was said of it and has no part in the figures.
std::string left_out_sentence(const SuggestionAnswer& a, const Units& units) {
    std::string out;
    if (!a.taken.left_out.empty())
        out = fmt::format("Not in my figures: {}.", inert(listed(a.taken.left_out, "and")));
    if (a.taken.how_big.empty()) return out;
    return (out.empty() ? "" : out + " ") + fmt::format("'{}' is no measure: I took {}.",
                                                        capital(inert(a.taken.how_big)),
                                                        measured(*a.article, units.size(a.size)));
}

// What was heard as talk: whoever meant it as a wish can say so.
std::string aside_sentence(const SuggestionAnswer& a) {
    if (a.taken.aside.empty()) return "";
    return fmt::format("I took as said of something else: {}.",
                       inert(listed(a.taken.aside, "and")));
}

// A question on which nothing here has a word.
std::string unanswered_sentence(const SuggestionAnswer& a) {
    if (a.taken.unanswered.empty()) return "";
    return fmt::format("That I cannot tell: '{}'.", inert(a.taken.unanswered));
}

std::string form_sentence(const SuggestionAnswer& a) {
    const auto& main = a.things[a.main];
    if (!main.form_missed) return "";
    return fmt::format("I have no template of the {} form, so I took {}.", main.wanted.form,
                       template_words(a));
}

// "cabled" for cables, "ribbed" for 2x2 rib: by the beginning of one of its words.
bool names_alike(std::string_view said, std::string_view fabric) {
    constexpr std::size_t beginning = 3;
    while (!fabric.empty()) {
        const auto word = fabric.substr(0, fabric.find(' '));
        if (word.size() > 2 && said.find(word.substr(0, beginning)) != std::string_view::npos)
            return true;
        fabric.remove_prefix(std::min(word.size() + 1, fabric.size()));
    }
    return false;
}

// Where the first of several has none of its own.
std::string fabric_of_another(const SuggestionAnswer& a) {
    if (a.taken.alternatives) return "";
    for (const auto& thing : a.things)
        if (thing.article && thing.wanted.fabric.named())
            return fmt::format("The {} I reckoned in {}.", thing.wanted.kind,
                               thing.wanted.fabric.in(thing.article->craft));
    return "";
}

std::string fabric_sentence(const SuggestionAnswer& a) {
    const auto& wanted = a.things[a.main].wanted;
    if (!left_out(a).empty()) return "";
    if (!wanted.fabric.named()) {
        const auto others = fabric_of_another(a);
        return !others.empty() || a.plain ? others : fmt::format("That is in {}.", a.fabric);
    }
    const auto& fabric = wanted.fabric.in(a.article->craft);
    const auto& said = wanted.fabric_said;
    if (said.empty() || fabric.find(said) != std::string::npos || names_alike(said, fabric))
        return fmt::format("I reckoned it in {}.", fabric);
    return fmt::format("For {} I reckoned {}.", inert(said), fabric);
}

std::string other_craft_sentence(const SuggestionAnswer& a, const Units& units) {
    if (!a.other_craft) return "";
    const auto craft = words(a.other_craft->craft);
    if (a.other_craft_reaches) return fmt::format("The yarn would do for a {} one.", craft);
    if (a.taken.craft && !a.taken.both_crafts) return "";
    return fmt::format("{} it would take about {}.", capital(std::string(craft)),
                       units.yarn(a.other_need.mid));
}

std::vector<std::string> answered_sentences(const Suggestion& s, const SuggestionAnswer& a,
                                            const YarnProfile& yarn, const Units& units) {
    std::vector<std::string> out{thanks(a),
                                 not_known_sentence(a),
                                 form_sentence(a),
                                 left_out_sentence(a, units),
                                 aside_sentence(a),
                                 metres_sentence(a, yarn, units),
                                 at_hand_sentence(a, units),
                                 share_sentence(a, units),
                                 each_sentence(a, units)};
    for (const auto topic : a.taken.topics) out.push_back(topic_sentence(topic, a, yarn, units));
    out.push_back(unanswered_sentence(a));
    out.push_back(wearer_sentence(a, units));
    out.push_back(kin_sentence(a));
    out.push_back(role_sentence(a, units));
    out.push_back(gauge_sentence(a, s, units));
    out.push_back(needle_sentence(a, s, units));
    out.push_back(width_sentence(a, units));
    out.push_back(warp_length_sentence(a, units));
    out.push_back(material_sentence(a));
    out.push_back(unclear_size_sentence(a, units));
    if (!a.taken.worn_by.empty())
        out.push_back(
            fmt::format("For the {} I have no sizes: measure first.", inert(a.taken.worn_by)));
    out.push_back(loom_sentence(a, units));
    if (a.taken.other_yarn) out.emplace_back("The figures are for my yarn, not for your own.");
    out.push_back(weight_sentence(a, yarn));
    out.push_back(fabric_sentence(a));
    const auto poorly = character_sentence(a);
    if (serves(a.judgement.score) > Serves::fairly || poorly.empty())
        out.push_back(serves_sentence(a));
    out.push_back(poorly);
    if (!a.obstacles.empty())
        out.push_back("In the way: " + std::string(words(a.obstacles.front())) + ".");
    out.push_back(other_craft_sentence(a, units));
    if (a.taken.colours > 2)
        out.push_back(fmt::format("Of the {} colours this yarn is one.", a.taken.colours));
    if (s.colours > 1) out.emplace_back("It would need another colour besides this batch.");
    return out;
}

std::vector<std::string> plain_sentences(const SuggestionAnswer& a, const YarnProfile& yarn,
                                         const Units& units) {
    if (a.taken.not_an_idea) return {"Thank you for writing!"};
    if (!a.ask.empty()) {
        std::vector<std::string> out{"Thank you for the idea!"};
        std::vector<std::string> known;
        for (const auto& word : a.taken.not_known)
            if (word.craft || word.other_craft) known.push_back(word.said);
        if (!known.empty()) out.push_back("I have no figures for " + listed(known, "or") + ".");
        auto not_wanted = a.taken.ruled_out;
        for (const auto& fabric : a.taken.fabrics_out)
            not_wanted.push_back(fabric.knitted.empty() ? fabric.woven : fabric.knitted);
        if (!not_wanted.empty()) out.push_back("Not " + listed(not_wanted, "nor") + ", then.");
        out.push_back(capital(a.ask));
        return out;
    }
    std::vector<std::string> out{"Thank you for asking!"};
    for (const auto topic : a.taken.topics) out.push_back(topic_sentence(topic, a, yarn, units));
    if (std::all_of(out.begin() + 1, out.end(), [](const auto& s) { return s.empty(); }))
        out.emplace_back("That depends on what it is to be: which article do you mean?");
    return out;
}

}  // namespace

std::string metres_verdict(const SuggestionAnswer& a, const Units& units) {
    if (a.taken.not_an_idea) return "no idea for an article";
    if (!a.answered) return a.ask.empty() ? "a question about the yarn" : "asked back";
    if (a.reach == Reach::short_of) return "short by " + units.yarn(a.short_by);
    return std::string(words(a.reach));
}

std::string reply(const Suggestion& s, const SuggestionAnswer& a, const YarnProfile& yarn,
                  const Units& units, std::size_t most) {
    const auto theirs = !a.taken.imperial   ? units
                        : *a.taken.imperial ? units.in(UnitChoice::imperial)
                                            : units.in(UnitChoice::metric);
    const auto sentences =
        a.answered ? answered_sentences(s, a, yarn, theirs) : plain_sentences(a, yarn, theirs);
    std::string out;
    for (const auto& sentence : sentences) {
        if (sentence.empty() || !fit_together(out, sentence, most - 1)) continue;
        out += (out.empty() ? "" : " ") + sentence;
    }
    return out;
}

}  // namespace gristwright::cli
