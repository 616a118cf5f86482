// Files of cli/output/ and cli/help/ that the program carries; the build makes their text part of
// it.
#pragma once

#include <string_view>

namespace gristwright::cli::embedded {

extern const std::string_view picture_style;   // picture.css
extern const std::string_view page_style;      // page.css
extern const std::string_view page_template;   // page.mustache
extern const std::string_view page_split;      // page_split.mustache
extern const std::string_view page_kept;       // page_kept.mustache
extern const std::string_view page_answers;    // page_answers.mustache
extern const std::string_view page_two;        // page_two.mustache
extern const std::string_view card_style;      // card.css
extern const std::string_view card_template;   // card.mustache
extern const std::string_view sheet_style;     // sheet.css
extern const std::string_view sheet_template;  // sheet.mustache
extern const std::string_view completion;      // completion.bash
extern const std::string_view help_units, help_marks, help_certainty, help_wraps;  // cli/help/

}  // namespace gristwright::cli::embedded
