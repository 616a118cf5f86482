#include "cli/topics.hpp"

#include <fmt/core.h>

#include "catalog/nearest.hpp"
#include "cli/exit_codes.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

std::string exit_codes() {
    std::string out = "Exit codes: what a script learns from the program\n\n";
    for (const auto& [code, meaning] : exit_meanings)
        out += labelled(fmt::format("{:>4}  ", int{code}), meaning, 2) + "\n";
    return out + "\nThe answer is on the standard output, everything else on the standard error.\n";
}

}  // namespace

const std::vector<Topic>& topics() {
    static const std::vector<Topic> all{{"units", std::string(embedded::help_units)},
                                        {"marks", std::string(embedded::help_marks)},
                                        {"certainty", std::string(embedded::help_certainty)},
                                        {"wraps", std::string(embedded::help_wraps)},
                                        {"exit-codes", exit_codes()}};
    return all;
}

std::vector<std::string> topic_names() { return catalog::names_of(topics()); }

std::string_view about(const Topic& topic) {
    const std::string_view text = topic.text;
    const auto begin = text.find(": ") + 2;
    return text.substr(begin, text.find('\n') - begin);
}

}  // namespace gristwright::cli
