// For which articles a need holds: by class, never by one template's name, so that articles that
// are added later are asked the same.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/project/template.hpp"

namespace gristwright {

// One of these words, or none of them; empty: any.
struct Listed {
    std::vector<std::string> words;
    bool none_of = false;

    bool admits(const std::string& word) const;
};

struct DemandFor {
    Listed article, fabric;  // of a fabric: any piece of it
    std::optional<Craft> craft;
    std::optional<Touches> touches;
    std::optional<bool> hard_fulled, for_baby;
    Demand demand;

    bool holds_for(const Template& article) const;
};

// Every need that holds for it, in the order of the table; of what is made to learn from, none.
std::vector<Demand> demands_of(const Template& article, const std::vector<DemandFor>& table);

}  // namespace gristwright
