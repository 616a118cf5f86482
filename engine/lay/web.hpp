// How high each thread of a woven cloth lies at each crossing: over or under, lifted where it
// floats far, and in which of two cloths that are woven one over the other.
#pragma once

#include <array>
#include <optional>

#include "engine/lay/chart.hpp"

namespace gristwright::lay {

class Web {
  public:
    explicit Web(const Chart& chart);

    // Thicknesses of the yarn above the cloth's middle.
    double end(int i, int j) const;
    double pick(int i, int j) const;

  private:
    bool up(int i, int j) const { return chart_.at(i, j) == 'x'; }
    double lifted(int i, int j) const;
    double run(int i, int j) const;

    const Chart& chart_;
    // Which ends and which picks, the even or the odd, make the upper of two cloths.
    struct Upper {
        int ends, picks;
    };
    std::optional<Upper> upper_;
};

}  // namespace gristwright::lay
