// A notebook's file, damaged in every way: opened, looked at and written out, never changed.
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "catalog/notebook/notebook.hpp"
#include "tests/fuzz/reader.hpp"

using namespace gristwright;
using namespace gristwright::fuzz;

namespace {

// Removed when the run ends well; a finding leaves it.
struct Folder {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("gristwright-fuzz-" + std::to_string(getpid()));
    Folder() { std::filesystem::create_directory(path); }
    ~Folder() { std::filesystem::remove_all(path); }
};

void look(const std::filesystem::path& file) {
    using catalog::Notebook;
    const auto notebook = Notebook::open(file, Notebook::Mode::read_only);
    notebook.describe();
    for (const auto& name : notebook.batch_names())
        may_refuse([&] { catalog::interpret(notebook.load_batch(name), catalogue()); });
    notebook.swatched_last(10);
    notebook.export_csv();
    notebook.export_json();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const Folder folder;
    const auto file = folder.path / "notebook.sqlite";
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    try {
        may_refuse([&] { look(file); });
    } catch (const catalog::NotebookFailed&) {  // a damaged page may read as a failing disk
    }
    return 0;
}
