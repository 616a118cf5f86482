// The page's parts as data for page.mustache, in the order in which they stand on it.
#pragma once

#include <kainjow/mustache.hpp>
#include <string>
#include <vector>

#include "cli/output/describe.hpp"
#include "cli/output/html.hpp"

namespace gristwright::cli {

// Every caution once, by its number on the page.
class Minded {
  public:
    Minded(const Question& q, const std::vector<const JudgedPlan*>& plans);

    const std::vector<std::string>& all() const { return all_; }
    // The numbers and, in brief, what holds for this plan.
    PageData of(const JudgedPlan& judged, const Question& q) const;

  private:
    std::size_t number(const std::string& said) const;  // from 1; 0: not on the page

    std::vector<std::string> all_;
};

// A section that stands only when there is something in it.
void set_list(PageData& data, const std::string& name, const std::vector<std::string>& said);
void set_text(PageData& data, const std::string& name, const std::string& text);
PageData term(const std::string& name, const std::string& said);

// The best few, of which the page says most.
std::vector<const JudgedPlan*> best_few(const Ranked& ranked);
// What the page draws and lists: all that serves and that the metres reach for.
std::vector<const JudgedPlan*> all_made(const Ranked& ranked);

void add_cloth(PageData& data, const Ranked& ranked, const Question& q);
// A place in a list or its card: what a drawing leads to.
struct OnPage {
    const JudgedPlan* judged;
    std::string id;
};
// All of which the page says more than the title, best first; the best few by their cards.
std::vector<OnPage> on_page(const Ranked& ranked);
void add_line_up(PageData& data, const Ranked& ranked, const Question& q);
void add_plans(PageData& data, const Ranked& ranked, const Minded& minded, const Question& q);
void add_pairs(PageData& data, const Ranked& ranked, const Question& q);
void add_yarn(PageData& data, const Question& q);
void add_ground(PageData& data, const std::vector<const JudgedPlan*>& best, const Question& q);

}  // namespace gristwright::cli
