// Rows of one line each, in columns that fit the terminal.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/output/terminal.hpp"

namespace gristwright::cli {

struct Column {
    std::string head;
    bool right = false;  // aligned so
    int goes = 0;        // where there is no room: the highest goes first, 0 stays
};

struct Cell {
    std::string text;
    std::optional<Dye> dye = std::nullopt;
};

class Table {
  public:
    explicit Table(std::vector<Column> columns) : columns_(std::move(columns)) {}

    void add(std::vector<Cell> row) { rows_.push_back(std::move(row)); }  // a cell for each column
    // Whether all of it has room.
    bool fits(std::size_t width) const;

    // Every row, each with its end of line, in at most `width` columns as long as any column may
    // go; the heads are one more line before them.
    struct Lines {
        std::string head;
        std::vector<std::string> rows;
    };
    Lines lines(std::size_t width) const;

  private:
    std::vector<std::size_t> widths() const;
    std::vector<bool> kept(const std::vector<std::size_t>& widths, std::size_t width) const;

    std::vector<Column> columns_;
    std::vector<std::vector<Cell>> rows_;
};

}  // namespace gristwright::cli
