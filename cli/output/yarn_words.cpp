#include "cli/output/yarn_words.hpp"

#include <fmt/core.h>

namespace gristwright::cli {
namespace {

// "±20 % becomes ±12 %", of a verb in the number of what narrows.
std::string narrows(const char* before, const Hint& hint, const char* becomes) {
    return fmt::format("{} ±{:.0f} % {} ±{:.0f} %", before, 100 * margin90(hint.before), becomes,
                       100 * margin90(hint.after));
}

}  // namespace

std::string words(const Assumption& assumption, const Units& units) {
    switch (assumption.what) {
        case Assumed::lengths_washed:
            return "lengths taken on washed, rested skeins";
        case Assumed::wool:
            return "fibre not given: wool is taken, its thickness left open";
        case Assumed::own_fibre_is_wool:
            return "your own fibre is wool";
        case Assumed::preparation_between:
            return "preparation not given: between carded and combed";
        case Assumed::draw_between:
            return "draw not given: between long and short";
        case Assumed::plies_between:
            return "plies not given: between singles and three-ply";
        case Assumed::twist_ordinary:
            return "twist not measured: an ordinary amount";
        case Assumed::scale_step:
            return fmt::format("scale read to {}", units.step(assumption.step));
        case Assumed::wraps_from_grist:
            return fmt::format("no wraps given: about {:.0f} wpi guessed from the grist",
                               in_wraps_per_inch(assumption.wraps));
        case Assumed::wraps_laid:
            return "wraps counted laid side by side, not packed";
    }
    return "";
}

std::string words(const Hint& hint) {
    switch (hint.take) {
        case Measurement::swatch:
            return "knit and wash a swatch, count a gauge: " +
                   narrows("yarn needed within", hint, "becomes");
        case Measurement::wraps:
            return "wrap the yarn round a ruler: " + narrows("the needle for it", hint, "becomes");
        case Measurement::washed_lengths:
            return "wash, dry and measure the skeins again: " + narrows("lengths", hint, "become");
        case Measurement::finer_scale:
            return fmt::format("weigh on a finer scale: of {} alone ±{:.1f} % comes from the scale",
                               hint.skein, 100 * margin90(hint.before));
        case Measurement::ply_twist:
            return "count the plied turns over a ruler: definition, wear and warp fitness firm up";
        case Measurement::fibre:
            return "name the fibre or its micron: softness and wear firm up";
    }
    return "";
}

std::vector<std::string> assumptions(const YarnProfile& yarn, const Units& units) {
    std::vector<std::string> out;
    for (const auto& one : yarn.assumed) out.push_back(words(one, units));
    return out;
}

std::vector<std::string> hints(const YarnProfile& yarn) {
    std::vector<std::string> out;
    for (const auto& hint : what_sharpens(yarn)) out.push_back(words(hint));
    return out;
}

}  // namespace gristwright::cli
