#include "cli/output/card.hpp"

#include <fmt/core.h>

#include <kainjow/mustache.hpp>

#include "cli/output/ball_ladder.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/html.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/yarns.hpp"
#include "engine/evidence/hands.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t longest_name_on_card = 30, longest_words = 60;  // characters

std::string kept(const std::string& text, std::size_t most) { return shortened(inert(text), most); }

std::string fibre_on_card(const Batch& batch) {
    std::vector<std::string> said;
    for (const auto& part : batch.fibre) {
        auto one = part.name.empty() ? std::string("own wool") : part.name;
        if (batch.fibre.size() > 1) one += fmt::format(" {:.0f} %", 100 * part.share);
        said.push_back(one);
    }
    auto out = said.empty() ? std::string("not given") : joined(said);
    if (batch.fibre.size() != 1) return out;
    const auto& only = batch.fibre.front();
    if (only.micron_low && only.micron_high)
        out += fmt::format(", {:.0f}-{:.0f} micron", in_microns(*only.micron_low),
                           in_microns(*only.micron_high));
    return out;
}

std::string made_words(const Batch& batch, const Units& units) {
    auto made = make_up_of(batch);
    made.fibre.clear();  // it has a line of its own
    auto out = words(made);
    if (batch.ply_twist) out += (out.empty() ? "" : ", ") + units.twist(*batch.ply_twist);
    return out;
}

bool holds_animal_hair(const Batch& batch) {
    for (const auto& part : batch.fibre)
        if (part.kind != "plant" && part.kind != "silk" && part.kind != "man-made") return true;
    return batch.fibre.empty();
}

// Common practice, no source.
std::string care_words(const Question& q) {
    if (!holds_animal_hair(q.measured.batch)) return "Wash a sample first: it may shrink or run.";
    return q.yarn.felting == "high"
               ? "Felts easily: wash cool, by hand, without rubbing; dry flat."
               : "Wash cool, by hand; hot water and rubbing felt it. Dry flat.";
}

std::string wraps_words(const YarnProfile& yarn) {
    if (!yarn.wraps_measured) return "";
    return fmt::format("{:.0f} wpi, laid", in_wraps_per_inch(yarn.laid_wraps.mid));
}

// "skein A", and "skein 1" where that is its name.
std::string skein_words(const std::string& name) {
    if (name.empty() || name.rfind("skein", 0) == 0) return kept(name, longest_name_on_card / 2);
    return "skein " + kept(name, longest_name_on_card / 2);
}

// The back of the card: what is left of the skein when the scale shows so much.
PageData rungs_of(const SkeinGrist& skein, const Units& units) {
    constexpr std::size_t most = 12;  // in two columns
    PageData out{PageData::type::list};
    for (const auto ball : rungs(skein.mass, units, most)) {
        PageData rung;
        rung.set("ball", rung_words(ball, units));
        rung.set("left", units.yarn(ball / skein.linear_density.mid));
        out << rung;
    }
    return out;
}

// `q` is about the yarn that the skein is of.
PageData card_data(const Question& q, const SkeinGrist& skein, const std::string& spun) {
    const auto& batch = q.measured.batch;
    PageData out;
    const auto set = [&](const char* name, const std::string& text) {
        if (!text.empty()) out.set(name, text);
    };
    set("batch", batch.name.empty() ? "Handspun" : kept(batch.name, longest_name_on_card));
    set("skein", skein_words(skein.name));
    set("length", q.units.yarn(skein.length));
    set("mass", q.units.weighed(skein.mass));
    if (!q.units.imperial()) set("metric", grist_words(skein.linear_density, "metres per gram", 2));
    if (q.units.imperial() || q.units.both())
        set("imperial", grist_words(skein.linear_density, "yards per pound", 0));
    set("wraps", wraps_words(q.yarn));
    set("fibre", kept(fibre_on_card(batch), longest_words));
    set("made", made_words(batch, q.units));
    auto care = care_words(q);
    for (const auto& said : briefs(cautions_on(q, {}), true)) care += " " + capital(said) + ".";
    set("care", care);
    out.set("rungs", rungs_of(skein, q.units));
    set("grist", q.units.grist(skein.linear_density.mid));
    set("spun", kept(spun, longest_words / 2));
    return out;
}

}  // namespace

std::string card(const Question& q, const std::string& spun) {
    PageData out, cards{PageData::type::list};
    const auto yarns = of_each_yarn(q);
    for (std::size_t s = 0; s < q.yarn.skeins.size(); ++s)
        cards << card_data(yarns.empty() ? q : yarns[q.yarn.agreement.yarn_with(s)],
                           q.yarn.skeins[s], spun);
    const auto& name = q.measured.batch.name;
    out.set("name", name.empty() ? "Your batch" : kept(name, longest_name_on_card));
    out.set("style", std::string(embedded::card_style));
    out.set("cards", cards);
    return rendered(embedded::card_template, out);
}

}  // namespace gristwright::cli
