// The nearest word to a mistyped one, for "did you mean ...?".
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

// The candidate with the fewest single-letter slips (an exchanged pair counts one), or empty when
// all are further away than one slip in `letters_a_slip` letters (one slip is always allowed).
// Never the word's opposite: unwashed is not washed.
std::string nearest(std::string_view word, const std::vector<std::string>& candidates,
                    std::size_t letters_a_slip = 3);

// "; did you mean 'scarf'?" or nothing.
std::string did_you_mean(std::string_view word, const std::vector<std::string>& candidates);

// The same for names of things that differ in kind by few letters (tencel is no Texel): one slip in
// five letters.
std::string did_you_mean_nearly(std::string_view word, const std::vector<std::string>& candidates);

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
