#include "engine/evidence/spin.hpp"

#include <cmath>
#include <stdexcept>

#include "engine/evidence/constants.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright {
namespace {

using namespace constants;

struct Bounds {
    double low = 0, high = 0;  // yards per pound

    double middle() const { return std::sqrt(low * high); }
};

double yards_per_pound(double metres_per_gram) {
    return count_of(grams(1) / metres(metres_per_gram), count_system("yards per pound"));
}

// Of a class; the finest has no finer end in the tables, the thickest no thicker one.
Bounds bounds_of(const WeightClass& c) {
    if (c.yd_per_lb_low && c.yd_per_lb_high) return {*c.yd_per_lb_low, *c.yd_per_lb_high};
    if (c.yd_per_lb_low) return {yards_per_pound(lace_from), yards_per_pound(lace_to)};
    if (c.yd_per_lb_high) return {*c.yd_per_lb_high * thickest_spun, *c.yd_per_lb_high};
    return {};
}

YarnProfile yarn_of(LinearDensity grist) {
    YarnProfile yarn;
    yarn.linear_density = {grist, spun_grist};
    yarn.packed_diameter = packed_diameter(grist, ashenhurst(SpunAs::woollen));
    yarn.length = {metres(1e6), 0.01};
    return yarn;
}

}  // namespace

Mass fibre_for(Length yarn, LinearDensity grist, double losses) {
    if (!(losses >= 0 && losses < 1))
        throw Refused("losses are a share of the fibre: from 0 % to below 100 %");
    return yarn * grist / (1 - losses);
}

SpinMore spin_more(const Plan& short_plan, LinearDensity grist, double losses) {
    return {short_plan.short_by, fibre_for(short_plan.short_by, grist, losses), alike_grist,
            grist * (1 - alike_grist), grist * (1 + alike_grist)};
}

std::vector<SpinTarget> spin_for(const Template& article, Length size,
                                 const std::vector<WeightClass>& classes, const Fabrics& fabrics,
                                 double losses, const std::optional<Estimate<double>>& habit) {
    std::vector<SpinTarget> out;
    for (const auto& c : classes) {
        const auto bounds = bounds_of(c);
        if (c.number < article.finest || c.number > article.thickest || bounds.low <= 0) continue;
        const auto& system = count_system("yards per pound");
        SpinTarget target;
        target.weight = c.name;
        target.grist = linear_density_of(bounds.middle(), system);
        target.grist_low = linear_density_of(bounds.high, system);
        target.grist_high = linear_density_of(bounds.low, system);
        target.wraps = wraps_per_inch(wraps_per_root_grist * std::sqrt(bounds.middle()));
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
