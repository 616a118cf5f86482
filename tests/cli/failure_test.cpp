// Whose mistake it was: the exit code of each family of failure.
#include "cli/failure.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <new>
#include <stdexcept>

#include "catalog/notebook/notebook.hpp"
#include "catalog/reference/source.hpp"
#include "cli/command.hpp"
#include "cli/output/new_file.hpp"
#include "engine/units/failure.hpp"

using namespace gristwright;

TEST_CASE("only what is refused is the person's mistake") {
    CHECK(cli::exit_code_of(Refused("171m is no skein")) == cli::bad_data);
    CHECK(cli::exit_code_of(catalog::NotebookRefused("no such batch")) == cli::bad_data);
    CHECK(cli::exit_code_of(cli::Misused("no such option")) == cli::usage);
    // std::stod and its like complain with std::invalid_argument: that was told as "your data".
    CHECK(cli::exit_code_of(std::invalid_argument("stod")) == cli::our_bug);
    CHECK(cli::exit_code_of(std::out_of_range("vector")) == cli::our_bug);
    CHECK(cli::exit_code_of(OurMistake("a shape without a side")) == cli::our_bug);
    CHECK(cli::exit_code_of(std::runtime_error("locale")) == cli::our_bug);
    CHECK(cli::exit_code_of(std::bad_alloc()) == cli::our_bug);
}

TEST_CASE("storage that fails is neither's mistake, and says what may help") {
    CHECK(cli::exit_code_of(catalog::MissingFile("no file")) == cli::no_input);
    CHECK(cli::exit_code_of(catalog::NotebookBusy("in use")) == cli::busy);
    CHECK(cli::exit_code_of(cli::CannotCreate("no folder")) == cli::cannot_create);
    CHECK(cli::exit_code_of(catalog::StorageFailed("disk")) == cli::io_error);
    CHECK(cli::exit_code_of(std::filesystem::filesystem_error("status", std::error_code())) ==
          cli::io_error);
}
