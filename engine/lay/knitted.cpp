#include "engine/lay/knitted.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <string_view>
#include <tuple>

#include "engine/lay/constants.hpp"
#include "engine/lay/eased.hpp"
#include "engine/lay/gathers.hpp"
#include "engine/lay/half_loop.hpp"
#include "engine/lay/repeat.hpp"
#include "engine/lay/stitch.hpp"
#include "engine/lay/wales.hpp"

namespace gristwright::lay {
namespace {

using namespace constants;

double mixed(double a, double b, double share) { return a + (b - a) * share; }

double share(const Chart& chart, std::string_view letters) {
    double n = 0;
    for (const auto& row : chart.rows)
        n += static_cast<double>(std::count_if(row.begin(), row.end(), [&](char stitch) {
            return letters.find(stitch) != std::string_view::npos;
        }));
    return n / (chart.across() * chart.up());
}

// Where a stitch is slipped or dropped the yarn only passes; a tuck's is nearly a loop, a bobble's
// many; a row of two yarns has the other one passing behind: the loops that are made hold the rest.
double loop_made(const Chart& chart, const Spacing& s) {
    const double straight = share(chart, "sfx"), tucked = share(chart, "u");
    const double bobbles = share(chart, "B") * (bobble_loops - 1);
    double passing = 0;
    for (const auto& row : chart.rows)
        if (row.find('2') != std::string::npos) passing += 1.0 / chart.up();
    return (s.loop - (straight + passing) * s.stitch) /
           (1 - straight - tucked * (1 - tuck_loop) + bobbles +
            share(chart, "e") * (long_loop - 1));
}

// How far each row of a repeat stands above its first, in rows; one more than there are.
std::vector<double> levels(const Chart& chart) {
    std::vector<double> out{0};
    for (const auto& row : chart.rows)
        out.push_back(out.back() + (row.find('e') == std::string::npos ? 1 : double{long_row}));
    const double all = out.back();
    for (auto& level : out) level *= chart.up() / all;
    return out;
}

// Loops bend the cloth: knit wales come forward between purled ones, purled rows between knit ones.
double curl(const Chart& chart, int wale, int row) {
    const auto knit = [&](int i, int j) { return purled(chart.at(i, j)) ? 0.0 : 1.0; };
    double along = 0, across = 0;
    for (int step = -3; step <= 3; ++step) along += knit(wale, row + step) / 7;
    for (int step = -2; step <= 2; ++step) across += knit(wale + step, row) / 5;
    return knit_curls * (along - across);
}

// The row whose loop is pulled through this one's head.
int next_row(const Chart& chart, int wale, int row) {
    int next = row + 1;
    while (held(chart.at(wale, next)) && next < row + chart.up()) ++next;
    return next;
}

// Worked through its back, a loop's legs cross above its foot; -1: on the other side.
double crossed_legs(double t) { return t < 0.2 ? 1 : t > 0.55 ? -1 : 1 - 2 * (t - 0.2) / 0.35; }
bool twisted(char stitch) { return stitch == 'K' || stitch == 'P'; }

// A loop's foot lies behind the head that it is pulled through and its head behind the legs pulled
// through it where they are knit, before them where they are purled; its legs the other way round,
// so that they change sides where the one is knit and the other purled.
double depth(double foot, double head, double t) {
    const double both = (foot + head) / 2, change = (foot - head) / 2;
    return both * std::cos(2 * std::numbers::pi * t) + change * std::cos(3 * std::numbers::pi * t);
}

// Of stitches gathered into a dome, whose legs lie flat side by side.
double flat_depth(double foot, double head, double t) {
    const double leg = -(foot + head) / 2;
    return t < 0.5 ? mixed(foot, leg, eased(2 * t)) : mixed(leg, head, eased(2 * t - 1));
}

class Knitter {
  public:
    Knitter(const Chart& chart, const Spacing& s, const ColourOrder& colours)
        : chart_(chart),
          s_(s),
          areas_(colours.areas),
          loop_(loop_made(chart, s)),
          wales_(chart, s.stitch, s.row),
          gathers_(chart, s.stitch, s.row),
          levels_(levels(chart)) {
        for (int row = 0; row < chart.up(); ++row) {
            curls_.emplace_back();
            for (int wale = 0; wale < chart.across(); ++wale)
                curls_.back().push_back(curl(chart, wale, row));
        }
    }

    // One yarn's way through a row: its loops from foot to foot, and where it only passes. At a
    // crossing its feet part, and what runs between them behind the cloth is not drawn.
    std::vector<Strand> row(int row, int first, int last, int yarn) const {
        std::vector<Strand> out;
        for (int wale = first; wale < last; ++wale) {
            const auto piece = stitch(wale, row, yarn);
            const auto& from = piece.line.front();
            const int own = areas_ ? areas_->at(wale, row) - '1' : yarn;
            if (out.empty() || out.back().yarn != own || parted(out.back().line.back(), from))
                out.push_back({{}, own});
            auto& line = out.back().line;
            line.insert(line.end(), piece.line.begin(), piece.line.end());
        }
        return out;
    }

    // Its rows lie over each other in front of the ground: a winding as long as they are.
    Strand bobble(int wale, int row) const {
        constexpr int turns = 12, steps = 24;
        const double widest = (bobble_loops - 1) * loop_ / turns / 5;
        Strand out;
        for (int i = 0; i <= turns * steps; ++i) {
            const double turn = double(i) / steps, angle = 2 * std::numbers::pi * turn;
            const double flat = 0.35 + 0.55 * turn / turns;
            const double dome = std::sqrt(std::max(0.0, 1 - flat * flat));
            out.line.push_back({wales_.middle(wale) + widest * flat * std::cos(angle),
                                level(row) + s_.row / 2 + widest * (1.25 - flat) * std::sin(angle),
                                (1 + 2 * dome) * s_.thickness});
        }
        return out;
    }

    bool has_bobble(int wale, int row) const { return chart_.at(wale, row) == 'B'; }

  private:
    // Where a row's feet lie, mm.
    double level(int row) const {
        const int own = within(row, chart_.up());
        return s_.row * (row - own + levels_[static_cast<std::size_t>(own)]);
    }

    double curled(int wale, int row) const {
        return curls_[static_cast<std::size_t>(within(row, chart_.up()))]
                     [static_cast<std::size_t>(within(wale, chart_.across()))];
    }

    HalfLoop half_of(double width, double height, double length) const {
        const auto [known, fresh] = loops_.try_emplace({width, height, length});
        if (fresh) known->second = half_loop(width, height, length);
        return known->second;
    }

    bool parted(const Spot& a, const Spot& b) const {
        return !gathers_.any() && std::abs(a.x - b.x) > s_.stitch / 2;
    }

    Strand stitch(int wale, int row, int yarn) const {
        Strand out{{}, yarn};
        const char letter = chart_.at(wale, row);
        if ((letter == '2') != (yarn == 1) || letter == 's')
            pass(wale, row, -2 * loop_depth, out);
        else if (letter == 'f')
            pass(wale, row, 2 * loop_depth, out);
        else if (letter == 'x')
            pass(wale, row, 0, out);
        else if (letter == 'u')
            tuck(wale, row, out);
        else
            loop(wale, row, out);
        return out;
    }

    static constexpr int pieces = 14;  // of half a loop

    void pass(int wale, int row, double z, Strand& out) const {
        const double half = wales_.width(wale) / 2, x = wales_.middle(wale), y = level(row);
        for (const double side : {-1.0, 0.0, 1.0})
            out.line.push_back({x + side * half, y, z * s_.thickness});
    }

    template <class At>
    static void both_halves(At at, Strand& out) {
        for (int i = 0; i < pieces; ++i) out.line.push_back(at(-1, double(i) / pieces));
        for (int i = pieces; i >= 0; --i) out.line.push_back(at(1, double(i) / pieces));
    }

    // The yarn laid over a held stitch rises beside its head to the row that works both together.
    void tuck(int wale, int row, Strand& out) const {
        const auto half = half_of(wales_.width(wale), s_.row, tuck_loop * loop_ / 2);
        both_halves(
            [&](double side, double t) {
                const auto p = half.at(t);
                return Spot{wales_.middle(wale) - side * p.x, level(row) + p.y,
                            -loop_depth * s_.thickness};
            },
            out);
    }

    void loop(int wale, int row, Strand& out) const {
        const int next = next_row(chart_, wale, row);
        const double height = level(next) - level(row) + loop_overlap * s_.thickness;
        const double held = chart_.at(wale, row) == 'e' ? loop_ * long_loop : loop_;
        const auto half = half_of(wales_.width(wale), height, held / 2);
        both_halves([&](double side, double t) { return spot(wale, row, next, half, side, t); },
                    out);
    }

    Spot spot(int wale, int row, int next, const HalfLoop& half, double side, double t) const {
        const auto p = half.at(t);
        const double swap = twisted(chart_.at(wale, next)) ? crossed_legs(t) : 1;
        const double x = wales_.middle(wale) - side * swap * p.x + wales_.lean(wale, row, t);
        const double y = level(row) + p.y;
        if (gathers_.any())
            return gathered(wale, row, x, y, flat_depth(way(wale, row), way(wale, next), t));
        const auto at = wales_.moved(wale, row, {x, y});
        double z = depth_at(wale, row, next, side, t);
        if (swap < 1) z += side * 0.5 * loop_depth;  // one leg lies over the other
        z += mixed(between(wale, side, t, [&](int i) { return curled(i, row); }),
                   curled(wale, next), t);
        z += crossing_forward * wales_.forward(wale, row, y);
        return {at.x, at.y, z * s_.thickness};
    }

    double way(int wale, int row) const {
        return purled(chart_.at(wale, row)) ? double{loop_depth} : -loop_depth;
    }

    double depth_at(int wale, int row, int next, double side, double t) const {
        const double foot = between(wale, side, t, [&](int i) { return way(i, row); });
        return depth(foot, way(wale, next), t);
    }

    // Where its foot runs on into the next wale's, half way between both.
    template <class Of>
    static double between(int wale, double side, double t, Of of) {
        constexpr double reach = 0.2;  // of the way up
        const double own = of(wale);
        if (t >= reach) return own;
        return mixed((own + of(wale + (side > 0 ? 1 : -1))) / 2, own, eased(t / reach));
    }

    Spot gathered(int wale, int row, double x, double y, double z) const {
        const auto at = gathers_.moved(wale, row, x, y);
        return {at.x, at.y, (z + at.z) * s_.thickness};
    }

    const Chart& chart_;
    const Spacing& s_;
    const std::optional<Chart>& areas_;
    double loop_;
    Wales wales_;
    Gathers gathers_;
    std::vector<double> levels_;
    std::vector<std::vector<double>> curls_;  // by row and wale of a repeat
    mutable std::map<std::tuple<double, double, double>, HalfLoop> loops_;  // as found before
};

}  // namespace

Spacing spacing(const KnitCloth& cloth, Length thickness) {
    const double stitch = 1000 / cloth.stitches.si(), row = 1000 / cloth.rows.si();
    return {stitch, row, cloth.metres_per_area.mid.si() * stitch * row / 1000,
            in_millimetres(thickness)};
}

std::vector<Strand> knitted(const Chart& chart, const Spacing& s, double width, double height,
                            const ColourOrder& colours) {
    const Knitter knitter(chart, s, colours);
    std::vector<Strand> out;
    const int first = -4, last = static_cast<int>(width / s.stitch) + 8;
    for (int row = -4; row < static_cast<int>(height / s.row) + 3; ++row) {
        bool two_yarns = false;
        for (int wale = 0; wale < chart.across(); ++wale)
            two_yarns = two_yarns || chart.at(wale, row) == '2';
        for (int yarn = 0; yarn <= (two_yarns ? 1 : 0); ++yarn)
            for (auto& strand : knitter.row(row, first, last, yarn)) {
                if (!colours.along.empty()) strand.yarn = colours.row(row);
                out.push_back(std::move(strand));
            }
        for (int wale = first; wale < last; ++wale)
            if (knitter.has_bobble(wale, row)) out.push_back(knitter.bobble(wale, row));
    }
    return out;
}

Strand knitted_block(const Chart& chart, const Spacing& s, int stitches, int rows) {
    const ColourOrder one_yarn;
    const Knitter knitter(chart, s, one_yarn);
    Strand out;
    for (int row = 0; row < rows; ++row)
        for (auto& strand : knitter.row(row, 0, stitches, 0)) {
            if (row % 2 == 1) std::reverse(strand.line.begin(), strand.line.end());
            out.line.insert(out.line.end(), strand.line.begin(), strand.line.end());
        }
    return out;
}

}  // namespace gristwright::lay
