// What an answer to somebody's idea draws on, out of the catalogue: made in this one place.
#pragma once

#include <functional>

#include "catalog/reference/catalogue.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright::catalog {

// All of them outlive it; temporaries do not compile.
Ground ground(std::reference_wrapper<const Catalogue> known,
              std::reference_wrapper<const YarnProfile> yarn,
              std::reference_wrapper<const Equipment> owned, const Request& asked = {});

}  // namespace gristwright::catalog
