// Where a value stands in a picture.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

namespace gristwright::cli {

struct Axis {
    double from = 0, to = 1;     // values; from < to
    double start = 0, stop = 1;  // where they stand
    bool logarithmic = false;    // then from > 0

    // Values outside the axis stand at its end.
    double at(double value) const {
        const double v = std::clamp(value, from, to);
        const double share =
            logarithmic ? std::log(v / from) / std::log(to / from) : (v - from) / (to - from);
        return start + share * (stop - start);
    }
};

// Round values 1, 2 or 5 x 10^n inside the axis, about `wanted` of them.
inline std::vector<double> ticks(const Axis& axis, int wanted) {
    const double rough = (axis.to - axis.from) / wanted;
    const double power = std::pow(10, std::floor(std::log10(rough)));
    const double step = power * (rough / power < 1.5   ? 1
                                 : rough / power < 3.5 ? 2
                                 : rough / power < 7.5 ? 5
                                                       : 10);
    std::vector<double> out;
    for (auto n = std::ceil(axis.from / step - 1e-9) + 0.0; n * step <= axis.to * (1 + 1e-9); ++n)
        out.push_back(n * step);
    return out;
}

}  // namespace gristwright::cli
