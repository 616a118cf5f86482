// A statement on the notebook: what it binds and what it reads, in order.
//
// An implementation header of the notebook.
#pragma once

#include <cstdint>
#include <string>

#include "catalog/notebook/file.hpp"
#include "catalog/notebook/rows.hpp"
#include "catalog/notebook/text.hpp"

namespace gristwright::catalog {

// How a swatch's kind is kept, in the order of SwatchText::Kind.
inline constexpr const char* kept_kinds[] = {"knitted", "woven"};

// Binds values in order, checking every text on its way in; reads columns in order.
class Query {
  public:
    template <class... Values>
    Query(SQLite::Database& db, const char* sql, const Values&... values) : statement_(db, sql) {
        (bind(values), ...);
    }

    bool next() {
        column_ = 0;
        return statement_.executeStep();
    }
    void run() { statement_.exec(); }

    Query& operator>>(std::string& out) {
        out = statement_.getColumn(column_++).getString();
        if (out.find('\0') != std::string::npos)  // it would cut a message short
            throw NotebookRefused(
                "a text in the notebook has a zero byte in it, so the file is damaged: go back to "
                "a backup");
        return *this;
    }
    Query& operator>>(std::int64_t& out) {
        out = statement_.getColumn(column_++).getInt64();
        return *this;
    }
    Query& operator>>(Written& out) { return *this >> out.text >> out.where; }

  private:
    void bind(const std::string& value) {
        check_kept_text(value);
        statement_.bind(++bound_, value);
    }
    void bind(const Written& value) {
        bind(value.text);
        bind(value.where);
    }
    void bind(BatchId value) { bind(static_cast<std::int64_t>(value)); }
    void bind(std::int64_t value) { statement_.bind(++bound_, value); }

    SQLite::Statement statement_;
    int bound_ = 0, column_ = 0;
};

}  // namespace gristwright::catalog
