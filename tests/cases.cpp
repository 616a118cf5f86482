#include "tests/cases.hpp"

#include <fstream>
#include <iterator>
#include <stdexcept>

namespace {

using Fields = std::vector<std::string>;

// Splits a whole CSV text into records; quotes may hold commas, doubled quotes and line ends.
std::vector<Fields> split(const std::string& text) {
    std::vector<Fields> records(1, Fields(1));
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        auto& field = records.back().back();
        if (quoted && c == '"' && text[i + 1] == '"')
            field += text[++i];
        else if (c == '"')
            quoted = !quoted;
        else if (quoted)
            field += c;
        else if (c == ',')
            records.back().emplace_back();
        else if (c == '\n')
            records.emplace_back(1);
        else if (c != '\r')
            field += c;
    }
    if (records.back() == Fields(1)) records.pop_back();
    return records;
}

}  // namespace

std::vector<CaseRow> read_cases(const std::string& file_name) {
    std::ifstream file(CASES_DIR "/" + file_name);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto records = split(text);
    if (records.size() < 2) throw std::runtime_error("no cases in " + file_name);
    std::vector<CaseRow> rows;
    for (std::size_t r = 1; r < records.size(); ++r) {
        CaseRow row;
        for (std::size_t f = 0; f < records[0].size(); ++f) row[records[0][f]] = records[r].at(f);
        rows.push_back(std::move(row));
    }
    return rows;
}

double figure(const CaseRow& row, const char* column) { return std::stod(row.at(column)); }

double figure_or_zero(const CaseRow& row, const char* column) {
    return row.at(column).empty() ? 0 : figure(row, column);
}

double middle(const CaseRow& row, const char* low, const char* high) {
    return (figure(row, low) + figure(row, high)) / 2;
}
