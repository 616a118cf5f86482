#include "engine/lay/strand.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/lay/constants.hpp"
#include "engine/lay/half_loop.hpp"
#include "engine/lay/loops.hpp"
#include "engine/lay/wales.hpp"

namespace gristwright::lay {
namespace {

using namespace constants;

double eased(double t) { return t * t * (3 - 2 * t); }
double mixed(double a, double b, double share) { return a + (b - a) * share; }

// One row of loops after the other, each from its left foot over its head to its right foot.
class Rows {
  public:
    Rows(const Chart& chart, const Spacing& s)
        : chart_(chart), s_(s), loop_(loop_made(chart, s)), wales_(chart, s.stitch, s.row) {}

    Strand row(int row, int first, int last, int yarn) const {
        Strand out{{}, yarn};
        for (int wale = first; wale < last; ++wale) {
            const bool mine = (chart_.at(wale, row) == '2') == (yarn == 1);
            if (chart_.at(wale, row) == 's' || !mine)
                pass_behind(wale, row, out);
            else
                loop(wale, row, out);
        }
        return out;
    }

  private:
    static constexpr int pieces = 14;  // of half a loop

    void pass_behind(int wale, int row, Strand& out) const {
        const double half = wales_.width(wale) / 2, x = wales_.middle(wale), y = s_.row * row;
        for (const double side : {-1.0, 0.0, 1.0})
            out.line.push_back({x + side * half, y, -2 * loop_depth * s_.thickness});
    }

    void loop(int wale, int row, Strand& out) const {
        const int next = next_row(chart_, wale, row);
        const double height = s_.row * (next - row) + loop_overlap * s_.thickness;
        const auto half = half_loop(wales_.width(wale), height, loop_ / 2);
        for (int i = 0; i < pieces; ++i)
            out.line.push_back(spot(wale, row, next, half, -1, double(i) / pieces));
        for (int i = pieces; i >= 0; --i)
            out.line.push_back(spot(wale, row, next, half, 1, double(i) / pieces));
    }

    Spot spot(int wale, int row, int next, const HalfLoop& half, double side, double t) const {
        const auto p = half.at(t);
        const double x = wales_.middle(wale) - side * p.x + wales_.lean(wale, row) * eased(t);
        const auto at = wales_.moved(wale, row, {x, s_.row * row + p.y});
        double z = depth(chart_.at(wale, row), chart_.at(wale, next), t);
        if (wales_.recedes(wale)) z -= purl_recedes;
        z += crossing_forward * wales_.forward(wale, row, s_.row * row + p.y);
        return {at.x, at.y, z * s_.thickness};
    }

    // Foot and head lie behind the legs where a loop is knit, before them where it is purled.
    static double depth(char foot_letter, char head_letter, double t) {
        const double foot = foot_letter == 'p' ? loop_depth : -loop_depth;
        const double head = head_letter == 'p' ? loop_depth : -loop_depth;
        const double leg = -(foot + head) / 2;
        return t < 0.5 ? mixed(foot, leg, eased(2 * t)) : mixed(leg, head, eased(2 * t - 1));
    }

    const Chart& chart_;
    const Spacing& s_;
    double loop_;
    Wales wales_;
};

bool holds(const Chart& chart, char letter) {
    return std::any_of(chart.rows.begin(), chart.rows.end(),
                       [&](const auto& row) { return row.find(letter) != std::string::npos; });
}

// Over at +1 and under at -1, eased from one crossing to the next.
template <class Over>
double wave(Over over, double t) {
    const int i = static_cast<int>(std::floor(t));
    const double share = (1 - std::cos(std::numbers::pi * (t - i))) / 2;
    return mixed(over(i), over(i + 1), share);
}

constexpr int parts = 10;  // of a thread between two crossings

}  // namespace

std::vector<Strand> knitted_strands(const Chart& chart, const Spacing& s, double width,
                                    double height) {
    const Rows rows(chart, s);
    const bool two_yarns = holds(chart, '2');
    std::vector<Strand> out;
    const int last = static_cast<int>(width / s.stitch) + 8;
    for (int row = -4; row < static_cast<int>(height / s.row) + 3; ++row) {
        out.push_back(rows.row(row, -4, last, 0));
        if (two_yarns) out.push_back(rows.row(row, -4, last, 1));
    }
    return out;
}

std::vector<Strand> woven_strands(const Chart& chart, double end, double pick, double thickness,
                                  double width, double height) {
    const int ends = static_cast<int>(width / end) + 2, picks = static_cast<int>(height / pick) + 2;
    const double rise = crimp_rise * thickness;
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
