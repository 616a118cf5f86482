#include "cli/output/ball_ladder.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gristwright::cli {
namespace {

// Steps that are read off a scale at a glance, in grams and in ounces.
constexpr std::array gram_steps{1.0, 2.0, 5.0, 10.0, 20.0, 25.0, 50.0, 100.0, 200.0, 500.0};
constexpr std::array ounce_steps{0.05, 0.1, 0.2, 0.25, 0.5, 1.0, 2.0, 4.0, 8.0, 16.0};

Mass unit_of(const Units& units) { return units.imperial() ? ounces(1) : grams(1); }

}  // namespace

std::vector<Mass> rungs(Mass whole, const Units& units, std::size_t most) {
    const auto unit = unit_of(units);
    const auto& steps = units.imperial() ? ounce_steps : gram_steps;
    const double count = static_cast<double>(most);
    const auto fits = [&](double step) { return whole / unit <= step * (count + 1); };
    const auto found = std::find_if(steps.begin(), steps.end(), fits);
    const double step = found == steps.end() ? steps.back() : *found;
    std::vector<Mass> out;
    for (double n = std::ceil(whole / unit / step) - 1; n >= 1 && out.size() < most; --n)
        out.push_back(unit * (n * step));
    return out;
}

std::string rung_words(Mass rung, const Units& units) {
    return units.imperial() ? fmt::format("{:g} oz", std::round(100 * in_ounces(rung)) / 100)
                            : fmt::format("{:.0f} g", in_grams(rung));
}

Length set_aside_for(const Plan& plan) {
    return std::min(plan.need.quantile(plan.asked), plan.have.mid);
}

std::vector<Stretch> ball_work(const Plan& plan) {
    std::vector<Stretch> out;
    Length warps;
    for (auto stretch : stretches(plan)) {
        if (stretch.warp) {
            warps += stretch.ends - stretch.begins;
            continue;
        }
        stretch.begins -= warps;
        stretch.ends -= warps;
        out.push_back(stretch);
    }
    return out;
}

std::vector<Rung> ladder_of(const Plan& plan, LinearDensity grist, const Units& units,
                            std::size_t most) {
    std::vector<Rung> out;
    const auto work = ball_work(plan);
    if (work.empty() || plan.reach == Reach::short_of) return out;
    const double spared = std::max(1.0, set_aside_for(plan) / plan.need.mid);
    const auto needed = work.back().ends;
    for (const auto ball : rungs(needed * spared * grist, units, most)) {
        const auto left = ball / grist;
        out.push_back({ball, left, place_after(plan, work, needed - left / spared)});
    }
    return out;
}

}  // namespace gristwright::cli
