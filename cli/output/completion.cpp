#include "cli/output/completion.hpp"

#include <fmt/core.h>

#include "cli/command.hpp"
#include "cli/output/embedded.hpp"
#include "cli/topics.hpp"

namespace gristwright::cli {
namespace {

std::string quoted(const std::vector<std::string>& words) {
    std::string out;
    for (const auto& word : words) out += fmt::format(" '{}'", word);
    return out;
}

std::string options_case(const Command& command) {
    std::vector<std::string> names;
    for (const auto& option : command.options) names.push_back("--" + std::string(option.name));
    return fmt::format("        {}) printf '%s\\n'{} ;;\n", command.name, quoted(names));
}

// What may follow an option: its words, names that are asked for, or nothing that is known.
std::string values_of(const Option& option) {
    if (!option.words.empty()) return "printf '%s\\n'" + quoted(apart(option.words));
    return option.value == "TEMPLATE" ? "_gristwright_names templates" : ":";
}

std::string values_cases(const Command& command) {
    std::string out;
    for (const auto& option : command.options)
        if (!option.value.empty())
            out += fmt::format("        '{} --{}') {} ;;\n", command.name, option.name,
                               values_of(option));
    return out;
}

bool takes(const Command& command, std::string_view what) {
    return command.words.find(what) != std::string_view::npos;
}

// The words of a synopsis that are typed as they stand: "add NAME | list" has add and list.
std::vector<std::string> literal(std::string_view synopsis) {
    std::vector<std::string> out;
    std::string word;
    for (const char c : std::string(synopsis) + " ") {
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '.') {
            word += c;
            continue;
        }
        if (!word.empty() && word[0] >= 'a' && word[0] <= 'z') out.push_back(word);
        word.clear();
    }
    return out;
}

std::string words_case(const Command& command) {
    auto typed = literal(command.words);
    if (takes(command, "TOPIC"))
        for (const auto& names : {topic_names(), command_names()})
            typed.insert(typed.end(), names.begin(), names.end());
    std::string out;
    if (!typed.empty()) out += "printf '%s\\n'" + quoted(typed) + "; ";
    if (takes(command, "TEMPLATE")) out += "_gristwright_names templates; ";
    if (takes(command, "BATCH") || takes(command, "NAME")) out += "_gristwright_names batches; ";
    return out.empty() ? "" : fmt::format("        {}) {};;\n", command.name, out);
}

template <class Cases>
std::string function(std::string_view name, std::string_view of, std::string_view none,
                     Cases cases) {
    auto out = fmt::format("_gristwright_{}() {{\n    case \"{}\" in\n", name, of);
    for (const auto& command : commands()) out += cases(command);
    return out + fmt::format("        *) {} ;;\n    esac\n}}\n", none);
}

}  // namespace

std::string bash_completion() {
    return "# bash completion for gristwright, made by: gristwright help --print completion\n" +
           function("options", "$1", ":", options_case) +
           function("values", "$1 $2", "return 1", values_cases) +
           function("words", "$1", ":", words_case) + std::string(embedded::completion);
}

}  // namespace gristwright::cli
