#include "cli/output/page_file.hpp"

#include <fmt/core.h>

#include "cli/out_file.hpp"
#include "cli/output/browser.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {

std::vector<Option> page_file_options(std::string_view example) {
    return together(
        {out_options(example), {{"open", "", "open it in the browser too, where there is one"}}});
}

void check_page_file(const Arguments& arguments, std::string_view command) {
    if (arguments.text("out").empty())
        throw Misused(fmt::format("{} needs --out FILE.html: where to write it", command));
    out_file(arguments);
}

Answer page_file(const Arguments& arguments, const std::string& html, const Question& q) {
    const auto file = out_file(arguments);
    auto out = written(file, html, "Written: " + inert(file.path), q.measured.notes);
    if (arguments.has("open"))
        if (const auto why = open_in_browser(file.path); !why.empty())
            out.notes += (out.notes.empty() ? "" : "\n") + why;
    return out;
}

}  // namespace gristwright::cli
