#include <fmt/core.h>

#include "catalog/text/nearest.hpp"
#include "cli/command.hpp"
#include "cli/commands/answer.hpp"
#include "cli/commands/backup.hpp"
#include "cli/commands/batch.hpp"
#include "cli/commands/card.hpp"
#include "cli/commands/compare.hpp"
#include "cli/commands/export.hpp"
#include "cli/commands/hands.hpp"
#include "cli/commands/help.hpp"
#include "cli/commands/import.hpp"
#include "cli/commands/makes.hpp"
#include "cli/commands/page.hpp"
#include "cli/commands/picture.hpp"
#include "cli/commands/plan.hpp"
#include "cli/commands/sheet.hpp"
#include "cli/commands/spin_for.hpp"
#include "cli/commands/spin_more.hpp"
#include "cli/commands/split.hpp"
#include "cli/commands/start.hpp"
#include "cli/commands/swatch.hpp"
#include "cli/commands/templates.hpp"
#include "cli/commands/undo.hpp"
#include "cli/commands/weigh.hpp"
#include "cli/commands/yarn.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {

const std::vector<Command>& commands() {
    static const std::vector<Command> all{
        yarn_command(),      makes_command(),    plan_command(),      compare_command(),
        split_command(),     answer_command(),   page_command(),      sheet_command(),
        picture_command(),   card_command(),     templates_command(), batch_command(),
        swatch_command(),    hands_command(),    start_command(),     weigh_command(),
        spin_more_command(), spin_for_command(), undo_command(),      backup_command(),
        export_command(),    import_command(),   help_command()};
    return all;
}

std::vector<std::string> command_names() { return catalog::names_of(commands()); }

const Command& command_named(const std::string& name) {
    for (const auto& command : commands())
        if (command.name == name) return command;
    const auto names = command_names();
    throw Misused(fmt::format("there is no command '{}'{}; the commands are: {}", name,
                              catalog::did_you_mean(name, names), joined(names)));
}

}  // namespace gristwright::cli
