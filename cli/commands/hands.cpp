#include "cli/commands/hands.hpp"

#include <fmt/core.h>

#include <nlohmann/json.hpp>

#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/yarn_words.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

std::vector<Estimate<double>> ratios_of(const std::vector<HandsSeen>& all) {
    std::vector<Estimate<double>> out;
    for (const auto& seen : all)
        if (seen.gauge) out.push_back(*seen.gauge);
    return out;
}

// The looks of each make-up that can have its like, in the order first met.
struct Alike {
    MakeUp made;
    std::vector<double> looks;
    double mean() const;
};

double Alike::mean() const {
    double sum = 0;
    for (const double look : looks) sum += look;
    return sum / static_cast<double>(looks.size());
}

std::vector<Alike> alike(const std::vector<HandsSeen>& all) {
    std::vector<Alike> out;
    for (const auto& seen : all) {
        if (!seen.look || !seen.made.known()) continue;
        auto found = std::find_if(out.begin(), out.end(),
                                  [&](const Alike& group) { return group.made == seen.made; });
        if (found == out.end()) found = out.insert(out.end(), {seen.made, {}});
        found->looks.push_back(*seen.look);
    }
    return out;
}

std::string in_batches(std::size_t count) {
    return fmt::format("{} batch{}", count, count == 1 ? "" : "es");
}

std::string gauge_text(const std::vector<HandsSeen>& all) {
    const auto ratios = ratios_of(all);
    if (ratios.empty()) return "";
    const auto habit = gauge_habit(ratios);
    auto out =
        wrapped(fmt::format("Your washed swatches in {} come out {} (± {:.0f} %, drawn "
                            "towards it). A batch without a swatch is reckoned so.",
                            in_batches(ratios.size()), habit_words(habit), 100 * habit.margin90()),
                0) +
        "\n";
    for (const auto& seen : all)
        if (seen.gauge)
            out += fmt::format("  {} {:+.0f} %, ± {:.0f} %\n", padded(inert(seen.batch), 16),
                               100 * (seen.gauge->mid - 1), 100 * seen.gauge->margin90());
    return out;
}

std::string looks_text(const std::vector<HandsSeen>& all) {
    std::string out;
    for (const auto& group : alike(all))
        out += wrapped(fmt::format("Stitches in {} yarn read {:+.2f} (of 1) against the table, "
                                   "rated in {}.",
                                   words(group.made), group.mean(), in_batches(group.looks.size())),
                       0) +
               "\n";
    return out;
}

std::string hands_text(const std::vector<HandsSeen>& all) {
    if (all.empty())
        return "Nothing is known of your hands yet: gristwright swatch NAME --stitches 28/10cm\n";
    return gauge_text(all) + looks_text(all) + "Not you any more: gristwright hands --forget\n";
}

Json hands_json(const std::vector<HandsSeen>& all) {
    auto out = json_answer("hands");
    const auto ratios = ratios_of(all);
    out["habit"] = ratios.empty() ? Json(nullptr) : range(gauge_habit(ratios));
    out["seen"] = Json::array();
    for (const auto& seen : all)
        out["seen"].push_back(
            {{"batch", inert(seen.batch)},
             {"gauge_against_table", seen.gauge ? range(*seen.gauge) : Json(nullptr)},
             {"look_against_table", seen.look ? number(*seen.look) : Json(nullptr)},
             {"made_up", seen.made.known() ? Json(words(seen.made)) : Json(nullptr)}});
    return out;
}

Answer run_hands(const Arguments& arguments) {
    if (arguments.has("forget")) {
        notebook(arguments, Notebook::Mode::change).forget_hands();
        return {
            "Forgotten: the swatches so far tell about their batches only. gristwright undo "
            "takes it back.\n",
            "", 0, kept_already};
    }
    const auto all = catalog::hands_seen(
        notebook(arguments, Notebook::Mode::read_only).swatched_last(catalog::batches_of_hands),
        catalog::built_in());
    return {arguments.has("json") ? dumped(hands_json(all)) : hands_text(all), ""};
}

}  // namespace

Command hands_command() {
    return {"hands",
            "Your own hands: how your swatches come out against the table, over all batches.",
            "",
            0,
            0,
            {{"forget", "", "begin anew: the swatches kept so far say nothing about you"},
             json_option,
             notebook_option},
            run_hands,
            "--json"};
}

}  // namespace gristwright::cli
