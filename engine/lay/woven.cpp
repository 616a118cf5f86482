#include "engine/lay/woven.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/lay/constants.hpp"
#include "engine/lay/threads.hpp"
#include "engine/lay/web.hpp"
#include "engine/lay/wefts.hpp"

namespace gristwright::lay {
namespace {

constexpr int parts = 10;  // of a thread between two crossings

// Eased from the value at one crossing to that at the next.
template <class At>
double wave(At at, double t) {
    const int i = static_cast<int>(std::floor(t));
    const double share = (1 - std::cos(std::numbers::pi * (t - i))) / 2;
    return at(i) + (at(i + 1) - at(i)) * share;
}

class Weaver {
  public:
    Weaver(const Chart& chart, double end, double pick, double thickness,
           const ColourOrder& colours, WeaveBuild built)
        : web_(chart),
          threads_(chart, end, pick, thickness, built, web_.layered()),
          colours_(colours),
          built_(built),
          end_(end),
          pick_(pick),
          thickness_(thickness) {}

    Strand warp(int i, int picks) const {
        Strand out{{}, colours_.end(i)};
        for (int k = -parts; k <= picks * parts; ++k) {
            const double t = double(k) / parts;
            out.line.push_back(
                {wave([&](int j) { return threads_.end(i, j); }, t),
                 wave([&](int j) { return threads_.pick(i, j); }, t),
                 thickness_ * (wave([&](int j) { return web_.end(i, j); }, t) + passing(i, t))});
        }
        return out;
    }

    void weft(int j, int ends, std::vector<Strand>& out) const {
        const int yarn = colours_.two() ? colours_.pick(j) : 1;
        if (!colours_.areas) {
            out.push_back(along(j, {yarn, -1, ends, false, false, false}));
            return;
        }
        const Areas areas(*colours_.areas, built_ == WeaveBuild::clasped_picks, -1, ends);
        const int row = static_cast<int>(std::floor((j + 0.5) * pick_ / end_));
        for (const auto& stretch : areas.of_pick(row))
            out.push_back(built_ == WeaveBuild::clasped_picks ? clasped(j, stretch)
                                                              : along(j, stretch));
    }

  private:
    // Of two ends that change places the one passes over the other.
    double passing(int i, double t) const {
        if (built_ != WeaveBuild::crossed_ends) return 0;
        const double over = std::sin(std::numbers::pi * (t - std::floor(t)));
        return (i % 2 == 0 ? 0.5 : -0.5) * over;
    }

    Spot spot(int j, double t, double beside) const {
        return {wave([&](int i) { return threads_.end(i, j); }, t),
                wave([&](int i) { return threads_.pick(i, j); }, t) + beside,
                thickness_ * wave([&](int i) { return web_.pick(i, j); }, t)};
    }

    double half_apart() const {
        return std::min(thickness_, pick_) * constants::wefts_in_a_shed / 2;
    }

    // A stretch between two others reaches half way to its neighbours' last ends.
    Strand along(int j, const Stretch& s) const {
        Strand out{{}, s.yarn};
        const double beside = !s.beside ? 0 : s.yarn == 0 ? -half_apart() : half_apart();
        for (int k = parts * s.from - parts / 2; k <= parts * s.to + parts / 2; ++k)
            out.line.push_back(spot(j, double(k) / parts, beside));
        return out;
    }

    // To where the other weft holds it, round that, and back.
    Strand clasped(int j, const Stretch& s) const {
        Strand out{{}, s.yarn};
        const int reach = 3 * parts / 4;
        const int from = parts * s.from - reach, to = parts * s.to + reach;
        const double lane = half_apart(), sign = s.turns_right ? 1 : -1;
        const auto lift = [&](int k) {  // one strand of a loop over, one under those of the other
            const int edge = s.turns_right ? to : from;
            return thickness_ * std::max(0.0, 1 - std::abs(k - edge) / double(parts)) * 0.5;
        };
        const auto add = [&](int k, double side) {
            auto p = spot(j, double(k) / parts, side * lane);
            p.z += sign * side * lift(k);
            out.line.push_back(p);
        };
        if (s.turns_right) {
            for (int k = from; k <= to; ++k) add(k, -1);
            for (int k = to; k >= from; --k) add(k, 1);
        } else {
            for (int k = to; k >= from; --k) add(k, -1);
            for (int k = from; k <= to; ++k) add(k, 1);
        }
        return out;
    }

    Web web_;
    Threads threads_;
    const ColourOrder& colours_;
    WeaveBuild built_;
    double end_, pick_, thickness_;
};

}  // namespace

std::vector<Strand> woven(const Chart& chart, double end, double pick, double thickness,
                          double width, double height, const ColourOrder& colours,
                          WeaveBuild built) {
    const int ends = static_cast<int>(width / end) + 2, picks = static_cast<int>(height / pick) + 2;
    const Weaver weaver(chart, end, pick, thickness, colours, built);
    std::vector<Strand> out;
    for (int i = -1; i < ends; ++i) out.push_back(weaver.warp(i, picks));
    for (int j = -1; j < picks; ++j) weaver.weft(j, ends, out);
    return out;
}

}  // namespace gristwright::lay
