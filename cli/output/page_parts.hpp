// The page's parts as data for page.mustache, in the order in which they stand on it.
#pragma once

#include <functional>
#include <kainjow/mustache.hpp>
#include <map>
#include <string>
#include <vector>

#include "cli/output/describe.hpp"
#include "cli/output/html.hpp"

namespace gristwright::cli {

// Every caution of these plans once, by its number on the page.
class Minded {
  public:
    Minded(const Question& q, const std::vector<const JudgedPlan*>& plans);

    const std::vector<std::string>& all() const { return all_; }
    // The numbers and, in brief, what holds for each of the plans.
    PageData of_all() const;
    // The same of what holds for this plan besides.
    PageData of(const JudgedPlan& judged) const;

  private:
    struct Held {
        std::size_t number = 0;  // from 1
        std::string brief;
    };
    std::size_t number(const std::string& said);
    std::vector<Held> held_for(const JudgedPlan& judged, const Question& q);
    void find_shared();

    std::vector<std::string> all_;
    std::map<const JudgedPlan*, std::vector<Held>> held_;
    std::vector<Held> shared_;
};
// The cautions of these plans that are not among those already said.
std::vector<std::string> more_to_mind(const Question& q,
                                      const std::vector<const JudgedPlan*>& plans,
                                      const Minded& said);

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
void add_line_up_of_rest(PageData& data, const Ranked& ranked, const Question& q);
// A plan's sheet as a command; empty: not said.
using SheetCommand = std::function<std::string(const std::string& article)>;
void add_plans(PageData& data, const Ranked& ranked, const Minded& minded, const Question& q,
               const SheetCommand& sheet);
// What is folded: all of it drawn and listed.
void add_rest(PageData& data, const Ranked& ranked, const Minded& minded, const Question& q);
void add_pairs(PageData& data, const Ranked& ranked, const Question& q);
void add_yarn(PageData& data, const Question& q);
void add_ground(PageData& data, const std::vector<const JudgedPlan*>& best, const Question& q);

}  // namespace gristwright::cli
