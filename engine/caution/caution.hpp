// What can hurt somebody, and when it is said: catalog/tables/cautions.csv. A caution holds under a
// condition on the work that is chosen: the article, the craft, the fibre, for whom, what is done.
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "engine/estimate/constant.hpp"
#include "engine/project/template.hpp"
#include "engine/yarn/batch.hpp"

namespace gristwright {

// So that a fact can be asked for without making a string of it.
struct HashOfText {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const {
        return std::hash<std::string_view>{}(text);
    }
};

// What is the case, each a word: "woven", "scarf", "felts", "says:pin".
using Facts = std::unordered_set<std::string, HashOfText, std::equal_to<>>;

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

bool holds(std::string_view when, const Facts& facts);

// Those that hold, in the table's order; a brief that comes again is not said again.
std::vector<Caution> holding(const std::vector<Caution>& table, const Facts& facts);

// Of what the yarn is: "felts" where one of its fibres is wool or hair (not superwash) or none is
// named, "plant", "melts" for a synthetic fibre, "singles", "variegated".
void add_facts(const Batch& batch, Facts& out);

// Of the article: its kind with hyphens for spaces, its craft, "skin" and "clothes" for what it
// touches, "baby", "loops" (holes or floats), its finish; "says:..." for each word of its steps.
void add_facts(const Template& article, const Fabrics& fabrics, Facts& out);

// "says:baby" for each word of a text, in small letters without a plural s.
void add_words(std::string_view text, Facts& out);

// The same facts as far as a table of cautions asks for words, for many articles: each step is
// read once, however many articles and questions it belongs to.
class WordsAsked {
  public:
    explicit WordsAsked(const std::vector<Caution>& table);

    void add_facts(const Template& article, const Fabrics& fabrics, Facts& out);
    void add_words(std::string_view text, Facts& out);

  private:
    void ask(std::string_view fact);
    std::uint32_t& lengths_at(std::string_view word);

    Facts asked_;
    // Of those asked for, by their first letter, the lengths: few words of a text come so near.
    std::array<std::uint32_t, 256> lengths_{};
    std::unordered_map<std::string, Facts, HashOfText, std::equal_to<>> of_step_;
};

}  // namespace gristwright
