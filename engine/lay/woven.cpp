#include "engine/lay/woven.hpp"

namespace gristwright::lay {
namespace {

struct Weaver {
    const Chart& chart;
    double end, pick;  // mm
    int ends, picks;
    Cloth& out;

    Place at(double i, double j) const { return {end * (i + 0.5), pick * (j + 0.5)}; }

    void add(Place from, Place to, int layer) {
        Run run;
        run.layer = layer;
        run.shaded = layer == 0;
        for (int k = 0; k <= 4; ++k)
            run.line.push_back(
                {from.x + (to.x - from.x) * k / 4, from.y + (to.y - from.y) * k / 4});
        out.runs.push_back(std::move(run));
    }

    // An end over several picks together is one stretch.
    void overs(int i) {
        for (int j = -1; j < picks; ++j) {
            if (chart.at(i, j) != 'x') continue;
            const int first = j;
            while (j < picks && chart.at(i, j + 1) == 'x') ++j;
            add(at(i, first - 0.5), at(i, j + 0.5), 2);
        }
    }
};

}  // namespace

Cloth woven(const Chart& chart, double end, double pick, double thickness, double width,
            double height) {
    Cloth out{width, height, thickness, {}};
    const int ends = static_cast<int>(width / end) + 2, picks = static_cast<int>(height / pick) + 2;
    Weaver weaver{chart, end, pick, ends, picks, out};
    for (int i = -1; i < ends; ++i) weaver.add(weaver.at(i, -1), weaver.at(i, picks), 0);
    for (int j = -1; j < picks; ++j) weaver.add(weaver.at(-1, j), weaver.at(ends, j), 1);
    for (int i = -1; i < ends; ++i) weaver.overs(i);
    sort_by_layer(out);
    return out;
}

}  // namespace gristwright::lay
