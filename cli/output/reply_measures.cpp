#include "cli/output/reply_measures.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/reply_topics.hpp"

namespace gristwright::cli {
namespace {

// "child 6" is a child of 6; "18 months" a baby of 18 months.
std::string body_words(const std::string& body) {
    const auto space = body.find(' ');
    if (body == "man" || body == "woman") return "a " + body;
    if (body == "newborn") return "a newborn baby";
    return body.starts_with("child ") ? "a child of" + body.substr(space) : "a baby of " + body;
}

bool is_worn(const SuggestionAnswer& a) { return a.article->fitted || a.article->kind.worn; }

bool is_grown(const std::string& body) { return body == "man" || body == "woman"; }

}  // namespace

std::string gauge_sentence(const SuggestionAnswer& a, const Suggestion& s, const Units& units) {
    const auto gauge = s.gauge ? s.gauge : a.taken.gauge;
    using Kept = SuggestionAnswer::Kept;
    if (a.kept != Kept::gauge)
        return fmt::format("{} my yarn would be {}; at {} it {}.",
                           a.gauge_of_class ? "At its usual gauge" : "At that gauge",
                           a.tightness < 1 ? "too open" : "too firm", units.stitch_gauge(a.suiting),
                           a.kept == Kept::stitches
                               ? fmt::format("comes out at {}", units.size(a.size))
                               : fmt::format("takes {} stitches to the same size",
                                             a.tightness < 1 ? "more" : "fewer"));
    if (gauge && a.usual_gauge.si() > 0)
        return fmt::format("At {} it is knitted {} than I would.", units.stitch_gauge(*gauge),
                           *gauge > a.usual_gauge ? "closer" : "looser");
    const auto sett = s.sett ? s.sett : a.taken.sett;
    if (!sett || a.share <= 0) return "";
    const auto verdict = a.share < a.suiting_share.low    ? "rather open"
                         : a.share > a.suiting_share.high ? "rather close"
                                                          : "about right";
    return fmt::format("{} is {} for it.", units.sett(*sett), verdict);
}

std::string needle_sentence(const SuggestionAnswer& a, const Suggestion& s, const Units& units) {
    const auto needle = s.needle ? s.needle : a.taken.needle;
    if (!needle || a.usual_needle.si() <= 0) return "";
    const double apart = *needle / a.usual_needle;
    if (apart > 0.9 && apart < 1.1) return units.needle(*needle) + " needles suit it.";
    return fmt::format("{} needles make it {} than my {}.", units.needle(*needle),
                       apart > 1 ? "more open" : "firmer", units.needle(a.usual_needle));
}

std::string width_sentence(const SuggestionAnswer& a, const Units& units) {
    const auto& sizes = a.things[a.main].wanted.sizes;
    const bool only = a.things[a.main].wanted.only_width;
    if (sizes.size() < 2 && !only) return "";
    if (sizes.size() == 2 && sizes[0] == sizes[1] && a.article->measure == "side") return "";
    const bool is_long = only && a.things[a.main].wanted.is_long;
    const bool is_tall = only && a.things[a.main].wanted.is_tall;
    return fmt::format("The {} of {} is not reckoned: my figure keeps its own shape.",
                       is_tall   ? "height"
                       : is_long ? "length"
                                 : "width",
                       units.size(only ? sizes[0] : sizes[1]));
}

// A size in numbers of the trade of shoes, or without a unit, is not a length to us.
std::string unclear_size_sentence(const SuggestionAnswer& a, const Units& units) {
    if (a.things[a.main].of_shoe)
        return fmt::format("A shoe of {} is a foot of about {}: measure first.", a.taken.shoe,
                           units.size(a.size));
    if (!a.taken.shoe.empty())
        return fmt::format(
            "The shoe size {} I cannot turn into a length: I took {} of foot, so "
            "measure first.",
            a.taken.shoe, units.size(a.size));
    if (!a.taken.letters.empty()) {
        const auto& said = a.taken.letters;
        return fmt::format("Size {} differs from maker to maker: I took {}, so measure first.",
                           said.starts_with("size ") ? said.substr(5) : said,
                           measured(*a.article, units.size(a.size)));
    }
    if (const auto unfit = a.things[a.main].unfit; unfit > Length{})
        return fmt::format("{} fits nobody: I took {}, so measure first.",
                           capital(measured(*a.article, units.size(unfit))),
                           measured(*a.article, units.size(a.size)));
    if (a.taken.no_unit.empty()) return "";
    if (const auto& main = a.things[a.main]; main.in_cm || main.in_inches)
        return fmt::format("{}: I read that as {}.", a.taken.no_unit,
                           main.in_cm ? "centimetres" : "inches");
    return fmt::format("{}: in centimetres or inches? I kept my own size.", a.taken.no_unit);
}

std::string loom_sentence(const SuggestionAnswer& a, const Units& units) {
    if (a.off_loom.si() <= 0) return "";
    return fmt::format("From a loom of {} it comes off at most {} wide.",
                       units.size(*a.taken.loom_width), units.size(a.off_loom));
}

std::string warp_length_sentence(const SuggestionAnswer& a, const Units& units) {
    const auto& taken = a.taken;
    if (taken.warp && a.things[a.main].of_warp)
        return fmt::format("From a warp of {} it comes off about {} long, washed.",
                           units.size(*taken.warp), units.size(a.size));
    if (taken.warp)
        return fmt::format("The warp of {} is not reckoned: the size is my own.",
                           units.size(*taken.warp));
    if (!taken.loom_waste || a.article->craft != Craft::woven) return "";
    return fmt::format("I reckoned with {} of loom waste, not {}.",
                       units.size(a.article->loom_waste), units.size(*taken.loom_waste));
}

std::string at_hand_sentence(const SuggestionAnswer& a, const Units& units) {
    if (a.at_hand <= Length{}) return "";
    const auto& mass = a.taken.at_hand_mass;
    auto at_hand = mass ? units.mass(*mass) : units.yarn(a.at_hand);
    if (const auto skeins = a.taken.at_hand_skeins)
        at_hand = fmt::format("{:g} skein{} (about {})", *skeins, *skeins > 1 ? "s" : "", at_hand);
    if (a.at_hand_lacks <= Length{}) return fmt::format("Of this yarn {} would do.", at_hand);
    return fmt::format(
        "Of this yarn {} would not do: with what I set aside for safety it lacks {}.", at_hand,
        units.yarn(a.at_hand_lacks));
}

std::string share_sentence(const SuggestionAnswer& a, const Units& units) {
    if (!a.taken.share_of_thing) return "";
    if (a.taken.one_alone)
        return fmt::format("That is for the pair; one alone takes about {}.",
                           units.yarn(a.need.mid / 2));
    return fmt::format("That is for a whole one; {:.0f} % of it takes about {}.",
                       100 * *a.taken.share_of_thing,
                       units.yarn(a.need.mid * *a.taken.share_of_thing));
}

std::string material_sentence(const SuggestionAnswer& a) {
    if (a.taken.material.empty()) return "";
    return fmt::format("You said {}; the figures are for my yarn.", a.taken.material_said);
}

std::string weight_sentence(const SuggestionAnswer& a, const YarnProfile& yarn) {
    if (a.taken.weight.empty()) return "";
    const bool same = std::any_of(yarn.class_by_grist.begin(), yarn.class_by_grist.end(),
                                  [&](const auto& c) { return c.name == a.taken.weight; });
    if (same) return fmt::format("Mine is of the {} weight too.", a.taken.weight);
    return fmt::format("You meant {} yarn; mine is {}.", a.taken.weight,
                       yarn.class_by_grist.empty() ? "outside the usual classes"
                                                   : yarn.class_by_grist.front().name);
}

// Small fingers enter holes.
static std::string_view small_loops(const SuggestionAnswer& a) {
    return a.taken.wearer == Wearer::baby ? ", holes or loose loops" : " or loose loops";
}

static std::string_view small_cords(const SuggestionAnswer& a, const std::string& body) {
    const auto own = a.things[a.main].wanted.wearer;
    if (is_grown(body)) return "";
    return (own == Wearer::unsaid ? a.taken.wearer : own) == Wearer::baby
               ? ": no cords, fringes, holes or loose loops"
               : ": no cords or long fringes";
}

// Where another of the things is for somebody small.
static std::string care_for_another(const SuggestionAnswer& a) {
    const auto own = a.things[a.main].wanted.wearer;
    const bool small = a.taken.wearer == Wearer::baby || a.taken.wearer == Wearer::child;
    if (!small || own == Wearer::unsaid || own == a.taken.wearer) return "";
    return fmt::format("For the {}: no cords, fringes{}.", words(a.taken.wearer), small_loops(a));
}

std::string kin_sentence(const SuggestionAnswer& a) {
    if (a.taken.kin.empty()) return "";
    return fmt::format(
        "How old the {} may be I do not know: {}for a child no cords or long fringes.",
        inert(a.taken.kin), is_worn(a) ? "a child's takes less, and " : "");
}

std::string wearer_sentence(const SuggestionAnswer& a, const Units& units) {
    const auto& body = a.things[a.main].body;
    const auto care = care_for_another(a);
    if (!body.empty())
        return fmt::format("For {} I took {}{}.{}", body_words(body),
                           measured(*a.article, units.size(a.size)), small_cords(a, body),
                           care.empty() ? "" : " " + care);
    if (!care.empty()) return care;
    switch (a.taken.wearer) {
        case Wearer::baby:
            if (a.made_for != Wearer::baby && a.article->kind.long_round)
                return "The figure is for a grown-up's size: a baby wears nothing long round the "
                       "neck.";
            if (a.made_for != Wearer::baby && is_worn(a))
                return fmt::format(
                    "The figure is for a {} size: a baby's takes {}less. No cords, fringes, holes "
                    "or loose loops, and nothing that prickles.",
                    a.made_for == Wearer::child ? "child's" : "grown-up's",
                    a.made_for == Wearer::child ? "" : "far ");
            return "For a baby: no cords, fringes, holes or loose loops, and nothing that "
                   "prickles.";
        case Wearer::child:
            if (a.made_for == Wearer::child)
                return "That is for a child: no cords or long fringes.";
            if (a.made_for == Wearer::baby)
                return "The figure is for a baby's size: a child's takes more.";
            return is_worn(a) ? "The figure is for a grown-up's size: a child's takes less."
                              : "For a child no cords or long fringes.";
        case Wearer::animal:
            if (a.made_for == Wearer::animal) return "Measure the animal first.";
            return a.taken.wearer_said.empty()
                       ? "For an animal I have no sizes: measure first."
                       : fmt::format("For an animal ({}) I have no sizes: measure first.",
                                     a.taken.wearer_said);
        default:
            return "";
    }
}

}  // namespace gristwright::cli
