// Are the skeins one yarn? Equivalence first: skeins within 10 % of each other knit and weave
// alike, whatever a test of no difference at all says. Beyond that one yarn may be alternated, and
// what no alternating hides is several yarns.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace gristwright {

enum class SameYarn { only_one_skein, differ, same, alternate, cannot_tell, states_differ };

// One skein's ln(tex) and the standard uncertainty of that, without what all skeins share.
struct GristReading {
    double log_tex;
    double own_spread;  // > 0
};

struct [[nodiscard]] Agreement {
    SameYarn answer = SameYarn::only_one_skein;
    double statistic = 0;  // |z| for two skeins, Q for more
    double critical = 0;   // above this a difference is shown, large or small
    double between = 0;    // spread between skeins beyond measuring (DerSimonian and Laird 1986)
    double smallest_shown = 0;      // smallest relative difference this scale could show
    double widest = 0;              // largest relative difference seen
    bool of_several_kinds = false;  // by what the skeins say of themselves
    // The skeins by their places, yarn by yarn, in the order of their first skeins.
    std::vector<std::vector<std::size_t>> yarns;

    std::size_t yarn_with(std::size_t skein) const;  // which of them it is in, by its place
};

// same: every two within constants::alike_grist, or of a spread that any two are nineteen times in
// twenty; or no difference shown and the 90 % intervals within it. alternate: within
// constants::alternated_grist, or not surely wider about one mean than a consistent spinner's
// skeins. differ: several yarns, parted at the widest gaps until each is one. cannot_tell: nothing
// shown, and this scale could not have shown what matters.
// `kinds` (kinds.hpp) gives each skein's; empty: they are of one. Several kinds are several yarns.
Agreement agree(const std::vector<GristReading>& skeins,
                const std::vector<std::size_t>& kinds = {});

}  // namespace gristwright
