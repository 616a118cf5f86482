// What stands beside a number or a length and tells what it is of, where its own words do not.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// "a 120 inch warp", "loom waste 24 inches": lengths of the work on the loom, never of the cloth.
// They are told, and not read any more.
void take_loom_lengths(std::vector<Item>& items, Taken& out);

// "will 500 yards do?", "can you get a hat out of 100 g?": what there is, and whether it does.
bool is_asked_of(const std::vector<Item>& items, std::size_t at);

// "nine squares blanket", "three-cornered shawl", "two colour hats": the number describes an
// article and counts none.
bool describes(const std::vector<Item>& items, std::size_t at);

// "mittens for 4 kids", "a hat for six friends": of what is worn each of them has one.
bool each_has_one(const std::vector<Item>& items, std::size_t at, const Wanted& wanted);

// "only 2 oz of this", "100 g of yours".
bool is_of_this_yarn(const std::vector<Item>& items, std::size_t at);
// "with a 5 cm border", "beads every 10 cm": of what the thing has, and no size of it.
bool is_of_a_part(const std::vector<Item>& items, std::size_t at);
// "4 inch squares, enough for a cushion": of what it is joined from.
bool is_of_squares(const std::vector<Item>& items, std::size_t at, const Wanted& to);
// "a hat from one skein": what there is for it.
bool is_led_from(const std::vector<Item>& items, std::size_t at);
// "a 2.5 m table runner": of the thing, whatever the yarn takes.
std::size_t thing_behind(const std::vector<Item>& items, std::size_t at);

// "for a lad of six foot three", "he is 6'2\"": how tall somebody is, and no size of the thing.
bool is_a_body_height(const std::vector<Item>& items, std::size_t at);
// "not one yard left over", "20 m to spare": of what is left, and no size.
bool is_what_remains(const std::vector<Item>& items, std::size_t at);
// "he takes a 7 in shoes", "10 1/2 shoes", "a size 9 foot".
bool is_in_shoes(const std::vector<Item>& items, std::size_t at);

// "worsted", "aran": of a way of spinning or a stitch pattern as often as of a weight.
bool is_of_two_meanings(const Item& weight);
// "200 g of aran", "worsted yarn": here of a weight.
bool is_meant_as_weight(const std::vector<Item>& items, std::size_t at);

}  // namespace gristwright
