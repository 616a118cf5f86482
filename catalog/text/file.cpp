#include "catalog/text/file.hpp"

#include <fstream>
#include <iterator>
#include <system_error>

#include "engine/units/ascii.hpp"

namespace gristwright::catalog {

bool is_named_as_a_sheet(std::string_view path) {
    const auto name = ascii::lowered(path);
    return name.ends_with(".csv") || name.ends_with(".tsv") || name.ends_with(".txt");
}

std::string why_not_opened(const std::filesystem::path& path) {
    std::error_code error;
    const auto name = path.string();
    if (std::filesystem::is_directory(path, error)) return "'" + name + "' is a folder, not a file";
    if (std::filesystem::is_symlink(path, error) && !std::filesystem::exists(path, error))
        return "'" + name + "' is a link to a file that is not there";
    if (!std::filesystem::exists(path, error)) return "there is no file '" + name + "'";
    return "cannot open '" + name + "': is it yours to read?";
}

std::string read_file(const std::filesystem::path& path) {
    std::error_code error;
    std::ifstream file(path, std::ios::binary);
    if (!file || std::filesystem::is_directory(path, error))
        throw MissingFile(why_not_opened(path));
    std::string text{std::istreambuf_iterator<char>(file), {}};
    if (file.bad()) throw MissingFile("cannot read '" + path.string() + "'");
    return text;
}

}  // namespace gristwright::catalog
