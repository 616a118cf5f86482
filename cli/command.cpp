#include "cli/command.hpp"

#include <fmt/core.h>

#include <CLI/CLI.hpp>
#include <algorithm>

#include "catalog/text/nearest.hpp"
#include "cli/output/layout.hpp"
#include "engine/project/role.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

using namespace std::string_literals;

std::vector<std::string> option_names(const Command& command) {
    std::vector<std::string> names{"--help"};
    for (const auto& option : command.options) names.push_back("--" + std::string(option.name));
    return names;
}

bool is_option(const std::string& word) {
    return word.size() > 1 && word[0] == '-' && (word[1] < '0' || word[1] > '9');
}

// The parser takes an unknown option for a spare word: say which it was.
void check_options(const Command& command, const std::vector<std::string>& typed) {
    const auto names = option_names(command);
    for (const auto& word : typed) {
        if (word == "--") return;
        for (const std::string_view dash : {"–", "—"})  // as letters and chats turn "--" into
            if (word.rfind(dash, 0) == 0)
                throw Misused(fmt::format("'{}' begins with a long dash: type two short ones, --{}",
                                          word, word.substr(dash.size())));
        if (!is_option(word)) continue;
        const auto name = word.substr(0, word.find('='));
        if (std::find(names.begin(), names.end(), name) == names.end())
            throw Misused(fmt::format("{} has no option '{}'{}", command.name, name,
                                      catalog::did_you_mean(name, names)));
        for (const auto& option : command.options)
            if (name == "--" + std::string(option.name) && name != word && option.value.empty())
                throw Misused(fmt::format("{}: {} takes no value", command.name, name));
    }
}

// "metric, imperial or both".
std::string choice(const std::vector<std::string>& words) {
    const std::vector<std::string> first(words.begin(), words.end() - 1);
    return joined(first) + (first.empty() ? "" : " or ") + words.back();
}

void check_word(const Option& option, const std::string& typed) {
    const auto known = apart(option.words);
    if (known.empty()) return;
    if (std::find(known.begin(), known.end(), typed) == known.end())
        throw Refused(fmt::format("--{} is {}, not '{}'{}", option.name, choice(known), typed,
                                  catalog::did_you_mean(typed, known)));
}

// The parser looks into values: it takes "[a,b]" for a list, "{}" for nothing, "-5m" for an option.
// A mark before each value keeps it from that.
constexpr char mark = '=';

std::vector<std::string> marked(const std::vector<std::string>& typed) {
    std::vector<std::string> out;
    bool only_words = false;
    for (const auto& word : typed) {
        const auto equals = word.find('=');
        if (only_words || !is_option(word))
            out.push_back(mark + word);
        else if (equals == std::string::npos)
            out.push_back(word);
        else
            out.push_back(word.substr(0, equals + 1) + mark + word.substr(equals + 1));
        only_words = only_words || word == "--";
    }
    return out;
}

void unmark(std::vector<std::string>& values) {
    for (auto& value : values) value.erase(0, 1);
}

bool is_typed(const std::string& name, const std::vector<std::string>& typed) {
    const auto option = "--" + name;
    return std::any_of(typed.begin(), typed.end(), [&](const std::string& word) {
        return word == option || word.starts_with(option + "=");
    });
}

// "-o" is the one short option: --out, where a command writes a file. --main was called --keep, and
// what people have written down goes on to work.
std::vector<std::string> spelt_out(const Command& command, std::vector<std::string> typed) {
    for (const auto& option : command.options) {
        if (option.name == "out") std::replace(typed.begin(), typed.end(), "-o"s, "--out"s);
        if (option.name == "main") std::replace(typed.begin(), typed.end(), "--keep"s, "--main"s);
    }
    return typed;
}

// A part as the help spells it out, "warp under another weft", is the word for it.
void spell_shortly(Arguments& out) {
    const auto as = out.options.find("as");
    if (as == out.options.end()) return;
    for (auto& part : as->second)
        if (const auto role = role_named(part)) part = name_of(*role);
}

}  // namespace

std::string Arguments::text(std::string_view option, std::string_view otherwise) const {
    const auto found = options.find(option);
    if (found == options.end() || found->second.empty()) return std::string(otherwise);
    return found->second.back();
}

std::vector<std::string> Arguments::all(std::string_view option) const {
    const auto found = options.find(option);
    return found == options.end() ? std::vector<std::string>{} : found->second;
}

std::vector<std::string> apart(std::string_view words, char at) {
    std::vector<std::string> out;
    while (!words.empty()) {
        const auto end = words.find(at);
        out.emplace_back(words.substr(0, end));
        words = end == std::string_view::npos ? "" : words.substr(end + 1);
    }
    return out;
}

Arguments parse(const Command& command, const std::vector<std::string>& words) {
    const auto typed = spelt_out(command, words);
    check_options(command, typed);
    CLI::App app;
    app.set_help_flag();
    Arguments out;
    std::map<std::string, std::vector<std::string>, std::less<>> values;
    std::map<std::string, bool> flags;
    for (const auto& option : command.options) {
        const std::string name(option.name);
        if (!is_typed(name, typed)) continue;  // the parser compares each with all before it
        if (option.value.empty())
            app.add_flag("--" + name, flags[name]);
        else
            app.add_option("--" + name, values[name])
                ->allow_extra_args(false)
                ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    }
    app.add_option("words", out.words);  // too many are counted below
    auto reversed = marked(typed);
    std::reverse(reversed.begin(), reversed.end());
    try {
        app.parse(reversed);
    } catch (const CLI::ArgumentMismatch& error) {
        const std::string what = error.what();
        throw Misused(
            fmt::format("{}: {} needs a value", command.name, what.substr(0, what.find(':'))));
    } catch (const CLI::ParseError& error) {
        throw Misused(fmt::format("{}: {}", command.name, error.what()));
    }
    unmark(out.words);
    for (const auto& option : command.options) {
        auto& given = values[std::string(option.name)];
        if (given.size() > 1 && !option.repeats)
            throw Misused(fmt::format("{}: --{} is given {} times; which one holds?", command.name,
                                      option.name, given.size()));
        unmark(given);
        if (!given.empty()) out.options[std::string(option.name)] = std::move(given);
    }
    for (const auto& [name, given] : flags)
        if (given) out.options[name] = {};
    spell_shortly(out);
    if (out.words.size() < command.least_words || out.words.size() > command.most_words)
        throw Misused(fmt::format("{} takes {}; see gristwright {} --help", command.name,
                                  command.words.empty() ? "no words" : command.words,
                                  command.name));
    for (const auto& option : command.options)
        for (const auto& word : out.all(option.name)) check_word(option, word);
    return out;
}

std::string help(const Option& option) {
    return std::string(option.help) +
           (option.by_default.empty() ? "" : fmt::format(" (default: {})", option.by_default));
}

std::string help(const Command& command) {
    const auto usage = labelled(fmt::format("gristwright {}", command.name), command.words, 0);
    auto out = usage.substr(0, usage.find_last_not_of(' ') + 1) + "\n" +
               wrapped(command.summary, 0) + "\n\n";
    for (const auto& option : command.options) {
        auto left = "  --" + std::string(option.name);
        if (!option.value.empty()) left += " " + std::string(option.value);
        if (left.size() < 27)
            left.resize(27, ' ');
        else
            left += "\n" + std::string(27, ' ');
        out += left + wrapped(help(option), 27).substr(27) + "\n";
    }
    if (!command.example.empty())
        out += fmt::format("\nFor example:\n  gristwright {} {}\n", command.name, command.example);
    return out;
}

}  // namespace gristwright::cli
