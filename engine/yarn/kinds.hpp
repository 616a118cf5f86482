// Skeins that say of themselves what they are: wraps, fibre, colour. What differs there is another
// yarn, whatever its grist.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/yarn/batch.hpp"

namespace gristwright {

// The same fibres in the same shares, to a whole per cent, in whatever order they are said.
bool same_fibre(const std::vector<FibrePart>& a, const std::vector<FibrePart>& b);

// For each skein the number of its kind, from 0: of one fibre and one colour as they say it, and of
// wraps without a gap between neighbours that the cloth would show (constants::alike_wraps). What
// no skein says parts none.
std::vector<std::size_t> kinds_of(const std::vector<Skein>& skeins);

// The batch with those of its skeins alone: its wraps are the mean of theirs, its fibre what they
// are of, by mass; what they do not say is as the batch has it.
Batch with_skeins(const Batch& batch, const std::vector<std::size_t>& places);

// The same with all of them.
Batch as_its_skeins_say(const Batch& batch);

}  // namespace gristwright
