#include "cli/output/answers_many.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <utility>

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
    const auto cautions = cautions_on_answer(group.suggestion, a, q);
    return out + cell(joined(briefs(cautions), "; ")) + "," +
           cell(reply_with_care(group.suggestion, a, cautions, q)) + "\n";
}

// What stands before the answers; with none of them all there is.
std::string json_head(const BulkAnswers& bulk, bool none) {
    auto out = json_answer("answer");
    out["rows"] = bulk.rows();
    out["rows_refused"] = bulk.bad();
    out["answers"] = Json::array();
    auto text = dumped(out);
    if (!none) text.resize(text.rfind(']'));
    return text;
}

nlohmann::ordered_json json_of(const SuggestionGroup& group, BulkAnswers& bulk, const Question& q) {
    auto one = answer_json(group.suggestion, bulk.answer(group.suggestion), q);
    one["row"] = group.rows.front().number;
    one["rows"] = Json::array();
    for (const auto& row : group.rows) one["rows"].push_back(row.number);
    one["times"] = group.rows.size();
    return one;
}

// As deep as an answer stands in the whole.
std::string indented(const std::string& json) {
    std::string out = "    ";
    for (const char c : json) {
        out += c;
        if (c == '\n') out += "    ";
    }
    return out;
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

Pieces answers_csv(BulkAnswers& bulk, const Question& q) {
    return [&bulk, &q, ranked = bulk.ranked(), head = true, next = std::size_t{0}]() mutable {
        if (std::exchange(head, false))
            return std::string(
                "row,times,idea,from,article,craft,suitability,serves,metres,metres_needed,"
                "metres_left,metres_short,chance,care,reply\n");
        if (next == ranked.size()) return std::string();
        const auto& group = *ranked[next++];
        const auto answer = csv_answer(group, bulk.answer(group.suggestion), q);
        std::string out;
        for (const auto& row : group.rows)
            out += fmt::format("{},{},{},{},", row.number, group.rows.size(),
                               cell(group.idea_of(row)), cell(group.sender_of(row))) +
                   answer;
        return out;
    };
}

Pieces answers_json(BulkAnswers& bulk, const Question& q) {
    return [&bulk, &q, ranked = bulk.ranked(), head = true, tail = true,
            next = std::size_t{0}]() mutable {
        if (std::exchange(head, false)) return json_head(bulk, ranked.empty());
        if (next < ranked.size()) {
            const auto& group = *ranked[next];
            return (next++ ? ",\n" : "\n") + indented(json_of(group, bulk, q).dump(2));
        }
        return ranked.empty() || !std::exchange(tail, false) ? std::string() : "\n  ]\n}\n";
    };
}

std::string whole(const Pieces& pieces) {
    std::string out;
    for (auto piece = pieces(); !piece.empty(); piece = pieces()) out += piece;
    return out;
}

}  // namespace gristwright::cli
