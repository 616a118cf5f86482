// What a person says of their own tools: heddles, needles, loom.
#pragma once

#include "catalog/reference/catalogue.hpp"
#include "catalog/typed/batch_text.hpp"
#include "engine/cloth/equipment.hpp"

namespace gristwright::catalog {

Equipment read_equipment(const BatchText& text, const SpokenWords& spoken);

}  // namespace gristwright::catalog
