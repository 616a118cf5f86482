#include "engine/evidence/spin.hpp"

#include <cmath>
#include <stdexcept>

#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright {
namespace {

// Yards per pound at the middle of a class; one end open: a quarter beyond the other.
double middle_of(const WeightClass& c) {
    if (c.yd_per_lb_low && c.yd_per_lb_high) return std::sqrt(*c.yd_per_lb_low * *c.yd_per_lb_high);
    if (c.yd_per_lb_low) return *c.yd_per_lb_low * 1.25;
    return c.yd_per_lb_high ? *c.yd_per_lb_high * 0.8 : 0;
}

YarnProfile yarn_of(LinearDensity grist) {
    YarnProfile yarn;
    yarn.linear_density = {grist, 0.03};
    yarn.packed_diameter = packed_diameter(grist, ashenhurst(SpunAs::woollen));
    yarn.length = {metres(1e6), 0.01};
    return yarn;
}

// Round yarn where stitches must read, sturdy where it rubs (judgement).
int plies_for(const Template& article) {
    double definition = article.wish(Asked::definition).at_least;
    const double wear = article.wish(Asked::wear).at_least;
    return definition >= 0.5 || wear >= 0.55 ? 3 : 2;
}

}  // namespace

Mass fibre_for(Length yarn, LinearDensity grist, double losses) {
    if (!(losses >= 0 && losses < 1))
        throw std::invalid_argument("losses are a share of the fibre: from 0 % to below 100 %");
    return yarn * grist / (1 - losses);
}

SpinMore spin_more(const Plan& short_plan, LinearDensity grist, double losses) {
    return {short_plan.short_by, fibre_for(short_plan.short_by, grist, losses)};
}

std::vector<SpinTarget> spin_for(const Template& article, Length size,
                                 const std::vector<WeightClass>& classes, const Fabrics& fabrics,
                                 double losses, const std::optional<Estimate<double>>& habit) {
    std::vector<SpinTarget> out;
    for (const auto& c : classes) {
        const double yards_per_pound = middle_of(c);
        if (c.number < article.finest || c.number > article.thickest || yards_per_pound <= 0)
            continue;
        SpinTarget target;
        target.weight = c.name;
        target.grist = linear_density_of(yards_per_pound, count_system("yards per pound"));
        target.grist_low = target.grist * 0.9;
        target.grist_high = target.grist * 1.1;
        target.wraps = wraps_per_inch(constants::wraps_per_root_grist * std::sqrt(yards_per_pound));
        target.plies = plies_for(article);
        const bool firm = article.craft == Craft::woven || target.plies > 2;
        target.twist_low = firm ? 2.6 : 2.0;
        target.twist_high = firm ? 3.4 : 2.8;
        Request request;
        request.size = size;
        auto yarn = yarn_of(target.grist);
        yarn.evidence.habit = habit;
        const auto planned = plan(article, yarn, fabrics, {}, request);
        target.metres = planned.need;
        const auto aside = planned.need.quantile(request.certainty);
        target.fibre = fibre_for(aside, target.grist, losses);
        out.push_back(target);
    }
    return out;
}

}  // namespace gristwright
