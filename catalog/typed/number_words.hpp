// Numbers in words, by the table of words (class `number` of catalog/tables/words.csv).
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "catalog/reference/spoken.hpp"

namespace gristwright::catalog {

// "two", "half a", "a couple of", "one hundred and eighty", from the front of plain words, which
// are taken off it with the space behind them.
std::optional<double> take_number_words(std::string_view& words, const SpokenWords& spoken);

// "half a pound, two skeins" is "0.5 pound, 2 skeins", "a dozen 10 yd bits" is "12 x 10 yd bits".
// A text without such words stays as it is.
std::string in_figures(const std::string& text, const SpokenWords& spoken);

}  // namespace gristwright::catalog
