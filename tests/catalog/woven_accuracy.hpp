// What woven cloth loses, predicted for published pieces: a section of docs/accuracy.md.
#pragma once

#include <string>
#include <vector>

namespace published {

// One loss, in %; its states: "reed to washed", "reed to off the loom", "off the loom to washed".
struct LossCase {
    std::string id, what, states;
    double ours, low, high;  // the range met in practice
    double published;

    // To the per cent: what people measure is no finer.
    bool inside() const { return published >= low - 0.5 && published <= high + 0.5; }
};

std::vector<LossCase> loss_cases();
std::string losses_section();

}  // namespace published
