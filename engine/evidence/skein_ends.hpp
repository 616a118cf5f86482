// How the skeins of a batch are taken for a work, and where in it one comes to its end.
#pragma once

#include "engine/evidence/yarn_places.hpp"
#include "engine/yarn/agreement.hpp"

namespace gristwright {

// Skeins that differ in grist are alternated: two are in work, two rows or a few picks of each, and
// the next takes the place of one that ends. Others are taken one after another, as listed.
enum class Taking { one_by_one, by_turns };
Taking taking_for(const Agreement& agreement);

struct TakenSkeins {
    std::vector<Length> of_each;  // in the order given
    struct End {
        std::size_t skein = 0;
        Length used;  // of all of them by then
    };
    std::vector<End> ends;  // those used up, in the order in which they end
};

// What so much yarn takes of each of these skeins; no more than they hold.
TakenSkeins taken(const std::vector<Length>& skeins, Taking taking, Length wanted);

struct SkeinEnd {
    std::size_t skein = 0;  // of those given, the one that ends
    YarnPlace place;
};

// Where the work takes `factor` times the metres that were planned; without the skeins that came to
// their end in the metres `used`. The one that lasts longest has no such end, nor one that the work
// does not need whole.
std::vector<SkeinEnd> skein_ends(const Plan& plan, const std::vector<Length>& skeins, Taking taking,
                                 double factor = 1, Length used = {});

}  // namespace gristwright
