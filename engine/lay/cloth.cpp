#include "engine/lay/cloth.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace gristwright::lay {
namespace {

constexpr double points_per_thickness = 16;
constexpr std::size_t most_across = 2000;  // of the grid: yarn far finer than the window

double apart(Place a, Place b) { return std::hypot(a.x - b.x, a.y - b.y); }

Place between(Place a, Place b, double share) {
    return {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
}

double to_segment(Place p, Place a, Place b) {
    const double dx = b.x - a.x, dy = b.y - a.y, square = dx * dx + dy * dy;
    const double along = square > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / square : 0;
    return apart(p, between(a, b, std::clamp(along, 0.0, 1.0)));
}

// Points in the middle of equal squares; each is hidden once yarn has been laid over it.
class Grid {
  public:
    explicit Grid(const Cloth& cloth)
        : step_(std::max(cloth.thickness / points_per_thickness, cloth.width / most_across)),
          across_(count(cloth.width)),
          up_(count(cloth.height)),
          hidden_(across_ * up_) {}

    void hide(Place a, Place b, double reach) {
        const auto [x0, x1] = range(std::minmax(a.x, b.x), reach, across_);
        const auto [y0, y1] = range(std::minmax(a.y, b.y), reach, up_);
        for (auto j = y0; j < y1; ++j)
            for (auto i = x0; i < x1; ++i)
                if (to_segment({middle(i), middle(j)}, a, b) <= reach) hidden_[j * across_ + i] = 1;
    }

    double share() const {
        const auto n = std::count(hidden_.begin(), hidden_.end(), 1);
        return static_cast<double>(n) / static_cast<double>(hidden_.size());
    }

  private:
    std::size_t count(double size) const {
        return static_cast<std::size_t>(std::max(1.0, std::round(size / step_)));
    }
    double middle(std::size_t i) const { return (static_cast<double>(i) + 0.5) * step_; }
    std::pair<std::size_t, std::size_t> range(std::pair<double, double> ends, double reach,
                                              std::size_t most) const {
        const auto place = [&](double v) {
            return static_cast<std::size_t>(
                std::clamp(std::floor(v / step_), 0.0, static_cast<double>(most)));
        };
        return {place(ends.first - reach), std::min(most, place(ends.second + reach) + 1)};
    }

    double step_;
    std::size_t across_, up_;
    std::vector<char> hidden_;
};

bool inside(Place p, const Cloth& cloth) {
    return p.x >= 0 && p.x < cloth.width && p.y >= 0 && p.y < cloth.height;
}

}  // namespace

double length(const Run& run) {
    double out = 0;
    for (std::size_t i = 1; i < run.line.size(); ++i) out += apart(run.line[i - 1], run.line[i]);
    return out;
}

Place at(const Run& run, double along) {
    for (std::size_t i = 1; i < run.line.size(); ++i) {
        const double piece = apart(run.line[i - 1], run.line[i]);
        if (along <= piece && piece > 0)
            return between(run.line[i - 1], run.line[i], along / piece);
        along -= piece;
    }
    return run.line.back();
}

double yarn_shown(const Cloth& cloth) {
    constexpr int parts = 20;  // of a segment: those whose middle is inside count
    double out = 0;
    for (const auto& run : cloth.runs)
        for (std::size_t i = 1; i < run.line.size(); ++i)
            for (int k = 0; k < parts; ++k)
                if (inside(between(run.line[i - 1], run.line[i], (k + 0.5) / parts), cloth))
                    out += apart(run.line[i - 1], run.line[i]) / parts;
    return out;
}

double cover(const Cloth& cloth) {
    Grid grid(cloth);
    for (const auto& run : cloth.runs)
        for (std::size_t i = 1; i < run.line.size(); ++i)
            grid.hide(run.line[i - 1], run.line[i], cloth.thickness / 2);
    return grid.share();
}

double woven_cover(double end_share, double pick_share) {
    const double e = std::min(1.0, end_share), p = std::min(1.0, pick_share);
    return e + p - e * p;
}

void sort_by_layer(Cloth& cloth) {
    std::stable_sort(cloth.runs.begin(), cloth.runs.end(),
                     [](const auto& a, const auto& b) { return a.layer < b.layer; });
}

}  // namespace gristwright::lay
