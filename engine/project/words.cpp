#include "engine/project/words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <optional>

#include "engine/cloth/spacing_words.hpp"
#include "engine/project/constants.hpp"
#include "engine/project/heel.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

constexpr std::array<std::string_view, 5> for_any{"width", "length", "metres", "grams", "count"};
constexpr std::array<std::string_view, 9> for_knitted{
    "stitches", "rows", "fabric", "narrow", "by", "times", "shaping", "last_row", "bind_off"};
constexpr std::array<std::string_view, 5> for_yoke{"underarm", "back", "front", "half_front",
                                                   "sleeve"};
constexpr std::array<std::string_view, 2> for_gusset{"taken_up", "in_all"};
constexpr std::array<std::string_view, 8> for_woven{"ends",      "picks", "reed", "woven",
                                                    "warp_each", "warp",  "weft", "fabric"};

constexpr std::string_view between = " to ", less = " less ";
constexpr std::array of_two{between, less};

template <class List>
bool holds(const List& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool known(std::string_view field, const PieceTemplate& piece, Craft craft) {
    if (holds(for_any, field)) return true;
    if (craft == Craft::woven) return holds(for_woven, field);
    return holds(for_knitted, field) ||
           (piece.counting.underarm.si() > 0 && holds(for_yoke, field)) ||
           (!piece.counting.gusset_of.empty() && holds(for_gusset, field));
}

// Calls `replace` for each word in braces and puts what it gives in the word's place.
template <class Replace>
std::string replaced(std::string_view step, Replace replace) {
    std::string out;
    while (true) {
        const auto open = step.find('{');
        out += step.substr(0, open);
        if (open == std::string_view::npos) return out;
        const auto close = step.find('}', open);
        if (close == std::string_view::npos) throw Refused("a brace is opened and not closed");
        out += replace(step.substr(open + 1, close - open - 1));
        step.remove_prefix(close + 1);
    }
}

Refused unknown(std::string_view word) {
    return Refused(fmt::format("'{{{}}}' cannot be filled in", word));
}

// Yarn in a row of so many stitches.
Length in_row(const PlanPiece& p, int stitches) {
    const auto one = p.knit->metres_per_area.mid.si() / (p.knit->stitches.si() * p.knit->rows.si());
    return metres(one * stitches);
}

std::string yoke_field(const YokeParts& parts, std::string_view field) {
    const int count = field == "underarm"     ? parts.underarm
                      : field == "back"       ? parts.back
                      : field == "front"      ? parts.front
                      : field == "half_front" ? parts.front / 2
                                              : parts.sleeve;
    return fmt::format("{}", count);
}

std::string gusset_field(const Plan& plan, const PlanPiece& p, std::string_view field) {
    const auto& c = p.piece->counting;
    const auto* of = plan.piece_named(field == "taken_up" ? c.gusset_of : c.within);
    return fmt::format("{}", field == "taken_up" ? taken_up(of->rows) : of->stitches + p.stitches);
}

std::string knitted_field(const Plan& plan, const PlanPiece& p, std::string_view field,
                          const Writing& writing) {
    if (field == "narrow")
        return fmt::format("{}", p.few_stitches > 0 ? p.few_stitches : p.stitches);
    if (field == "by") return fmt::format("{}", shaping_of(p).by);
    if (field == "times") return fmt::format("{}", shaping_of(p).times());
    if (field == "shaping") return writing.shaping(shaping_of(p));
    if (field == "last_row") return writing.yarn(in_row(p, p.stitches));
    if (field == "bind_off") return writing.yarn(in_row(p, p.stitches) * constants::bind_off_rows);
    if (holds(for_gusset, field)) return gusset_field(plan, p, field);
    return yoke_field(yoke_parts(plan, p), field);
}

std::string field_of(const PlanPiece& p, std::string_view field, const Writing& writing) {
    if (field == "stitches") return fmt::format("{}", p.stitches);
    if (field == "rows") return fmt::format("{}", p.rows);
    if (field == "count") return fmt::format("{}", p.piece->count);
    if (field == "fabric") return p.piece->fabric;
    if (field == "width") return writing.size(p.outline.width);
    if (field == "length") return writing.size(p.outline.length);
    if (field == "metres") return writing.yarn(p.metres.mid);
    if (field == "grams") return writing.mass(p.mass);
    if (field == "ends") return fmt::format("{}", p.panel.ends);
    if (field == "picks") return fmt::format("{}", p.panel.picks);
    if (field == "reed") return writing.size(p.panel.reed_width);
    if (field == "woven") return writing.size(p.panel.woven_length);
    if (field == "warp_each") return writing.size(p.warp / p.panel.ends);
    if (field == "warp") return writing.yarn(p.warp);
    if (field == "weft") return writing.yarn(p.weft);
    throw unknown(field);
}

const PlanPiece& piece_of(const Plan& plan, std::string_view name, std::string_view word) {
    if (const auto* p = plan.piece_named(name)) return *p;
    throw unknown(word);
}

// "yoke", "sleeve.narrow": the stitches of a piece, or of its narrow end.
int count_of(const Plan& plan, std::string_view said, std::string_view word) {
    const auto dot = said.find('.');
    const auto& p = piece_of(plan, said.substr(0, dot), word);
    const bool few = dot != std::string_view::npos && p.few_stitches > 0;
    return few ? p.few_stitches : p.stitches;
}

bool own_field(std::string_view field) {
    return field != "stitches" && field != "rows" && field != "fabric" &&
           (holds(for_knitted, field) || holds(for_yoke, field) || holds(for_gusset, field));
}

// "brim to body": how the one count becomes the other.
std::string change_of(const Plan& plan, std::string_view word, std::size_t to,
                      const Writing& writing) {
    return writing.change(count_of(plan, word.substr(0, to), word),
                          count_of(plan, word.substr(to + between.size()), word));
}

// "front less upper back": what goes at each side.
std::string each_side(const Plan& plan, std::string_view word, std::size_t at) {
    return fmt::format("{}", (count_of(plan, word.substr(0, at), word) -
                              count_of(plan, word.substr(at + less.size()), word)) /
                                 2);
}

bool names_count(const Template& article, std::string_view said) {
    const auto dot = said.find('.');
    if (dot != std::string_view::npos && said.substr(dot) != ".narrow") return false;
    return std::any_of(article.pieces.begin(), article.pieces.end(),
                       [&](const auto& p) { return p.name == said.substr(0, dot); });
}

bool names_two_counts(const Template& article, std::string_view word) {
    return std::any_of(std::begin(of_two), std::end(of_two), [&](std::string_view joint) {
        const auto at = word.find(joint);
        return at != std::string_view::npos && names_count(article, word.substr(0, at)) &&
               names_count(article, word.substr(at + joint.size()));
    });
}

// Nothing: not of this article.
std::optional<std::string_view> step_where(std::string_view step, bool fringed) {
    if (!step.starts_with('[')) return step;
    for (const auto& [condition, holds] :
         {std::pair<std::string_view, bool>{"[fringe] ", fringed},
          std::pair<std::string_view, bool>{"[no fringe] ", !fringed}})
        if (step.starts_with(condition))
            return holds ? std::optional(step.substr(condition.size())) : std::nullopt;
    throw Refused("a step begins with [fringe] or [no fringe], or with its words");
}

}  // namespace

std::vector<std::string_view> steps_said(const Template& article) {
    std::vector<std::string_view> out;
    out.reserve(article.steps.size());
    for (const auto& step : article.steps)
        if (const auto said = step_where(step, article.fringe.si() > 0)) out.push_back(*said);
    return out;
}

std::string filled_in(std::string_view step, const Plan& plan, const Writing& writing) {
    return replaced(step, [&](std::string_view word) -> std::string {
        const auto& first = plan.pieces.front();
        if (word == "needle" && first.knit) return writing.needle(needle_known(*first.knit));
        if (word == "heddle" && first.woven) return spacing_words(*first.woven);
        if (word == "size") return writing.size(plan.size);
        if (word == "fringe" && first.woven) return writing.size(plan.article->fringe);
        if (const auto to = word.find(between); to != std::string_view::npos)
            return change_of(plan, word, to, writing);
        if (const auto at = word.find(less); at != std::string_view::npos)
            return each_side(plan, word, at);
        const auto dot = word.find('.');
        if (dot == std::string_view::npos) throw unknown(word);
        const auto& p = piece_of(plan, word.substr(0, dot), word);
        const auto field = word.substr(dot + 1);
        return p.knit && own_field(field) ? knitted_field(plan, p, field, writing)
                                          : field_of(p, field, writing);
    });
}

void check_words(std::string_view step, const Template& article) {
    static_cast<void>(step_where(step, true));  // throws for what it does not know
    replaced(step, [&](std::string_view word) -> std::string {
        if (word == "size" || (word == "fringe" && article.craft == Craft::woven)) return "";
        if (word == (article.craft == Craft::knitted ? "needle" : "heddle")) return "";
        if (article.craft == Craft::knitted && names_two_counts(article, word)) return "";
        const auto dot = word.find('.');
        for (const auto& p : article.pieces)
            if (dot != std::string_view::npos && p.name == word.substr(0, dot) &&
                known(word.substr(dot + 1), p, article.craft))
                return "";
        throw unknown(word);
    });
}

}  // namespace gristwright
