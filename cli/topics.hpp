// What `gristwright help TOPIC` explains: texts of cli/help/, and what is read off
// the tables of fibres, fabrics and exit codes.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::cli {

struct HelpTopic {
    std::string_view name;
    std::string text;  // its first line is its title, "Units: how ..."
};

const std::vector<HelpTopic>& topics();
std::vector<std::string> topic_names();

// "how measurements are written": the first line without its first word.
std::string_view about(const HelpTopic& topic);

}  // namespace gristwright::cli
