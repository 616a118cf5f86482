// Sharing skeins out over pieces: the problem and an answer to it, in whole centimetres and whole
// micro-points, so that everything is exact.
//
// Rules. What leaves a skein for a piece is its gross length: the metres in the piece and one tail.
// A piece's net length is the sum of its gross lengths less a tail for each; it lies between
// `least` and `least` plus all stretches, or the piece is not made. Worth: the piece's value and
// its stretches (whose worth per cm falls), less a cost for every join, less a mismatch per gross
// cm; a skein that serves no piece earns its bonus. A piece in several skeins takes at least
// `shortest` net from each. The reserve must be left over in one single skein and does not open it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/allocation/constants.hpp"

namespace gristwright::allocation {

using Cm = std::int64_t;
using Points = std::int64_t;  // millionths of a point

struct Skein {
    std::string name;
    Cm length = 0;     // usable, >= 0
    Points bonus = 0;  // for staying whole, >= 0
};

struct Stretch {
    Cm length = 0;
    Points per_cm = 0;
};

struct Piece {
    std::string name;
    Cm least = 0;                  // net, > 0
    Points value = 0;              // of making it at its least, >= 0
    std::vector<Stretch> stretch;  // worth per cm must not rise
    Points join_cost = 0;          // >= 0
    int max_joins = 0;             // 0: all from one skein
    bool required = false;

    Cm most() const {
        Cm sum = least;
        for (const auto& s : stretch) sum += s.length;
        return sum;
    }
};

struct TwoPieces {
    std::size_t first = 0, second = 0;  // pieces
};

struct Problem {
    std::vector<Skein> skeins;
    std::vector<Piece> pieces;
    // Cost per gross cm of each skein (row) in each piece; nothing: they may not meet. Empty: 0.
    std::vector<std::vector<std::optional<Points>>> mismatch;
    Cm tail = Cm(constants::cut_tail.value);  // lost at every cut
    Cm shortest = Cm(constants::shortest_length.value);  // least net from one of several skeins
    Cm reserve = 0;                    // kept in one skein
    std::vector<TwoPieces> same;       // if both are made, from the same skeins
    std::vector<TwoPieces> different;  // if both are made, from no common skein
};

struct Cut {
    std::size_t skein = 0, piece = 0;
    Cm gross = 0;
};

struct CutList {
    std::vector<Cut> cuts;               // by piece, then skein
    std::optional<std::size_t> reserve;  // the skein that keeps it; nothing when none is asked
    Points worth = 0;

    bool makes(std::size_t piece) const;
    Cm taken_from(std::size_t skein) const;
};

// The most that a piece may be worth per cm (a thousand points a metre), and all together.
inline constexpr Points dearest_per_cm = 10'000'000, dearest = 2'000'000'000'000;

// Throws Refused naming the first thing that is no problem at all: a negative length,
// a worth per cm that rises, an index out of range, lengths beyond 100 km, worth beyond a thousand
// points a metre (a bonus needs a length) or two million points in all.
void check(const Problem& problem);

}  // namespace gristwright::allocation
