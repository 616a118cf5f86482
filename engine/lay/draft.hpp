// What a weave's chart tells of itself: how often it crosses, how far its threads float, how many
// shafts its ends ask for.
#pragma once

#include "engine/lay/chart.hpp"

namespace gristwright::lay {

struct Draft {
    int threads = 0;           // ends of a repeat: Ashenhurst's R
    double intersections = 0;  // from over to under along the picks, averaged: his I
    int warp_float = 0;        // picks that an end passes without crossing, face or back
    int weft_float = 0;        // ends that a pick passes
    int shafts = 0;            // ends that rise differently; sticks can stand for shafts
};

// Changes from over to under along the picks of a repeat, averaged.
double intersections(const Chart& chart);

// Throws Refused for an end or a pick that never crosses: it is not woven in.
Draft draft_of(const Chart& chart);

}  // namespace gristwright::lay
