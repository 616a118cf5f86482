// The stitches at a piece's first and last row, and how it grows or narrows between them.
#pragma once

#include <string>

#include "engine/project/plan.hpp"

namespace gristwright::cli {

struct EdgeCounts {
    std::string first, last;  // "124 st", "from the middle"; of the outline as it is drawn
    std::string slope;        // "2 st fewer in every 6th row 20 times"; empty: straight
};

// `backwards`: worked from the last row of the outline to its first.
EdgeCounts edge_counts(const PlanPiece& piece, bool backwards);

}  // namespace gristwright::cli
