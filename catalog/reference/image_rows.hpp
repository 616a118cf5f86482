// Rows of the image: its tables made, written and read by their columns.
//
// An implementation header of the image: it is the one that shows SQLiteCpp.
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/core.h>

#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "catalog/reference/image_columns.hpp"

namespace gristwright::catalog {

// Lists as text: "hem|body|hem|"; "hat|mitts|", "!rug|" for none of them; levels with four places
// each.
std::string packed(const std::vector<std::string>& words);
std::string packed(const Listed& listed);
std::string packed(const std::vector<double>& levels);
void unpack(std::string_view text, std::vector<std::string>& out);
void unpack(std::string_view text, Listed& out);
void unpack(std::string_view text, std::vector<double>& out);  // throws std::runtime_error

template <class T>
inline constexpr bool is_packed =
    std::is_same_v<T, Listed> || std::is_same_v<T, std::vector<double>> ||
    std::is_same_v<T, std::vector<std::string>>;
template <class T>
inline constexpr bool is_measure = std::is_same_v<T, Length> || std::is_same_v<T, Density>;
template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;

template <class T>
std::string sql_type() {
    if constexpr (is_optional<T>) return sql_type<typename T::value_type>();
    if constexpr (std::is_same_v<T, std::string> || is_packed<T>) return "TEXT";
    if constexpr (std::is_same_v<T, double> || is_measure<T>) return "REAL";
    return "INTEGER";
}

// Makes the table of rows of this type.
template <class Row>
void create(SQLite::Database& db) {
    std::string all;
    const Row row{};
    columns(row, [&]<class T>(const char* name, const T&) {
        all += fmt::format("{}{} {}{}", all.empty() ? "" : ", ", name, sql_type<T>(),
                           is_optional<T> ? "" : " NOT NULL");
    });
    const std::string key = table<Row>.key;
    if (!key.empty()) all += ", UNIQUE (" + key + ")";
    db.exec(fmt::format("CREATE TABLE {} ({}) STRICT", table<Row>.name, all));
}

// Writes rows into their table.
template <class Row>
class Insert {
  public:
    explicit Insert(SQLite::Database& db) : statement_(db, query()) {}

    void operator()(const Row& row) {
        int place = 0;
        columns(row, [&](const char*, const auto& value) { put(++place, value); });
        statement_.exec();
        statement_.reset();
        statement_.clearBindings();
    }

  private:
    static std::string query() {
        std::string places;
        const Row row{};
        columns(row, [&](const char*, const auto&) { places += places.empty() ? "?" : ", ?"; });
        return fmt::format("INSERT INTO {} VALUES ({})", table<Row>.name, places);
    }
    template <class T>
    void put(int at, const T& value) {
        if constexpr (is_optional<T>) {
            if (value) put(at, *value);
        } else if constexpr (is_packed<T>) {
            statement_.bind(at, packed(value));
        } else if constexpr (is_measure<T>) {
            statement_.bind(at, value.si());
        } else if constexpr (std::is_same_v<T, double> || std::is_same_v<T, std::string>) {
            statement_.bind(at, value);
        } else {
            statement_.bind(at, static_cast<int>(value));
        }
    }

    SQLite::Statement statement_;
};

template <class T>
void take(const SQLite::Column& from, T& out) {
    if constexpr (is_optional<T>) {
        if (from.isNull()) return out.reset();
        take(from, out.emplace());
    } else if constexpr (is_packed<T>) {
        unpack(from.getString(), out);
    } else if constexpr (is_measure<T>) {
        out = T::from_si(from.getDouble());
    } else if constexpr (std::is_same_v<T, double>) {
        out = from.getDouble();
    } else if constexpr (std::is_same_v<T, std::string>) {
        out = from.getString();
    } else {
        out = static_cast<T>(from.getInt());
    }
}

// All rows, in the order in which they were written.
template <class Row>
std::vector<Row> rows_of(SQLite::Database& db) {
    SQLite::Statement query(db, fmt::format("SELECT * FROM {} ORDER BY rowid", table<Row>.name));
    std::vector<Row> out;
    while (query.executeStep()) {
        int place = 0;
        columns(out.emplace_back(),
                [&](const char*, auto& value) { take(query.getColumn(place++), value); });
    }
    return out;
}

template <class Row>
void write_rows(SQLite::Database& db, const std::vector<Row>& rows) {
    create<Row>(db);
    Insert<Row> insert(db);
    for (const auto& row : rows) insert(row);
}

}  // namespace gristwright::catalog
