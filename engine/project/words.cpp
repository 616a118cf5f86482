#include "engine/project/words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "engine/cloth/spacing_words.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

constexpr std::array<std::string_view, 5> for_any{"width", "length", "metres", "grams", "count"};
constexpr std::array<std::string_view, 3> for_knitted{"stitches", "rows", "fabric"};
constexpr std::array<std::string_view, 8> for_woven{"ends",      "picks", "reed", "woven",
                                                    "warp_each", "warp",  "weft", "fabric"};

template <class List>
bool holds(const List& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool known(std::string_view field, Craft craft) {
    return holds(for_any, field) ||
           (craft == Craft::knitted ? holds(for_knitted, field) : holds(for_woven, field));
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

}  // namespace

std::optional<std::string_view> step_where(std::string_view step, bool fringed) {
    if (!step.starts_with('[')) return step;
    for (const auto& [condition, holds] :
         {std::pair<std::string_view, bool>{"[fringe] ", fringed},
          std::pair<std::string_view, bool>{"[no fringe] ", !fringed}})
        if (step.starts_with(condition))
            return holds ? std::optional(step.substr(condition.size())) : std::nullopt;
    throw Refused("a step begins with [fringe] or [no fringe], or with its words");
}

std::string filled_in(std::string_view step, const Plan& plan, const Writing& writing) {
    return replaced(step, [&](std::string_view word) -> std::string {
        const auto& first = plan.pieces.front();
        if (word == "needle" && first.knit) return writing.needle(first.knit->needle);
        if (word == "heddle" && first.woven) return spacing_words(*first.woven);
        if (word == "size") return writing.size(plan.size);
        if (word == "fringe" && first.woven) return writing.size(plan.article->fringe);
        const auto dot = word.find('.');
        for (const auto& p : plan.pieces)
            if (p.piece->name == word.substr(0, dot) && dot != std::string_view::npos)
                return field_of(p, word.substr(dot + 1), writing);
        throw unknown(word);
    });
}

void check_words(std::string_view step, const Template& article) {
    static_cast<void>(step_where(step, true));  // throws for what it does not know
    replaced(step, [&](std::string_view word) -> std::string {
        if (word == "size" || (word == "fringe" && article.craft == Craft::woven)) return "";
        if (word == (article.craft == Craft::knitted ? "needle" : "heddle")) return "";
        const auto dot = word.find('.');
        for (const auto& p : article.pieces)
            if (dot != std::string_view::npos && p.name == word.substr(0, dot) &&
                known(word.substr(dot + 1), article.craft))
                return "";
        throw unknown(word);
    });
}

}  // namespace gristwright
