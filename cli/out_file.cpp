#include "cli/out_file.hpp"

#include <fmt/core.h>

#include <filesystem>
#include <utility>

#include "cli/output/layout.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {
namespace {

namespace fs = std::filesystem;

void add_files_in(const fs::path& folder, std::vector<std::string>& out) {
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(folder, none))
        out.push_back(entry.path().string());
}

// The notebook with what SQLite or an upgrade keeps beside it, and the templates.
std::vector<std::string> kept_for_the_person(const Arguments& arguments) {
    std::vector<std::string> out;
    const auto notebook = notebook_place(arguments);
    if (!notebook.empty()) out.push_back(notebook.string());
    const auto usual = catalog::Notebook::usual_place();
    if (usual.empty()) return out;
    add_files_in(usual.parent_path(), out);
    add_files_in(usual.parent_path() / "templates", out);
    return out;
}

}  // namespace

std::vector<Option> out_options(std::string_view example, std::string_view help) {
    return {{"out", example, help}, {"replace", "", "put the new file in an old one's place"}};
}

NewFile out_file(const Arguments& arguments) {
    NewFile out{arguments.text("out"), arguments.has("replace"), kept_for_the_person(arguments)};
    out.spared.insert(out.spared.end(), arguments.words.begin(), arguments.words.end());
    for (const auto& [option, values] : arguments.options)
        if (option != "out") out.spared.insert(out.spared.end(), values.begin(), values.end());
    check_new_file(out);
    return out;
}

Answer written(const NewFile& file, const std::string& text, const std::string& said,
               std::vector<std::string> notes) {
    bool told = false;
    return written(
        file, [&] { return std::exchange(told, true) ? std::string() : text; }, said,
        std::move(notes));
}

Answer written(const NewFile& file, const Pieces& pieces, const std::string& said,
               std::vector<std::string> notes) {
    const bool behind_it = is_standard_output(file);
    write_file(file, pieces);
    if (!behind_it)
        return {said + "\n", joined(notes, "\n"), 0, fmt::format("'{}' is written", file.path)};
    notes.push_back(said);
    return {"", joined(notes, "\n")};
}

}  // namespace gristwright::cli
