// Pictures of a yarn and of a plan's metres, each 300 units wide: they fill a phone and
// their letters stay at 12 pixels or more.
#pragma once

#include <string>
#include <vector>

#include "cli/output/svg.hpp"
#include "cli/question.hpp"
#include "engine/evidence/progress.hpp"
#include "engine/suitability/judgement.hpp"

namespace gristwright::cli {

inline constexpr double chart_width = 300;
inline constexpr std::size_t most_skeins_drawn = 24;

// The trade's weight classes by grist and by wraps over one axis, with this yarn's two readings.
// Wraps stand where a yarn of ordinary loft has that grist: wraps to the left of the grist mean a
// loftier yarn.
Svg class_chart(const YarnProfile& yarn, const YarnTables& tables, const Units& units);

// Each skein's grist with its 90 % range. The band is 10 % wide: two skeins inside it are near
// enough to be one yarn. At most 24 skeins are drawn, the others counted.
Svg skein_chart(const YarnProfile& yarn, const Units& units);

// Chance that the yarn reaches, against the article's size.
Svg certainty_chart(const Plan& plan, const Units& units);

// Points of 100 that each wish or need costs, dearest first; what costs less than half a point is
// met.
struct PointsLost {
    std::string to;
    double points = 0;
};
std::vector<PointsLost> points_lost(const Judgement& judged);
std::vector<std::string> fully_met(const Judgement& judged);
Svg lost_chart(const Judgement& judged);

// The share of the batch that a plan takes, with its 90 % range.
Svg batch_share_bar(const Plan& plan);

// What the ball weighs after so many rows of the piece in work, planned and weighed; of a knitted
// piece of this batch of which one is made.
bool can_be_charted(const Plan& plan);
Svg weigh_chart(const Plan& plan, const YarnProfile& yarn, const std::vector<Weighing>& weighings);

// A bar of 100 units, `share` of it filled (0 to 1).
Svg share_bar(double share);

}  // namespace gristwright::cli
