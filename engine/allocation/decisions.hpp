// What a node of the search has decided, and everything that follows from it without any flow.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/allocation/model.hpp"

namespace gristwright::allocation {

enum class Say : std::int8_t { no = -1, open = 0, yes = 1 };

struct Decisions {
    explicit Decisions(const Model& model);

    std::vector<Say> made;          // by piece
    std::vector<Say> opened;        // by skein: serves a piece
    std::vector<Say> serves;        // by skein and piece, row by row
    std::vector<int> fewest, most;  // skeins of each piece, if made

    Say& pair(std::size_t i, std::size_t j) { return serves[i * made.size() + j]; }
    Say pair(std::size_t i, std::size_t j) const { return serves[i * made.size() + j]; }
};

// Least gross length that a skein gives to a piece it serves, under these decisions. `least_bare`
// is the part of it that counts for certain in the flow: the flow reckons with tails for the fewest
// skeins only, so that while the piece may still be given more skeins, this tail does not count.
Cm least_gross(const Model& model, const Decisions& d, std::size_t j);
Cm least_bare(const Model& model, const Decisions& d, std::size_t j);

// Draws every conclusion: yes and no spread over skeins, relations, counts and room. False when the
// decisions contradict each other.
bool conclude(const Model& model, Decisions& d);

}  // namespace gristwright::allocation
