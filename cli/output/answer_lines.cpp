#include "cli/output/answer_lines.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/reply.hpp"
#include "cli/output/reply_names.hpp"
#include "cli/output/svg.hpp"
#include "cli/output/table.hpp"
#include "engine/suitability/judgement.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t narrowest_idea = 30;
constexpr std::size_t beside_idea = 50;  // columns that the rest of a line takes

std::string times(const SuggestionGroup& group) {
    return group.rows.size() > 1 ? fmt::format("{} times", group.rows.size()) : "";
}

std::vector<Cell> row_of(const SuggestionGroup& group, const SuggestionAnswer& a,
                         const std::string& idea, const Units& units) {
    const bool lacks = a.reach == Reach::short_of;
    return {{fmt::format("{:.0f}", a.judgement.score)},
            {idea},
            {times(group)},
            {is_of_the_nearest(a) ? "not reckoned" : std::string(words(serves(a.judgement.score)))},
            {metres_verdict(a, units), lacks ? std::optional(Dye::lacking) : std::nullopt},
            {"needs " + units.yarn(a.need.mid)},
            {a.article->name}};
}

}  // namespace

std::string answer_lines(BulkAnswers& bulk, std::size_t most, const Question& q) {
    Table table({{"", true}, {""}, {"", false, 2}, {""}, {""}, {"", false, 1}, {"", false, 3}});
    const auto room =
        std::max(narrowest_idea, table_width() - std::min(table_width(), beside_idea));
    std::string back;
    const auto ranked = bulk.ranked();
    for (std::size_t i = 0; i < std::min(most, ranked.size()); ++i) {
        const auto a = bulk.answer(ranked[i]->suggestion);
        const auto idea = shortened(inert(ranked[i]->suggestion.idea), room);
        if (a.answered)
            table.add(row_of(*ranked[i], a, idea, q.units));
        else
            back += labelled("  ?",
                             fmt::format("{}: {}", idea,
                                         a.ask.empty() ? metres_verdict(a, q.units) : a.ask),
                             0) +
                    "\n";
    }
    return joined(table.lines(table_width()).rows, "") + back;
}

}  // namespace gristwright::cli
