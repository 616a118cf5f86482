#include "cli/would_be.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "catalog/text/nearest.hpp"
#include "cli/output/layout.hpp"
#include "engine/project/constants.hpp"
#include "engine/project/role.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/loft.hpp"

namespace gristwright::cli {
namespace {

const std::vector<std::string> ways{"combed", "carded", "double", "plied", "1-ply", "2-ply",
                                    "3-ply",  "4-ply",  "5-ply",  "6-ply", "7-ply", "8-ply"};

// The same singles, so many plied together: as much thicker and shorter, less what plying takes up.
Batch plied_as(Batch batch, int plies) {
    if (batch.plies == 0)
        throw Refused(
            "--would-be: another ply needs to know how many plies there are: say --ply 2");
    const double kept = (plies > 1 ? 1 - constants::plying_takes_up : 1.0) /
                        (batch.plies > 1 ? 1 - constants::plying_takes_up : 1.0);
    const double longer = kept * batch.plies / plies;
    for (auto& skein : batch.skeins) skein.length = skein.length * longer;
    if (batch.wraps) batch.wraps->count = batch.wraps->count * std::sqrt(longer);
    batch.plies = plies;
    batch.ply_twist.reset();
    batch.washed_gauge.reset();
    return batch;
}

Batch made_as(const std::string& how, const Question& q) {
    if (how == "combed") return prepared_otherwise(q, Preparation::combed, Draw::short_draw);
    if (how == "carded") return prepared_otherwise(q, Preparation::carded, Draw::long_draw);
    if (how == "double") return two_strands(q.measured.batch, Role::doubled);
    if (how == "plied") return two_strands(q.measured.batch, Role::plied_again);
    if (std::find(ways.begin(), ways.end(), how) == ways.end())
        throw Refused(fmt::format("--would-be is {}, not '{}'{}", joined(ways), inert(how),
                                  catalog::did_you_mean(how, ways)));
    return plied_as(q.measured.batch, how[0] - '0');
}

std::string in_words(const std::string& how) {
    if (how == "double") return "held double";
    return how == "plied" ? "plied again" : how;
}

}  // namespace

Batch prepared_otherwise(const Question& q, Preparation preparation, Draw draw) {
    auto batch = q.measured.batch;
    batch.preparation = preparation;
    batch.draw = draw;
    batch.washed_gauge.reset();
    const auto band = usual_packing(preparation, draw);
    const double usual = (band.low + band.high) / 2;
    const auto one = wraps_per_inch(1);
    const double at_one = packing_from_wraps(q.yarn.linear_density.mid, one, FibrePart{}.density);
    batch.wraps = WrapsReading{one * std::sqrt(usual / at_one), inches(1), WrapsHow::laid};
    return batch;
}

Question as_would_be(const std::string& how, const Question& q) {
    auto out = q;
    out.measured.batch = made_as(how, q);
    const auto& name = q.measured.batch.name;
    out.measured.batch.name = (name.empty() ? "Your batch" : name) + ", " + in_words(how);
    out.yarn = informed_yarn(out.measured, q.hands, {}, *q.catalogue, true);
    return out;
}

}  // namespace gristwright::cli
