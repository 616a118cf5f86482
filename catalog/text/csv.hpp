// Comma-separated text as rows of named fields, read leniently: a byte-order mark, UTF-16, CRLF,
// quotes with commas and line ends inside, a semicolon, a tab or a stroke in place of the comma, a
// first line `sep=;`. Cells beyond the last header are let go when they are empty.
#pragma once

#include <functional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

struct CsvRow {
    std::size_t number = 0;           // the line it begins in, as an editor counts
    std::vector<std::string> fields;  // as many as there are headers; trimmed
};

struct Csv {
    std::vector<std::string> headers;  // trimmed
    std::vector<CsvRow> rows;          // empty records are left out

    // Position of that header or npos.
    std::size_t column(std::string_view header) const;
    static constexpr std::size_t npos = static_cast<std::size_t>(-1);
};

// Every record that is not empty, whether or not it is a header. Throws BadText for a quote that is
// never closed.
std::vector<CsvRow> read_records(std::string_view text, const std::string& file);

// Every record that is not empty, whether or not it is a header. Throws BadText for a quote that is
// never closed.
std::vector<CsvRow> read_records(std::string_view text, const std::string& file);

// Every record that is not empty, whether or not it is a header. Throws BadText for a quote that is
// never closed.
std::vector<CsvRow> read_records(std::string_view text, const std::string& file);

// Throws BadText (bad_text.hpp) for no header or a record with more fields than there are headers.
Csv read_csv(std::string_view text, const std::string& file);

// Row by row from a file, so that memory does not grow with it. `header` is called until it says
// true (titles may stand above), `row` then for every record that is not empty, also for those with
// too many fields. Throws MissingFile, BadText.
void for_each_row(const std::string& path,
                  const std::function<bool(const std::vector<std::string>&)>& header,
                  const std::function<void(const CsvRow&)>& row);

// One cell, quoted. What a spreadsheet takes for a formula, also behind spaces, is marked as text;
// a signed number stays a number.
std::string csv_cell(std::string_view text);

}  // namespace gristwright::catalog
