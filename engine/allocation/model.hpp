// The problem as the search sees it: the reserve is one more piece (required, worth nothing, whole,
// without a tail, opening no skein), and skeins that are alike are one class.
#pragma once

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

struct ModelPiece {
    Cm least = 0, most = 0;  // net
    Points value = 0, join_cost = 0;
    std::vector<Stretch> stretch;
    int most_skeins = 1;
    bool required = false;
    bool opens = true;  // false: the reserve
    Cm tail = 0;
};

struct Model {
    explicit Model(const Problem& problem);

    std::size_t skeins = 0, pieces = 0;
    std::vector<Cm> length;
    std::vector<Points> bonus;
    std::vector<ModelPiece> piece;
    std::vector<std::vector<Points>> cost;  // by skein and piece; 0 where they may not meet
    std::vector<std::vector<bool>> meets;   // by skein and piece
    std::vector<TwoPieces> same, different;
    std::vector<std::size_t> alike;  // by skein: the first skein of its class
    Cm shortest = 0;
    bool has_reserve = false;

    bool may_meet(std::size_t i, std::size_t j) const { return meets[i][j]; }
};

}  // namespace gristwright::allocation
