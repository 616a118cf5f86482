// Reads the published case tables in tests/cases: RFC 4180 CSV with a header row.
#pragma once

#include <map>
#include <string>
#include <vector>

using CaseRow = std::map<std::string, std::string>;

// Throws std::runtime_error when the file is missing or has no rows.
std::vector<CaseRow> read_cases(const std::string& file_name);

// The number in a column; throws std::invalid_argument where it is empty.
double figure(const CaseRow& row, const char* column);
double figure_or_zero(const CaseRow& row, const char* column);
// Half way between two columns.
double middle(const CaseRow& row, const char* low, const char* high);
