// Somebody's idea for a batch: their words, and what else they stated outright.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/suggestion/taken.hpp"

namespace gristwright {

struct Suggestion {
    std::string idea;        // free words
    std::string beside;      // of the thing, in words that are read with the idea: "size 60 x 8 in"
    std::string who;         // for whom, in free words
    std::string from, when;  // kept, never interpreted
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

}  // namespace gristwright
