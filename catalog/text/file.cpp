#include "catalog/text/file.hpp"

#include <fstream>
#include <iterator>
#include <system_error>

namespace gristwright::catalog {

std::string read_file(const std::filesystem::path& path) {
    std::error_code error;
    std::ifstream file(path, std::ios::binary);
    if (!file || std::filesystem::is_directory(path, error))
        throw MissingFile("cannot open '" + path.string() + "'");
    std::string text{std::istreambuf_iterator<char>(file), {}};
    if (file.bad()) throw MissingFile("cannot read '" + path.string() + "'");
    return text;
}

}  // namespace gristwright::catalog
