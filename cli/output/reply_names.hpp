// What a reply calls the things that were asked for.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/suggestion/answer.hpp"

namespace gristwright::cli {

// Lists in a reply end with a word: "a hat, mitts and socks".
std::string listed(const std::vector<std::string>& parts, std::string_view last);

// "a watch cap (knitted)": what was answered with.
std::string template_words(const SuggestionAnswer& a);

// "a hat", "2 pairs of mitts": the catalogue's word for it; the word as typed for what the
// catalogue does not have.
std::string said_of(const ThingAnswer& thing);

// What was asked for and is not in the answer: "brioche", "a capelet"; each as it was typed.
std::vector<std::string> left_out(const SuggestionAnswer& answer);

// The answer is for the nearest to what was asked for, and its grade is not the idea's.
bool is_of_the_nearest(const SuggestionAnswer& answer);

// "a knitted hat", "knitted socks", "three knitted hats".
std::string named(const ThingAnswer& thing);

}  // namespace gristwright::cli
