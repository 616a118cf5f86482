#include "cli/output/yarn_in_cloth.hpp"

#include <algorithm>
#include <cmath>

#include "cli/would_be.hpp"
#include "engine/lay/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

double ply_turn(const YarnProfile& yarn) {
    const double factor = yarn.twist_factor.value_or(constants::usual_ply_twist);
    const double per_inch =
        factor * std::sqrt(count_of(yarn.linear_density.mid, count_system("worsted count")));
    return 1000 / in_turns_per_metre(turns_per_inch(per_inch));
}

}  // namespace

lay::Fibres fibres_of(const YarnProfile& yarn, int plies, std::vector<Colour> colours) {
    using namespace constants;
    const double definition = yarn.trait(TraitName::definition).value;
    lay::Fibres out;
    out.thickness = laid_in_cloth * in_millimetres(yarn.laid_diameter);
    out.turn = yarn.plied ? ply_turn(yarn) : 0;
    out.plies = yarn.plied ? std::max(1, plies) : 1;
    out.halo = yarn.trait(TraitName::bloom).value;
    out.blur =
        std::clamp((drawn_crisp_from - definition) / (drawn_crisp_from - blurred_from), 0.0, 1.0);
    out.colours = std::move(colours);
    return out;
}

YarnProfile combed_alike(const Question& q) {
    return profile(prepared_otherwise(q, Preparation::combed, Draw::short_draw), q.catalogue->yarn,
                   true);
}

}  // namespace gristwright::cli
