// Pages from templates (mustache): text is escaped as it goes in, {{{markup}}} is our own.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace kainjow::mustache {
template <typename string_type>
class basic_data;
}

namespace gristwright::cli {

using PageData = kainjow::mustache::basic_data<std::string>;

// Throws OurMistake for a template that is none.
std::string rendered(std::string_view page_template, const PageData& data);

// A list of lines, {{#each}}{{number}} {{text}}{{/each}}, numbered from 1, each with a capital.
PageData lines_of(const std::vector<std::string>& said);

}  // namespace gristwright::cli
