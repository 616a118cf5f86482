// A plan near a node's bound. A piece that gets its full length there is made, from the skeins that
// give it; then the other pieces are tried one by one, and made where they still fit.
#pragma once

#include "engine/allocation/flow_bound.hpp"
#include "engine/allocation/mixture.hpp"

namespace gristwright::allocation {

// Everything decided, or nothing when the attempt does not hold together. `d` are the concluded
// decisions of the last bound of `flow`.
std::optional<Decisions> rounded(const Model& model, const Decisions& d, const FlowBound& flow);
std::optional<Decisions> rounded(const Model& model, const Decisions& d, const Wants& wants);

// Fits every piece that is still open into what is left, dearest by length first; those that do
// not fit are left out. Nothing when a required one does not fit.
std::optional<Decisions> filled_up(const Model& model, Decisions d);

}  // namespace gristwright::allocation
