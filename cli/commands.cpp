#include "cli/command.hpp"
#include "cli/commands/answer.hpp"
#include "cli/commands/compare.hpp"
#include "cli/commands/makes.hpp"
#include "cli/commands/plan.hpp"
#include "cli/commands/split.hpp"
#include "cli/commands/templates.hpp"
#include "cli/commands/yarn.hpp"

namespace gristwright::cli {

const std::vector<Command>& commands() {
    static const std::vector<Command> all{yarn_command(),     makes_command(), plan_command(),
                                          compare_command(),  split_command(), answer_command(),
                                          templates_command()};
    return all;
}

}  // namespace gristwright::cli
