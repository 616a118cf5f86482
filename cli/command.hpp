// A command describes itself in one record: name, what it does, what it takes. Parsing, help, man
// page and completion are made from it.
#pragma once

#include <map>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "engine/units/failure.hpp"

namespace gristwright::cli {

struct Option {
    std::string_view name;   // without the two hyphens
    std::string_view value;  // what is written after it, "16wpi"; empty: a flag
    std::string_view help;
    bool repeats = false;
    std::string_view words = "";  // all that it may be, "metric|imperial|both"; empty: not words
    std::string_view by_default = "";  // what holds when it is not given; empty: the help says
};

// What was typed. Numbers stay text until our own readers read them.
class Arguments {
  public:
    std::map<std::string, std::vector<std::string>, std::less<>> options;
    std::vector<std::string> words;  // after the command

    bool has(std::string_view option) const { return options.find(option) != options.end(); }
    // The option's last value, or `otherwise`.
    std::string text(std::string_view option, std::string_view otherwise = "") const;
    std::vector<std::string> all(std::string_view option) const;
};

struct [[nodiscard]] Answer {
    std::string text;   // for stdout
    std::string notes;  // for stderr
    int exit_code = 0;
    std::string stands = "";  // what was done, and holds even where the text cannot be written
};

struct Command {
    std::string_view name, summary;
    std::string_view words;  // "TEMPLATE [BATCH]"; empty: none
    std::size_t least_words = 0, most_words = 0;
    std::vector<Option> options;
    Answer (*run)(const Arguments&);
    std::string_view example;  // a line of a session document, after "gristwright NAME "
};

// How it was used wrongly: a usage error, exit 64.
struct Misused : Refused {
    using Refused::Refused;
};

// The words of an option, or of what a command takes, apart: "add|list" -> add, list.
std::vector<std::string> apart(std::string_view words, char at = '|');

// Parses what follows the command's name. Throws Misused, and Refused for a word that
// an option does not know.
Arguments parse(const Command& command, const std::vector<std::string>& typed);

// An option's help with its default: "least chance, 50 to 99.9 % (default: 90)".
std::string help(const Option& option);
std::string help(const Command& command);

const std::vector<Command>& commands();
std::vector<std::string> command_names();
// Throws Misused with the nearest name.
const Command& command_named(const std::string& name);

}  // namespace gristwright::cli
