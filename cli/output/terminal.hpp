// The terminal that an answer goes to: how wide it is, and whether colour says something there.
#pragma once

#include <string>
#include <string_view>

namespace gristwright::cli {

// Columns to write in, one less than there are: COLUMNS where it is set, else what the terminal
// says, else 79. From 39 on.
std::size_t table_width();
// The same for running text, which is hard to read in lines of over 99 characters.
std::size_t text_width();

// What a colour stands for.
enum class Dye { heading, knitted, woven, lacking, aside };

// The text in its colour where the output is a terminal that wants colour (NO_COLOR unset, TERM not
// dumb); elsewhere as it is.
std::string dyed(std::string_view text, Dye dye);

}  // namespace gristwright::cli
