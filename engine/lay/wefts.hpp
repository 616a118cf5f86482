// Which weft lies where in a pick whose colours have areas: its stretches, one to a strand.
#pragma once

#include <vector>

#include "engine/lay/chart.hpp"

namespace gristwright::lay {

struct Stretch {
    int yarn = 0;
    int from = 0, to = 0;                          // ends, the last one within it
    bool beside = false;                           // another weft lies in the same shed there
    bool turns_left = false, turns_right = false;  // held there by another weft
};

// A picture of areas over ends; its squares are an end wide.
class Areas {
  public:
    // `first`, `last`: ends of the window. Clasped picks: one picture in the middle of it, its
    // outermost squares going on.
    Areas(const Chart& chart, bool clasped, int first, int last);

    std::vector<Stretch> of_pick(int square_row) const;

  private:
    char at(int end, int row) const;

    const Chart& chart_;
    bool clasped_;
    int first_, last_;
};

}  // namespace gristwright::lay
