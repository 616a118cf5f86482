#include "cli/commands/weigh.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "catalog/typed/swatch_text.hpp"
#include "cli/article_asked.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/place_words.hpp"
#include "cli/roles.hpp"
#include "engine/evidence/progress.hpp"
#include "engine/evidence/skein_ends.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

std::string line(const std::string& text) { return wrapped(text, 0) + "\n"; }

// A weighing that the plan can hardly be true with is taken, and questioned.
std::string far_off(const Plan& plan, const Estimate<double>& factor) {
    if (!far_from_plan(plan, factor)) return "";
    return line(
        "That is far from the plan: was all the yarn for it on the scale, and nothing else, and "
        "is the place right? gristwright undo takes the weighing back.");
}

std::string woven_text(const Plan& plan, const WeftProgress& p, const Units& units) {
    auto out =
        line(fmt::format("{} of weft are left: about {} more on the loom ({} to {}), and {} "
                         "are wanted; chance that it reaches {}.",
                         units.yarn(p.left), units.size(p.more.mid), units.size(p.more.low()),
                         units.size(p.more.high()), units.size(p.wanted), percent(p.chance)));
    if (p.factor.mid != 1)
        out += line(fmt::format("The weft takes {:.0f} % of what was planned (± {:.0f} %).",
                                100 * p.factor.mid, 100 * p.factor.margin90() * p.factor.mid));
    return out + far_off(plan, p.factor);
}

// The rows of the piece in work in which skeins still end.
std::vector<int> rows_of_ends(const Plan& plan, const Question& q, const YarnPlace& at,
                              const Progress& p) {
    std::vector<int> out;
    for (const auto& end : skein_ends(plan, q.yarn, p.factor.mid, p.used))
        if (end.place.piece == at.piece && end.place.which == at.which)
            out.push_back(done_at(plan, end.place));
    return out;
}

std::string skein_text(const Plan& plan, const Question& q, const YarnPlace& at,
                       const Progress& p) {
    const auto rows = rows_of_ends(plan, q, at, p);
    if (rows.empty()) return "";
    std::vector<std::string> said;
    for (const int row : rows) said.push_back(fmt::format("{}", row));
    const bool turns = taking_for(q.yarn.agreement) == Taking::by_turns;
    return line(fmt::format("Skeins used {} end near row {}: change at the side edge.",
                            turns ? "two by turns" : "in their order", joined(said)));
}

std::string knitted_text(const Plan& plan, const Question& q, const YarnPlace& at,
                         const Progress& p) {
    auto out =
        line(fmt::format("{} used, {} left; the work takes {:.0f} % of what was planned "
                         "(± {:.0f} %).",
                         q.units.yarn(p.used), q.units.yarn(p.left), 100 * p.factor.mid,
                         100 * p.factor.margin90() * p.factor.mid));
    out += far_off(plan, p.factor);
    out += line(
        fmt::format("{} has {} rows: the yarn reaches all of it and what follows with "
                    "a chance of {}.",
                    capital(piece_words(plan, at)), plan.pieces[at.piece].rows, percent(p.chance)));
    if (p.begin_rest_row > 0)
        out +=
            line(fmt::format("Keep {} for what comes after it; begin that after row {:.0f} at "
                             "the latest.",
                             q.units.mass(p.keep_for_rest), std::floor(p.begin_rest_row)));
    else
        out +=
            line(fmt::format("The last row it reaches is {:.0f} most likely, {:.0f} for sure "
                             "({}); bind off takes about three rows' yarn of it.",
                             std::floor(p.last_row), std::floor(p.sure_row), percent(plan.asked)));
    return out + skein_text(plan, q, at, p);
}

Json knitted_json(const Plan& plan, const Question& q, const YarnPlace& at, const Progress& p) {
    const bool more = p.begin_rest_row > 0;
    return {{"metres_used", number(in_metres(p.used))},
            {"metres_left", number(in_metres(p.left))},
            {"used_of_planned", range(p.factor)},
            {"piece", inert(plan.pieces[at.piece].piece->name)},
            {"which", at.which},
            {"rows", plan.pieces[at.piece].rows},
            {"last_row", number(std::floor(p.last_row))},
            {"sure_row", number(std::floor(p.sure_row))},
            {"chance", number(p.chance)},
            {"keep_grams", more ? number(in_grams(p.keep_for_rest)) : Json(nullptr)},
            {"begin_rest_after_row", more ? number(std::floor(p.begin_rest_row)) : Json(nullptr)},
            {"skeins_end_near_rows", rows_of_ends(plan, q, at, p)}};
}

Json woven_json(const WeftProgress& p) {
    return {{"weft_metres_left", number(in_metres(p.left))},
            {"used_of_planned", range(p.factor)},
            {"more_cm", range({in_centimetres(p.more.mid), p.more.spread})},
            {"wanted_cm", number(in_centimetres(p.wanted))},
            {"chance", number(p.chance)}};
}

// All weighings with the one typed, read before it is kept.
std::vector<Weighing> weighings_with(const Notebook& book, const std::string& name,
                                     const catalog::WeighingText& typed) {
    std::vector<Weighing> out;
    for (const auto& text : book.weighings(name)) out.push_back(catalog::read_weighing(text));
    out.push_back(catalog::read_weighing(typed));
    return out;
}

Answer answer(const Question& q, const std::string& text, const Json& told) {
    if (!q.json) return {text, ""};
    auto out = json_answer("weigh");
    out["batch"] = inert(q.measured.batch.name);
    out.update(told);
    return {dumped(out), ""};
}

// The scale that the skeins were weighed on.
Scale scale_of(const Question& q) {
    return {q.measured.batch.measuring.scale_step, q.yarn.linear_density.spread};
}

// Who did not weigh what was begun with is told what is taken for it; far from the plan it is no
// guess to stand on.
std::string whole_batch_taken(const Plan& plan, const Question& q, const Progress& p,
                              const std::vector<Weighing>& weighings) {
    if (before_the_work(plan, weighings.front())) return "";
    const auto whole = q.units.mass(q.yarn.mass);
    if (far_from_plan(plan, p.factor))
        throw Refused(fmt::format(
            "no ball was weighed at row 0, and with the whole batch, {}, {:.0f} % of the planned "
            "yarn would be used: weigh first what was set aside, as gristwright weigh {} --row 0 "
            "--ball {}",
            whole, 100 * p.factor.mid, inert(q.measured.batch.name),
            q.units.typed_mass(std::min(plan.mass, q.yarn.mass))));
    return line(fmt::format(
        "No ball was weighed at row 0: the whole batch, {}, is taken to be what was begun with.",
        whole));
}

Answer weigh_knitted(const Plan& plan, const Question& q, const std::vector<Weighing>& weighings) {
    if (weighings.size() == 1 && before_the_work(plan, weighings[0])) {
        const auto length = weighings[0].ball / q.yarn.linear_density.mid;
        return answer(q,
                      fmt::format("Begun with {}, {}.\n", q.units.mass(weighings[0].ball),
                                  q.units.yarn(length)),
                      {{"metres_left", number(in_metres(length))}});
    }
    const auto p = progress(plan, q.yarn.linear_density.mid, q.yarn.mass, weighings, scale_of(q));
    const auto at = place_of(plan, weighings.back());
    const auto taken = whole_batch_taken(plan, q, p, weighings);
    return answer(q, taken + knitted_text(plan, q, at, p), knitted_json(plan, q, at, p));
}

// Cloth was made and the ball is as heavy as before: nothing can be told from that.
Answer weigh_woven(const Plan& plan, const Question& q, const std::vector<Weighing>& weighings) {
    const auto p = weft_progress(plan, weft_grist(plan, q.yarn), weighings, scale_of(q));
    return answer(q, woven_text(plan, p, q.units), woven_json(p));
}

std::string row_words(const Plan& plan, const Weighing& w) {
    const auto row = fmt::format("row {:.0f}", w.row);
    return w.piece.empty() ? row : row + " of " + piece_words(plan, place_of(plan, w));
}

// The piece that is worked after that one, as it is typed; empty after the last.
std::string next_piece(const Plan& plan, const YarnPlace& at) {
    const auto work = stretches(plan);
    for (std::size_t s = 0; s + 1 < work.size(); ++s)
        if (work[s].piece == at.piece && work[s].which == at.which) {
            const auto& next = work[s + 1];
            return piece_words(plan, {next.piece, next.which});
        }
    return "";
}

std::string beyond_the_piece(const Plan& plan, const Weighing& now) {
    const auto at = place_of(plan, now);
    const auto next = next_piece(plan, at);
    return fmt::format(
        "row {:.0f}: {} has {} rows in this plan; count those of it alone{}", now.row,
        piece_words(plan, at), plan.pieces[at.piece].rows,
        next.empty()
            ? ""
            : fmt::format(", and say it where another is in work: --row '12 of {}'", next));
}

// What is asked of a weighing that cannot be, in the units of the batch.
std::string question_of(const DoubtfulWeighing& doubtful, const Plan& plan, const Units& units) {
    using Doubt = DoubtfulWeighing::Doubt;
    const auto &before = doubtful.before, &now = doubtful.now;
    switch (doubtful.doubt) {
        case Doubt::heavier_ball:
            return fmt::format(
                "the ball weighs {} and weighed {} before: did a skein join it, or is it "
                "another ball?",
                units.weighed(now.ball), units.weighed(before.ball));
        case Doubt::heavier_than_batch:
            return fmt::format("the ball weighs {}, and the whole batch {}: is it another?",
                               units.weighed(now.ball), units.weighed(before.ball));
        case Doubt::earlier_row:
            return fmt::format("{} comes after {}: was some of it ripped back?",
                               row_words(plan, now), row_words(plan, before));
        case Doubt::less_cloth:
            return fmt::format("{} woven comes after {}: was some of it taken out?",
                               units.size(now.woven), units.size(before.woven));
        case Doubt::too_many_rows:
            return beyond_the_piece(plan, now);
        case Doubt::nothing_used:
            return fmt::format(
                "{:.0f} rows are worked and the ball weighs {}, as much as at the start: "
                "is it the ball in work?",
                now.row, units.weighed(now.ball));
        case Doubt::no_weft_used:
            break;
    }
    return fmt::format(
        "{} are woven and the ball weighs {}, as much as at the start: is it the ball in work?",
        units.size(now.woven), units.weighed(now.ball));
}

Answer told_of(const Plan& plan, const Question& q, const std::vector<Weighing>& weighings) {
    try {
        return plan.article->craft == Craft::woven ? weigh_woven(plan, q, weighings)
                                                   : weigh_knitted(plan, q, weighings);
    } catch (const DoubtfulWeighing& doubtful) {
        throw Refused(question_of(doubtful, plan, q.units));
    }
}

// Checks the weighing against those before it, and keeps it.
Answer weighed(const Arguments& arguments, Notebook& book, const std::string& name) {
    const auto project = book.has_batch(name) ? book.project(name) : std::nullopt;
    auto q = ask(project ? as_begun(arguments, *project) : arguments, name);
    if (!project)
        throw Refused(fmt::format("nothing is begun with {}: gristwright start TEMPLATE {}",
                                  inert(name), inert(name)));
    const auto plan = plan_begun(arguments, *project, q);
    const catalog::WeighingText typed{arguments.text("row"), arguments.text("woven"),
                                      arguments.text("ball"), arguments.text("on")};
    const bool woven = plan.article->craft == Craft::woven;
    if (woven && typed.length.empty()) throw Misused("weigh a woven piece with --woven 41cm");
    if (!woven && typed.row.empty()) throw Misused("weigh needs --row 96: the rows worked so far");
    auto said = told_of(plan, q, weighings_with(book, name, typed));
    book.add_weighing(name, typed);
    said.notes = joined(q.measured.notes, "\n");
    said.stands = kept_already;
    return said;
}

Answer run_weigh(const Arguments& arguments) {
    if (!arguments.has("ball"))
        throw Misused("weigh needs --ball 31.5g: all yarn still to be used");
    auto book = notebook(arguments, Notebook::Mode::change);
    Answer said;
    book.at_once([&] { said = weighed(arguments, book, arguments.words[0]); });
    return said;
}

}  // namespace

Command weigh_command() {
    return {"weigh",
            "The ball on the scale as the work goes: how far the yarn reaches, when to begin the "
            "border, when to change skeins.",
            "NAME",
            1,
            1,
            {{"row", "96",
              "knitted: rows worked so far of the piece that the plan is about; of another '34 of "
              "sleeve 2'; 0 before the first"},
             {"woven", "41cm", "woven: length so far, tension let off; 0cm before the first pick"},
             {"ball", "31.5g", "all yarn still to be used"},
             date_option,
             {"units", "metric", "metric, imperial or both", false, "metric|imperial|both"},
             json_option,
             notebook_option},
            run_weigh,
            "heron --row 60 --ball 133g"};
}

}  // namespace gristwright::cli
