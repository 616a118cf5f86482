// What words and phrases mean to us: the table catalog/tables/words.csv, ready to be asked.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "engine/project/article_kind.hpp"
#include "engine/suggestion/stem.hpp"
#include "engine/suggestion/tokens.hpp"

namespace gristwright {

enum class WordClass {
    article,    // kind[:form][~nearest][@for whom]; "?": a thing that no template makes
    part,       // a thing only where no article stands beside it
    form,       // which of an article's templates
    fabric,     // on the needles/on the loom, as the tables name it
    technique,  // known by name only: craft[~nearest fabric]
    craft,
    role,
    person,  // "for" behind it: only after that word
    body,
    material,
    colour,
    weight,
    number,
    unit,
    needle,  // a size as a trade numbers it: mm, or "mm US/mm UK" where it is not said which
    tool,    // tells what a number beside it measures
    joiner,
    negation,
    topic,  // what a question is about; "!": also where nothing is asked; "?": beside a thing
    remark,
    idiom,  // swallowed whole
    filler,
    everyday,  // never taken for a slip of a trade word
    spelling,  // another way to write a word, which it means
    place,     // where "a thing" goes that has no other name: "neck"
    tone,      // what a sentence does by it: "did" tells, "wish" wishes, "no" refuses, ...
};
inline constexpr std::size_t word_class_count = 26;
std::optional<WordClass> word_class_named(std::string_view name);
// What a word of that class may mean: "did", "wish", "no".
bool is_tone(std::string_view means);

struct Phrase {
    std::string text;                                          // as the table has it
    std::size_t size = 0;                                      // tokens
    std::array<const std::string*, word_class_count> means{};  // nullptr: not of that class

    bool is(WordClass c) const { return means[static_cast<std::size_t>(c)] != nullptr; }
    const std::string& as(WordClass c) const { return *means[static_cast<std::size_t>(c)]; }
};

class Lexicon {
  public:
    // Lines of word, class and meaning, parted by tabs. A class that is not known throws
    // Refused. `kinds` outlive it.
    Lexicon(std::string_view table, const ArticleKinds& kinds);
    Lexicon(std::string_view table, ArticleKinds&& kinds) = delete;
    Lexicon(const Lexicon&) = delete;
    Lexicon& operator=(const Lexicon&) = delete;

    // The longest phrase that the tokens begin with; nullptr: none. Inflected words count.
    const Phrase* longest(std::span<const Token> tokens, Stemmer& stemmer) const;
    bool knows(const std::string& word, Stemmer& stemmer) const;
    // "wld", "shes": the word as it is spelt; nullptr: it is spelt so.
    const std::string* spelt(const std::string& word) const;
    // The trade word that a word not known is a slip of; empty: of none.
    std::string meant_by_slip(const std::string& word) const;

    // What is known of the articles that the words mean.
    const ArticleKinds& kinds() const { return kinds_; }

  private:
    void add(std::string_view word, WordClass of, std::string_view means, Stemmer& stemmer);
    void add_trade(const std::string& word);
    const Phrase* find(const std::string& surface, const std::string& stems,
                       std::string_view last) const;

    const ArticleKinds& kinds_;
    std::unordered_map<std::string, Phrase> phrases_;          // by their words
    std::unordered_map<std::string, const Phrase*> by_stems_;  // by their stems
    std::unordered_map<std::string, std::size_t> longest_;     // by first word and first stem
    std::unordered_set<std::string> meanings_;                 // each once
    std::unordered_map<std::string, std::string> spellings_;
    std::array<std::uint32_t, 26> spelt_lengths_{};       // by first letter, a bit for each length
    std::unordered_set<std::string> vocabulary_, stems_;  // of single words
    std::array<std::vector<std::string>, 26> trade_;      // by first letter
    std::unordered_map<std::string, std::string> by_consonants_;  // trade words; empty: of two
};

}  // namespace gristwright
