// Rows of a reviewed table with their columns by name; a mistake is told with file and line.
#pragma once

#include <fmt/core.h>

#include <charconv>
#include <initializer_list>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/csv.hpp"

namespace gristwright::catalog {

// One row of a table with its columns by name.
class Row {
  public:
    Row(const Csv& csv, const CsvRow& row, const std::string& file)
        : csv_(csv), row_(row), file_(file) {}

    const std::string& text(std::string_view column) const {
        const auto at = csv_.column(column);
        if (at == Csv::npos) throw wrong(fmt::format("there is no column '{}'", column));
        return row_.fields[at];
    }
    std::optional<double> maybe(std::string_view column) const {
        const auto& field = text(column);
        if (field.empty()) return {};
        double value = 0;
        const auto end = field.data() + field.size();
        const auto read = std::from_chars(field.data(), end, value);
        if (read.ec != std::errc{} || read.ptr != end || !(value > -1e9 && value < 1e9))
            throw wrong(fmt::format("{}: '{}' is not a number", column, field));
        return value;
    }
    double number(std::string_view column) const {
        const auto value = maybe(column);
        if (!value) throw wrong(fmt::format("{}: a number is missing", column));
        return *value;
    }
    int whole(std::string_view column) const {
        const double value = number(column);
        const int rounded = static_cast<int>(value);
        if (rounded != value) throw wrong(fmt::format("{}: must be a whole number", column));
        return rounded;
    }
    bool yes(std::string_view column) const {
        const auto& field = text(column);
        if (field != "yes" && field != "no") throw wrong(fmt::format("{}: yes or no", column));
        return field == "yes";
    }
    template <class Enum>
    Enum word(std::string_view column, std::optional<Enum> (*named)(std::string_view)) const {
        const auto value = named(text(column));
        if (!value) throw wrong(fmt::format("{}: '{}' is not known", column, text(column)));
        return *value;
    }
    BadText wrong(const std::string& why) const { return {file_, row_.number, why}; }

  private:
    const Csv& csv_;
    const CsvRow& row_;
    const std::string& file_;
};

// `key`: columns that together make a row unlike any other; none: rows may be alike.
template <class Out>
std::vector<Out> read_rows(const std::string& text, const std::string& file,
                           Out (*read)(const Row&),
                           std::initializer_list<std::string_view> key = {}) {
    const auto csv = read_csv(text, file);
    std::vector<Out> out;
    std::set<std::string> seen;
    for (const auto& line : csv.rows) {
        const Row row(csv, line, file);
        std::string name;
        for (const auto column : key) name += (name.empty() ? "" : ", ") + row.text(column);
        if (key.size() > 0 && !seen.insert(name).second)
            throw row.wrong(fmt::format("'{}' stands twice", name));
        out.push_back(read(row));
    }
    if (out.empty()) throw BadText(file, 0, "the table is empty");
    return out;
}

}  // namespace gristwright::catalog
