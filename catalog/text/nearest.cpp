#include "catalog/text/nearest.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/units/ascii.hpp"

namespace gristwright::catalog {
namespace {

// Restricted Damerau-Levenshtein distance.
std::size_t slips(std::string_view a, std::string_view b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
    for (std::size_t j = 0; j <= b.size(); ++j) d[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t other = a[i - 1] == b[j - 1] ? 0 : 1;
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + other});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

bool negates(std::string_view longer, std::string_view shorter) {
    for (const std::string_view no : {"un", "non", "not ", "non-", "in", "dis", "no "})
        if (longer.size() == no.size() + shorter.size() && longer.substr(0, no.size()) == no &&
            longer.substr(no.size()) == shorter)
            return true;
    return false;
}

}  // namespace

std::string nearest(std::string_view word, const std::vector<std::string>& candidates,
                    std::size_t letters_a_slip) {
    const auto typed = ascii::lowered(word.substr(0, 60));  // capitals are no slip
    std::size_t best = std::max<std::size_t>(1, typed.size() / letters_a_slip) + 1;
    std::string found;
    for (const auto& candidate : candidates) {
        const auto known = ascii::lowered(candidate);
        if (negates(typed, known) || negates(known, typed)) continue;
        if (const auto away = slips(typed, known); away < best) best = away, found = candidate;
    }
    return found;
}

std::string did_you_mean_nearly(std::string_view word, const std::vector<std::string>& candidates) {
    const auto found = nearest(word, candidates, 5);
    return found.empty() ? "" : "; did you mean '" + found + "'?";
}

std::string did_you_mean(std::string_view word, const std::vector<std::string>& candidates) {
    const auto found = nearest(word, candidates);
    return found.empty() ? "" : "; did you mean '" + found + "'?";
}

std::string did_you_mean_or_all(std::string_view word, const std::vector<std::string>& candidates) {
    const auto near = did_you_mean(word, candidates);
    return near.empty() ? fmt::format("; there are: {}", fmt::join(candidates, ", ")) : near;
}

std::string not_one_of(std::string_view word, const std::vector<std::string>& candidates) {
    return fmt::format("'{}' is not one of: {}{}", word, fmt::join(candidates, ", "),
                       did_you_mean(word, candidates));
}

}  // namespace gristwright::catalog
