// Hundreds of suggestions answered for one batch, near-alike ones together, the best first.
#pragma once

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

class BulkAnswers {
  public:
    // `keep`: the texts that can be read stay to hand, to be remembered.
    explicit BulkAnswers(const Question& q, bool keep = false)
        : q_(q), answerer_(ground_of(q)), keep_(keep) {}

    // A row that cannot be read becomes a complaint. Throws for a file without a column of ideas.
    void read(const std::string& file);
    void take_all(const std::vector<catalog::KeptSuggestion>& remembered);

    std::vector<const SuggestionGroup*> ranked() const { return groups_.ranked(); }
    std::size_t rows() const { return rows_; }
    std::size_t bad() const { return bad_; }
    const std::vector<std::string>& notes() const { return notes_; }  // what the sheet left out
    const std::vector<std::string>& complaints() const { return complaints_; }
    const std::vector<catalog::KeptSuggestion>& good() const { return good_; }
    SuggestionAnswer answer(const Suggestion& s) { return answerer_.answer(s); }

  private:
    void take(std::size_t row, const catalog::SuggestionText& text, const std::string& wrong);
    void add(std::size_t row, Suggestion suggestion);
    void tick(bool last) const;

    const Question& q_;
    Answerer answerer_;
    bool keep_;
    std::vector<catalog::KeptSuggestion> good_;
    SuggestionGroups groups_;
    std::vector<std::string> complaints_, notes_;
    std::size_t rows_ = 0, bad_ = 0;
};

}  // namespace gristwright::cli
