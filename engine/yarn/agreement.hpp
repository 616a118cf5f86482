// Are the skeins one yarn? Three answers, because a coarse scale often cannot tell.
#pragma once

#include <string>
#include <vector>

namespace gristwright {

enum class SameYarn { only_one_skein, differ, same, cannot_tell, states_differ };

// One skein's ln(tex) and the standard uncertainty of that, without what all skeins share.
struct GristReading {
    double log_tex;
    double own_spread;  // > 0
};

struct [[nodiscard]] Agreement {
    SameYarn answer = SameYarn::only_one_skein;
    double statistic = 0;  // |z| for two skeins, Q for more
    double critical = 0;   // above this the skeins differ
    double between = 0;    // spread between skeins beyond measuring (DerSimonian and Laird 1986)
    double smallest_shown = 0;  // smallest relative difference this scale could show
    double widest = 0;          // largest relative difference seen
};

// Two skeins: z test at 1.96 and two one-sided tests at 5 % against ln(1 + margin). k skeins: Q
// against chi-square(k-1) at 5 %; same when every pair's 90 % interval lies inside the margin.
// `margin` is the difference in grist that does not matter, default 10 %.
Agreement agree(const std::vector<GristReading>& skeins, double margin = 0.10);

}  // namespace gristwright
