// Hundreds of suggestions answered for one batch, near-alike ones together, the best first.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/notebook/notebook.hpp"
#include "catalog/text/csv.hpp"
#include "catalog/typed/suggestion_text.hpp"
#include "cli/question.hpp"
#include "engine/suggestion/groups.hpp"

namespace gristwright::cli {

// The keys of a suggestion, as a spreadsheet's header and the command's options name them.
inline constexpr std::string_view suggestion_fields[] = {
    "idea",   "craft", "needs", "weight",  "grist", "gauge", "sett",
    "needle", "size",  "sizes", "colours", "who",   "from",  "when"};

Ground ground_of(const Question& q);

// A row that is not answered as it stands there.
struct BadRow {
    std::size_t number = 0;
    std::string idea, from;
    std::string why;  // naming the column, and what would be right
};

class BulkAnswers {
  public:
    // `keep`: the texts that can be read stay to hand, to be remembered.
    explicit BulkAnswers(const Question& q, bool keep = false)
        : q_(q), answerer_(ground_of(q)), keep_(keep) {}

    // A row or a cell that cannot be read becomes a complaint. Throws for a file without a column
    // of ideas.
    void read(const std::string& file);
    void take_all(const std::vector<catalog::KeptSuggestion>& remembered);

    std::vector<const SuggestionGroup*> ranked() const { return groups_.ranked(); }
    std::size_t rows() const { return rows_; }
    std::size_t bad() const { return refused_.size(); }  // rows that are not answered
    bool all_read() const { return refused_.empty() && left_out_.empty(); }
    const std::vector<std::string>& notes() const { return notes_; }  // what the sheet left out
    std::size_t asked_back() const { return asked_back_; }
    const std::vector<std::string>& complaints() const { return complaints_; }  // the first twenty
    std::size_t more_complaints() const;
    // Rows that cannot be read at all, in their order.
    const std::vector<BadRow>& refused() const { return refused_; }
    // By row: the cells that were left out of its answer.
    const std::map<std::size_t, std::vector<catalog::LeftOutCell>>& left_out() const {
        return left_out_;
    }
    const std::vector<catalog::KeptSuggestion>& good() const { return good_; }
    SuggestionAnswer answer(const Suggestion& s) { return answerer_.answer(s); }

  private:
    void take(std::size_t row, const catalog::SuggestionText& text, const std::string& wrong);
    void add(std::size_t row, Suggestion suggestion);
    void refuse(std::size_t row, const catalog::SuggestionText& text, const std::string& why);
    void complain(std::size_t row, const std::string& what);
    void tick(bool last) const;

    const Question& q_;
    Answerer answerer_;
    bool keep_;
    std::vector<catalog::KeptSuggestion> good_;
    SuggestionGroups groups_;
    std::vector<std::string> complaints_, notes_;
    std::vector<BadRow> refused_;
    std::map<std::size_t, std::vector<catalog::LeftOutCell>> left_out_;
    std::size_t rows_ = 0, asked_back_ = 0, complained_ = 0;
};

}  // namespace gristwright::cli
