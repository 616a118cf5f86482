// Who is meant where two words for people stand together, or where a "son" is said to be grown up.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// "The baby's father", "a school bus driver": the word before the last becomes idle. "My nephew at
// uni", "my six foot son": grown.
void settle_people(std::vector<Item>& items);

}  // namespace gristwright
