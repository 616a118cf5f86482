// Somebody's idea for a batch, and what the ideas' words mean.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "engine/project/template.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

struct Suggestion {
    std::string idea;             // free words
    std::string who, from, when;  // kept, never interpreted
    std::optional<Craft> craft;
    std::optional<Length> needs;         // of yarn
    std::optional<Mass> needs_mass;      // of yarn, of the grist below
    std::optional<LinearDensity> grist;  // of the yarn that the idea was meant for
    std::optional<int> weight_class;     // of that yarn, by number
    std::optional<Gauge> gauge;          // stocking stitch
    std::optional<Sett> sett;
    std::optional<Length> needle;
    std::optional<Length> size;  // finished, of the article's measure
    std::vector<Length> sizes;   // that it comes in
    int colours = 1;
};

// What one word of the trade means to us.
struct WordMeaning {
    enum class Kind { article, craft, fabric, filler };
    Kind kind = Kind::filler;
    std::string means;    // of a fabric: in knitting; empty: only the loom has it
    std::string on_loom;  // of a fabric: the weave; empty: only needles have it
};
using Words = std::unordered_map<std::string, WordMeaning>;

// A fabric that was named, as each craft makes it: "plain" is stocking stitch or plain weave.
struct NamedFabric {
    std::string knitted, woven;  // empty: that craft has none such

    bool named() const { return !knitted.empty() || !woven.empty(); }
    const std::string& in(Craft craft) const { return craft == Craft::knitted ? knitted : woven; }
    auto operator<=>(const NamedFabric&) const = default;
};

struct [[nodiscard]] Understood {
    std::string article;  // a template kind; empty: none was named
    std::optional<Craft> craft;
    NamedFabric fabric;
    std::vector<std::string> taken_as;  // "beanie as hat"
    std::vector<std::string> unknown;   // words to ask about
};

// Pairs of words are tried before single ones; a plural s is forgiven; letters only. Of two
// articles the last counts ("hat and scarf set" is a scarf): English puts the thing last.
Understood understand(const std::string& idea, const Words& words);

}  // namespace gristwright
