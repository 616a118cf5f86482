#include "cli/output/reply_topics.hpp"

#include <fmt/core.h>

#include <utility>

#include "cli/output/layout.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright::cli {
namespace {

// How a trait is spoken of: as a score of 0 to 1 in three steps.
struct Degrees {
    const char *high, *middle, *low;
};
constexpr double high_from = 0.65, middle_from = 0.4;

std::string on(const Degrees& degrees, double value) {
    return value >= high_from ? degrees.high : value >= middle_from ? degrees.middle : degrees.low;
}

// How a size is said after the number.
constexpr std::pair<std::string_view, std::string_view> measured_words[] = {
    {"length", "long"},
    {"height", "high"},
    {"width", "wide"},
    {"side", "a side"},
    {"span", "across"},
    {"chest", "at the chest"},
    {"foot length", "of foot"},
    {"straight edge", "along the straight edge"},
    {"short side", "along the short side"},
    {"side of a square", "a square"},
    {"length of a panel", "a panel"},
};

std::string itch(const YarnProfile& yarn) {
    const Degrees soft{
        "It is soft, and few people would find that it itches.",
        "It is fairly soft; on a sensitive neck it may itch, so try the washed sample "
        "on the skin first.",
        "It would itch on bare skin: better over a shirt."};
    return on(soft, yarn.trait(TraitName::softness).value);
}

std::string wear(const YarnProfile& yarn) {
    const Degrees wears{"It is hard-wearing.",
                        "It wears fairly well; where it rubs it will pill a little.",
                        "It would not wear well: it pills and thins where it rubs."};
    return on(wears, yarn.trait(TraitName::wear).value);
}

std::string warmth(const YarnProfile& yarn) {
    const Degrees warm{"It is a warm yarn for its weight.", "It is fairly warm.",
                       "It is not a warm yarn."};
    return on(warm, yarn.trait(TraitName::warmth).value);
}

std::string drape(const YarnProfile& yarn) {
    const Degrees hangs{"It hangs softly.", "It drapes fairly well.",
                        "It does not drape much: it stands rather than hangs."};
    return on(hangs, yarn.trait(TraitName::drape).value);
}

std::string stitches(const SuggestionAnswer& a, const YarnProfile& yarn) {
    const auto what =
        a.taken.fabric.named() ? a.taken.fabric_said : std::string("A stitch pattern");
    const double value = yarn.trait(TraitName::definition).value;
    if (value >= high_from) return capital(what) + " would read clearly.";
    if (value >= middle_from) return capital(what) + " would read, with soft edges.";
    return capital(what) + " would blur: this yarn softens every stitch.";
}

std::string felting(const YarnProfile& yarn) {
    if (yarn.felting == "low") return "It felts little, but wash it cool all the same.";
    return "In a hot or rough wash it would felt and shrink for good: wash it cool, by hand.";
}

std::string fulling(const YarnProfile& yarn) {
    if (yarn.felting == "low") return "It fulls poorly; try a sample first.";
    if (yarn.felting == "high")
        return "It should full well; try a sample first, it cannot be undone.";
    return "Whether it fulls a washed sample must tell; it cannot be undone.";
}

std::string warp(const YarnProfile& yarn) {
    const Degrees stands{"It would stand as warp.",
                         "It may stand as warp at a gentle tension: tug a wetted end first.",
                         "I would not trust it as warp; as weft it is safe."};
    return on(stands, yarn.trait(TraitName::warp_fitness).value);
}

std::string spring(const YarnProfile& yarn) {
    const Degrees springs{"It has spring: it stretches and comes back.",
                          "It stretches a little; a rib holds better with it than a plain edge.",
                          "It has little stretch: it grows in wear and does not come back."};
    return on(springs, yarn.trait(TraitName::elasticity).value);
}

std::string sizes(const SuggestionAnswer& a, const Units& units) {
    if (!a.answered) return "";
    const auto& t = *a.article;
    const auto wide =
        a.wide > Length{} ? fmt::format(" My own is {} wide.", units.size(a.wide)) : std::string();
    if (a.largest < t.smallest)
        return fmt::format("It could be at most {}, and it is made from {} on.{}",
                           measured(t, units.size(a.largest)), units.size(t.smallest), wide);
    return fmt::format("It could be up to about {}.{}", measured(t, units.size(a.largest)), wide);
}

std::string how_many(const SuggestionAnswer& a) {
    if (!a.answered) return "";
    if (a.possible < 1) return "The yarn is not enough for even one of them.";
    const auto& wanted = a.things[a.main].wanted;
    // What is set aside for safety may be all that the next one lacks.
    const auto one = a.need.mid / wanted.count;
    const bool one_more =
        one > Length{} && one * (a.possible + 1) <= a.left + a.need.mid && a.reach == Reach::enough;
    const auto* why = one_more ? ", with something set aside for safety" : "";
    if (wanted.known.in_pairs) return fmt::format("How many pairs: about {}{}.", a.possible, why);
    return fmt::format("The yarn would do for about {} of them{}.", a.possible, why);
}

std::string choice(const SuggestionAnswer& a) {
    if (!a.answered) return "";
    const std::string cannot = "Which would be the better I cannot tell.";
    if (a.taken.fabric.woven == "2/2 twill")
        return "Twill is softer and drapes better than plain weave, and takes a closer sett.";
    if (a.taken.alternatives) return "";
    if (!a.other_craft) return cannot;
    return fmt::format("Of the two crafts the {} one comes out better in this yarn.",
                       words(a.article->craft));
}

// Where it is enough, the metres to spare are said already.
std::string what_is_left(const SuggestionAnswer& a, const YarnProfile& yarn, const Units& units) {
    if (!a.answered || a.reach == Reach::enough) return "";
    if (a.need.mid >= yarn.length.mid) return "Nothing would be left over.";
    return fmt::format("About {} would be left over, if it goes as I expect.",
                       units.yarn(yarn.length.mid - a.need.mid));
}

std::string needle(const SuggestionAnswer& a, const Units& units) {
    if (!a.answered || a.usual_needle.si() <= 0) return "";
    return fmt::format("I would use {} needles for it.", units.needle(a.usual_needle));
}

std::string gauge(const SuggestionAnswer& a, const Units& units) {
    if (!a.answered || a.usual_gauge.si() <= 0) return "";
    return fmt::format("I would expect about {} there.", units.stitch_gauge(a.usual_gauge));
}

std::string sett(const SuggestionAnswer& a, const Units& units) {
    if (!a.answered || a.usual_sett.si() <= 0) return "";
    return fmt::format("I would set it at about {} in the heddle.", units.sett(a.usual_sett));
}

std::string weight_class(const YarnProfile& yarn) {
    if (yarn.class_by_grist.empty()) return "no named";
    std::string out = yarn.class_by_grist.front().name;
    for (std::size_t i = 1; i < yarn.class_by_grist.size(); ++i)
        out += " or " + yarn.class_by_grist[i].name;
    return out;
}

std::string of_making(Topic topic, const SuggestionAnswer& a, const YarnProfile& yarn,
                      const Units& units) {
    switch (topic) {
        case Topic::needle:
            return needle(a, units);
        case Topic::gauge:
            return gauge(a, units);
        case Topic::sett:
            return sett(a, units);
        case Topic::size:
            return sizes(a, units);
        case Topic::count:
            return how_many(a);
        case Topic::choice:
            return choice(a);
        case Topic::skeins:
            if (yarn.skeins.size() == 1) return "The batch is one skein.";
            return fmt::format("The batch has {} skeins: where they differ, alternate two of them.",
                               yarn.skeins.size());
        case Topic::metres:
            if (a.answered) return "";
            return fmt::format("I have {} of it.", units.yarn(yarn.length.mid));
        case Topic::weight:
            return fmt::format("It is of the {} weight, at {}.", weight_class(yarn),
                               units.grist(yarn.linear_density.mid));
        case Topic::mass:
            if (!a.answered) return fmt::format("All of it weighs {}.", units.mass(yarn.mass));
            return fmt::format("It would weigh about {}.",
                               units.mass(a.need.mid * yarn.linear_density.mid));
        case Topic::pattern:
            return a.answered ? "My plan for it gives the counts and the steps." : "";
        case Topic::left:
            return what_is_left(a, yarn, units);
        case Topic::waste:
            return "Each warp leaves an end on the loom: several pieces on one warp waste least.";
        default:
            return "";
    }
}

}  // namespace

std::string measured(const Template& t, const std::string& size) {
    for (const auto& [measure, words] : measured_words)
        if (t.measure == measure) return fmt::format("{} {}", size, words);
    const bool around = t.measure.starts_with("round") || t.measure == "across";
    return fmt::format("{} {}{}", size, around ? "" : "in ", t.measure);
}

std::string topic_sentence(Topic topic, const SuggestionAnswer& a, const YarnProfile& yarn,
                           const Units& units) {
    switch (topic) {
        case Topic::allergy:
            return "An allergy is no matter of softness: ask which fibres it holds, get advice, "
                   "and try a washed sample on the skin first.";
        case Topic::itch:
            return itch(yarn);
        case Topic::wear:
            return wear(yarn);
        case Topic::warmth:
            return warmth(yarn);
        case Topic::drape:
            return drape(yarn);
        case Topic::spring:
            return spring(yarn);
        case Topic::stitches:
            return stitches(a, yarn);
        case Topic::care:
            return felting(yarn);
        case Topic::felting:
            return a.taken.role == YarnRole::fulled ? fulling(yarn) : felting(yarn);
        case Topic::warp:
            return warp(yarn);
        case Topic::blocking:
            return "Blocking opens it out; wool keeps the shape when it dries pinned.";
        case Topic::pooling:
            return "Whether the colours pool only a swatch of the full width shows.";
        case Topic::bias:
            return yarn.plied ? "A balanced ply does not bias; a wetted loop shows how it hangs."
                              : "A singles may lean to one side: the fabric can bias.";
        case Topic::ply:
            return "Plied again it is another yarn: measure it anew.";
        case Topic::dye:
            return "How it takes a dye a few metres in the pot tell, and whether its colour runs a "
                   "wet corner pressed on a white cloth.";
        case Topic::time:
            return "How much time it takes I have not reckoned.";
        case Topic::cost:
            return "What it costs I have not reckoned.";
        case Topic::skill:
            return "How hard it is to make I cannot tell from a yarn.";
        case Topic::cutting:
            return "Where it is cut it frays: sew along both sides of the line first, or full it.";
        default:
            return of_making(topic, a, yarn, units);
    }
}

}  // namespace gristwright::cli
