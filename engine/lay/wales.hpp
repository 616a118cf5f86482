// Where the wales of a knitted cloth stand: their widths, how they cross, lean and open.
#pragma once

#include <optional>
#include <vector>

#include "engine/lay/chart.hpp"
#include "engine/lay/cloth.hpp"

namespace gristwright::lay {

class Wales {
  public:
    // `stitch` and `row`: mean spacings, mm.
    Wales(const Chart& chart, double stitch, double row);

    double width(int wale) const;
    double middle(int wale) const;
    // Purled from bottom to top beside knit wales: it lies behind them.
    bool recedes(int wale) const;
    // In the two rows up to the crossing and the two above it, in front of those that it crosses.
    bool crosses_in_front(int wale, int row) const;
    bool crossing_in(int row) const;
    // How far the loop's head stands to the side: it is knitted together with a neighbour's.
    double lean(int wale, int row) const;
    // Where a place of this row's loop goes once crossings and eyelets have moved it.
    Place moved(int wale, int row, Place p) const;

  private:
    std::optional<int> crossing_near(int row) const;  // the row; none: further than three
    int alike(int place, int step, int crossing, bool rightwards) const;
    int crosses_to(int wale, int crossing) const;
    double crossing_middle(int wale, int crossing) const;
    double crossed(int wale, int row, double x, double y) const;
    Place opened(Place p) const;

    const Chart& chart_;
    double knit_width_, row_;
    double crossing_rows_;      // over which stitches cross: fewer where crossings follow closely
    std::vector<double> left_;  // of one repeat; one more than its wales
};

}  // namespace gristwright::lay
