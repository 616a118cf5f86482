// Stitches made three in one, and three closed to one where the next stitch's three are made: each
// three lie as a small dome between the row that made them and the row that closes them.
#pragma once

#include <vector>

#include "engine/lay/chart.hpp"
#include "engine/lay/strand.hpp"

namespace gristwright::lay {

class Gathers {
  public:
    // `stitch` and `row`: mean spacings, mm.
    Gathers(const Chart& chart, double stitch, double row);

    bool any() const { return !rows_.empty(); }
    // Where a place of this row's loop goes, and how far towards the eye, in stitches' widths.
    Spot moved(int wale, int row, double x, double y) const;

  private:
    struct Group {
        int first = 0, count = 1;
        double middle = 0;  // stitches from the repeat's edge
    };
    struct GatheringRow {
        int row = 0;
        std::vector<Group> groups;
    };
    const GatheringRow& under(int row) const;
    int next_above(int row) const;

    const Chart& chart_;
    double stitch_, row_;
    std::vector<GatheringRow> rows_;  // of one repeat, upwards
};

}  // namespace gristwright::lay
