// The phrases and measures of an idea in their order: what reading works on.
#pragma once

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/suggestion/lexicon.hpp"
#include "engine/units/has.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

// A number with what it counts or measures.
struct Amount {
    enum class Of { number, length, mass, gauge, sett, wraps, age, time, share, skeins, other };
    Of of = Of::number;
    double number = 0;  // as written, in its own unit
    std::string unit;
    std::optional<Length> length;
    std::optional<Mass> mass;
    std::optional<Gauge> gauge;
    std::optional<Sett> sett;
    bool times_next = false;  // "6 x ..."
    bool read = false;        // it was taken for something
};

struct Item {
    const Phrase* phrase = nullptr;  // nullptr: a sign, a number in figures, or an unknown word
    std::optional<Amount> amount;
    std::string said;  // as it was typed
    std::string text;  // in small letters, slips mended
    std::size_t clause = 0, sentence = 0;
    bool sign = false;
    bool capital = false;
    bool asks = false;      // its sentence ends with a question mark or begins as a question
    bool unknown = false;   // in no table
    bool bent = false;      // of a word of the table, but not that word: "lined", "belted"
    bool out = false;       // ruled out by a negation
    bool idle = false;      // in a remark, or used up: not read any more
    bool stranger = false;  // names a thing that no table has as an article
    bool grown = false;     // a "son" or "niece" who is said to be grown up
    bool small = false;     // or to be a child

    bool is(WordClass c) const { return phrase && phrase->is(c); }
    bool live(WordClass c) const { return is(c) && !idle && !out; }
    const std::string& as(WordClass c) const { return phrase->as(c); }
    // Exactly that word of the table, and no other that bends like it: "dropped", not "drop".
    bool sounds(std::string_view what) const {
        return is(WordClass::tone) && as(WordClass::tone) == what && phrase->text == text;
    }

    std::string_view first_word() const { return std::string_view(text).substr(0, text.find(' ')); }
    std::string_view last_word() const {
        return std::string_view(text).substr(text.find_last_of(' ') + 1);
    }
};

// The longest phrases first, slips mended, then numbers joined with their units. What was mended is
// told in `mended` ("blankit as blanket").
std::vector<Item> items_of(const std::string& idea, const Lexicon& lexicon, Stemmer& stemmer,
                           std::vector<std::string>& mended);

// "1.7", "0,5", "1,200"; nothing above a million.
std::optional<double> figure_of(const std::string& text);

// "wide", "long", "in length": a word that says which side a measure is of.
bool tells_a_side(const Item& item);

// Joins numbers and units: "1 3/4 oz", "40 st to 10 cm", "six foot", "6 x 60 in".
std::vector<Item> with_amounts(const std::vector<Item>& items);
// What is told in two pieces: "five foot six", "a yard and a half", "24-26 in", "6 balls of 50 g".
void join_parts(std::vector<Item>& items);

// "my", "your", "that": of something that is there.
bool is_own(const Item& item);

// "for my boss", "on the wall", "the postman wants".
bool stands_after_for(const std::vector<Item>& items, std::size_t at);

// "age 7", "ages 5": how old somebody is, and no count.
bool stands_before_an_age(std::string_view word);  // "turning", "she's"
bool stands_after_age(const std::vector<Item>& items, std::size_t at);
bool is_own_age(const std::vector<Item>& items, std::size_t at);  // "I am 7"
bool is_of_ages(const std::vector<Item>& items, std::size_t at);  // "child 6-8"

}  // namespace gristwright
