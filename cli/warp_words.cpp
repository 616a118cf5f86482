#include "cli/warp_words.hpp"

#include <fmt/core.h>

#include "cli/output/layout.hpp"
#include "engine/project/constants.hpp"
#include "engine/project/warp.hpp"

namespace gristwright::cli {
namespace {

std::string point(const std::string& text) { return labelled("-", text, 2) + "\n"; }

std::string hand_test(const Question& q) {
    return point(fmt::format(
        "Try one end: wet an arm's length, hang {} on it for a minute close above something soft, "
        "then draw it ten times along the heddle's edge. If it drifts apart or fluffs up, take "
        "another yarn for the warp. Keep face and feet clear of the weight.",
        q.units.mass(hung_on_an_end(q.yarn.linear_density.mid))));
}

std::string size_of_warp(const Question& q) {
    const bool singles = q.measured.batch.plies == 1;
    const double fit = q.yarn.trait(TraitName::warp_fitness).value;
    if (!singles && fit >= constants::sized_below) return "";
    return point(fmt::format(
        "{}: size the warp. Dip it in thin gelatine (wool, silk) or linseed or flour paste (plant "
        "fibre), press out, dry it stretched, and wash it out with the finishing; try a length "
        "first.",
        singles ? "Singles" : "It is delicate as warp"));
}

// What has no spring forgives no slack end, and what is smooth besides slips out of a knot.
std::string little_give(const Question& q) {
    if (q.yarn.trait(TraitName::elasticity).value >= constants::gives_little) return "";
    return point(
        "It gives little: wind and tie every end at one tension, wet a plant fibre that snaps, and "
        "tie each knot twice over, for a smooth yarn slips out of it.");
}

// How the skeins lie in the warp, by how alike they are.
const char* order_of(const Agreement& found) {
    if (found.answer == SameYarn::same || found.answer == SameYarn::only_one_skein)
        return "side by side in any order, as they are alike";
    return "end and end by turns, or the odd one as equal stripes at both edges, so that the cloth "
           "draws in evenly";
}

std::string skeins_in(const PlanPiece& piece, const Question& q) {
    const int count = piece.panel.ends;
    if (count == 0 || q.yarn.skeins.size() < 2) return "";
    const Length each = piece.warp / count;
    const auto shares = share_warp(lengths_of(q.yarn), count, each);
    int ends = 0;
    std::vector<std::string> said;
    for (const auto& share : shares) {
        ends += share.ends;
        said.push_back(fmt::format("{} from {} ({})", share.ends,
                                   inert(q.yarn.skeins[share.skein].name),
                                   q.units.yarn(share.used)));
    }
    if (ends < count || shares.size() < 2) return "";
    return point(
        fmt::format("{}: {} ends, {}; {}. Begin and end each skein at a peg or the back "
                    "rod: an end with a knot in it goes through no heddle.",
                    capital(piece.piece->name), count, joined(said), order_of(q.yarn.agreement)));
}

}  // namespace

std::string warp_text(const Plan& plan, const Question& q) {
    if (plan.article->loom == Loom::pins) return "";  // wound, not stretched
    std::string out;
    for (const auto& piece : plan.pieces)
        if (piece.woven && piece.piece->warp_ours() >= 1) out += skeins_in(piece, q);
    for (const auto& piece : plan.pieces)
        if (piece.woven && piece.piece->warp_ours() > 0)
            return "\n" + heading("The warp") + "\n" + hand_test(q) + size_of_warp(q) +
                   little_give(q) + out;
    return "";
}

}  // namespace gristwright::cli
