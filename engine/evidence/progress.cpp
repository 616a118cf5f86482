#include "engine/evidence/progress.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <stdexcept>
#include <string_view>

#include "engine/evidence/constants.hpp"
#include "engine/project/order.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/evidence.hpp"

namespace gristwright {
namespace {

using namespace constants;

using Doubt = DoubtfulWeighing::Doubt;

void question_ball(const Weighing& before, const Weighing& now) {
    if (now.ball > before.ball) throw DoubtfulWeighing(Doubt::heavier_ball, before, now);
}

void question_lengths(const std::vector<Weighing>& weighings) {
    if (weighings.empty()) throw Refused("there is no weighing yet");
    for (std::size_t i = 1; i < weighings.size(); ++i) {
        question_ball(weighings[i - 1], weighings[i]);
        if (weighings[i].woven <= weighings[i - 1].woven)
            throw DoubtfulWeighing(Doubt::less_cloth, weighings[i - 1], weighings[i]);
    }
}

// Nothing used in so many rows, or more rows than the piece can have.
void question_use(const PlanPiece& piece, const Weighing& start, const Weighing& last) {
    if (last.row > piece.rows * most_rows)
        throw DoubtfulWeighing(Doubt::too_many_rows, start, last);
    if (last.ball >= start.ball) throw DoubtfulWeighing(Doubt::nothing_used, start, last);
}

// Two readings, each anywhere within the scale's step, and what that is of the grams between them
// (rectangular readings: d / sqrt 12 each); the grist's margin; and how evenly the work goes.
double weighing_margin(Mass used, const Scale& scale) {
    const double reading = scale.step / used / std::sqrt(6.0);
    return std::hypot(reading, scale.grist_margin, as_it_goes);
}

std::string names_of_pieces(const Plan& plan) {
    std::string out;
    for (const auto* piece : pieces_as_worked(plan))
        out += (out.empty() ? "" : ", ") + piece->piece->name;
    return out;
}

struct Called {
    const PlanPiece* piece = nullptr;
    int which = 1;
};

// A name as it is said, without its article; a piece's own name may end in a number.
Called piece_called(const Plan& plan, std::string_view name) {
    if (name.starts_with("the ")) name.remove_prefix(4);
    if (const auto* piece = plan.piece_named(name)) return {piece, 1};
    constexpr std::string_view ordinals[] = {"first ", "second ", "third ", "fourth "};
    for (int o = 0; o < 4; ++o)
        if (name.starts_with(ordinals[o]))
            return {plan.piece_named(name.substr(ordinals[o].size())), o + 1};
    const auto blank = name.rfind(' ');
    if (blank == name.npos) return {};
    int which = 0;
    const auto* const end = name.data() + name.size();
    const auto read = std::from_chars(name.data() + blank + 1, end, which);
    if (read.ec != std::errc{} || read.ptr != end) return {};
    return {plan.piece_named(name.substr(0, blank)), which};
}

Called piece_weighed(const Plan& plan, const Weighing& w) {
    if (w.piece.empty()) return {&worked_piece(plan), 1};
    const auto called = piece_called(plan, w.piece);
    if (!called.piece)
        throw Refused(
            fmt::format("there is no piece '{}' in it, but {}", w.piece, names_of_pieces(plan)));
    const auto& piece = *called.piece->piece;
    if (called.which < 1 || called.which > piece.count)
        throw Refused(fmt::format("there is no {} {}: {} {} made", piece.name, called.which,
                                  piece.count, piece.count == 1 ? "is" : "are"));
    return called;
}

// The work on a piece whose rows are counted, within the whole of it.
class CountedPiece {
  public:
    CountedPiece(const Plan& plan, const YarnPlace& at) : piece_(plan.pieces[at.piece]) {
        const auto work = stretches(plan);
        const auto found = std::find_if(work.begin(), work.end(), [&](const Stretch& stretch) {
            return stretch.piece == at.piece && stretch.which == at.which;
        });
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

double planned_by(const Plan& plan, const Weighing& w) {
    return CountedPiece(plan, place_of(plan, w)).planned_by(w.row);
}

void question_order(const Plan& plan, Weighing last, const std::vector<Weighing>& weighings) {
    if (weighings.empty()) throw Refused("there is no weighing yet");
    double worked = 0;
    for (const auto& w : weighings) {
        question_ball(last, w);
        const double by_now = planned_by(plan, w);
        if (by_now <= worked) throw DoubtfulWeighing(Doubt::earlier_row, last, w);
        worked = by_now;
        last = w;
    }
}

std::string_view said(Doubt doubt) {
    switch (doubt) {
        case Doubt::heavier_ball:
            return "the ball is heavier than before";
        case Doubt::heavier_than_batch:
            return "the ball is heavier than the batch";
        case Doubt::earlier_row:
            return "the row is no later than before";
        case Doubt::less_cloth:
            return "no more is woven than before";
        case Doubt::too_many_rows:
            return "the piece has fewer rows in this plan";
        case Doubt::nothing_used:
        case Doubt::no_weft_used:
            break;
    }
    return "no yarn was used";
}

}  // namespace

const PlanPiece& worked_piece(const Plan& plan) {
    const auto ours = std::find_if(plan.pieces.begin(), plan.pieces.end(),
                                   [](const auto& piece) { return piece.ours.si() > 0; });
    return ours == plan.pieces.end() ? plan.pieces.front() : *ours;
}

DoubtfulWeighing::DoubtfulWeighing(Doubt what_for, const Weighing& earlier, const Weighing& later)
    : Refused(std::string(said(what_for))), doubt(what_for), before(earlier), now(later) {}

YarnPlace place_of(const Plan& plan, const Weighing& w) {
    const auto [piece, which] = piece_weighed(plan, w);
    const auto at = static_cast<std::size_t>(piece - plan.pieces.data());
    return {at, which, false, w.row / piece->rows};
}

bool before_the_work(const Plan& plan, const Weighing& w) {
    return w.row == 0 && (w.piece.empty() || planned_by(plan, w) <= 0);
}

Length planned_by_row(const Plan& plan, double row) { return metres(planned_by(plan, {row, {}})); }

Progress progress(const Plan& plan, LinearDensity grist, Mass start,
                  const std::vector<Weighing>& made, const Scale& scale) {
    auto weighings = made;
    if (!weighings.empty() && before_the_work(plan, weighings.front())) {
        start = weighings.front().ball;
        weighings.erase(weighings.begin());
    } else if (!weighings.empty() && weighings.front().ball > start) {
        throw DoubtfulWeighing(Doubt::heavier_than_batch, {0, start}, weighings.front());
    }
    question_order(plan, {0, start}, weighings);
    const auto& last = weighings.back();
    const auto at = place_of(plan, last);
    question_use(plan.pieces[at.piece], {0, start}, last);
    const CountedPiece counted(plan, at);
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

Length weft_in_work(const Plan& plan) {
    const auto& piece = plan.pieces.front();
    const double ours = piece.piece->weft_ours();
    return piece.weft * (ours > 0 ? ours : 1);
}

LinearDensity weft_grist(const Plan& plan, const YarnProfile& yarn) {
    const bool ours = plan.pieces.front().piece->weft_ours() > 0;
    return ours || plan.other.grist.si() <= 0 ? yarn.linear_density.mid : plan.other.grist;
}

WeftProgress weft_progress(const Plan& plan, LinearDensity grist,
                           const std::vector<Weighing>& weighings, const Scale& scale) {
    question_lengths(weighings);
    const auto& piece = plan.pieces.front();
    const auto whole = piece.panel.woven_length * piece.piece->count;
    const double expected = weft_in_work(plan) / whole;  // metres of weft for a metre woven
    const auto &first = weighings.front(), &last = weighings.back();
    WeftProgress out;
    out.left = last.ball / grist;
    out.factor = {1, piece.metres.spread};
    if (last.woven > first.woven) {
        if (last.ball >= first.ball) throw DoubtfulWeighing(Doubt::no_weft_used, first, last);
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
