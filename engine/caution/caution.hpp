// What can hurt somebody, and when it is said: catalog/tables/cautions.csv. A caution holds under a
// condition on the work that is chosen: the article, the craft, the fibre, for whom, what is done.
#pragma once

#include <functional>
#include <set>
#include <string>
#include <string_view>

#include "engine/estimate/constant.hpp"
#include "engine/project/template.hpp"
#include "engine/yarn/batch.hpp"

namespace gristwright {

// "says:pin|says:wire", "child !knitted": all that stand apart must hold; of those joined by '|'
// one is enough; '!' holds where the word is not among the facts. Empty: always.
struct Caution {
    std::string when;
    std::string text;   // the whole of it
    std::string brief;  // a few words, for lists; empty: none
    bool harm = false;  // to a person, not to the cloth
    Mark mark = Mark::judgement;
    std::string source;
};

// What is the case, each a word: "woven", "scarf", "felts", "says:pin".
using Facts = std::set<std::string, std::less<>>;
using TakeFact = std::function<void(std::string_view)>;

// Of what the yarn is: "felts" where one of its fibres is wool or hair (not superwash) or none is
// named, "plant", "melts" for a synthetic fibre, "singles", "variegated".
void take_facts(const Batch& batch, const TakeFact& take);

// Of the article, all but what its steps say: its kind with hyphens for spaces, its craft, "skin"
// and "clothes" for what it touches, "baby", "loops" (holes or floats), "two-yarns", its finish.
void take_facts(const Template& article, const Fabrics& fabrics, const TakeFact& take);

// What is said of a word in a fact: "says:pin".
inline constexpr std::string_view says = "says:";
// Each word of a text as a fact says it, without `says`: "pin" of "Pins".
void take_words(std::string_view text, const TakeFact& take);

// All of an article's facts, with "says:..." for each word of its steps.
Facts facts_of(const Template& article, const Fabrics& fabrics);

}  // namespace gristwright
