// Text as it comes from files: UTF-8 with or without a byte-order mark, or UTF-16 in either order.
#pragma once

#include <functional>
#include <istream>
#include <string>
#include <string_view>

namespace gristwright::catalog {

// The text in UTF-8 without a mark. UTF-16 is known by its mark, or by every other byte being zero;
// half a character becomes a question mark.
std::string in_utf8(std::string_view text);

// Hands on a file in parts that end with a line, in UTF-8; `first` for the first of them. Memory
// does not grow with the file, save for one in UTF-16.
void for_each_part(std::istream& file,
                   const std::function<void(std::string_view part, bool first)>& take);

}  // namespace gristwright::catalog
