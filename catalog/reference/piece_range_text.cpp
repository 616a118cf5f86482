#include "catalog/reference/piece_range_text.hpp"

#include <algorithm>

#include "catalog/reference/tables.hpp"
#include "catalog/text/table_row.hpp"

namespace gristwright::catalog {
namespace {

PieceRange piece_range(const Row& row) {
    PieceRange out{row.text("article"), row.number("spread"), row.word("mark", mark_named),
                   row.text("source")};
    if (out.article.empty()) throw row.wrong("article: which?");
    if (!(out.spread >= 0 && out.spread < 1)) throw row.wrong("spread: 0 or more, less than 1");
    return out;
}

}  // namespace

std::vector<PieceRange> read_piece_ranges(const std::string& text, const std::string& file) {
    return read_rows(text, file, piece_range, {"article"});
}

PieceRange range_of(const Template& article, const std::vector<PieceRange>& rows) {
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const PieceRange& one) {
        return one.article == article.article;
    });
    return row == rows.end() ? PieceRange{} : *row;
}

}  // namespace gristwright::catalog
