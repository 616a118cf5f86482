// Words that a reader knows by heart.
#pragma once

#include <algorithm>
#include <iterator>
#include <string_view>

namespace gristwright {

// Whether the list holds that word.
template <class Words>
constexpr bool has(const Words& list, std::string_view word) {
    return std::find(std::begin(list), std::end(list), word) != std::end(list);
}

// Whether it holds one of these.
template <class Words, class Typed>
bool has_any(const Words& list, const Typed& typed) {
    return std::any_of(std::begin(typed), std::end(typed),
                       [&](const auto& word) { return has(list, word); });
}

}  // namespace gristwright
