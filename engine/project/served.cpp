#include "engine/project/served.hpp"

#include <algorithm>
#include <cmath>

#include "engine/project/constants.hpp"
#include "engine/project/desirability.hpp"

namespace gristwright {

using namespace constants;

double wish_served(const Wish& wish, double had) {
    return std::max<double>(least_wish, desire_more(had, wish.at_least + ease, reach));
}

double share_served(const WovenCloth& cloth) {
    return std::max<double>(
        least_wish, desire_within(cloth.share, cloth.wanted.low, cloth.wanted.high, share_tail));
}

double looseness(const WovenCloth& cloth) {
    return std::clamp((1 - cloth.share) / (1 - loosest_web), 0.0, 1.0);
}

double drape_had(double looseness, const YarnProfile& yarn) {
    return cloth_part * looseness + (1 - cloth_part) * yarn.trait(TraitName::drape).sure();
}

double sett_served(const Template& article, const YarnProfile& yarn, const WovenCloth& cloth) {
    double weights = cover_weight + fineness_weight;
    for (const auto& wish : article.wishes) weights += wish.weight;
    const auto& drape = article.wish(Asked::drape);
    const double drapes = wish_served(drape, drape_had(looseness(cloth), yarn));
    const double lost =
        cover_weight * std::log(share_served(cloth)) + drape.weight * std::log(drapes);
    const bool at_hand = cloth.within_reach && cloth.through_hole;
    return std::exp(lost / weights) * (at_hand ? 1.0 : double{borrowed});
}

}  // namespace gristwright
