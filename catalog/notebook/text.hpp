// Which texts a notebook takes.
#pragma once

#include <string_view>

namespace gristwright::catalog {

inline constexpr std::size_t longest_kept_text = 10000;  // bytes
inline constexpr std::size_t longest_batch_name = 80;    // bytes

// Valid UTF-8 (no overlong forms, no surrogates) without control characters.
bool is_plain_text(std::string_view text);

// Throws NotebookRefused for a text that is too long or not plain.
void check_kept_text(std::string_view text);

// Throws NotebookRefused for a name that is empty, too long, or would be taken for a file or an
// option.
void check_batch_name(std::string_view name);

}  // namespace gristwright::catalog
