// Sentences about a split that the command, the picture and the page say alike.
#pragma once

#include <string>
#include <string_view>

#include "cli/split_asked.hpp"

namespace gristwright::cli {

// What a wish is called in bars, keys and lists: those that are made, one after the other.
char letter_of(const allocation::Split& split, std::size_t wish);
// "Knitted sample in cables: 12 cm square finished, ..." of a wish that is made.
std::string part_words(const allocation::Split& split, const SplitAsked& asked, std::size_t wish,
                       const Question& q);
// "from A: 12 m, 2.7 g, for the knitted sample; the ball then weighs 35.8 g (159 m left)"
std::string cut_words(const allocation::WindOff& cut, const SplitAsked& asked, const Question& q);
// Why a wish is not met: "it would need more joins".
std::string_view words(allocation::Limit limit);
// Whether no better split exists.
std::string proof(const allocation::Allocation& found);

}  // namespace gristwright::cli
