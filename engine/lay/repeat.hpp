// A place counted on past the end of a repeat, or back before its beginning, as one within it.
#pragma once

#include <cstddef>

namespace gristwright::lay {

// repeat >= 1; place -1 is the last of the repeat.
constexpr int within(int place, int repeat) { return ((place % repeat) + repeat) % repeat; }

constexpr std::size_t within(int place, std::size_t repeat) {
    return static_cast<std::size_t>(within(place, static_cast<int>(repeat)));
}

}  // namespace gristwright::lay
