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
    std::optional<bool> hard_fulled;
    std::optional<Firmness> firmness;  // knitted
    std::optional<bool> for_baby;
    std::shared_ptr<const Demand> demand;

    bool holds_for(const Template& article) const;
};

// What handspinners spin for first, and what they make of it besides or of what is left over.
struct SpunFor {
    Listed article;
    std::optional<Touches> touches;
    std::optional<bool> for_baby;
    double place =
        1;          // above 0: share of its suitability that counts where articles are put in order
    int alike = 1;  // how many of it a person wants
    Mark mark = Mark::judgement;
    std::string source;
};

// Every need that holds for it, in the order of the table, none for what is made to learn from; and
// the first row of its kind. Not compared with other yarns yet.
Calling calling_of(const Template& article, const std::vector<DemandFor>& needs,
                   const std::vector<SpunFor>& kinds);

}  // namespace gristwright
