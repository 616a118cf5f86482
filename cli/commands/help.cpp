#include "cli/commands/help.hpp"

#include <fmt/core.h>

#include "catalog/text/nearest.hpp"
#include "cli/output/completion.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/manual.hpp"
#include "cli/output/reference.hpp"
#include "cli/question.hpp"
#include "cli/topics.hpp"

namespace gristwright::cli {
namespace {

std::string lines(const std::vector<std::string>& names) {
    std::string out;
    for (const auto& name : names) out += inert(name) + "\n";
    return out;
}

std::vector<std::string> remembered(const Arguments& arguments) {
    return notebook(arguments, catalog::Notebook::Mode::read_only).batch_names();
}

// What a completion, a packager or the documentation reads.
std::string printed(const std::string& what, const Arguments& arguments) {
    if (what == "completion") return bash_completion();
    if (what == "reference") return reference();
    if (what == "commands") return lines(command_names());
    if (what == "templates") return lines(whole_catalogue().template_names());
    if (what == "batches") return lines(remembered(arguments));
    if (arguments.words.empty()) return manual();
    return manual(command_named(arguments.words[0]));
}

// A topic or a command.
std::string explained(const std::string& name) {
    for (const auto& topic : topics())
        if (topic.name == name) return topic.text;
    auto names = command_names();
    for (const auto& command : commands())
        if (command.name == name) return help(command);
    for (const auto& topic : topic_names()) names.push_back(topic);
    throw Misused(fmt::format("there is no help on '{}'{}; the topics are: {}", name,
                              catalog::did_you_mean(name, names), joined(topic_names())));
}

Answer run_help(const Arguments& arguments) {
    if (arguments.has("print")) return {printed(arguments.text("print"), arguments), ""};
    return {arguments.words.empty() ? overview() : explained(arguments.words[0]), ""};
}

std::string line(std::string_view name, std::string_view text) {
    return labelled(padded(std::string(name), 12), text, 2) + "\n";
}

}  // namespace

std::string overview() {
    std::string out = "gristwright: what a finished batch of handspun can make\n\n";
    for (const auto& command : commands()) out += line(command.name, command.summary);
    out += "\nOptions of each: gristwright COMMAND --help\n\nTopics, gristwright help TOPIC:\n";
    for (const auto& topic : topics()) out += line(topic.name, about(topic));
    return out;
}

Command help_command() {
    return {"help",
            "Explains a topic or a command. Alone it lists both.",
            "[TOPIC | COMMAND]",
            0,
            1,
            {{"print", "manual",
              "for scripts: the manual page (of a command), the completion of bash, the reference "
              "of the documentation, or names, one a line",
              false, "manual|completion|reference|commands|templates|batches"},
             notebook_option},
            run_help,
            "certainty"};
}

}  // namespace gristwright::cli
