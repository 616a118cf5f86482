#include "engine/yarn/softness.hpp"

#include "engine/yarn/constants.hpp"

#include "engine/estimate/estimate.hpp"

namespace gristwright {
namespace {

using namespace constants;

}  // namespace

double share_over_prickle(Length mean, Length deviation) {
    const Length spread = deviation.si() > 0 ? deviation : mean * variation;
    return normal_below((mean - microns(prickling)) / spread);
}

}  // namespace gristwright
