#include "cli/output/html.hpp"

#include <kainjow/mustache.hpp>

#include "cli/output/layout.hpp"
#include "cli/output/svg.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {

std::string rendered(std::string_view page_template, const PageData& data) {
    kainjow::mustache::mustache form{std::string(page_template)};
    if (!form.is_valid()) throw OurMistake("page template: " + form.error_message());
    form.set_custom_escape([](const std::string& text) { return escaped(text); });
    return form.render(data);
}

PageData lines_of(const std::vector<std::string>& said) {
    PageData out{PageData::type::list};
    for (const auto& one : said) out << PageData{"text", capital(one)};
    return out;
}

}  // namespace gristwright::cli
