// Which article is asked for, and at what size.
#pragma once

#include <optional>
#include <string>

#include "cli/question.hpp"

namespace gristwright::cli {

// Throws Refused for a --size that no such article has.
void check_size(const Arguments& arguments, const Question& q, const Template& article);
void check_size(const Arguments& arguments, const std::optional<Length>& size,
                const Template& article);

// The template of that name, or read from that path. Throws Refused with the nearest
// name.
Template find_template(const catalog::Catalogue& catalogue, const std::string& name);

}  // namespace gristwright::cli
