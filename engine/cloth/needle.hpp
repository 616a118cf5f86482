// Needles: which one a purpose wants, which sizes there are, and the loop that one makes.
//
// The needle is chosen for the cloth; the gauge follows from the needle. A stitch is about 1.15
// times as wide as its needle in any yarn, so a laceweight shawl on 3.75 mm is open cloth and socks
// on 2.5 mm are firm.
#pragma once

#include <vector>

#include "engine/cloth/loop.hpp"

namespace gristwright {

// Needle diameter that usually makes a stocking-stitch loop of this length, and back.
Length needle_for(Length loop);
Length loop_on(Length needle);

// The needle that a purpose wants in this yarn: by the needle of its ordinary stocking stitch, but
// for lace and drape never much finer than others take for a shawl in any yarn.
Length needle_wanted(Firmness purpose, Length ordinary, LinearDensity yarn);

// How far from it a knitter may go, as a share of it.
double needle_freedom(Firmness purpose);

// The size nearest the one wanted: of those owned, or of those sold when none is listed.
Length nearest_needle(Length wanted, const std::vector<Length>& owned);
bool needle_serves(Length needle, Length wanted, Firmness purpose);

}  // namespace gristwright
