// What a blend is said to be made of: "70% merino 30% silk", "merino/silk 80/20", "half merino half
// silk", "3 parts gotland to 1 part mohair", "a pound of CVM and 4 oz of yak", "1/4 angora, rest
// targhee", "merino 19.5 micron".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/reference/spoken.hpp"

namespace gristwright::catalog {

struct BlendPiece {
    std::string name;             // as typed
    std::optional<double> share;  // of 100; nothing: not said
    std::optional<double> micron;
};

struct BlendPieces {
    std::vector<BlendPiece> pieces;
    bool unread = false;           // a share stands there that belongs to none of them
    bool by_rest = false;          // one's share is what the others leave
    std::vector<double> shares{};  // in their order
};

// A digit or a point: what a number is written with.
bool is_figure(char c);

// In the order they were typed. A share that is said for all but one is the rest for that one.
BlendPieces blend_pieces(std::string_view typed, const SpokenWords& spoken);

}  // namespace gristwright::catalog
