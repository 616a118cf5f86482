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
    auto out = catalog::ground(q.catalogue, q.yarn, q.measured.owned, q.request);
    out.as_two_strands = [&q](Role role) {
        return profile(two_strands(q.measured.batch, role), q.catalogue.yarn, true);
    };
    return out;
}

void BulkAnswers::read(const std::string& file) {
    catalog::SuggestionSheet sheet(file);
    bool found = false;
    std::size_t columns = 0;
    catalog::for_each_row(
        file,
        [&](const std::vector<std::string>& headers) {
            columns = headers.size();
            return found = sheet.header(headers);
        },
        [&](const catalog::CsvRow& row) {
            const auto text = sheet.row(row);
            const bool too_many = row.fields.size() > columns;
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
    try {
        if (!wrong.empty()) throw Refused(wrong);
        if (keep_ && text.find("idea") == text.end()) throw Refused("no idea stands in it");
        add(row, catalog::read_suggestion(text, q_.catalogue.yarn.classes));
        if (keep_) good_.push_back(text);
    } catch (const Refused& error) {
        ++bad_;
        if (complaints_.size() < complaints_kept)
            complaints_.push_back(fmt::format("row {}: {}", row, error.what()));
    }
}

void BulkAnswers::tick(bool last) const {
    if (isatty(STDERR_FILENO) != 1 || (!last && rows_ % rows_a_tick != 0)) return;
    std::fprintf(stderr, "\r%zu suggestions answered%s", rows_, last ? "\n" : "");
}

}  // namespace gristwright::cli
