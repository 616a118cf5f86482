#include "cli/failure.hpp"

#include <filesystem>

#include "catalog/notebook/notebook.hpp"
#include "catalog/reference/source.hpp"
#include "catalog/text/storage_failed.hpp"
#include "cli/command.hpp"
#include "cli/output/new_file.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

template <class Family>
bool is(const std::exception& error) {
    return dynamic_cast<const Family*>(&error) != nullptr;
}

}  // namespace

// The narrower family first.
ExitCode exit_code_of(const std::exception& error) {
    if (is<Misused>(error)) return usage;
    if (is<Refused>(error)) return bad_data;
    if (is<catalog::MissingFile>(error)) return no_input;
    if (is<catalog::NotebookBusy>(error)) return busy;
    if (is<CannotCreate>(error)) return cannot_create;
    if (is<catalog::StorageFailed>(error)) return io_error;
    if (is<std::filesystem::filesystem_error>(error)) return io_error;
    return our_bug;
}

}  // namespace gristwright::cli
