#include "engine/lay/strand.hpp"

#include <cmath>
#include <cstddef>

namespace gristwright::lay {

double yarn_shown(const std::vector<Strand>& strands, double width, double height) {
    constexpr int parts = 4;  // of a piece: those whose middle is inside count
    double out = 0;
    for (const auto& strand : strands)
        for (std::size_t i = 1; i < strand.line.size(); ++i) {
            const auto &a = strand.line[i - 1], &b = strand.line[i];
            for (int k = 0; k < parts; ++k) {
                const double t = (k + 0.5) / parts;
                const double x = a.x + t * (b.x - a.x), y = a.y + t * (b.y - a.y);
                if (x >= 0 && x < width && y >= 0 && y < height)
                    out += std::hypot(b.x - a.x, b.y - a.y) / parts;
            }
        }
    return out;
}

}  // namespace gristwright::lay
