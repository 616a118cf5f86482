// Running text for the terminal's width.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/output/terminal.hpp"

namespace gristwright::cli {

// The text broken into lines of at most text_width(), each after `indent` spaces; no end of line.
// Widths count characters of UTF-8, not bytes.
std::string wrapped(std::string_view text, std::size_t indent);
std::string wrapped(std::string_view text, std::size_t indent, std::size_t width);

// The first line after `label`, the others under the text: "for: soft,\n     warm".
std::string labelled(std::string_view label, std::string_view text, std::size_t indent);

std::string joined(const std::vector<std::string>& parts, std::string_view separator = ", ");
// Its first letter a capital, or a small one.
std::string capital(std::string text);
std::string uncapital(std::string text);
std::size_t characters(std::string_view text);
// Whether two texts have at most so many characters together: most are seen to by their bytes.
bool fit_together(std::string_view a, std::string_view b, std::size_t most);
// The beginning of a text in at most so many bytes, no character cut in two.
std::string_view first_bytes(std::string_view text, std::size_t most);
// Text padded with spaces to a width in characters.
std::string padded(std::string text, std::size_t width);

// Text from people: control characters, line ends and direction overrides become '?', so that it
// cannot drive the terminal.
std::string inert(std::string_view text);

// Bold where colour is wanted.
std::string heading(std::string_view text);

}  // namespace gristwright::cli
