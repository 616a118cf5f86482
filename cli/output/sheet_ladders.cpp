// The sheet's ladders: skeins, ball and rows.
#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <kainjow/mustache.hpp>

#include "cli/output/ball_ladder.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/place_words.hpp"
#include "cli/output/shaping_words.hpp"
#include "cli/output/sheet_parts.hpp"
#include "cli/output/svg.hpp"
#include "cli/output/wind_off.hpp"
#include "engine/project/order.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_rungs = 9, longest_skein_on_sheet = 24;
constexpr int most_squares = 100;

std::string skein_name(const Question& q, std::size_t skein) {
    return shortened(inert(q.yarn.skeins[skein].name), longest_skein_on_sheet);
}

// The work that comes after the last stretch of the first piece.
std::vector<Stretch> after_first(const Plan& plan) {
    const auto work = stretches(plan);
    const auto last = std::find_if(work.rbegin(), work.rend(),
                                   [](const Stretch& stretch) { return stretch.piece == 0; });
    return {last.base(), work.end()};
}

std::string keep_words(const Plan& plan, const Question& q) {
    const auto& first = plan.pieces.front();
    // Of a body nobody measures the size is what the yarn leaves; the edge has to come in time.
    const bool fitted = plan.article->fitted || plan.reach == Reach::short_of;
    if (fitted || !first.knit || first.piece->count > 1) return "";
    const auto rest = after_first(plan);
    if (rest.empty()) return "";
    Length keep;
    for (const auto& stretch : rest) {
        const auto& metres = plan.pieces[stretch.piece].metres;
        keep += (stretch.ends - stretch.begins) * (metres.quantile(plan.asked) / metres.mid);
    }
    return fmt::format("Begin the {} when the ball weighs {}, at the latest.",
                       plan.pieces[rest.front().piece].piece->name,
                       q.units.weighed(keep * q.yarn.linear_density.mid));
}

// The pieces of this batch's yarn have squares; so many rows, or so much cloth, to each.
int squares_of(const PlanPiece& piece, double step) {
    const double whole = piece.knit ? piece.rows : piece.panel.woven_length.si();
    return static_cast<int>(std::ceil(whole / step - 1e-9));
}

struct Step {
    double rows = 10;
    Length cloth;
    double of(const PlanPiece& piece) const { return piece.knit ? rows : cloth.si(); }
};

// Of two alike each has its squares; of more one strip stands for all.
int strips_of(const PlanPiece& piece) { return piece.piece->count == 2 ? 2 : 1; }

// False where its rows are ticked off with those of another piece.
bool own_rows(const PlanPiece& piece) {
    return piece.piece->counting.within.empty() || piece.piece->yarn != 1;
}

// As fine as the side has room for.
Step step_for(const Plan& plan, const Units& units) {
    const auto cloth = units.imperial() ? inches(4) : centimetres(10);
    Step out{10, cloth};
    for (const double times : {1.0, 2.0, 5.0, 10.0}) {
        out = {10 * times, cloth * times};
        int all = 0;
        for (const auto& piece : plan.pieces)
            if (piece.ours.si() > 0) all += strips_of(piece) * squares_of(piece, out.of(piece));
        if (all <= most_squares) break;
    }
    return out;
}

std::string square_number(const PlanPiece& piece, double at, const Units& units) {
    if (piece.knit) return fmt::format("{}", std::min(piece.rows, static_cast<int>(at)));
    const auto length = std::min(metres(at), piece.panel.woven_length);
    return fmt::format("{:.0f}", units.imperial() ? in_inches(length) : in_centimetres(length));
}

// The shares of a piece's rows or cloth at which skeins end in it.
std::vector<double> ends_within(const std::vector<SkeinEnd>& ends, std::size_t piece, int which) {
    std::vector<double> out;
    for (const auto& end : ends)
        if (end.place.piece == piece && end.place.which == which && !end.place.warp)
            out.push_back(end.place.share);
    return out;
}

PageData squares(const PlanPiece& piece, double step, const std::vector<double>& ends,
                 const Units& units) {
    PageData out{PageData::type::list};
    const double whole = piece.knit ? piece.rows : piece.panel.woven_length.si();
    for (int s = 0; s < squares_of(piece, step); ++s) {
        PageData one;
        one.set("number", square_number(piece, (s + 1) * step, units));
        if (std::any_of(ends.begin(), ends.end(), [&](double share) {
                return share * whole >= s * step && share * whole < (s + 1) * step;
            }))
            one.set("look", "join");
        out << one;
    }
    return out;
}

std::string piece_line(const PlanPiece& p, const Units& units) {
    const auto size = one_measure(p.outline.shape) ? units.size(p.outline.width)
                                                   : units.sizes(p.outline.width, p.outline.length);
    const auto count = p.knit ? fmt::format("{}, {}", stitches_words(p), rows_words(p))
                              : fmt::format("{} ends, {} picks", p.panel.ends, p.panel.picks);
    return fmt::format("{}, {}; {}; {}, {}", p.piece->fabric, size, count, units.yarn(p.metres.mid),
                       units.mass(p.mass));
}

std::string piece_title(const PlanPiece& p) {
    auto out = capital(p.piece->name);
    if (p.piece->count > 1) out += fmt::format(", {} alike", p.piece->count);
    return out + (p.ours.si() <= 0 ? " (another yarn):" : ":");
}

std::string ladder_title(const Plan& plan, const Step& step, const Units& units) {
    const auto cloth = units.imperial() ? fmt::format("{:.0f} in", in_inches(step.cloth))
                                        : fmt::format("{:.0f} cm", in_centimetres(step.cloth));
    if (plan.article->craft == Craft::woven)
        return fmt::format("Woven, tension let off, a square for {}", cloth);
    const auto round = std::count_if(plan.pieces.begin(), plan.pieces.end(), [](const auto& p) {
        return std::string_view(row_word(p)) == "round";
    });
    const bool all = round == std::ptrdiff_t(plan.pieces.size());
    return fmt::format("{}, a square for {:.0f}",
                       all         ? "Rounds"
                       : round > 0 ? "Rows and rounds"
                                   : "Rows",
                       step.rows);
}

}  // namespace

void add_wind_off(PageData& data, const Plan& plan, const Question& q) {
    PageData rows{PageData::type::list};
    for (const auto& from : wind_off(plan, q.yarn)) {
        const auto grist = q.yarn.skeins[from.skein].linear_density.mid;
        PageData row;
        row.set("skein", skein_name(q, from.skein));
        row.set("takes", q.units.weighed(from.takes * grist));
        row.set("length", q.units.yarn(from.takes));
        row.set("stays", from.stays.si() > 0
                             ? fmt::format("{} left over", q.units.weighed(from.stays * grist))
                             : std::string("all of it"));
        rows << row;
    }
    data.set("wind", rows);
    if (plan.second_to_have.si() > 0)
        data.set("besides",
                 fmt::format("And {} of another yarn.", q.units.yarn(plan.second_to_have)));
}

void add_rungs(PageData& data, const Plan& plan, const Question& q) {
    const auto ladder = ladder_of(plan, q.yarn.linear_density.mid, q.units, most_rungs);
    if (ladder.empty()) return;
    PageData rows{PageData::type::list};
    for (const auto& rung : ladder) {
        PageData row;
        row.set("ball", rung_words(rung.ball, q.units));
        row.set("left", q.units.yarn(rung.left));
        row.set("place", place_words(plan, rung.place, q.units));
        rows << row;
    }
    data.set("rungs", rows);
    data.set("scale", plan.article->craft == Craft::woven
                          ? std::string("On the scale, the warp being wound")
                          : std::string("On the scale"));
    if (const auto keep = keep_words(plan, q); !keep.empty()) data.set("keep", keep);
}

void add_squares(PageData& data, const Plan& plan, const Question& q) {
    const auto ends = skein_ends(plan, q.yarn);
    const auto step = step_for(plan, q.units);
    PageData pieces{PageData::type::list};
    for (const auto* each : pieces_as_worked(plan)) {
        const auto& piece = *each;
        const auto p = static_cast<std::size_t>(each - plan.pieces.data());
        PageData one;
        one.set("name", piece_title(piece));
        one.set("words", piece_line(piece, q.units));
        PageData strips{PageData::type::list};
        for (int which = 1; which <= strips_of(piece) && own_rows(piece); ++which) {
            PageData strip;
            // Of more than two one strip stands for all.
            const auto here =
                piece.piece->count > 2 ? std::vector<double>{} : ends_within(ends, p, which);
            strip.set("squares", squares(piece, step.of(piece), here, q.units));
            strips << strip;
        }
        one.set("strips", strips);
        pieces << one;
    }
    data.set("ladder", ladder_title(plan, step, q.units));
    data.set("pieces", pieces);
    std::vector<std::string> names;
    for (std::size_t i = 0; i < q.yarn.skeins.size(); ++i) names.push_back(skein_name(q, i));
    auto said = turns_in_words(plan, q.yarn);
    if (const auto where = ends_in_words(plan, ends, names, q.units); !where.empty())
        said += (said.empty() ? "" : " ") + capital(where);
    if (!said.empty()) data.set("ends", said);
}

}  // namespace gristwright::cli
