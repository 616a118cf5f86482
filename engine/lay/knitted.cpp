#include "engine/lay/knitted.hpp"

#include <algorithm>

#include "engine/lay/constants.hpp"
#include "engine/lay/half_loop.hpp"
#include "engine/lay/loops.hpp"
#include "engine/lay/wales.hpp"

namespace gristwright::lay {
namespace {

constexpr double leg_from = 0.22, leg_to = 0.80;  // the part of a half loop that is its leg
constexpr int behind = 0, middle = 1, in_front = 2, layers = 3;

double slipped_share(const Chart& chart) {
    double slipped = 0;
    for (const auto& row : chart.rows)
        slipped += static_cast<double>(std::count(row.begin(), row.end(), 's'));
    return slipped / (chart.across() * chart.up());
}

class Knitter {
  public:
    Knitter(const Chart& chart, const Spacing& s, Cloth& out)
        : chart_(chart),
          s_(s),
          loop_(loop_made(chart, s)),
          wales_(chart, s.stitch, s.row),
          out_(out) {}

    void knit(int wale, int row) {
        if (chart_.at(wale, row) == 's') return strand_behind(wale, row);
        const int next = next_row(chart_, wale, row);
        const double height = s_.row * (next - row) + constants::loop_overlap * s_.thickness;
        const auto loop = half_loop(wales_.width(wale), height, loop_ / 2);
        const int foot = chart_.at(wale, row) == 'p' ? in_front : behind;
        const int head = chart_.at(wale, next) == 'p' ? in_front : behind;
        for (const double side : {-1.0, 1.0}) {
            const auto add = [&](double from, double to, int layer) {
                run(wale, row, loop, side, from, to, layer);
            };
            add(0, leg_from, foot);
            add(leg_from, leg_to, middle);
            add(leg_to, 1, head);
        }
    }

  private:
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
            const double x = wales_.middle(wale) - side * p.x + lean * t * t * (3 - 2 * t);
            out.line.push_back(wales_.moved(wale, row, {x, s_.row * row + p.y}));
        }
        add(std::move(out), wale, row);
    }

    void strand_behind(int wale, int row) {
        const double half = wales_.width(wale) / 2, x = wales_.middle(wale), y = s_.row * row;
        add({{{x - half, y}, {x + half, y}}, behind, false, false}, wale, row);
    }

    const Chart& chart_;
    const Spacing& s_;
    double loop_;
    Wales wales_;
    Cloth& out_;
};

}  // namespace

double loop_made(const Chart& chart, const Spacing& s) {
    const double slipped = slipped_share(chart);
    return (s.loop - slipped * s.stitch) / (1 - slipped);
}

int next_row(const Chart& chart, int wale, int row) {
    int next = row + 1;
    while (chart.at(wale, next) == 's' && next < row + chart.up()) ++next;
    return next;
}

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
