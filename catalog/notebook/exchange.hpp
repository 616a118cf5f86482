// A notebook's content as JSON, to be read back, and as a spreadsheet.
//
// An implementation header of the notebook.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalog/notebook/rows.hpp"

namespace gristwright::catalog {

inline constexpr int exchange_version =
    3;  // of the JSON form; form 1, without suggestions, and form 2, without what skeins say of
        // themselves and the part in a project, are read too

std::string to_json(const std::vector<KeptBatch>& batches);
// Strict: an unknown, doubled or missing key and a wrong type are refused, and say where.
std::vector<KeptBatch> from_json(std::string_view text);

// Columns batch, skein, length, mass, measured, then every field that any batch has; several texts
// of a field are joined by "; ". A cell that a spreadsheet would run begins with an apostrophe.
std::string to_csv(const std::vector<KeptBatch>& batches);

}  // namespace gristwright::catalog
