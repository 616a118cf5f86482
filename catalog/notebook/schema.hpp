// The tables of a notebook and the steps that led to them. Step v takes a file from layout v to
// v + 1; layout 0 is an empty file. A step that has been released is never changed.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

inline constexpr int notebook_application_id = 0x47726E62;  // "Grnb", tells our files from others
inline constexpr int undo_depth = 1000;                     // changes that can be taken back

// Writes the SQL of a step; few files need one, so it is not written before.
using LayoutStep = std::function<std::string()>;
const std::vector<LayoutStep>& notebook_steps();

// Triggers on a table with an `id` that write, for each row changed, the SQL that takes it back
// into undo_step, under the newest row of `change`.
std::string undo_triggers(std::string_view table, std::span<const std::string_view> columns);

}  // namespace gristwright::catalog
