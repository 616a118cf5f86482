#include "cli/output/next.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/question.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t longest_command = 200;  // characters that anybody copies

bool needs_no_quotes(char c) {
    return ascii::is_letter(c) || ascii::is_digit(c) ||
           std::string_view("/._-+,:=@%").find(c) != std::string_view::npos;
}

// The options that say what batch it is and what is asked of it.
std::string options_again(const Arguments& arguments) {
    std::string out;
    for (const auto& option : together({batch_options(), plan_options(), {units_option}})) {
        if (!arguments.has(option.name)) continue;
        if (option.value.empty()) out += fmt::format(" --{}", option.name);
        for (const auto& value : arguments.all(option.name))
            out += fmt::format(" --{} {}", option.name, shell_word(value));
    }
    return out;
}

}  // namespace

std::string shell_word(const std::string& word) {
    if (!word.empty() && std::all_of(word.begin(), word.end(), needs_no_quotes)) return word;
    std::string out = "'";
    for (const char c : inert(word)) out += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return out + "'";
}

std::string whole_command(const std::vector<std::string>& words, const std::string& batch,
                          const Arguments& arguments) {
    std::string out = "gristwright";
    for (const auto& word : words) out += " " + shell_word(word);
    out += (batch.empty() ? "" : " " + shell_word(batch)) + options_again(arguments);
    return characters(out) <= longest_command ? out : "";
}

std::string next_line(const std::vector<std::string>& words, const std::string& batch,
                      const Arguments& arguments) {
    const auto whole = whole_command(words, batch, arguments);
    if (!whole.empty()) return "Next: " + whole + "\n";
    std::string begins = "Next: gristwright";
    for (const auto& word : words) begins += " " + shell_word(word);
    return wrapped(begins + " (and the batch as you gave it)", 0) + "\n";
}

}  // namespace gristwright::cli
