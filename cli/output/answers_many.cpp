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
#include "cli/output/reply_names.hpp"
#include "cli/output/svg.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_listed = 20;  // of the ranked list as text
constexpr std::size_t longest_quoted = 40;

std::string cell(const std::string& text) { return catalog::csv_cell(inert(text)); }

// A stand-in's grade is not the idea's.
std::string served_words(const SuggestionAnswer& a) {
    const std::string grade(words(serves(a.judgement.score)));
    return is_of_the_nearest(a)
               ? fmt::format("not reckoned: {}; the nearest {}", joined(left_out(a)), grade)
               : grade;
}

// What a sender is told of cells that could not be read.
std::string left_out_sentence(const std::vector<catalog::LeftOutCell>& cells) {
    std::vector<std::string> said;
    for (const auto& cell : cells)
        said.push_back(
            fmt::format("'{}' ({})", shortened(inert(cell.text), longest_quoted), cell.key));
    return said.empty() ? ""
                        : fmt::format("I could not read {} and left {} out.", listed(said, "and"),
                                      said.size() > 1 ? "them" : "it");
}

std::string left_out_words(const std::vector<catalog::LeftOutCell>& cells) {
    std::vector<std::string> said;
    for (const auto& cell : cells) said.push_back(cell.why);
    return joined(said, "; ");
}

std::vector<catalog::LeftOutCell> left_out_of(const BulkAnswers& bulk, std::size_t row) {
    const auto found = bulk.left_out().find(row);
    return found == bulk.left_out().end() ? std::vector<catalog::LeftOutCell>() : found->second;
}

// What the rows of a group share: up to the cell of what was left out, and behind it.
struct SharedCells {
    std::string answer, care, reply;
};
SharedCells csv_answer(const SuggestionGroup& group, const SuggestionAnswer& a, const Question& q) {
    SharedCells out;
    if (a.answered)
        out.answer =
            fmt::format("{},{},{:.0f},{},{},{:.0f},{:.0f},{:.0f},{:.3f},", cell(a.article->article),
                        words(a.article->craft), a.judgement.score, cell(served_words(a)),
                        cell(metres_verdict(a, q.units)), in_metres(a.need.mid), in_metres(a.left),
                        in_metres(a.short_by), a.certainty);
    else
        out.answer = ",,,," + cell(metres_verdict(a, q.units)) + ",,,,,";
    const auto cautions = cautions_on_answer(group.suggestion, a, q);
    out.care = cell(joined(briefs(cautions), "; "));
    out.reply = reply_with_care(group.suggestion, a, cautions, q);
    return out;
}

// One sender's row.
std::string csv_row(const SuggestionGroup& group, const SuggestionGroup::Row& row,
                    const SharedCells& shared, const BulkAnswers& bulk) {
    const auto left_out = left_out_of(bulk, row.number);
    const auto sentence = left_out_sentence(left_out);
    return fmt::format("{},{},{},{},{}{},{},{}\n", row.number, group.rows.size(),
                       cell(group.idea_of(row)), cell(group.sender_of(row)), shared.answer,
                       cell(left_out_words(left_out)), shared.care,
                       cell(shared.reply + (sentence.empty() ? "" : " " + sentence)));
}

std::string csv_refused(const BadRow& bad) {
    return fmt::format("{},1,{},{},,,,,\"could not be read\",,,,,{},\"\",{}\n", bad.number,
                       cell(bad.idea), cell(bad.from), cell(bad.why),
                       cell("Thank you for writing! Your suggestion did not reach me whole: what "
                            "was it to be?"));
}

Json json_refused(const BulkAnswers& bulk) {
    auto out = Json::array();
    for (const auto& bad : bulk.refused())
        out.push_back({{"row", bad.number},
                       {"idea", inert(bad.idea)},
                       {"from", inert(bad.from)},
                       {"why", inert(bad.why)}});
    return out;
}

Json json_left_out(const BulkAnswers& bulk) {
    auto out = Json::array();
    for (const auto& [row, cells] : bulk.left_out())
        for (const auto& one : cells)
            out.push_back({{"row", row},
                           {"column", one.key},
                           {"text", inert(one.text)},
                           {"why", inert(one.why)}});
    return out;
}

// What stands before the answers; with none of them all there is.
std::string json_head(const BulkAnswers& bulk, bool none) {
    auto out = json_answer("answer");
    out["rows"] = bulk.rows();
    out["rows_refused"] = bulk.bad();
    out["refused"] = json_refused(bulk);
    out["left_out"] = json_left_out(bulk);
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
    const auto most = all ? ranked.size() : std::min(most_listed, ranked.size());
    out += answer_lines(bulk, most, q);
    if (ranked.size() > most)
        out += fmt::format("and {} more: --all lists them, --out FILE keeps them\n",
                           ranked.size() - most);
    return out;
}

Pieces answers_csv(BulkAnswers& bulk, const Question& q) {
    return [&bulk, &q, ranked = bulk.ranked(), head = true, next = std::size_t{0},
            bad = std::size_t{0}]() mutable {
        if (std::exchange(head, false))
            return std::string(
                "row,times,idea,from,article,craft,suitability,serves,metres,metres_needed,"
                "metres_left,metres_short,chance,left_out,care,reply\n");
        if (next == ranked.size()) {
            if (bad == bulk.refused().size()) return std::string();
            return csv_refused(bulk.refused()[bad++]);
        }
        const auto& group = *ranked[next++];
        const auto shared = csv_answer(group, bulk.answer(group.suggestion), q);
        std::string out;
        for (const auto& row : group.rows) out += csv_row(group, row, shared, bulk);
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
