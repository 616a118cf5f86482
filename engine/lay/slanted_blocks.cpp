#include "engine/lay/slanted_blocks.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/lay/constants.hpp"

namespace gristwright::lay {
namespace {

// A block's middle stands out, and its sides, where the next are picked up, lie deep.
double pillow(double across, double up) {
    const double side = std::pow(2 * across - 1, 6) + std::pow(2 * up - 1, 6);
    return -constants::block_side_sinks * std::min(1.0, side);
}

// A place of block (a, b) of the lattice, whose two ways lead up to the right and up to the left.
Spot placed(const Spot& p, int a, int b, double side, double thickness) {
    const double u = p.x / side, v = p.y / side;
    const bool rightwards = (a + b) % 2 == 0;
    const double right = rightwards ? a + v : a + u, left = rightwards ? b + 1 - u : b + v;
    const double unit = side / std::numbers::sqrt2;
    return {(right - left) * unit, (right + left) * unit, p.z + pillow(u, v) * thickness};
}

}  // namespace

std::vector<Strand> slanted_blocks(const Chart& chart, const Spacing& s, int stitches, double width,
                                   double height) {
    const int rows = 2 * stitches;
    const double side = std::sqrt(stitches * s.stitch * rows * s.row);
    const auto block =
        knitted_block(chart, {side / stitches, side / rows, s.loop, s.thickness}, stitches, rows);
    const int most = static_cast<int>(std::ceil((width + height) / side)) + 1;
    std::vector<Strand> out;
    for (int a = -1; a <= most; ++a)
        for (int b = -most; b <= most; ++b) {
            const auto middle = placed({side / 2, side / 2, 0}, a, b, side, 0);
            if (middle.x < -side || middle.x > width + side || middle.y < -side ||
                middle.y > height + side)
                continue;
            auto& strand = out.emplace_back();
            for (const auto& p : block.line)
                strand.line.push_back(placed(p, a, b, side, s.thickness));
        }
    return out;
}

}  // namespace gristwright::lay
