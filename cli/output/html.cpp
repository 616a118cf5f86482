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
    for (const auto& one : said) {
        PageData line{"text", capital(one)};
        line.set("number", std::to_string(out.list_value().size() + 1));
        out << line;
    }
    return out;
}

}  // namespace gristwright::cli
