#include "cli/output/live_page.hpp"

#include <filesystem>

#include "catalog/text/file.hpp"

namespace gristwright::cli {
namespace {

// Where the page waits for its batch and for articles.
constexpr std::string_view batch_place = R"(<script type="application/toml" id="batch">)";
constexpr std::string_view articles_place = R"(<template id="articles-inside">)";

std::string empty_page() {
    namespace fs = std::filesystem;
    std::error_code unknown;
    const auto here = fs::read_symlink("/proc/self/exe", unknown).parent_path();
    for (const auto* beside :
         {"../share/gristwright/gristwright.html", "../../web/gristwright.html"})
        if (const auto path = (here / beside).lexically_normal(); fs::exists(path, unknown))
            return catalog::read_file(path);
    throw catalog::StorageFailed(
        "the page that holds the whole tool is not here: bash cli/web/build makes it");
}

// Nothing in the batch can end the element it stands in: TOML knows \u003C in its texts.
std::string inert_in_script(std::string toml) {
    for (auto at = toml.find('<'); at != std::string::npos; at = toml.find('<', at))
        toml.replace(at, 1, "\\u003C");
    return toml;
}

// As the text of an element, line ends and all.
std::string as_html_text(std::string_view text) {
    std::string out;
    for (const char letter : text) {
        if (letter == '&')
            out += "&amp;";
        else if (letter == '<')
            out += "&lt;";
        else
            out += letter;
    }
    return out;
}

void put(std::string& page, std::string_view place, const std::string& what) {
    const auto at = page.find(place);
    if (at == std::string::npos)
        throw catalog::StorageFailed(
            "the page beside the program is of another version: make it anew with "
            "bash cli/web/build");
    page.insert(at + place.size(), what);
}

}  // namespace

std::string live_page(const catalog::BatchText& batch, const std::vector<OwnArticle>& own) {
    auto page = empty_page();
    put(page, batch_place, inert_in_script(catalog::toml_of(batch)));
    std::string articles;
    for (const auto& [name, toml] : own)  // a template's name is small letters and hyphens
        articles += "<code title=\"" + name + "\">" + as_html_text(toml) + "</code>";
    put(page, articles_place, articles);
    return page;
}

}  // namespace gristwright::cli
