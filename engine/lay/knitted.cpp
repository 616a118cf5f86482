#include "engine/lay/knitted.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "engine/lay/constants.hpp"
#include "engine/lay/half_loop.hpp"
#include "engine/lay/stitch.hpp"
#include "engine/lay/wales.hpp"

namespace gristwright::lay {
namespace {

constexpr double leg_from = 0.22, leg_to = 0.80;  // the part of a half loop that is its leg
constexpr int behind = 0, middle = 1, in_front = 2, layers = 3;

double share(const Chart& chart, std::string_view letters) {
    double n = 0;
    for (const auto& row : chart.rows)
        n += static_cast<double>(std::count_if(row.begin(), row.end(), [&](char stitch) {
            return letters.find(stitch) != std::string_view::npos;
        }));
    return n / (chart.across() * chart.up());
}

// Where a stitch is slipped or dropped the yarn only passes; a tuck's is nearly a loop, a bobble's
// many: the loops that are made hold the rest.
double loop_made(const Chart& chart, const Spacing& s) {
    const double straight = share(chart, "sfx"), tucked = share(chart, "u");
    const double bobbles = share(chart, "B") * (constants::bobble_loops - 1);
    return (s.loop - straight * s.stitch) /
           (1 - straight - tucked * (1 - constants::tuck_loop) + bobbles);
}

// Worked through its back, a loop's legs cross above its foot; -1: on the other side.
double crossed_legs(double t) { return t < 0.2 ? 1 : t > 0.55 ? -1 : 1 - 2 * (t - 0.2) / 0.35; }
bool twisted(char stitch) { return stitch == 'K' || stitch == 'P'; }

class Knitter {
  public:
    Knitter(const Chart& chart, const Spacing& s, Cloth& out)
        : chart_(chart),
          s_(s),
          loop_(loop_made(chart, s)),
          wales_(chart, s.stitch, s.row),
          out_(out) {}

    void knit(int wale, int row) {
        const char stitch = chart_.at(wale, row);
        if (stitch == 'u') return tuck(wale, row);
        if (held(stitch)) return strand(wale, row, stitch == 'f' ? in_front : behind);
        if (stitch == 'x') return strand(wale, row, middle);
        const int next = next_row(wale, row);
        const double height = s_.row * (next - row) + constants::loop_overlap * s_.thickness;
        const auto loop = half_loop(wales_.width(wale), height, loop_ / 2);
        const int foot = purled(chart_.at(wale, row)) ? in_front : behind;
        const int head = purled(chart_.at(wale, next)) ? in_front : behind;
        for (const double side : {-1.0, 1.0}) {
            const auto add = [&](double from, double to, int layer) {
                run(wale, row, loop, side, from, to, layer);
            };
            add(0, leg_from, foot);
            add(leg_from, leg_to, middle);
            add(leg_to, 1, head);
        }
        if (stitch == 'B') bobble(wale, row);
    }

  private:
    // The row whose loop is pulled through this one's head.
    int next_row(int wale, int row) const {
        int next = row + 1;
        while (held(chart_.at(wale, next)) && next < row + chart_.up()) ++next;
        return next;
    }

    // A crossing's stitches come forward after the foot of its row and go back before the head of
    // the next, where the rows below and above hold them.
    int depth(int wale, int row, double from, double to) const {
        const bool held =
            (from <= 0 && wales_.crossing_in(row + 1)) || (to >= 1 && wales_.crossing_in(row - 2));
        const int front = !held && wales_.crosses_in_front(wale, row) ? 1 : 0;
        return layers * ((wales_.recedes(wale) ? 0 : 1) + front);
    }

    void add(Run run, int wale, int row) {
        run.shaded = run.layer % layers == behind || wales_.recedes(wale);
        run.second = chart_.at(wale, row) == '2';
        for (const auto& p : run.line)
            if (p.x > -s_.thickness && p.x < out_.width + s_.thickness && p.y > -s_.thickness &&
                p.y < out_.height + s_.thickness)
                return out_.runs.push_back(std::move(run));
    }

    void run(int wale, int row, const HalfLoop& loop, double side, double from, double to,
             int layer) {
        const int pieces = to - from > 0.4 ? 9 : 4;
        const double lean = wales_.lean(wale, row);
        Run out;
        out.layer = layer + depth(wale, row, from, to);
        for (int i = 0; i <= pieces; ++i) {
            const double t = from + (to - from) * i / pieces;
            const auto p = loop.at(t);
            const double swap = twisted(chart_.at(wale, next_row(wale, row))) ? crossed_legs(t) : 1;
            const double x = wales_.middle(wale) - side * swap * p.x + lean * t * t * (3 - 2 * t);
            out.line.push_back(wales_.moved(wale, row, {x, s_.row * row + p.y}));
        }
        add(std::move(out), wale, row);
    }

    void strand(int wale, int row, int layer) {
        const double half = wales_.width(wale) / 2, x = wales_.middle(wale), y = s_.row * row;
        add({{{x - half, y}, {x + half, y}}, layer + depth(wale, row, 0.5, 0.5), false, false},
            wale, row);
    }

    // The yarn laid over a held stitch rises beside its head to the row that works both together.
    void tuck(int wale, int row) {
        const double half = wales_.width(wale) / 2, x = wales_.middle(wale), y = s_.row * row;
        const double length = constants::tuck_loop * loop_;
        const auto loop = half_loop(2 * half, s_.row, length / 2);
        for (const double side : {-1.0, 1.0}) {
            Run out;
            out.layer = behind + depth(wale, row, 0.5, 0.5);
            for (int i = 0; i <= 12; ++i) {
                const auto p = loop.at(i / 12.0);
                out.line.push_back({x - side * p.x, y + p.y});
            }
            add(std::move(out), wale, row);
        }
    }

    // Its rows lie over each other in front of the ground: a winding as long as they are.
    void bobble(int wale, int row) {
        constexpr int turns = 12, steps = 24;
        const double around = (constants::bobble_loops - 1) * loop_ / turns;
        const double widest = around / 5.0, x = wales_.middle(wale), y = s_.row * (row + 0.5);
        Run out;
        out.layer = in_front + 2 * layers;
        for (int i = 0; i <= turns * steps; ++i) {
            const double turn = static_cast<double>(i) / steps, angle = 6.2832 * turn;
            const double flat = 0.35 + 0.55 * turn / turns;
            out.line.push_back({x + widest * flat * std::cos(angle),
                                y + widest * (1.25 - flat) * std::sin(angle)});
        }
        add(std::move(out), wale, row);
    }

    const Chart& chart_;
    const Spacing& s_;
    double loop_;
    Wales wales_;
    Cloth& out_;
};

}  // namespace

Spacing spacing(const KnitCloth& cloth, Length thickness) {
    const double stitch = 1000 / cloth.stitches.si(), row = 1000 / cloth.rows.si();
    return {stitch, row, cloth.metres_per_area.mid.si() * stitch * row / 1000,
            in_millimetres(thickness)};
}

Cloth knitted(const Chart& chart, const Spacing& s, double width, double height) {
    Cloth out{width, height, s.thickness, {}};
    Knitter knitter(chart, s, out);
    const int across = static_cast<int>(width / s.stitch) + 4;
    const int rows = static_cast<int>(height / s.row) + 3;
    for (int row = -4; row < rows; ++row)
        for (int wale = -4; wale < across + 4; ++wale) knitter.knit(wale, row);
    sort_by_layer(out);
    return out;
}

}  // namespace gristwright::lay
