// The share of the greatest sett that each purpose wants, with its mark.
#pragma once

#include "engine/cloth/sett.hpp"
#include "engine/estimate/constant.hpp"

namespace gristwright {

const Constant& share_for(Spacing purpose);

}  // namespace gristwright
