// A batch that cannot be, or is very unlikely to be, yarn.
#pragma once

#include <optional>
#include <string>

#include "engine/units/failure.hpp"
#include "engine/yarn/batch.hpp"

namespace gristwright {

// `likely_slip` is true when insisting is allowed ("51 yd weighing 248 g? swapped?"); with the
// skein that is of a grist no yarn has, where that is the doubt.
struct ImplausibleYarn : Refused {
    ImplausibleYarn(const std::string& why, bool likely_slip, std::optional<Skein> of = {})
        : Refused(why), may_insist(likely_slip), skein(std::move(of)) {}
    bool may_insist;
    std::optional<Skein> skein;
};

}  // namespace gristwright
