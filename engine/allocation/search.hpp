// The exact search by itself: best first, from an incumbent if there is one.
#pragma once

#include <optional>

#include "engine/allocation/allocate.hpp"

namespace gristwright::allocation {

// Skeins times pieces up to which a problem is mostly proven at once.
inline constexpr std::size_t small_size = 100;

Allocation search(const Problem& problem, const Effort& effort, std::optional<CutList> incumbent);

// Betters `list` by freeing a few pieces at a time and solving that small problem exactly.
CutList improved(const Problem& problem, CutList list, int rounds, const std::stop_token& stop);

}  // namespace gristwright::allocation
