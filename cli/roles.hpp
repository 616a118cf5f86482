// What part a batch plays in an article (--as), and the yarn beside it (--with).
#pragma once

#include <string>
#include <vector>

#include "cli/output/describe.hpp"
#include "cli/ranking.hpp"

namespace gristwright::cli {

std::vector<Option> role_options();

// The article with the batch in the part that --as names, as the template has it where it is not
// given; `q` learns of the other yarn, and holds the yarn doubled where that was asked. Throws
// Refused for a part that the article does not have.
Template part_played(const Arguments& arguments, Template article, Question& q);

// The batch's yarn, where another is asked about.
OtherYarn as_other(const std::string& name, const YarnProfile& yarn);
// --with "yarn 2": the number of another yarn of the same batch; empty: something else is meant.
std::string yarn_of_same_batch(const Arguments& arguments);
// The question of that other yarn of the batch that `q` is about.
Question of_other_yarn(const Arguments& arguments, const Question& q);

// The options again with which such a project was begun.
Arguments as_begun(const Arguments& arguments, const catalog::ProjectText& project);
// The plan that was begun, at the size that was fixed then.
Plan plan_begun(const Arguments& arguments, const catalog::ProjectText& project, Question& q);

// What of the other yarn to have, and what it must be; empty: the batch is all of it.
std::string other_yarn_text(const Plan& plan, const Question& q);

// Articles that the batch serves better as a part, or doubled, than alone; empty: none.
std::string better_in_part(const Ranked& alone, const Question& q, std::string_view craft);

}  // namespace gristwright::cli
