// Heddles, reeds and frames with pins as they are sold, and what passes through them.
#pragma once

#include <string>
#include <vector>

#include "engine/units/quantity.hpp"

namespace gristwright {

// Heddles are sold by the inch or to 10 cm: two trades, whose steps differ by up to 6 %.
enum class SoldBy { to_10_cm, by_the_inch };

// One that somebody owns.
struct Heddle {
    Sett count{};   // holes and slots together, or dents
    Length hole{};  // its measured width; 0: not measured, then guessed from the count

    // NOLINTNEXTLINE(google-explicit-constructor): a heddle is named by its count
    Heddle(Sett count, Length hole = {}) : count(count), hole(hole) {}
};

// What spaces the ends.
enum class Spaced { heddle, reed, pins, weft };  // weft: drawn in by it, as in a band

// What the trade offers, coarsest first; nothing for `weft`.
std::vector<Sett> sold(Spaced by, SoldBy sold_by);

// "12.5 epi", "50/10 cm": as it is sold, whatever units the person reads.
std::string heddle_name(Sett count);

// Width of a rigid heddle's hole: as measured, or guessed from the space between its ends.
Length hole_of(const Heddle& heddle);

}  // namespace gristwright
