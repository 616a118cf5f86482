#include "cli/output/page_file.hpp"

#include <fmt/core.h>

#include "cli/output/browser.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/new_file.hpp"

namespace gristwright::cli {

std::vector<Option> page_file_options(std::string_view example) {
    return {{"out", example, "the file to write; -o for short"},
            {"open", "", "open it in the browser too, where there is one"}};
}

void check_page_file(const Arguments& arguments, std::string_view command) {
    if (arguments.text("out").empty())
        throw Misused(fmt::format("{} needs --out FILE.html: where to write it", command));
}

Answer page_file(const Arguments& arguments, const std::string& html, const Question& q) {
    const auto path = arguments.text("out");
    write_file(path, html);
    auto notes = q.measured.notes;
    if (arguments.has("open"))
        if (const auto why = open_in_browser(path); !why.empty()) notes.push_back(why);
    return {fmt::format("Written: {}\n", inert(path)), joined(notes, "\n")};
}

}  // namespace gristwright::cli
