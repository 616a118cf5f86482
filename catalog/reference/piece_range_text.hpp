// catalog/tables/piece_ranges.csv: how far the pieces of one kind lie apart that people make.
#pragma once

#include <string>
#include <vector>

#include "engine/project/template.hpp"

namespace gristwright::catalog {

// Throws BadText with the line for a spread that is none, or an article that stands there twice.
std::vector<PieceRange> read_piece_ranges(const std::string& text, const std::string& file);

// The row of its article, or what holds of any.
PieceRange range_of(const Template& article, const std::vector<PieceRange>& rows);

}  // namespace gristwright::catalog
