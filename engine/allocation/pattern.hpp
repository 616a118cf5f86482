// The best way to cut one skein at given prices: which pieces it serves and with how much.
#pragma once

#include <vector>

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

// What a skein may give a piece: at least so much, and more at a worth per cm that falls.
struct Offer {
    struct More {
        double length = 0, per_cm = 0;
    };
    std::size_t piece = 0;
    double least = 0, worth = 0;
    std::vector<More> more;
    bool must = false;  // it serves this piece whatever it costs
};

struct Pattern {
    struct Use {
        std::size_t piece = 0;
        double length = 0;
    };
    double worth = 0;
    double at_most = 0;  // no pattern is worth more: `worth` and a hair, unless the effort ran out
    bool possible = true;
    std::vector<Use> uses;
};

// Knapsack with amounts: depth first, by the fractional bound of Dantzig (Operations Research 5,
// 1957 - from memory). Two pieces of a pair in `apart` never share a skein; of a pair in `together`
// the skein serves both or neither.
Pattern best_pattern(double length, std::vector<Offer> offers, const std::vector<TwoPieces>& apart,
                     const std::vector<TwoPieces>& together);

}  // namespace gristwright::allocation
