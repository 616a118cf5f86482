#include "cli/output/table.hpp"

#include <algorithm>

#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t between_columns = 2;

std::string in_column(const Cell& cell, std::size_t width, bool right) {
    const auto wide = characters(cell.text);
    const std::string space(width > wide ? width - wide : 0, ' ');
    const auto text = cell.dye ? dyed(cell.text, *cell.dye) : cell.text;
    return right ? space + text : text + space;
}

std::string one_line(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line + "\n";
}

}  // namespace

std::vector<std::size_t> Table::widths() const {
    std::vector<std::size_t> out;
    for (const auto& column : columns_) out.push_back(characters(column.head));
    for (const auto& row : rows_)
        for (std::size_t c = 0; c < out.size(); ++c)
            out[c] = std::max(out[c], characters(row[c].text));
    return out;
}

std::vector<bool> Table::kept(const std::vector<std::size_t>& widths, std::size_t width) const {
    std::vector<bool> out(columns_.size(), true);
    const auto wide = [&] {
        std::size_t all = 0;
        for (std::size_t c = 0; c < out.size(); ++c)
            if (out[c]) all += widths[c] + (all > 0 ? between_columns : 0);
        return all;
    };
    while (wide() > width) {
        int first = 0;
        for (std::size_t c = 0; c < out.size(); ++c)
            if (out[c]) first = std::max(first, columns_[c].goes);
        if (first == 0) break;
        for (std::size_t c = 0; c < out.size(); ++c)
            if (columns_[c].goes == first) out[c] = false;
    }
    return out;
}

bool Table::fits(std::size_t width) const {
    std::size_t all = 0;
    for (const auto wide : widths()) all += wide + (all > 0 ? between_columns : 0);
    return all <= width;
}

Table::Lines Table::lines(std::size_t width) const {
    const auto wide = widths();
    const auto keep = kept(wide, width);
    const auto line = [&](auto cell_of) {
        std::string out;
        for (std::size_t c = 0; c < columns_.size(); ++c)
            if (keep[c])
                out += (out.empty() ? "" : std::string(between_columns, ' ')) +
                       in_column(cell_of(c), wide[c], columns_[c].right);
        return one_line(std::move(out));
    };
    Lines out;
    out.head = line([&](std::size_t c) { return Cell{columns_[c].head, Dye::aside}; });
    for (const auto& row : rows_) out.rows.push_back(line([&](std::size_t c) { return row[c]; }));
    return out;
}

}  // namespace gristwright::cli
