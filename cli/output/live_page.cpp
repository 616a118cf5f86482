#include "cli/output/live_page.hpp"

#include <filesystem>

#include "catalog/text/file.hpp"

namespace gristwright::cli {
namespace {

// Where the page waits for its batch.
constexpr std::string_view place = R"(<script type="application/toml" id="batch">)";

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

}  // namespace

std::string live_page(const catalog::BatchText& batch) {
    auto page = empty_page();
    const auto at = page.find(place);
    if (at == std::string::npos)
        throw catalog::StorageFailed(
            "the page beside the program is of another version: make it anew with "
            "bash cli/web/build");
    page.insert(at + place.size(), inert_in_script(catalog::toml_of(batch)));
    return page;
}

}  // namespace gristwright::cli
