#include "engine/evidence/swatch.hpp"

#include <fmt/core.h>

#include <cmath>
#include <stdexcept>

#include "engine/allocation/constants.hpp"
#include "engine/evidence/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

void need_positive(double value, const char* what) {
    if (!(value > 0)) throw std::invalid_argument(fmt::format("{} must be above zero", what));
}

// Relative error of a count: reading both ends, and the unevenness of the threads counted.
double counting(const Counted& counted) {
    return std::hypot(read_error / counted.threads, unevenness / std::sqrt(counted.threads));
}

// Stocking stitch by the same hands, from a swatch in another fabric.
Estimate<Gauge> stocking_gauge(const KnittedSwatch& swatch, const KnitFabric& fabric) {
    const double per_metre = swatch.stitches.threads / swatch.stitches.over.si();
    double spread = std::hypot(counting(swatch.stitches), rest_differs);
    if (!swatch.washed) spread = std::hypot(spread, washing_moves);
    return {Gauge::from_si(per_metre / fabric.stitches * std::sqrt(fabric.growth)), spread};
}

void question(Evidence& known, Estimate<double> expected, Estimate<double> seen, const char* what) {
    if (surprise(expected, seen) <= worth_questioning) return;
    known.questions.push_back(
        fmt::format("{} is {:.0f} % {} than this yarn lets expect: is it this yarn, counted and "
                    "measured as typed?",
                    what, 100 * std::abs(seen.mid / expected.mid - 1),
                    seen.mid > expected.mid ? "more" : "less"));
}

void observe_gauge(const KnittedSwatch& swatch, const KnitFabric& fabric, const YarnProfile& yarn,
                   Evidence& known) {
    const auto cloth = knit_cloth(yarn, fabric, swatch.firmness, {});
    const auto seen = stocking_gauge(swatch, fabric);
    const auto prior = known.gauge.value_or(cloth.gauge);
    question(known, {prior.mid.si(), prior.spread}, {seen.mid.si(), seen.spread}, "the gauge");
    known.gauge = posterior(prior, seen);
}

void observe_mass(const KnittedSwatch& swatch, const KnitFabric& fabric, const YarnProfile& yarn,
                  Evidence& known) {
    if (!swatch.mass || !swatch.width || !swatch.length) return;
    const auto cloth = knit_cloth(yarn, fabric, swatch.firmness, {});
    const auto area = *swatch.width * *swatch.length;
    const double measured = (*swatch.mass / yarn.linear_density.mid).si() / area.si();
    const double predicted = cloth.metres_per_area.mid.si() * (known.gauge->mid / cloth.gauge.mid);
    const double reading =
        std::hypot(area_reading / swatch.width->si(), area_reading / swatch.length->si(),
                   swatch.scale_step / *swatch.mass / std::sqrt(12.0));
    const Estimate<double> seen{measured / predicted,
                                std::hypot(reading, swatch_and_rest, yarn.linear_density.spread)};
    const auto prior = known.metres.value_or(Estimate<double>{1, cloth.metres_per_area.spread});
    question(known, prior, seen, "the swatch's yarn for its area");
    known.metres = posterior(prior, seen);
}

Estimate<double> kept(Length finished, Length before) {
    const double reading = std::hypot(area_reading / finished.si(), area_reading / before.si());
    return {finished / before, std::hypot(reading, swatch_and_rest)};
}

}  // namespace

void observe(const KnittedSwatch& swatch, const KnitFabric& fabric, const YarnProfile& yarn,
             Evidence& known) {
    need_positive(swatch.stitches.threads, "the stitches counted");
    need_positive(swatch.stitches.over.si(), "the length they were counted over");
    observe_gauge(swatch, fabric, yarn, known);
    observe_mass(swatch, fabric, yarn, known);
    if (swatch.look) known.definition = *swatch.look;
    known.stands_on.push_back(
        fmt::format("a {}{} swatch in {}", swatch.washed ? "washed" : "not yet washed",
                    swatch.mass && swatch.width ? " and weighed" : "", fabric.name));
}

void observe(const WovenSwatch& swatch, Finish finish, Evidence& known) {
    need_positive(swatch.width.si(), "the finished width");
    need_positive(swatch.length.si(), "the finished length");
    if (swatch.reed_width) {
        const Estimate<double> prior{1 - width_loss(finish).mid, loss_prior};
        const auto seen = kept(swatch.width, *swatch.reed_width);
        question(known, prior, seen, "the width kept");
        known.width_kept = posterior(known.width_kept.value_or(prior), seen);
    }
    if (swatch.woven_length) {
        const Estimate<double> prior{1 - length_loss(finish).mid, loss_prior};
        const auto seen = kept(swatch.length, *swatch.woven_length);
        question(known, prior, seen, "the length kept");
        known.length_kept = posterior(known.length_kept.value_or(prior), seen);
    }
    if (swatch.look) known.definition = *swatch.look;
    known.stands_on.emplace_back("a woven sample, measured in the heddle and finished");
}

YarnProfile informed(YarnProfile yarn, const Evidence& known) {
    yarn.evidence = known;
    if (known.definition) {
        auto& trait = yarn.traits[static_cast<std::size_t>(TraitName::definition)];
        const double a = 1 / (trait.spread * trait.spread);
        const double b = 1 / (rated_look * rated_look);
        trait.value = (a * trait.value + b * *known.definition) / (a + b);
        trait.spread = 1 / std::sqrt(a + b);
        trait.reasons.insert(trait.reasons.begin(), "rated on your swatch");
    }
    yarn.cautions.insert(yarn.cautions.end(), known.questions.begin(), known.questions.end());
    if (known.gauge && !yarn.sharpen.empty()) yarn.sharpen.erase(yarn.sharpen.begin());
    return yarn;
}

}  // namespace gristwright
