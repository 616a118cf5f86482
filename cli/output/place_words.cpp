#include "cli/output/place_words.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

std::string counted_words(const PlanPiece& piece, int count) {
    return fmt::format("{} {}", goes_round(piece) ? "round" : "row", count);
}

std::string woven_words(const Plan& plan, const YarnPlace& place, const Units& units) {
    const auto& panel = plan.pieces[place.piece].panel;
    return fmt::format("{} of {}", units.size(panel.woven_length * place.share),
                       piece_words(plan, place));
}

std::string end_words(const Plan& plan, const YarnPlace& place, const Units& units) {
    const auto& piece = plan.pieces[place.piece];
    if (piece.woven && centimetres(1) > piece.panel.woven_length * place.share)
        return fmt::format("as {} begins", piece_words(plan, place));
    if (piece.woven) return "after " + woven_words(plan, place, units);
    return fmt::format("in {} of {}", counted_words(piece, in_work_at(plan, place)),
                       piece_words(plan, place));
}

// Where it is best to change from one skein to the next.
std::string where_to_change(const Plan& plan, const std::vector<SkeinEnd>& ends) {
    std::vector<std::string> at;
    const auto add = [&](bool rounds, const char* where) {
        if (std::any_of(ends.begin(), ends.end(), [&](const SkeinEnd& end) {
                return !end.place.warp && goes_round(plan.pieces[end.place.piece]) == rounds;
            }))
            at.emplace_back(where);
    };
    add(false, "at a side edge");
    add(true, "where a round begins");
    return at.empty() ? "" : fmt::format(" Change skeins {}.", joined(at, " or "));
}

}  // namespace

bool goes_round(const PlanPiece& p) {
    const auto shape = p.outline.shape;
    return p.knit && (p.piece->counting.in_rounds || shape == Shape::tube || shape == Shape::cap ||
                      shape == Shape::circle);
}

std::string piece_words(const Plan& plan, const YarnPlace& place) {
    const auto& piece = *plan.pieces[place.piece].piece;
    return piece.count > 1 ? fmt::format("{} {}", piece.name, place.which)
                           : fmt::format("the {}", piece.name);
}

std::string place_words(const Plan& plan, const YarnPlace& place, const Units& units) {
    const auto& piece = plan.pieces[place.piece];
    if (place.warp) return "the warp";
    if (piece.woven) return woven_words(plan, place, units);
    return fmt::format("{} of {}", counted_words(piece, done_at(plan, place)),
                       piece_words(plan, place));
}

std::vector<SkeinEnd> skein_ends(const Plan& plan, const YarnProfile& yarn, double factor,
                                 Length used) {
    return skein_ends(plan, lengths_of(yarn), taking_for(yarn.agreement), factor, used);
}

std::string turns_in_words(const Plan& plan, const YarnProfile& yarn) {
    if (taking_for(yarn.agreement) != Taking::by_turns) return "";
    const auto* each = plan.article->craft == Craft::woven ? "a few picks of each"
                       : goes_round(plan.pieces.front())   ? "two rounds of each"
                                                           : "two rows of each";
    return fmt::format("The skeins differ: take two by turns, {}{}.", each,
                       yarn.skeins.size() > 2 ? "; when one ends the next takes its place" : "");
}

std::string ends_in_words(const Plan& plan, const std::vector<SkeinEnd>& ends,
                          const std::vector<std::string>& names, const Units& units) {
    if (ends.empty()) return "";
    std::vector<std::string> said, in_warp;
    for (const auto& end : ends)
        if (end.place.warp) in_warp.push_back(names[end.skein]);
    if (!in_warp.empty())
        said.push_back(joined(in_warp, " and ") + (in_warp.size() > 1 ? " end" : " ends") +
                       " in the warp, at a peg or the back rod");
    for (const auto& end : ends)
        if (!end.place.warp)
            said.push_back(names[end.skein] + " ends " + end_words(plan, end.place, units));
    const auto* order =
        plan.pieces.size() > 1 ? ", the pieces being made in the order of the steps" : "";
    return joined(said, "; ") + order + "." + where_to_change(plan, ends);
}

}  // namespace gristwright::cli
