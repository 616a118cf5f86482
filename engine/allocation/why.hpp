// Why a wish was not met, found by solving again with one thing changed.
#pragma once

#include <optional>
#include <vector>

#include "engine/allocation/limit.hpp"

namespace gristwright::allocation {

// The least length more in one skein that lets all required pieces be made.
struct More {
    std::size_t skein = 0;
    Cm length = 0;
};

// Over all skeins the one that needs least; nothing when no length up to `most` in any one helps.
inline constexpr Cm most_more = 1'000'000;
std::optional<More> least_more(const Problem& problem, Cm most = most_more,
                               const Effort& effort = {});

struct Unmet {
    std::size_t piece = 0;
    Limit limit = Limit::metres;     // what keeps it out
    std::optional<More> beside;      // more yarn that would add it to what the plan makes
    bool instead = false;            // it could be made now, in place of something else
    Points price = 0;                // what the plan would lose then, at most; instead only
    std::vector<std::size_t> loses;  // the pieces that would go
    bool settled = true;             // false: the effort did not answer all that was asked
};

// One entry for each piece that the answer leaves out. Stopped, the rest of them are not settled.
std::vector<Unmet> unmet(const Problem& problem, const Allocation& answer,
                         const Effort& effort = {});

// What a metre more in each skein would be worth to the plan, per skein.
std::vector<Points> worth_of_a_metre(const Problem& problem, const Allocation& answer);

}  // namespace gristwright::allocation
