// What to decide next at a node of the search, and the decisions that follow.
#pragma once

#include <vector>

#include "engine/allocation/flow_bound.hpp"
#include "engine/allocation/mixture.hpp"

namespace gristwright::allocation {

struct Branching {
    enum class Of { nothing, made, count, place, pair, opened } of = Of::nothing;
    std::size_t skein = 0, piece = 0;
};

// What the flow of the last bound disregards at the greatest worth, such as a piece half made or
// one in more skeins than it may be. Nothing: all is decided.
Branching next_branching(const Model& model, const Decisions& d, const FlowBound& flow);

// What a mixture of cutting patterns leaves most undecided, by worth; nothing: it wants all or
// nothing of each thing.
Branching next_branching(const Model& model, const Decisions& d, const Wants& wants);

// One set of decisions for each way to decide it; of skeins that are alike so far, one stands for
// all.
std::vector<Decisions> branches(const Model& model, const Decisions& d, const Branching& branching);

}  // namespace gristwright::allocation
