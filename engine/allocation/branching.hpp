// Which question to ask next at a node, and its answers as decisions.
#pragma once

#include <vector>

#include "engine/allocation/mixture.hpp"
#include "engine/allocation/relaxation.hpp"

namespace gristwright::allocation {

struct Question {
    enum class Of { nothing, made, count, place, pair, opened } of = Of::nothing;
    std::size_t skein = 0, piece = 0;
};

// The question that the flow of the last bound offends most; nothing when all is decided.
Question next_question(const Model& model, const Decisions& d, const Relaxation& flow);

// The question that a mixture of patterns offends most; nothing when it wants all or nothing of
// each.
Question next_question(const Model& model, const Decisions& d, const Wants& wants);

// One set of decisions an answer; skeins that are alike so far are asked about once.
std::vector<Decisions> answers(const Model& model, const Decisions& d, const Question& question);

}  // namespace gristwright::allocation
