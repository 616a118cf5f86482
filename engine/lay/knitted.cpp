#include "engine/lay/knitted.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

#include "engine/lay/constants.hpp"
#include "engine/lay/eased.hpp"
#include "engine/lay/gathers.hpp"
#include "engine/lay/half_loop.hpp"
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
           (1 - straight - tucked * (1 - tuck_loop) + bobbles);
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

// Foot and head lie behind the legs where a loop is knit, before them where it is purled.
double depth(bool purled_foot, bool purled_head, double t) {
    const double foot = purled_foot ? loop_depth : -loop_depth;
    const double head = purled_head ? loop_depth : -loop_depth;
    const double leg = -(foot + head) / 2;
    return t < 0.5 ? mixed(foot, leg, eased(2 * t)) : mixed(leg, head, eased(2 * t - 1));
}

class Knitter {
  public:
    Knitter(const Chart& chart, const Spacing& s)
        : chart_(chart),
          s_(s),
          loop_(loop_made(chart, s)),
          wales_(chart, s.stitch, s.row),
          gathers_(chart, s.stitch, s.row) {}

    // One yarn's way through a row: its loops from foot to foot, and where it only passes. At a
    // crossing its feet part, and what runs between them behind the cloth is not drawn.
    std::vector<Strand> row(int row, int first, int last, int yarn) const {
        std::vector<Strand> out;
        for (int wale = first; wale < last; ++wale) {
            const auto piece = stitch(wale, row, yarn);
            const auto& from = piece.line.front();
            if (out.empty() || parted(out.back().line.back(), from)) out.push_back({{}, yarn});
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
                                s_.row * (row + 0.5) + widest * (1.25 - flat) * std::sin(angle),
                                (1 + 2 * dome) * s_.thickness});
        }
        return out;
    }

    bool has_bobble(int wale, int row) const { return chart_.at(wale, row) == 'B'; }

  private:
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
        const double half = wales_.width(wale) / 2, x = wales_.middle(wale), y = s_.row * row;
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
        const auto half = half_loop(wales_.width(wale), s_.row, tuck_loop * loop_ / 2);
        both_halves(
            [&](double side, double t) {
                const auto p = half.at(t);
                return Spot{wales_.middle(wale) - side * p.x, s_.row * row + p.y,
                            -loop_depth * s_.thickness};
            },
            out);
    }

    void loop(int wale, int row, Strand& out) const {
        const int next = next_row(chart_, wale, row);
        const double height = s_.row * (next - row) + loop_overlap * s_.thickness;
        const auto half = half_loop(wales_.width(wale), height, loop_ / 2);
        both_halves([&](double side, double t) { return spot(wale, row, next, half, side, t); },
                    out);
    }

    Spot spot(int wale, int row, int next, const HalfLoop& half, double side, double t) const {
        const auto p = half.at(t);
        const double swap = twisted(chart_.at(wale, next)) ? crossed_legs(t) : 1;
        const double x =
            wales_.middle(wale) - side * swap * p.x + wales_.lean(wale, row) * eased(t);
        const double y = s_.row * row + p.y;
        if (gathers_.any()) return gathered(wale, row, x, y, depth_at(wale, row, next, t));
        const auto at = wales_.moved(wale, row, {x, y});
        double z = depth_at(wale, row, next, t);
        if (swap < 1) z += side * 0.5 * loop_depth;  // one leg lies over the other
        if (wales_.recedes(wale)) z -= purl_recedes;
        z += crossing_forward * wales_.forward(wale, row, y);
        return {at.x, at.y, z * s_.thickness};
    }

    double depth_at(int wale, int row, int next, double t) const {
        return depth(purled(chart_.at(wale, row)), purled(chart_.at(wale, next)), t);
    }

    Spot gathered(int wale, int row, double x, double y, double z) const {
        const auto at = gathers_.moved(wale, row, x, y);
        return {at.x, at.y, (z + at.z) * s_.thickness};
    }

    const Chart& chart_;
    const Spacing& s_;
    double loop_;
    Wales wales_;
    Gathers gathers_;
};

}  // namespace

Spacing spacing(const KnitCloth& cloth, Length thickness) {
    const double stitch = 1000 / cloth.stitches.si(), row = 1000 / cloth.rows.si();
    return {stitch, row, cloth.metres_per_area.mid.si() * stitch * row / 1000,
            in_millimetres(thickness)};
}

std::vector<Strand> knitted(const Chart& chart, const Spacing& s, double width, double height,
                            const ColourOrder& colours) {
    const Knitter knitter(chart, s);
    std::vector<Strand> out;
    const int first = -4, last = static_cast<int>(width / s.stitch) + 8;
    for (int row = -4; row < static_cast<int>(height / s.row) + 3; ++row) {
        bool two_yarns = false;
        for (int wale = 0; wale < chart.across(); ++wale)
            two_yarns = two_yarns || chart.at(wale, row) == '2';
        for (int yarn = 0; yarn <= (two_yarns ? 1 : 0); ++yarn)
            for (auto& strand : knitter.row(row, first, last, yarn)) {
                if (colours.two()) strand.yarn = colours.row(row);
                out.push_back(std::move(strand));
            }
        for (int wale = first; wale < last; ++wale)
            if (knitter.has_bobble(wale, row)) out.push_back(knitter.bobble(wale, row));
    }
    return out;
}

}  // namespace gristwright::lay
