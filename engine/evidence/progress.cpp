#include "engine/evidence/progress.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "engine/evidence/constants.hpp"
#include "engine/evidence/yarn_places.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/evidence.hpp"

namespace gristwright {
namespace {

using namespace constants;

void question_mass(Mass ball, Mass before) {
    if (ball <= before) return;
    throw Refused(fmt::format(
        "the ball weighs {:.1f} g and weighed {:.1f} g before: did a skein join it, or is it "
        "another ball?",
        in_grams(ball), in_grams(before)));
}

void question_order(Weighing last, const std::vector<Weighing>& weighings) {
    if (weighings.empty()) throw Refused("there is no weighing yet");
    for (const auto& w : weighings) {
        question_mass(w.ball, last.ball);
        if (w.row <= last.row)
            throw Refused(fmt::format(
                "row {:.0f} comes after row {:.0f}: was some of it ripped back?", w.row, last.row));
        last = w;
    }
}

void question_lengths(const std::vector<Weighing>& weighings) {
    if (weighings.empty()) throw Refused("there is no weighing yet");
    for (std::size_t i = 1; i < weighings.size(); ++i) {
        question_mass(weighings[i].ball, weighings[i - 1].ball);
        if (weighings[i].woven <= weighings[i - 1].woven)
            throw Refused(fmt::format(
                "{:.0f} cm woven comes after {:.0f} cm: was some of it taken out?",
                in_centimetres(weighings[i].woven), in_centimetres(weighings[i - 1].woven)));
    }
}

// Nothing used in so many rows, or more rows than the piece can have.
void question_use(const PlanPiece& piece, Mass start, const Weighing& last) {
    if (last.row > piece.rows * most_rows)
        throw Refused(
            fmt::format("row {:.0f}: the {} has {} rows in this plan; count those of it alone",
                        last.row, piece.piece->name, piece.rows));
    if (last.ball < start) return;
    throw Refused(
        fmt::format("{:.0f} rows are worked and the ball weighs {:.1f} g, as much as at the start: "
                    "is it the ball in work?",
                    last.row, in_grams(last.ball)));
}

void question_weft(const Weighing& first, const Weighing& last) {
    if (last.ball < first.ball) return;
    throw Refused(
        fmt::format("{:.0f} cm are woven since and the ball weighs {:.1f} g, as much as before: is "
                    "it the weft in work?",
                    in_centimetres(last.woven - first.woven), in_grams(last.ball)));
}

// Two readings, each anywhere within the scale's step, and what that is of the grams between them
// (rectangular readings: d / sqrt 12 each); the grist's margin; and how evenly the work goes.
double weighing_margin(Mass used, const Scale& scale) {
    const double reading = scale.step / used / std::sqrt(6.0);
    return std::hypot(reading, scale.grist_margin, as_it_goes);
}

// The work on the first of a plan's first pieces, whose rows are counted, within the whole of it.
class Counted {
  public:
    explicit Counted(const Plan& plan) : piece_(plan.pieces.front()) {
        const auto work = stretches(plan);
        const auto found = std::find_if(work.begin(), work.end(),
                                        [](const Stretch& stretch) { return stretch.piece == 0; });
        if (found == work.end())
            throw Refused(
                fmt::format("the {} is of another yarn: its rows do not tell what this "
                            "batch still reaches",
                            piece_.piece->name));
        here_ = *found;
        whole_ = work.back().ends;
    }

    double whole() const { return whole_.si(); }                 // metres planned
    double after() const { return (whole_ - here_.ends).si(); }  // of them, for what follows
    double planned_by(double row) const {
        const auto here = here_.ends - here_.begins;
        return (here_.begins + here * yarn_by_row(piece_, row / piece_.rows)).si();
    }
    // The row that so many of the metres planned reach.
    double row_reached(double metres) const {
        const double share = (metres - here_.begins.si()) / (here_.ends - here_.begins).si();
        return share >= 1 ? piece_.rows : row_by_yarn(piece_, std::max(0.0, share)) * piece_.rows;
    }

  private:
    const PlanPiece& piece_;
    Stretch here_;
    Length whole_;
};

}  // namespace

Progress progress(const Plan& plan, LinearDensity grist, Mass start,
                  const std::vector<Weighing>& made, const Scale& scale) {
    auto weighings = made;
    if (!weighings.empty() && weighings.front().row == 0) {
        start = weighings.front().ball;
        weighings.erase(weighings.begin());
    }
    question_order({0, start}, weighings);
    const auto& piece = plan.pieces.front();
    const auto& last = weighings.back();
    question_use(piece, start, last);
    const Counted counted(plan);
    const double expected = counted.planned_by(last.row);
    Progress out;
    out.used = (start - last.ball) / grist;
    out.left = last.ball / grist;
    out.factor = posterior({1, plan.need.spread},
                           {out.used.si() / expected, weighing_margin(start - last.ball, scale)});

    const double z = normal_quantile(plan.asked);
    const double sure = out.factor.mid * std::exp(z * out.factor.spread);
    const double all = out.used.si() + out.left.si();
    const double rest = counted.after() * sure;
    out.last_row = counted.row_reached(all / out.factor.mid);
    out.sure_row = counted.row_reached(all / sure);
    out.chance = chance_of_enough(counted.whole() * out.factor.mid, out.factor.spread, all, 0);
    out.reaches = out.chance >= plan.asked;
    if (rest > 0) {
        out.keep_for_rest = metres(rest) * grist;
        out.begin_rest_row = counted.row_reached(std::max(0.0, all - rest) / sure);
    }
    return out;
}

bool far_from_plan(const Plan& plan, const Estimate<double>& factor) {
    return surprise({1, plan.need.spread}, factor) > worth_questioning;
}

WeftProgress weft_progress(const Plan& plan, LinearDensity grist,
                           const std::vector<Weighing>& weighings, const Scale& scale) {
    question_lengths(weighings);
    const auto& piece = plan.pieces.front();
    const auto whole = piece.panel.woven_length * piece.piece->count;
    const double expected = piece.weft / whole;  // metres of weft for a metre woven
    const auto &first = weighings.front(), &last = weighings.back();
    WeftProgress out;
    out.left = last.ball / grist;
    out.factor = {1, piece.metres.spread};
    if (last.woven > first.woven) {
        question_weft(first, last);
        const double used = ((first.ball - last.ball) / grist).si();
        const double planned = (last.woven - first.woven).si() * expected;
        out.factor =
            posterior(out.factor, {used / planned, weighing_margin(first.ball - last.ball, scale)});
    }
    out.more = {Length::from_si(out.left.si() / (expected * out.factor.mid)), out.factor.spread};
    out.wanted = std::max(whole - last.woven, Length{});
    out.chance = chance_of_enough(out.wanted.si(), 0, out.more.mid.si(), out.more.spread);
    return out;
}

}  // namespace gristwright
