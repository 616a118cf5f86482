#include "cli/commands/page.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/text/file.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/live_page.hpp"
#include "cli/output/next.hpp"
#include "cli/output/page.hpp"
#include "cli/output/page_file.hpp"
#include "cli/output/page_sections.hpp"
#include "cli/would_be.hpp"

namespace gristwright::cli {
namespace {

// To the file's suggestions, else to those remembered with the batch. Rows that cannot be read are
// named on stderr and below the others.
std::string answers(const Arguments& arguments, Question& q, const std::string& batch) {
    const auto file = arguments.text("suggestions");
    BulkAnswers bulk(q);
    if (!file.empty())
        bulk.read(file);
    else if (is_remembered(batch))
        bulk.take_all(notebook(arguments, catalog::Notebook::Mode::read_only).suggestions(batch));
    if (bulk.rows() == 0) return "";
    for (const auto& note : bulk.notes())
        q.measured.notes.push_back(fmt::format("{}: {}", file, note));
    for (const auto& complaint : bulk.complaints())
        q.measured.notes.push_back(fmt::format("{} {}", file, complaint));
    if (bulk.more_complaints() > 0)
        q.measured.notes.push_back(
            fmt::format("and {} more of the kind, all on the page", bulk.more_complaints()));
    return answers_section(ranked_answers(bulk), not_answered(bulk), q);
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

// The second batch, or this one as it would be, beside it.
std::string two_yarns(const Arguments& arguments, const Question& q) {
    const auto how = arguments.text("would-be");
    const bool second = arguments.words.size() > 1;
    if (!how.empty() && second) throw Misused("page takes a second batch, or --would-be");
    if (how.empty() && !second) return "";
    auto b = second ? ask(arguments, arguments.words[1]) : as_would_be(how, q);
    b.units = q.units;
    return two_section(q, b);
}

std::string sheet_of(const std::string& article, const std::string& batch,
                     const Arguments& arguments) {
    const auto whole = whole_command({"sheet", article}, batch, arguments);
    return whole.empty() ? "" : whole + " -o " + article + ".html";
}

std::string poster_of(const std::string& batch, const Arguments& arguments) {
    const auto whole = whole_command({"picture", "lineup"}, batch, arguments);
    return whole.empty() ? "" : whole + " -o poster.svg";
}

constexpr Option live_option{"live", "",
                             "the whole tool in one page with this batch inside, to try every idea "
                             "on: it works without a network and runs a script"};

// In the live page everything is chosen there: an option that it would lose is refused.
void check_live(const Arguments& arguments) {
    if (arguments.words.size() > 1)
        throw Misused("--live takes one batch: another is chosen in the page");
    const auto kept = together({page_file_options(""), batch_options(), {live_option}});
    for (const auto& [name, values] : arguments.options)
        if (std::none_of(kept.begin(), kept.end(),
                         [&, &typed = name](const Option& o) { return o.name == typed; }))
            throw Misused(fmt::format("--{} is not kept by --live: choose that in the page", name));
}

// The person's own articles go with the batch, so that the page plans with them too; a note names
// them, as the page is likely to be given away.
std::vector<OwnArticle> own_articles(Question& q) {
    std::vector<OwnArticle> out;
    std::vector<std::string> names;
    for (const auto& article : q.catalogue->templates) {
        if (article.origin == "built in") continue;
        out.push_back({article.name, catalog::read_file(article.origin)});
        names.push_back(article.name);
    }
    if (!names.empty())
        q.measured.notes.push_back("your own articles are in the page: " + joined(names));
    return out;
}

Answer live(const Arguments& arguments, const std::string& batch, Question& q) {
    const auto own = own_articles(q);
    return page_file(arguments, live_page(batch_text(arguments, batch, q.catalogue->spoken), own),
                     q);
}

Answer run_page(const Arguments& arguments) {
    check_page_file(arguments, "page");
    const auto batch = arguments.words.empty() ? "" : arguments.words[0];
    if (arguments.has(live_option.name)) check_live(arguments);
    auto q = ask(arguments, batch);
    if (arguments.has(live_option.name)) return live(arguments, batch, q);
    const PageSections sections{
        split(arguments, q),
        answers(arguments, q, batch),
        kept(arguments, q, batch),
        two_yarns(arguments, q),
        [&](const std::string& article) { return sheet_of(article, batch, arguments); },
        poster_of(batch, arguments)};
    return page_file(arguments, page(q, rank(q), sections), q);
}

}  // namespace

Command page_command() {
    return {
        "page",
        "One HTML file to look at, print and share: the yarn, what it can make, how big, knit "
        "or weave, cautions, sources; and, if asked, a second yarn beside it, a split and answers "
        "to suggestions. It needs no network and runs no script.",
        "[BATCH.toml | SKEINS.csv] [BATCH]",
        0,
        2,
        together({page_file_options("heron.html"),
                  {live_option,
                   would_be_option,
                   {"suggestions", "SUGGESTIONS.csv", "answer these on the page too"}},
                  split_options(),
                  plan_options(),
                  batch_options(),
                  {units_option}}),
        run_page,
        "heron.toml -o heron.html"};
}

}  // namespace gristwright::cli
