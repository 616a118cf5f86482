// A sheet of suggestions as people keep it: titles above the headings, headings in their own words
// and in one line or two, units in the headings or in the cells, a total below.
#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "catalog/text/csv.hpp"
#include "catalog/typed/suggestion_text.hpp"

namespace gristwright::catalog {

// What one column holds.
struct SuggestionColumn {
    std::string header;     // as it stands
    std::string key;        // of SuggestionText; empty: the column is not used
    std::string unit;       // that bare numbers under it are in; empty: not said
    std::string why_not;    // a column that looks like one of ours and is none
    bool weak = false;      // gives way to a column that says the same outright
    std::string note;       // how it is taken, where that is not plain
    bool bare_who = false;  // of its heading
    bool is_sender_too = false;
};

// Throws Refused where a heading may mean two things.
std::vector<SuggestionColumn> suggestion_columns(const std::vector<std::string>& headers,
                                                 const SpokenWords& spoken);

class SuggestionSheet {
  public:
    // `spoken` outlives it.
    SuggestionSheet(std::string file, const SpokenWords& spoken)
        : file_(std::move(file)), spoken_(spoken) {}

    // False: a title above the headings, of which ten lines may stand there.
    bool header(const std::vector<std::string>& fields);

    // Nothing: a second line of headings, or a total.
    std::optional<SuggestionText> row(const CsvRow& row);

    std::size_t columns() const { return headers_.size(); }
    // What was left out, said once each.
    const std::vector<std::string>& notes() const { return notes_; }

  private:
    void take(std::vector<std::string> headers);
    bool names_an_idea(const std::string& cell) const;
    bool is_second_header(const CsvRow& row) const;
    bool is_header_below_title(const CsvRow& row) const;
    void take_cell(std::size_t column, const std::string& cell, SuggestionText& out);
    void note_once(std::size_t column, const std::string& note);
    std::size_t column(std::string_view key) const;

    std::string file_;
    const SpokenWords& spoken_;
    std::vector<SuggestionColumn> columns_;
    std::vector<std::string> headers_, notes_;
    std::vector<std::string> above_;  // the last of each column that said something
    std::set<std::size_t> noted_;
    std::size_t titles_ = 0, rows_ = 0;
};

}  // namespace gristwright::catalog
