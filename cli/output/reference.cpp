#include "cli/output/reference.hpp"

#include <fmt/core.h>

#include "cli/command.hpp"
#include "cli/topics.hpp"

namespace gristwright::cli {
namespace {

// A cell of a table: a stroke would end it.
std::string table_cell(std::string_view text) {
    std::string out;
    for (const char c : text) out += c == '|' ? "\\|" : std::string(1, c);
    return out;
}

std::string section(const Command& command) {
    auto out = fmt::format("\n## gristwright {}\n\n{}\n\n    gristwright {} {}\n", command.name,
                           command.summary, command.name,
                           command.words.empty() ? "[options]" : command.words);
    if (!command.options.empty()) out += "\n| option | such as | what |\n| --- | --- | --- |\n";
    for (const auto& option : command.options)
        out += fmt::format("| `--{}` | {} | {}{} |\n", option.name,
                           option.value.empty() ? "" : "`" + table_cell(option.value) + "`",
                           table_cell(help(option)), option.repeats ? "; may be given again" : "");
    if (!command.example.empty())
        out += fmt::format("\nFor example: `gristwright {} {}`\n", command.name, command.example);
    return out;
}

}  // namespace

std::string reference() {
    std::string out =
        "# Reference\n\nMade by `gristwright help --print reference`; not written by hand.\n";
    for (const auto& command : commands()) out += section(command);
    for (const auto& topic : topics())
        out += fmt::format("\n## Topic: {}\n\n```text\n{}```\n", topic.name, topic.text);
    return out;
}

}  // namespace gristwright::cli
