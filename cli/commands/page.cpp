#include "cli/commands/page.hpp"

#include <fmt/core.h>

#include "cli/output/layout.hpp"
#include "cli/output/new_file.hpp"
#include "cli/output/page.hpp"

namespace gristwright::cli {
namespace {

Answer run(const Arguments& arguments) {
    const auto path = arguments.text("out");
    if (path.empty()) throw Misused("page needs --out FILE.html: where to write it");
    const auto q = ask(arguments, arguments.words.empty() ? "" : arguments.words[0]);
    write_file(path, page(q, rank(q)));
    return {fmt::format("Written: {}\n", inert(path)), joined(q.measured.notes, "\n")};
}

}  // namespace

Command page_command() {
    return {"page",
            "One HTML file to look at, print and share: the yarn, what it can make, how big, knit "
            "or weave, cautions, sources. It needs no network and runs no script.",
            "[BATCH.toml | SKEINS.csv]",
            0,
            1,
            together({{{"out", "heron.html", "the file to write; -o for short"}},
                      plan_options(),
                      batch_options(),
                      {{"units", "metric", "metric, imperial or both; else as you typed"}}}),
            run};
}

}  // namespace gristwright::cli
