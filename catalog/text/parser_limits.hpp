// What the TOML parser cannot take, kept from it.
#pragma once

#include <string>
#include <string_view>

namespace gristwright::catalog {

// The text as the parser may read it. Throws BadText for
// - a key of more than nine parts: none of our files needs more than two, and the parser calls
//   itself for each part: 40,000 of them ended the program;
// - a character beyond ASCII where no string and no comment is, and a string right behind a number:
//   no TOML, and the parser's table of blanks is undefined for most such characters.
// That table is also asked about the first character of a line that a backslash joins to the one
// before it, in a string of several lines: beyond ASCII, it is given as its escape (\u00E9).
std::string within_parser_limits(std::string_view text, const std::string& file);

}  // namespace gristwright::catalog
