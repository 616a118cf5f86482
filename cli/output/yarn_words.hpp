// What is known and assumed of a yarn, what would sharpen the answer and what to beware of, in
// words.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/output/units.hpp"
#include "engine/cloth/gauge_range.hpp"
#include "engine/cloth/hint.hpp"
#include "engine/project/template.hpp"

namespace gristwright::cli {

// "3.61 m/g (3.20 to 4.07)", of a system of counts by its name.
std::string grist_words(const Estimate<LinearDensity>& grist, std::string_view system,
                        int decimals);
std::string words(const Assumption& assumption, const Units& units);
std::string words(const Hint& hint);

std::string words(const MakeUp& made);  // "carded, long draw, 2-ply, sheep", as far as known
// "4 % tighter than the table", "as the table says"
std::string habit_words(const Estimate<double>& habit);
// "a washed and weighed swatch in stocking stitch"
std::string words(const Standing& standing, const Evidence& known);
std::string words(const Contradiction& seen);
// "skein 1: 51 yd weighing 8.75 oz is a yarn of 93 yd/lb; are the length and the mass swapped?"
std::string words(const UnlikelyMeasure& doubt, const Units& units);
// "60 st/10 cm is far tighter than this yarn is knitted at, about 21 st/10 cm in ...?"
std::string words(const FarGauge& far, const Units& units);
std::string words(const YarnCaution& caution, const YarnProfile& yarn, const Units& units);

// Of the skeins together, not of the yarn that each is.
bool of_the_whole_batch(const YarnCaution& caution);

// On what the estimates stand besides the yarn's own measures.
std::vector<std::string> standings(const Evidence& known);
std::vector<std::string> questions(const Evidence& known);
// What to beware of in the yarn itself, and what its swatches contradict.
std::vector<std::string> yarn_cautions(const YarnProfile& yarn, const Units& units);
// The same beside the cautions on articles, which say how to wash what felts; of one craft only
// what bears on it.
std::vector<std::string> cautions_at_work(const YarnProfile& yarn, const Units& units,
                                          std::optional<Craft> craft = {});
std::vector<std::string> assumptions(const YarnProfile& yarn, const Units& units);
// The first narrows most. Of one craft only those that bear on it: weaving learns nothing from a
// knitted swatch.
std::vector<std::string> hints(const YarnProfile& yarn, std::optional<Craft> craft = {});

}  // namespace gristwright::cli
