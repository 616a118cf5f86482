#include "engine/yarn/softness.hpp"

#include "engine/estimate/constant.hpp"
#include "engine/estimate/estimate.hpp"

namespace gristwright {
namespace {

constexpr Constant prickling{"fibre that prickles",  30.5, 30, 31, "micron", Mark::read,
                             "Riverina Wool Testers"};
constexpr Constant variation{"coefficient of variation of fibre diameter",
                             0.22,
                             0.15,
                             0.30,
                             "relative",
                             Mark::read,
                             "Riverina Wool Testers (range); the middle is our judgement"};

}  // namespace

double share_over_prickle(Length mean, Length deviation) {
    const Length spread = deviation.si() > 0 ? deviation : mean * variation;
    return normal_below((mean - microns(prickling)) / spread);
}

}  // namespace gristwright
