// How lace carries its wales sideways: a yarn over pushes the stitches beside it on by one place,
// two stitches worked together take one back. What is carried off on the way up tilts the courses:
// they dip where stitches are taken together and rise where they are made.
#pragma once

#include <vector>

#include "engine/lay/chart.hpp"

namespace gristwright::lay {

class Flow {
  public:
    explicit Flow(const Chart& chart);

    // Places by which the next row carries this row's loop to the right; it is worked together with
    // another where `together`.
    int carried(int wale, int row) const;
    bool together(int wale, int row) const;
    // How far a loop's foot in a row stands to the right of its place in the chart: there the wales
    // jump where stitches are made, in cloth they lean evenly all the way.
    double leans(int wale, int row) const;
    // How far a course stands above its middle at a wale, in stitches' widths, where a stitch is
    // `wide` rows wide.
    double rise(int wale, double wide) const;

  private:
    const Chart& chart_;
    std::vector<std::vector<int>> carried_;   // by the row that works them, and wale
    std::vector<std::vector<double>> leans_;  // by row and wale
    std::vector<double> rise_;                // by wale, of stitches as wide as their rows
};

}  // namespace gristwright::lay
