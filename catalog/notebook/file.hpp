// The notebook's file: made private, opened, told from other files, brought up to date, locked.
//
// An implementation header of the notebook: it is the one that shows SQLiteCpp.
#pragma once

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>

#include <chrono>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "catalog/notebook/notebook.hpp"
#include "catalog/notebook/schema.hpp"

namespace gristwright::catalog {

// Gives an SQLite error our name and words: busy, refused or failed.
[[noreturn]] void say_again(const SQLite::Exception& error, const std::filesystem::path& path);

template <class Work>
auto in_our_words(const std::filesystem::path& path, Work work) {
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        say_again(error, path);
    }
}

// BEGIN ... COMMIT; rolled back when left without commit().
class Transaction {
  public:
    enum class Kind { look, change };

    // A change takes the right to write at once, so that two programs cannot wait for each other.
    Transaction(SQLite::Database& db, Kind kind);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    void commit();

  private:
    SQLite::Database& db_;
};

// How a file is opened: the steps are notebook_steps(), but for tests of upgrading.
struct Opening {
    Notebook::Mode mode = Notebook::Mode::read_only;
    std::chrono::milliseconds patience{3000};
    const std::vector<LayoutStep>& steps;
};

// The notebook in that file, at the newest layout; nothing when there is no file or nothing in it.
std::unique_ptr<SQLite::Database> open_notebook(const std::filesystem::path& path,
                                                const Opening& opening);

// As open_notebook, but made when there is none. The mode must be change.
std::unique_ptr<SQLite::Database> make_notebook(const std::filesystem::path& path,
                                                const Opening& opening);

// Opened as it stands, checked by nobody yet.
std::unique_ptr<SQLite::Database> connect(const std::filesystem::path& path,
                                          std::chrono::milliseconds patience);

// Its layout. Throws NotebookRefused for another program's file or a newer one.
int check_is_notebook(SQLite::Database& db, const std::filesystem::path& path, int newest);

// A copy of the whole database in a new private file; throws when the file is there already, and
// leaves no file behind when it fails.
void copy_to_new_file(SQLite::Database& from, const std::filesystem::path& to);

}  // namespace gristwright::catalog
