// Swatches and weighings as they are typed and kept; swatch_text.hpp reads them.
#pragma once

#include <map>
#include <string>

namespace gristwright::catalog {

struct SwatchText {
    enum class Kind { knitted, woven };

    Kind kind = Kind::knitted;
    // Each given once, as typed: {"stitches", "28/10.3cm"}, {"mass", "4.1g"}, {"washed", "yes"}.
    std::map<std::string, std::string, std::less<>> measured;
    std::string date;       // as the caller writes it; may be empty
    bool own_hands = true;  // tells about the person's hands: not by others, not forgotten

    bool operator==(const SwatchText&) const = default;
};

// Exactly one of row and length says how far the piece had come.
struct WeighingText {
    std::string row;     // "96", for a knitted piece
    std::string length;  // "41cm" of cloth woven
    std::string ball;    // "31.5g" left; never empty
    std::string date;

    bool operator==(const WeighingText&) const = default;
};

}  // namespace gristwright::catalog
