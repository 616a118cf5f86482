// The command to give next, in words that can be copied.
#pragma once

#include <string>
#include <vector>

#include "cli/command.hpp"

namespace gristwright::cli {

// A word as a shell takes it: in quotes where it needs them.
std::string shell_word(const std::string& word);

// "gristwright sheet leg-warmers heron.toml --out leg-warmers.html": `words` come after
// "gristwright", then the batch as it was given, by a word or by options. Empty where that is too
// long for anybody to copy.
std::string whole_command(const std::vector<std::string>& words, const std::string& batch,
                          const Arguments& arguments);

// "Next: gristwright plan leg-warmers heron.toml": `words` come after "gristwright", then the batch
// as it was given, by a word or by options. A command is never broken, so that it can be copied;
// of one that is too long the batch is left to be typed again.
std::string next_line(const std::vector<std::string>& words, const std::string& batch,
                      const Arguments& arguments);

}  // namespace gristwright::cli
