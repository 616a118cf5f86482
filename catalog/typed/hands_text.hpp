// What remembered batches tell about the hands that spun and knitted them.
#pragma once

#include <vector>

#include "catalog/notebook/notebook.hpp"
#include "catalog/reference/catalogue.hpp"
#include "engine/evidence/hands.hpp"

namespace gristwright::catalog {

// Hands change with the years, and an answer is not kept waiting: the batches swatched last.
inline constexpr std::size_t batches_of_hands = 24;  // judgement

// One for each batch that tells something, in the same order. A batch whose texts can no longer be
// read tells nothing.
std::vector<HandsSeen> hands_seen(const std::vector<SwatchedBatch>& batches,
                                  const Catalogue& catalogue);

// The same without the batch of that name, so that its own swatches are not counted twice.
std::vector<HandsSeen> without(std::vector<HandsSeen> all, const std::string& batch);

}  // namespace gristwright::catalog
