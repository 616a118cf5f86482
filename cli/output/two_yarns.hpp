// Two yarns side by side: each article in both, and what decides.
#pragma once

#include <string>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

// An article that at least one of the two serves and reaches for.
struct InBoth {
    JudgedPlan a, b;

    // Points that a has more; as good as all of them where only one reaches.
    double ahead() const;
};

// The catalogue's articles of that kind (empty: all), the clearest first.
std::vector<InBoth> in_both(const Question& a, const Question& b, const std::string& article);

// What decides between them: "B: stitches will blur", "B is short by 120 m", "alike".
std::string deciding(const InBoth& both, const Question& a, const Question& b);

// As a person would choose: clearly better in one, in the other, or within a few points alike.
struct PartOfBoth {
    std::string title;
    std::vector<const InBoth*> articles;
};
std::vector<PartOfBoth> parts_of(const std::vector<InBoth>& all);

// Suitability and size of an article in one of the two; "-" and nothing where it does not reach.
std::string score_words(const JudgedPlan& judged);
std::string reached_size(const JudgedPlan& judged, const Units& units);

std::string two_yarns_text(const Question& a, const Question& b, const std::vector<InBoth>& all,
                           std::size_t most);
std::string two_yarns_json(const Question& a, const Question& b, const std::vector<InBoth>& all);

}  // namespace gristwright::cli
