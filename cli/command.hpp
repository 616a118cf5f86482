// A command describes itself in one record: name, what it does, what it takes. Parsing, help, man
// page and completion are made from it.
#pragma once

#include <map>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace gristwright::cli {

struct Option {
    std::string_view name;   // without the two hyphens
    std::string_view value;  // what is written after it, "16wpi"; empty: a flag
    std::string_view help;
    bool repeats = false;
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

struct Answer {
    std::string text;   // for stdout
    std::string notes;  // for stderr
    int exit_code = 0;
};

struct Command {
    std::string_view name, summary;
    std::string_view words;  // "TEMPLATE [BATCH]"; empty: none
    std::size_t least_words = 0, most_words = 0;
    std::vector<Option> options;
    Answer (*run)(const Arguments&);
};

// How it was used wrongly: a usage error, exit 64.
struct Misused : std::invalid_argument {
    using std::invalid_argument::invalid_argument;
};

// Parses what follows the command's name. Throws Misused.
Arguments parse(const Command& command, const std::vector<std::string>& typed);

std::string help(const Command& command);

const std::vector<Command>& commands();

}  // namespace gristwright::cli
