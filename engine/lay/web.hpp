// How high each thread of a woven cloth lies at each crossing: over or under, in which of two
// cloths that are woven one over the other, and how far floats draw the cloth out of its plane. A
// float is shorter than what it spans: what ties it down is drawn towards it, forwards by one on
// the face, backwards by one on the back.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "engine/lay/chart.hpp"

namespace gristwright::lay {

class Web {
  public:
    explicit Web(const Chart& chart);

    // Thicknesses of the yarn above the cloth's middle.
    double end(int i, int j) const;
    double pick(int i, int j) const;
    bool layered() const { return upper_.has_value(); }

  private:
    bool up(int i, int j) const { return chart_.at(i, j) == 'x'; }
    double lifted(int i, int j) const;
    double run(int i, int j, int di, int dj) const;
    double tied(int i, int j) const;

    const Chart& chart_;
    // Which ends and which picks, the even or the odd, make the upper of two cloths.
    struct Upper {
        int ends, picks;
    };
    std::optional<Upper> upper_;
    std::vector<std::vector<double>> lifted_;  // by end and pick of a repeat
};

}  // namespace gristwright::lay
