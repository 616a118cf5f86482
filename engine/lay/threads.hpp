// Where the threads of a woven cloth lie side by side: threads that nothing parts slide together,
// those between which the others cross stand apart, and ends crossed in pairs hug each other.
#pragma once

#include <vector>

#include "engine/cloth/weaving.hpp"
#include "engine/lay/chart.hpp"

namespace gristwright::lay {

class Threads {
  public:
    // Spacings and thickness in mm. `layered`: of two cloths one over the other nothing slides.
    Threads(const Chart& chart, double end, double pick, double thickness, WeaveBuild built,
            bool layered);

    double end(int i, int j) const;   // mm from the left of end i where pick j crosses it
    double pick(int i, int j) const;  // mm from below of pick j where end i crosses it
    // How far a thread lies to the side of its even place, in spacings, repeat by repeat.
    using Aside = std::vector<std::vector<double>>;

  private:
    double crossed_end(int i, int j) const;

    double end_, pick_, thickness_;
    bool crossed_ends_;
    Aside ends_, picks_;  // by end and pick, and by pick and end; empty: none
};

}  // namespace gristwright::lay
