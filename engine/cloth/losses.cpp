// Losses re-derived from published woven pieces (finished_pieces.csv, rows FW) and weavers' records
// (weave_cases_open.csv, rows M): tests/catalog/woven_accuracy_test.cpp shows them side by side.
#include "engine/cloth/losses.hpp"

#include <cmath>

#include "engine/cloth/weaving_constants.hpp"
#include "engine/estimate/estimate.hpp"

namespace gristwright {
namespace {

Loss range_of(const Constant& figure) { return {figure.value, figure.low, figure.high}; }

Loss mixed(const Constant& hair, const Constant& still, double share) {
    const auto of = [share](double a, double b) { return share * a + (1 - share) * b; };
    return {of(hair.value, still.value), of(hair.low, still.low), of(hair.high, still.high)};
}

double kept(double loss) { return std::log(1 - loss); }

const constants::WashingConstants& washing(Finish finish) {
    return constants::washed_hair[static_cast<std::size_t>(finish)];
}

}  // namespace

Loss draw_in() { return range_of(constants::draw_in_the_loom); }

Loss washing_width_loss(Finish finish, double hair) {
    return mixed(washing(finish).width, constants::washed_still.width, hair);
}

Loss width_loss(Finish finish, double hair) {
    return after(draw_in(), washing_width_loss(finish, hair));
}

Loss length_loss(Finish finish, double hair) {
    return mixed(washing(finish).length, constants::washed_still.length, hair);
}

Loss after(Loss first, Loss then) {
    const double mid = kept(first.mid) + kept(then.mid);
    const auto end = [&](double a, double b) {
        return std::hypot(kept(a) - kept(first.mid), kept(b) - kept(then.mid));
    };
    const auto lost = [](double log_kept) { return 1 - std::exp(log_kept); };
    return {lost(mid), lost(mid + end(first.low, then.low)),
            lost(mid - end(first.high, then.high))};
}

Loss packed_close(Loss balanced) {
    const double kept = constants::close_cloth_loses;
    return {balanced.mid * kept, balanced.low * kept, balanced.high * kept};
}

double spread_kept(Loss loss) { return band_spread(1 - loss.high, 1 - loss.low); }

}  // namespace gristwright
