#include "cli/output/steps.hpp"

#include <fmt/core.h>

#include "cli/output/describe.hpp"
#include "cli/output/shaping_words.hpp"
#include "cli/output/units_in_words.hpp"
#include "engine/project/words.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright::cli {
namespace {

Writing metric() {
    const Units units(UnitChoice::metric);
    return {[units](Length q) { return units.size(q); },
            [](Length q) { return fmt::format("{:.0f} m", in_metres(q)); },
            [](Mass q) { return fmt::format("{:.0f} g", in_grams(q)); },
            [units](Length q) { return needle_words(q, units); },
            shaping_words,
            change_words};
}

Writing imperial(const Units& units) {
    return {[units](Length q) { return units.size(q); },
            [](Length q) { return fmt::format("{:.0f} yd", in_yards(q)); },
            [](Mass q) { return fmt::format("{:.1f} oz", in_ounces(q)); },
            [units](Length q) { return needle_words(q, units); },
            shaping_words,
            change_words};
}

// A word that was filled in may stand first in a sentence.
std::string sentences(std::string step) {
    bool first = true;
    for (std::size_t i = 0; i < step.size(); ++i) {
        if (first && step[i] != ' ') {
            step[i] = ascii::upper(step[i]);
            first = false;
        }
        if (i > 0 && step[i] == ' ' && step[i - 1] == '.') first = true;
    }
    return step;
}

}  // namespace

std::vector<std::string> steps_of(const Plan& plan, const Units& units) {
    const auto writing = units.imperial() ? imperial(units) : metric();
    std::vector<std::string> out;
    for (const auto& step : plan.article->steps)
        out.push_back(sentences(filled_in(in_units(step, units), plan, writing)));
    return out;
}

}  // namespace gristwright::cli
