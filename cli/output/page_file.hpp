// What page and card share: a page written to a file and, if asked, opened.
#pragma once

#include <string>

#include "cli/question.hpp"

namespace gristwright::cli {

std::vector<Option> page_file_options(std::string_view example);
// Throws Misused when no file is named, CannotCreate when it cannot be written: before the work.
void check_page_file(const Arguments& arguments, std::string_view command);
Answer page_file(const Arguments& arguments, const std::string& html, const Question& q);

}  // namespace gristwright::cli
