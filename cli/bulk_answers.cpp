#include "cli/bulk_answers.hpp"

#include <fmt/core.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>

#include "catalog/reference/ground.hpp"
#include "catalog/typed/suggestion_sheet.hpp"
#include "cli/output/layout.hpp"
#include "engine/project/role.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t idea_bytes_kept = 480;
constexpr std::size_t rows_a_tick = 5000;  // between two signs of progress
constexpr std::size_t complaints_kept = 20;

std::string known_keys() {
    std::string out;
    for (const auto key : suggestion_fields) out += (out.empty() ? "" : ", ") + std::string(key);
    return out;
}

}  // namespace

Ground ground_of(const Question& q) {
    auto out = catalog::ground(*q.catalogue, q.yarn, q.measured.owned, q.request);
    out.as_two_strands = [&q](Role role) {
        return profile(two_strands(q.measured.batch, role), q.catalogue->yarn, true);
    };
    return out;
}

void BulkAnswers::read(const std::string& file) {
    catalog::SuggestionSheet sheet(file, q_.catalogue->spoken);
    bool found = false;
    catalog::for_each_row(
        file,
        [&](const std::vector<std::string>& headers) { return found = sheet.header(headers); },
        [&](const catalog::CsvRow& row) {
            const auto text = sheet.row(row);
            const bool too_many = row.fields.size() > sheet.columns();
            if (text) take(row.number, *text, too_many ? "more fields than the header names" : "");
        });
    if (!found)
        throw Refused(
            fmt::format("{}:1: the header needs a column 'idea'; known: {}", file, known_keys()));
    notes_ = sheet.notes();
    tick(true);
}

void BulkAnswers::add(std::size_t row, Suggestion s) {
    const auto a = answerer_.answer(s);
    if (!a.answered && !a.taken.not_an_idea && !a.ask.empty()) ++asked_back_;
    s.idea.resize(first_bytes(s.idea, idea_bytes_kept).size());
    s.idea.shrink_to_fit();
    groups_.add(row, std::move(s), a);
}

void BulkAnswers::take_all(const std::vector<catalog::KeptSuggestion>& remembered) {
    for (const auto& text : remembered) take(rows_ + 1, text, "");
    tick(true);
}

void BulkAnswers::take(std::size_t row, const catalog::SuggestionText& text,
                       const std::string& wrong) {
    ++rows_;
    tick(false);
    const auto idea = text.find("idea");
    const bool none =
        idea == text.end() || idea->second.find_first_not_of(" \t") == std::string::npos;
    if (!wrong.empty()) return refuse(row, text, wrong);
    if (keep_ && none) return refuse(row, text, "no idea stands in it");
    auto read = catalog::read_row(text, *q_.catalogue);
    for (const auto& cell : read.left_out)
        complain(row, fmt::format("{}; the row is answered without it", cell.why));
    if (!read.left_out.empty()) left_out_[row] = std::move(read.left_out);
    add(row, std::move(read.suggestion));
    if (keep_) good_.push_back(text);
}

void BulkAnswers::refuse(std::size_t row, const catalog::SuggestionText& text,
                         const std::string& why) {
    const auto cell = [&](std::string_view key) {
        const auto found = text.find(key);
        return found == text.end() ? std::string()
                                   : std::string(first_bytes(found->second, idea_bytes_kept));
    };
    refused_.push_back({row, cell("idea"), cell("from"), why});
    complain(row, why);
}

void BulkAnswers::complain(std::size_t row, const std::string& what) {
    ++complained_;
    if (complaints_.size() < complaints_kept)
        complaints_.push_back(fmt::format("row {}: {}", row, what));
}

std::size_t BulkAnswers::more_complaints() const { return complained_ - complaints_.size(); }

void BulkAnswers::tick(bool last) const {
    if (isatty(STDERR_FILENO) != 1 || (!last && rows_ % rows_a_tick != 0)) return;
    std::fprintf(stderr, "\r%zu suggestions answered%s", rows_, last ? "\n" : "");
}

}  // namespace gristwright::cli
