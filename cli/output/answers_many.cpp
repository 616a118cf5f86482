#include "cli/output/answers_many.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "catalog/text/csv.hpp"
#include "cli/output/answer_lines.hpp"
#include "cli/output/answer_words.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/reply.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t listed = 20;  // of the ranked list as text

std::string cell(const std::string& text) { return catalog::csv_cell(inert(text)); }

// What the rows of a group share.
std::string csv_answer(const SuggestionGroup& group, const SuggestionAnswer& a, const Question& q) {
    std::string out;
    if (a.answered)
        out = fmt::format("{},{},{:.0f},{},{},{:.0f},{:.0f},{:.0f},{:.3f},",
                          cell(a.article->article), words(a.article->craft), a.judgement.score,
                          cell(std::string(words(serves(a.judgement.score)))),
                          cell(metres_verdict(a, q.units)), in_metres(a.need.mid),
                          in_metres(a.left), in_metres(a.short_by), a.certainty);
    else
        out = ",,,," + cell(metres_verdict(a, q.units)) + ",,,,,";
    return out + cell(joined(briefs(cautions_on_answer(group.suggestion, a, q)), "; ")) + "," +
           cell(reply_with_care(group.suggestion, a, q)) + "\n";
}

}  // namespace

std::string answers_text(BulkAnswers& bulk, const Question& q, bool all) {
    const auto ranked = bulk.ranked();
    auto out = wrapped(batch_line(q), 0) + "\n\n" +
               fmt::format("{} suggestion{}, {} of them different{}\n\n", bulk.rows(),
                           bulk.rows() == 1 ? "" : "s", ranked.size(),
                           bulk.bad() > 0 ? fmt::format(", {} row{} refused", bulk.bad(),
                                                        bulk.bad() == 1 ? "" : "s")
                                          : "");
    const auto most = all ? ranked.size() : std::min(listed, ranked.size());
    out += answer_lines(bulk, most, q);
    if (ranked.size() > most)
        out += fmt::format("and {} more: --all lists them, --out FILE keeps them\n",
                           ranked.size() - most);
    return out;
}

std::string answers_csv(BulkAnswers& bulk, const Question& q) {
    std::string out =
        "row,times,idea,from,article,craft,suitability,serves,metres,metres_needed,metres_left,"
        "metres_short,chance,care,reply\n";
    for (const auto& group : bulk.ranked()) {
        const auto a = bulk.answer(group.suggestion);
        const auto answer = csv_answer(group, a, q);
        for (std::size_t i = 0; i < group.rows.size(); ++i)
            out += fmt::format("{},{},{},{},", group.rows[i], group.rows.size(),
                               cell(group.ideas[i]), cell(group.senders[i])) +
                   answer;
    }
    return out;
}

std::string answers_json(BulkAnswers& bulk, const Question& q) {
    auto out = json_answer("answer");
    out["rows"] = bulk.rows();
    out["rows_refused"] = bulk.bad();
    out["answers"] = Json::array();
    for (const auto& group : bulk.ranked()) {
        auto one = answer_json(group.suggestion, bulk.answer(group.suggestion), q);
        one["row"] = group.rows.front();
        one["rows"] = group.rows;
        one["times"] = group.rows.size();
        out["answers"].push_back(std::move(one));
    }
    return dumped(out);
}

}  // namespace gristwright::cli
