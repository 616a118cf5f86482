#include "cli/output/page_sections.hpp"

#include <fmt/core.h>

#include <kainjow/mustache.hpp>

#include "cli/output/answer_words.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/html.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/reply.hpp"
#include "cli/output/split_picture.hpp"
#include "cli/output/split_words.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_answers = 40, longest_idea = 120;

PageData answer_data(const Answered& one, const Question& q) {
    const auto& a = one.answer;
    PageData out;
    out.set("idea", shortened(inert(one.suggestion.idea), longest_idea));
    if (!one.suggestion.from.empty())
        out.set("from", shortened(inert(one.suggestion.from), longest_idea / 3));
    if (one.times > 1) out.set("times", fmt::format("{} times", one.times));
    if (!a.answered) {
        // Thanks for talk and answers on the yarn alone ask nothing.
        out.set("said", inert(a.ask.empty() ? reply_with_care(one.suggestion, a, {}, q)
                                            : "Asked back: " + capital(a.ask)));
        return out;
    }
    PageData known;
    known.set("title", a.article->title);
    known.set("craft", std::string(words(a.article->craft)));
    known.set("score", fmt::format("{:.0f}", a.judgement.score));
    known.set("bar", share_bar(a.judgement.score / 100).silent());
    known.set("verdict", capital(verdict_words(a, q.units)));
    const auto cautions = cautions_on_answer(one.suggestion, a, q);
    known.set("reply", inert(reply_with_care(one.suggestion, a, cautions, q)));
    out.set("known", known);
    return out;
}

// A sender who gets no answer still has a line.
PageData refused_data(const BadRow& row) {
    PageData out;
    out.set("idea", row.idea.empty() ? fmt::format("Row {}", row.number)
                                     : shortened(inert(row.idea), longest_idea));
    if (!row.from.empty()) out.set("from", shortened(inert(row.from), longest_idea / 3));
    out.set("why", inert(row.why));
    return out;
}

}  // namespace

std::string split_section(const allocation::Split& s, const SplitAsked& asked, const Question& q) {
    PageData out;
    if (s.found()) {
        PageData found;
        std::vector<std::string> parts, cuts;
        for (std::size_t w = 0; w < s.parts.size(); ++w)
            if (s.parts[w].made) parts.push_back(part_words(s, asked, w, q));
        for (const auto& cut : s.cuts) cuts.push_back(cut_words(cut, asked, q));
        found.set("bars", split_chart(s, asked, q).inlined("split"));
        found.set("parts", lines_of(parts));
        found.set("cuts", lines_of(cuts));
        found.set("tail", q.units.size(centimetres(static_cast<double>(s.problem.tail))));
        found.set("proof", proof(s.allocation));
        out.set("found", found);
    }
    return rendered(embedded::page_split, out);
}

std::vector<Answered> ranked_answers(BulkAnswers& bulk) {
    std::vector<Answered> out;
    for (const auto* group : bulk.ranked())
        out.push_back({group->suggestion, bulk.answer(group->suggestion), group->rows.size()});
    return out;
}

NotAnswered not_answered(const BulkAnswers& bulk) {
    NotAnswered out{bulk.refused(), {}};
    for (const auto& [row, cells] : bulk.left_out())
        for (const auto& cell : cells)
            out.cells.push_back(
                fmt::format("Row {}: {}; answered without it", row, inert(cell.why)));
    return out;
}

std::string answers_section(const std::vector<Answered>& answers, const NotAnswered& unread,
                            const Question& q) {
    PageData out, rows{PageData::type::list};
    for (std::size_t i = 0; i < std::min(answers.size(), most_answers); ++i)
        rows << answer_data(answers[i], q);
    out.set("rows", rows);
    if (answers.size() > most_answers)
        out.set("more", fmt::format("{}", answers.size() - most_answers));
    PageData refused{PageData::type::list};
    for (const auto& row : unread.refused) refused << refused_data(row);
    out.set("refused", refused);
    set_list(out, "unread", unread.cells);
    return rendered(embedded::page_answers, out);
}

}  // namespace gristwright::cli
