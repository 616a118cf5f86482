// Where the wales of a knitted cloth stand: their widths, how they cross, lean and open.
#pragma once

#include <optional>
#include <vector>

#include "engine/lay/chart.hpp"
#include "engine/lay/flow.hpp"
#include "engine/lay/place.hpp"

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
    // How far a crossing brings a place `y` mm up of this row's loop forward, 1 in the midst of the
    // crossing for what passes in front, -1/2 for what passes behind, 0 two rows away and beyond.
    double forward(int wale, int row, double y) const;
    // How far a loop stands to the side, foot (t = 0) to head (1), which is knitted together with a
    // neighbour's or carried on by what is made beside it.
    double lean(int wale, int row, double t) const;
    // Where a place of this row's loop goes once crossings and eyelets have moved it.
    Place moved(int wale, int row, Place p) const;

  private:
    std::optional<int> crossing_near(int row) const;  // the row; none: further than three
    int alike(int place, int step, int crossing, bool rightwards) const;
    int crosses_to(int wale, int crossing) const;
    double crossing_middle(int wale, int crossing) const;
    double crossed(int wale, int row, double x, double y) const;
    Place opened(Place p) const;
    double risen(double x) const;

    const Chart& chart_;
    Flow flow_;
    double knit_width_, row_;
    double crossing_rows_;      // over which stitches cross: fewer where crossings follow closely
    std::vector<double> left_;  // of one repeat; one more than its wales
};

}  // namespace gristwright::lay
