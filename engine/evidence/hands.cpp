#include "engine/evidence/hands.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/constants.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

std::string in_batches(std::size_t count) {
    return fmt::format("{} other batch{}", count, count == 1 ? "" : "es");
}

void learn_gauge(const std::vector<HandsSeen>& others, Evidence& known) {
    std::vector<Estimate<double>> ratios;
    for (const auto& seen : others)
        if (seen.gauge) ratios.push_back(*seen.gauge);
    if (ratios.empty()) return;
    known.habit = gauge_habit(ratios);
    known.stands_on.push_back(fmt::format("your swatches in {}, which come out {}",
                                          in_batches(ratios.size()), habit_words(*known.habit)));
}

void learn_looks(const std::vector<HandsSeen>& others, const MakeUp& made, Evidence& known) {
    if (!made.known()) return;
    for (const auto& seen : others)
        if (seen.look && seen.made == made) known.looks_alike.push_back(*seen.look);
    if (known.looks_alike.empty()) return;
    known.stands_on.push_back(fmt::format("looks rated in {} made up alike ({})",
                                          in_batches(known.looks_alike.size()), words(made)));
}

}  // namespace

bool MakeUp::known() const {
    return preparation != Preparation::unknown && draw != Draw::unknown && plies > 0;
}

MakeUp make_up_of(const Batch& batch) {
    return {batch.preparation, batch.draw, batch.plies,
            batch.fibre.empty() ? "" : batch.fibre.front().kind};
}

std::string words(const MakeUp& made) {
    std::string out;
    const auto add = [&](const std::string& word) { out += (out.empty() ? "" : ", ") + word; };
    if (made.preparation != Preparation::unknown)
        add(made.preparation == Preparation::carded ? "carded" : "combed");
    if (made.draw != Draw::unknown) add(made.draw == Draw::long_draw ? "long draw" : "short draw");
    if (made.plies > 0) add(made.plies == 1 ? "singles" : fmt::format("{}-ply", made.plies));
    if (!made.fibre.empty()) add(made.fibre);
    return out;
}

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

std::string habit_words(const Estimate<double>& habit) {
    const double percent = std::round(100 * (habit.mid - 1));
    if (percent == 0) return "as the table says";
    return fmt::format("{:.0f} % {} than the table", std::abs(percent),
                       percent > 0 ? "tighter" : "looser");
}

}  // namespace gristwright
