// A plan near what a node's relaxation wants: what that makes whole is made, the rest is fitted in
// greedily.
#pragma once

#include "engine/allocation/mixture.hpp"
#include "engine/allocation/relaxation.hpp"

namespace gristwright::allocation {

// Everything decided, or nothing when the attempt does not hold together. `d` are the concluded
// decisions of the last bound of `flow`.
std::optional<Decisions> rounded(const Model& model, const Decisions& d, const Relaxation& flow);
std::optional<Decisions> rounded(const Model& model, const Decisions& d, const Wants& wants);

// Fits every piece that is still open into what is left, dearest by length first; those that do
// not fit are left out. Nothing when a required one does not fit.
std::optional<Decisions> filled_up(const Model& model, Decisions d);

}  // namespace gristwright::allocation
