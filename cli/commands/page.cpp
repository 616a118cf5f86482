#include "cli/commands/page.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/live_page.hpp"
#include "cli/output/page.hpp"
#include "cli/output/page_file.hpp"
#include "cli/output/page_sections.hpp"

namespace gristwright::cli {
namespace {

// To the file's suggestions, else to those remembered with the batch. Rows that cannot be read are
// named on stderr; the page has the others.
std::string answers(const Arguments& arguments, Question& q, const std::string& batch) {
    const auto file = arguments.text("suggestions");
    BulkAnswers bulk(q);
    if (!file.empty())
        bulk.read(file);
    else if (is_remembered(batch))
        bulk.take_all(notebook(arguments, catalog::Notebook::Mode::read_only).suggestions(batch));
    if (bulk.rows() == 0) return "";
    for (const auto& complaint : bulk.complaints())
        q.measured.notes.push_back(fmt::format("{} {}", file, complaint));
    return answers_section(answered(bulk), q);
}

std::string kept(const Arguments& arguments, const Question& q, const std::string& batch) {
    if (!is_remembered(batch)) return "";
    const auto book = notebook(arguments, catalog::Notebook::Mode::read_only);
    return kept_section(
        {book.swatches(batch), book.project(batch), book.weighings(batch), arguments}, q);
}

std::string split(const Arguments& arguments, Question& q) {
    if (!asks_for_split(arguments)) return "";
    const auto asked = asked_of(arguments, q);
    return split_section(split_for(asked, q), asked, q);
}

constexpr Option live_option{"live", "",
                             "the whole tool in one page with this batch inside, to try every idea "
                             "on: it works without a network and runs a script"};

// In the live page everything is chosen there: an option that it would lose is refused.
void check_live(const Arguments& arguments) {
    const auto kept = together({page_file_options(""), batch_options(), {live_option}});
    for (const auto& [name, values] : arguments.options)
        if (std::none_of(kept.begin(), kept.end(),
                         [&, &typed = name](const Option& o) { return o.name == typed; }))
            throw Misused(fmt::format("--{} is not kept by --live: choose that in the page", name));
}

Answer run(const Arguments& arguments) {
    check_page_file(arguments, "page");
    const auto batch = arguments.words.empty() ? "" : arguments.words[0];
    if (arguments.has(live_option.name)) check_live(arguments);
    auto q = ask(arguments, batch);
    if (arguments.has(live_option.name))
        return page_file(arguments, live_page(batch_text(arguments, batch)), q);
    const PageSections sections{split(arguments, q), answers(arguments, q, batch),
                                kept(arguments, q, batch)};
    return page_file(arguments, page(q, rank(q), sections), q);
}

}  // namespace

Command page_command() {
    return {
        "page",
        "One HTML file to look at, print and share: the yarn, what it can make, how big, knit "
        "or weave, cautions, sources; and, if asked, a split and answers to suggestions. It "
        "needs no network and runs no script.",
        "[BATCH.toml | SKEINS.csv]",
        0,
        1,
        together({page_file_options("heron.html"),
                  {live_option, {"suggestions", "SUGGESTIONS.csv", "answer these on the page too"}},
                  split_options(),
                  plan_options(),
                  batch_options(),
                  {units_option}}),
        run,
        "heron.toml -o heron.html"};
}

}  // namespace gristwright::cli
