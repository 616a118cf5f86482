// Pictures of a yarn and of a plan's metres, each 360 units wide: a phone's width.
#pragma once

#include "cli/output/svg.hpp"
#include "cli/question.hpp"
#include "engine/suitability/judgement.hpp"

namespace gristwright::cli {

inline constexpr double chart_width = 360;

// The trade's weight classes by grist and by wraps over one axis, with this yarn's two readings.
// Wraps stand where a yarn of ordinary loft has that grist: wraps to the left of the grist mean a
// loftier yarn.
Svg class_chart(const YarnProfile& yarn, const YarnTables& tables, const Units& units);

// Each skein's grist with its 90 % range. The band is 10 % wide: two skeins inside it are near
// enough to be one yarn. At most 24 skeins are drawn, the others counted.
Svg skein_chart(const YarnProfile& yarn, const Units& units);

// Chance that the yarn reaches, against the article's size.
Svg certainty_chart(const Plan& plan, const Units& units);

// What the plan asks of the yarn, factor by factor: how far each is met, 0 to 1.
Svg factor_chart(const Judgement& judged);

// A bar of 100 units, `share` of it filled (0 to 1).
Svg share_bar(double share, std::string_view title);

}  // namespace gristwright::cli
