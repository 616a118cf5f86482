#include "engine/lay/woven.hpp"

#include <cmath>
#include <numbers>

#include "engine/lay/web.hpp"

namespace gristwright::lay {
namespace {

constexpr int parts = 10;  // of a thread between two crossings

// Eased from the height at one crossing to that at the next.
template <class Height>
double wave(Height height, double t) {
    const int i = static_cast<int>(std::floor(t));
    const double share = (1 - std::cos(std::numbers::pi * (t - i))) / 2;
    return height(i) + (height(i + 1) - height(i)) * share;
}

}  // namespace

std::vector<Strand> woven(const Chart& chart, double end, double pick, double thickness,
                          double width, double height, const ColourOrder& colours) {
    const int ends = static_cast<int>(width / end) + 2, picks = static_cast<int>(height / pick) + 2;
    const Web web(chart);
    std::vector<Strand> out;
    for (int i = -1; i < ends; ++i) {
        Strand& warp = out.emplace_back(Strand{{}, colours.end(i)});
        for (int k = -parts; k <= picks * parts; ++k) {
            const double t = double(k) / parts;
            const double z = thickness * wave([&](int j) { return web.end(i, j); }, t);
            warp.line.push_back({(i + 0.5) * end, (t + 0.5) * pick, z});
        }
    }
    for (int j = -1; j < picks; ++j) {
        Strand& weft = out.emplace_back(Strand{{}, colours.two() ? colours.pick(j) : 1});
        for (int k = -parts; k <= ends * parts; ++k) {
            const double t = double(k) / parts;
            const double z = thickness * wave([&](int i) { return web.pick(i, j); }, t);
            weft.line.push_back({(t + 0.5) * end, (j + 0.5) * pick, z});
        }
    }
    return out;
}

}  // namespace gristwright::lay
