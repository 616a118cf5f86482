// What is said behind a thing and changes it, told in all its words.
#pragma once

#include <string>
#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// How it is made ("covered in bobbles"), what it does ("that folds into a pouch"), what it is of or
// like ("like a strawberry"), what it is as large as ("twice as long as I am"); each as it was
// typed, unless a step of reading took it.
std::vector<std::string> tails_of(const std::vector<Item>& items);

// "a hat that folds into a pouch": told of the thing before it, and no thing that is wanted.
bool stands_in_a_tail(const std::vector<Item>& items, std::size_t thing, std::size_t at);

}  // namespace gristwright
