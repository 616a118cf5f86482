// What the sizes of needles are called where they are not counted in millimetres.
#pragma once

#include <map>
#include <memory>
#include <string>

#include "catalog/reference/spoken.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright::cli {

// The US size by the needle's thickness in micrometres.
using NeedleNames = std::shared_ptr<const std::map<long, std::string>>;

// From the table of needle sizes; of a size with several names the shortest.
NeedleNames us_needles(const catalog::SpokenWords& spoken);

// "US 4"; empty for a needle that has no US size, or where no names are known.
std::string us_size(const NeedleNames& names, Length needle);

}  // namespace gristwright::cli
