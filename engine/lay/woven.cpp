#include "engine/lay/woven.hpp"

#include <cmath>
#include <numbers>

#include "engine/lay/constants.hpp"

namespace gristwright::lay {
namespace {

constexpr int parts = 10;  // of a thread between two crossings

// Over at +1 and under at -1, eased from one crossing to the next.
template <class Over>
double wave(Over over, double t) {
    const int i = static_cast<int>(std::floor(t));
    const double share = (1 - std::cos(std::numbers::pi * (t - i))) / 2;
    return over(i) + (over(i + 1) - over(i)) * share;
}

}  // namespace

std::vector<Strand> woven(const Chart& chart, double end, double pick, double thickness,
                          double width, double height) {
    const int ends = static_cast<int>(width / end) + 2, picks = static_cast<int>(height / pick) + 2;
    const double rise = constants::crimp_rise * thickness;
    const auto over = [&](int i, int j) { return chart.at(i, j) == 'x' ? 1.0 : -1.0; };
    std::vector<Strand> out;
    for (int i = -1; i < ends; ++i) {
        Strand& warp = out.emplace_back();
        for (int k = -parts; k <= picks * parts; ++k) {
            const double t = double(k) / parts;
            const double z = rise * wave([&](int j) { return over(i, j); }, t);
            warp.line.push_back({(i + 0.5) * end, (t + 0.5) * pick, z});
        }
    }
    for (int j = -1; j < picks; ++j) {
        Strand& weft = out.emplace_back(Strand{{}, 1});
        for (int k = -parts; k <= ends * parts; ++k) {
            const double t = double(k) / parts;
            const double z = -rise * wave([&](int i) { return over(i, j); }, t);
            weft.line.push_back({(t + 0.5) * end, (j + 0.5) * pick, z});
        }
    }
    return out;
}

}  // namespace gristwright::lay
