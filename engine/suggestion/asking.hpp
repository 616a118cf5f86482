// What is asked back where an idea cannot be answered.
#pragma once

#include <optional>
#include <string>

#include "engine/suggestion/answer.hpp"

namespace gristwright {

// Nothing is wanted that we know: what may it be? Empty: nothing is asked.
std::string what_to_ask(const Taken& taken);

// No template makes what is wanted, or none in the craft and the fabric that were named.
std::string none_such(const SuggestionAnswer& a, std::optional<Craft> craft, const Ground& ground);

}  // namespace gristwright
