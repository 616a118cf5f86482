#include "cli/output/manual.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/exit_codes.hpp"
#include "cli/output/layout.hpp"
#include "cli/topics.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright::cli {
namespace {

// A line that no formatter takes for a request.
std::string text_line(std::string_view line) {
    std::string out = !line.empty() && (line[0] == '.' || line[0] == '\'') ? "\\&" : "";
    for (const char c : line) out += c == '\\' ? "\\e" : std::string(1, c);
    return out + "\n";
}

std::string lines(std::string_view text) {
    std::string out;
    for (const auto& line : apart(wrapped(text, 0), '\n')) out += text_line(line);
    return out;
}

// Running text, each sentence on lines of its own.
std::string running(std::string_view text) {
    std::string out;
    for (auto end = text.find(". "); end != std::string_view::npos; end = text.find(". ")) {
        out += lines(text.substr(0, end + 1));
        text.remove_prefix(end + 2);
    }
    return out + lines(text);
}

// One argument of a macro: never a macro itself, never ended by a space or a quote.
std::string argument(std::string_view text) {
    std::string out = "\"\\&";
    for (const char c : text) out += c == '"' ? "\\(dq" : c == '\\' ? "\\e" : std::string(1, c);
    return out + "\"";
}

std::string head(std::string_view name, std::string_view about) {
    about = about.substr(0, about.find(". "));
    if (!about.empty() && about.back() == '.') about.remove_suffix(1);
    std::string title(name);
    for (char& c : title) c = ascii::upper(c);
    return fmt::format(".Dd {}\n.Dt {} 1\n.Os gristwright {}\n.Sh NAME\n.Nm {}\n.Nd {}\n",
                       GRISTWRIGHT_RELEASED, title, GRISTWRIGHT_VERSION, name, about);
}

std::string options(const Command& command) {
    if (command.options.empty()) return "";
    std::string out = ".Sh OPTIONS\n.Bl -tag -width Ds\n";
    for (const auto& option : command.options) {
        out += fmt::format(".It Fl -{}", option.name);
        if (!option.value.empty()) out += " Ar " + argument(option.value);
        out += "\n" + running(capital(help(option)) + ".");
        if (option.repeats) out += "May be given again.\n";
    }
    return out + ".El\n";
}

std::string exit_status() {
    std::string out = ".Sh EXIT STATUS\n.Bl -tag -width Ds\n";
    for (const auto& [code, meaning] : exit_meanings)
        out += fmt::format(".It {}\n{}", int{code}, running(meaning));
    return out + ".El\n";
}

std::string example(const Command& command) {
    if (command.example.empty()) return "";
    return fmt::format(".Sh EXAMPLES\n.Dl {}\n",
                       argument(fmt::format("gristwright {} {}", command.name, command.example)));
}

std::string tagged_list(const std::vector<std::pair<std::string_view, std::string_view>>& items) {
    std::string out = ".Bl -tag -width Ds\n";
    for (const auto& [name, text] : items) out += fmt::format(".It Cm {}\n{}", name, running(text));
    return out + ".El\n";
}

std::string command_list() {
    std::vector<std::pair<std::string_view, std::string_view>> items;
    for (const auto& command : commands()) items.emplace_back(command.name, command.summary);
    return ".Sh COMMANDS\n" + tagged_list(items);
}

// A topic's title, and its text as it stands.
std::string topic_section(const HelpTopic& topic) {
    const auto first = topic.text.find('\n');
    std::string out = ".Ss " + topic.text.substr(0, topic.text.find(':')) + "\n.Bd -literal\n";
    for (const auto& line : apart(std::string_view(topic.text).substr(first + 2), '\n'))
        out += text_line(line);
    return out + ".Ed\n";
}

std::string see_also() {
    std::string out = ".Sh SEE ALSO\n";
    auto names = command_names();
    std::sort(names.begin(), names.end());
    for (std::size_t i = 0; i < names.size(); ++i)
        out += fmt::format(".Xr gristwright-{} 1{}\n", names[i], i + 1 < names.size() ? " ," : "");
    return out;
}

}  // namespace

std::string manual() {
    std::string out = head("gristwright", "what a finished batch of handspun can make") +
                      ".Sh SYNOPSIS\n.Nm\n.Ar COMMAND\n.Op Ar words\n.Op Ar options\n.Nm\n"
                      ".Cm help\n.Op Ar TOPIC\n.Nm\n.Fl -version\n.Sh DESCRIPTION\n" +
                      running(
                          "Says what a batch of yarn is, what it can make, knitted or woven, "
                          "how large, with what certainty and why. Every answer is an estimate "
                          "with a range.") +
                      command_list() + exit_status() + ".Sh TOPICS\n";
    for (const auto& topic : topics())
        if (topic.name != "exit-codes") out += topic_section(topic);
    return out + see_also();
}

std::string manual(const Command& command) {
    const auto name = fmt::format("gristwright-{}", command.name);
    auto out = head(name, command.summary) +
               fmt::format(".Sh SYNOPSIS\n.Nm \"gristwright {}\"\n", command.name);
    if (!command.words.empty()) out += ".Ar " + argument(command.words) + "\n";
    if (!command.options.empty()) out += ".Op Ar options\n";
    return out + ".Sh DESCRIPTION\n" + running(command.summary) + options(command) + exit_status() +
           example(command) + ".Sh SEE ALSO\n.Xr gristwright 1\n";
}

}  // namespace gristwright::cli
