// A comparison by ratio. doctest's Approx adds 1 to the size before it takes the share: 0.0092 with
// epsilon(0.01) would let anything up to 0.019 pass, and did.
#pragma once

#include <doctest/doctest.h>

// Within that share of the value itself, however small.
inline doctest::Approx near(double value, double share) {
    return doctest::Approx(value).epsilon(share).scale(1e-300);  // not 0: 0 would differ from 0
}
