#include "engine/evidence/hands.hpp"

#include "engine/evidence/constants.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

void learn_gauge(const std::vector<HandsSeen>& others, Evidence& known) {
    std::vector<Estimate<double>> ratios;
    for (const auto& seen : others)
        if (seen.gauge) ratios.push_back(*seen.gauge);
    if (ratios.empty()) return;
    known.habit = gauge_habit(ratios);
    known.stands_on.push_back({Basis::habit, "", true, false, ratios.size(), {}});
}

void learn_looks(const std::vector<HandsSeen>& others, const MakeUp& made, Evidence& known) {
    if (!made.known()) return;
    for (const auto& seen : others)
        if (seen.look && seen.made == made) known.looks_alike.push_back(*seen.look);
    if (known.looks_alike.empty()) return;
    known.stands_on.push_back(
        {Basis::looks_alike, "", true, false, known.looks_alike.size(), made});
}

}  // namespace

Estimate<double> gauge_habit(const std::vector<Estimate<double>>& ratios) {
    Estimate<double> habit{1, habit_between_people};
    for (const auto& ratio : ratios)
        habit = posterior(habit, {ratio.mid, together(ratio.spread, habit_between_batches)});
    return habit;
}

void learn_from(const std::vector<HandsSeen>& others, const MakeUp& made, Evidence& known) {
    learn_gauge(others, known);
    learn_looks(others, made, known);
}

}  // namespace gristwright
