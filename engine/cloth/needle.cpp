// The line from loop to needle is least squares on the trade's weight table, the needles of lace
// and shawls were set by hand beside published pieces (judgement): docs/models.md says how.
#include "engine/cloth/needle.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/cloth/knitting_constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

// Sizes in millimetres as sold (published size tables agree on them; 7.5 is rare).
constexpr std::array sizes_sold{1.0,  1.25, 1.5,  1.75, 2.0,  2.25, 2.5,  2.75, 3.0,
                                3.25, 3.5,  3.75, 4.0,  4.5,  5.0,  5.5,  6.0,  6.5,
                                7.0,  8.0,  9.0,  10.,  12.0, 15.0, 20.0, 25.0};

const std::vector<Length>& all_sold() {
    static const std::vector<Length> all = [] {
        std::vector<Length> out;
        for (const double size : sizes_sold) out.push_back(millimetres(size));
        return out;
    }();
    return all;
}

const PurposeConstants& of(Firmness purpose) {
    return purpose_constants[static_cast<std::size_t>(purpose)];
}

}  // namespace

Length needle_for(Length loop) {
    return millimetres(needle_slope * in_millimetres(loop) + needle_offset);
}

Length loop_on(Length needle) {
    return millimetres((in_millimetres(needle) - needle_offset) / needle_slope);
}

Length needle_wanted(Firmness purpose, Length ordinary, LinearDensity yarn) {
    const auto& wants = of(purpose);
    const double against_4_m_per_g = 250 / in_tex(yarn);
    const auto least = millimetres(wants.least * std::pow(against_4_m_per_g, least_falls));
    return std::max(ordinary * wants.to_ordinary.value, least);
}

double needle_freedom(Firmness purpose) { return of(purpose).freedom; }

Length nearest_needle(Length wanted, const std::vector<Length>& owned) {
    const auto& sizes = owned.empty() ? all_sold() : owned;
    return *std::min_element(sizes.begin(), sizes.end(), [&](Length a, Length b) {
        return std::abs((a - wanted).si()) < std::abs((b - wanted).si());
    });
}

bool needle_serves(Length needle, Length wanted, Firmness purpose) {
    const double away = std::abs(in_millimetres(needle - wanted));
    const double size = in_millimetres(wanted);
    return away <= std::max(needle_slack + needle_slack_share * size, of(purpose).freedom * size);
}

}  // namespace gristwright
