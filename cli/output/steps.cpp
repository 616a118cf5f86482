#include "cli/output/steps.hpp"

#include <fmt/core.h>

#include "cli/output/units_in_words.hpp"
#include "engine/project/words.hpp"

namespace gristwright::cli {
namespace {

Writing metric() {
    const Units units(UnitChoice::metric);
    return {[](Length q) { return fmt::format("{:.0f} cm", in_centimetres(q)); },
            [](Length q) { return fmt::format("{:.0f} m", in_metres(q)); },
            [](Mass q) { return fmt::format("{:.0f} g", in_grams(q)); },
            [units](Length q) { return units.needle(q); }};
}

Writing imperial(const Units& units) {
    return {[](Length q) { return fmt::format("{:.1f} in", in_inches(q)); },
            [](Length q) { return fmt::format("{:.0f} yd", in_yards(q)); },
            [](Mass q) { return fmt::format("{:.1f} oz", in_ounces(q)); },
            [units](Length q) { return units.needle(q); }};
}

}  // namespace

std::vector<std::string> steps_of(const Plan& plan, const Units& units) {
    const auto writing = units.imperial() ? imperial(units) : metric();
    std::vector<std::string> out;
    for (const auto& step : plan.article->steps)
        out.push_back(filled_in(in_units(step, units), plan, writing));
    return out;
}

}  // namespace gristwright::cli
