#include "engine/evidence/next_step.hpp"

#include <algorithm>
#include <cmath>

#include "engine/cloth/weaving_constants.hpp"
#include "engine/estimate/estimate.hpp"
#include "engine/evidence/constants.hpp"

namespace gristwright {
namespace {

bool sampled(const Plan& plan, const YarnProfile& yarn) {
    return plan.article->craft == Craft::knitted ? !yarn.evidence.weighed.empty()
                                                 : yarn.evidence.width_kept.has_value();
}

bool may_grow(const Plan& plan) {
    const auto& t = *plan.article;
    return plan.size < t.largest && !(t.fitted && plan.size >= t.ideal);
}

// Rounded down: a size is promised, not hoped for.
Length whole_centimetres(Length size) { return metres(std::floor(size.si() * 100) / 100); }

}  // namespace

std::optional<SetAside> to_set_aside(const Plan& plan, const YarnProfile& yarn) {
    if (plan.reach == Reach::short_of) return std::nullopt;
    const auto most = std::min(plan.need.quantile(plan.asked), plan.have.mid);
    const auto mass = most * yarn.linear_density.mid;
    return SetAside{mass, mass / yarn.mass};
}

std::optional<Length> size_after_sample(const Plan& plan, const YarnProfile& yarn) {
    if (sampled(plan, yarn) || !may_grow(plan)) return std::nullopt;
    const auto& t = *plan.article;
    const double known =
        t.craft == Craft::knitted ? constants::swatch_metres : constants::after_sample;
    const double aside = set_aside(plan.asked, known, plan.have.spread);
    const double reached = plan.by_size.largest(plan.have.mid.si() / aside, t.largest / t.ideal);
    const auto then = whole_centimetres(t.ideal * reached);
    return then > plan.size ? std::optional(then) : std::nullopt;
}

}  // namespace gristwright
