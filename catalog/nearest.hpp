// The nearest word to a mistyped one, for "did you mean ...?".
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

// The candidate with the fewest single-letter slips (an exchanged pair counts one), or empty when
// all are further away than a third of the word's letters (at least one slip is allowed).
std::string nearest(std::string_view word, const std::vector<std::string>& candidates);

// "; did you mean 'scarf'?" or nothing.
std::string did_you_mean(std::string_view word, const std::vector<std::string>& candidates);

// The same, but all there are when none is near: "; there are: garter, moss".
std::string did_you_mean_or_all(std::string_view word, const std::vector<std::string>& candidates);

// "'lng' is not one of: long, short; did you mean 'long'?"
std::string not_one_of(std::string_view word, const std::vector<std::string>& candidates);

// The names of a table's rows.
template <class Rows>
std::vector<std::string> names_of(const Rows& rows) {
    std::vector<std::string> names;
    for (const auto& row : rows) names.emplace_back(row.name);
    return names;
}

}  // namespace gristwright::catalog
