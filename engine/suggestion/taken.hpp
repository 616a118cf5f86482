// What was read in somebody's idea: a value. Reading knows no templates, no tables and no yarn;
// answering (answer.hpp) knows no words.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/project/template.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

// A fabric that was named, as each craft makes it: "plain weave" is no knitting.
struct NamedFabric {
    std::string knitted, woven;  // empty: that craft has none such

    bool named() const { return !knitted.empty() || !woven.empty(); }
    const std::string& in(Craft craft) const { return craft == Craft::knitted ? knitted : woven; }
    auto operator<=>(const NamedFabric&) const = default;
};

// What this yarn is to be in the piece.
enum class YarnRole {
    unsaid,
    weft_only,
    warp_only,
    border,
    doubled,
    with_another,
    plied_again,
    fulled,
    all,
    part
};
std::string_view words(YarnRole role);
std::optional<YarnRole> yarn_role_named(std::string_view name);

enum class Wearer { unsaid, baby, child, adult, animal, home };
std::string_view words(Wearer wearer);
std::optional<Wearer> wearer_named(std::string_view name);

// What a question is about beside the verdict.
enum class Topic {
    itch,
    enough,
    size,
    count,
    metres,
    skeins,
    wear,
    warmth,
    drape,
    blocking,
    care,
    felting,
    stitches,
    pooling,
    needle,
    gauge,
    sett,
    left,
    spin_more,
    choice,
    mass,
    bias,
    warp,
    waste,
    pattern,
    time,
    ply,
    spring,
    dye,
    weight,
    allergy,
    cost,
    skill,
    cutting,
};
std::string_view words(Topic topic);
std::optional<Topic> topic_named(std::string_view name);

// One of the things that are wanted.
struct Wanted {
    std::string kind;     // as the table of words names it; the word itself where it names none
    std::string said;     // as it was typed
    std::string form;     // "triangle", "crescent"; empty: none was named
    std::string nearest;  // the kind that comes nearest where no template makes `kind`
    ArticleKind known;    // what is known of that kind, or of `kind`
    bool plural = false;
    int count = 1;
    NamedFabric fabric;
    std::string fabric_said;
    std::optional<Craft> craft;  // said of this one: "a woven stole or a knitted shawl"
    std::vector<Length> sizes;   // of the article's own measure first
    bool only_width = false;     // the one size is a width
    bool is_long = false;        // the first size was said to be a length: "20 cm long"
    bool is_tall = false;        // and to be a height: "20 cm tall"
    std::optional<Length> needs;
    std::optional<Mass> needs_mass;
    bool needs_each = false;  // what it is said to need is for one
    // Whose this one is, where several people are spoken of; unsaid: as of the idea as a whole.
    Wearer wearer = Wearer::unsaid;
    std::string body;
    std::optional<double> years;
};

// A way of making that is known by its name only, or a word that nobody knows.
struct Unmade {
    std::string said;
    std::optional<Craft> craft;  // that has it; nothing: either, another craft, or unknown
    bool other_craft = false;    // neither knitting nor weaving
    NamedFabric nearest;
};

struct Taken {
    std::vector<Wanted> wanted;
    bool alternatives = false;           // any one of them would do
    std::vector<std::string> ruled_out;  // kinds
    std::optional<Craft> craft;          // as said
    bool both_crafts = false;
    NamedFabric fabric;  // of the idea as a whole, or of the first that has one
    std::string fabric_said;
    std::vector<Unmade> not_known;
    std::vector<NamedFabric> fabrics_out;  // "without cables"
    YarnRole role = YarnRole::unsaid;
    std::string role_said;
    Wearer wearer = Wearer::unsaid;
    std::string wearer_said;
    std::string kin;              // "niece", "sons": of an age that nobody said
    std::string worn_by;          // a thing whose size nobody knows: "a hat for the bottle"
    std::string body;             // "newborn", "man", as the table of bodies has it
    std::optional<double> years;  // of age
    std::vector<Topic> topics;
    bool asks = false;
    std::string unanswered;  // a question on which nothing here has a word, as it was typed
    std::string weight;      // class of the yarn it was meant for; empty: none was named
    std::optional<Gauge> gauge;
    std::optional<Sett> sett;
    std::optional<Length> needle;
    std::optional<Length> loom_width;
    std::optional<Length> warp, loom_waste;  // on the loom: no size of the cloth
    std::optional<Length> at_hand;           // yarn that they ask of: would it do?
    std::optional<Mass> at_hand_mass;
    std::optional<double> at_hand_skeins;
    std::optional<double> share_of_thing;  // "half a blanket"
    std::optional<double> share_of_yarn;   // "out of half of the yarn"
    std::string material;                  // the table's kind of fibre that was named; empty: none
    std::string material_said;
    std::string shoe;              // its size as it was typed; empty: none was
    std::string letters;           // "size M", "XL": which differs from maker to maker
    std::string no_unit;           // "180 by 20": a size of which it was not said in what
    std::vector<double> bare;      // the numbers of that size
    bool other_yarn = false;       // asked of a yarn of their own
    std::optional<bool> imperial;  // the units they wrote in; nothing: none
    bool not_an_idea = false;
    std::vector<std::string> left_out;   // said of the thing, and not reckoned with: "pockets"
    std::vector<std::string> aside;      // things and measures heard as talk, and not as wishes
    std::string named;                   // a word for a thing that no table has; asked back
    std::string how_big;                 // "big", "skinny": no measure
    std::vector<std::string> forms_out;  // "not a triangle"
    int colours = 0;                     // that it is said to have; 0: none were counted
    bool one_alone = false;              // one of what comes in pairs: "one sock"
    std::vector<std::string> taken_as;   // "beanie as hat", "blankit as blanket"

    bool about(Topic topic) const;
};

}  // namespace gristwright
