// What the sheet is put together from.
#pragma once

#include "cli/output/describe.hpp"
#include "cli/output/html.hpp"

namespace gristwright::cli {

// The five figures that are looked for from the chair or the loom.
PageData five_figures(const Plan& plan, const Question& q);

// Skeins, ball and rows: what is wound off, what the scale says, a square for every few rows.
void add_wind_off(PageData& data, const Plan& plan, const Question& q);
void add_rungs(PageData& data, const Plan& plan, const Question& q);
void add_squares(PageData& data, const Plan& plan, const Question& q);

}  // namespace gristwright::cli
