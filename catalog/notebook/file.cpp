#include "catalog/notebook/file.hpp"

#include <fcntl.h>
#include <fmt/core.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "catalog/notebook/schema.hpp"

namespace gristwright::catalog {
namespace {

namespace fs = std::filesystem;
using OpenDatabase = std::unique_ptr<SQLite::Database>;

std::string why(int error) { return std::generic_category().message(error); }

void make_private_folders(const fs::path& folder) {
    std::error_code none;  // what cannot be looked at cannot be made either, and then we say why
    if (folder.empty() || fs::exists(folder, none)) return;
    make_private_folders(folder.parent_path());
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST)
        throw NotebookFailed(
            fmt::format("the folder '{}' cannot be made: {}", folder.string(), why(errno)));
}

// True when the file is new, false when it was there.
bool make_private_file(const fs::path& path) {
    const int file = ::open(path.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0600);
    if (file < 0 && errno == EEXIST) return false;
    if (file < 0)
        throw NotebookFailed(fmt::format("'{}' cannot be made: {}", path.string(), why(errno)));
    ::close(file);
    return true;
}

// A file may come from anywhere: what its triggers and undo steps may do is limited.
void distrust(SQLite::Database& db) {
    sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_limit(db.getHandle(), SQLITE_LIMIT_ATTACHED, 0);
}

// A rollback journal, not a write-ahead log: one file that people can copy, also onto a place that
// can only be read.
void keep_one_file(SQLite::Database& db) { db.exec("PRAGMA journal_mode = DELETE"); }

int pragma(SQLite::Database& db, const char* name) {
    return db.execAndGet(fmt::format("PRAGMA {}", name)).getInt();
}

int layout_of(SQLite::Database& db) { return pragma(db, "user_version"); }

bool has_nothing(SQLite::Database& db) {
    return pragma(db, "application_id") == 0 && layout_of(db) == 0 &&
           db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
}

void refuse_foreign(SQLite::Database& db, const fs::path& path) {
    const int id = pragma(db, "application_id");
    if (id != notebook_application_id)
        throw NotebookRefused(
            fmt::format("'{}' is a database of another program: it is marked {}, a notebook is "
                        "marked {}; it was left as it is",
                        path.string(), id, notebook_application_id));
}

void refuse_newer(SQLite::Database& db, const fs::path& path, int newest) {
    const int layout = layout_of(db);
    if (layout < 0 || layout > newest)
        throw NotebookRefused(
            fmt::format("'{}' was written by a newer gristwright: it has layout {}, this program "
                        "reads up to {}; it was left as it is",
                        path.string(), layout, newest));
}

void take_step(SQLite::Database& db, int layout, const std::string& step) {
    db.exec(step);
    db.exec(fmt::format("PRAGMA application_id = {}", notebook_application_id));
    db.exec(fmt::format("PRAGMA user_version = {}", layout + 1));
}

// The copy is made by a second connection while ours keeps others from writing.
void copy_beside(const fs::path& path, int layout, std::chrono::milliseconds patience) {
    const fs::path copy = fmt::format("{}.layout-{}", path.string(), layout);
    std::error_code none;
    fs::remove(copy, none);  // of an upgrade that did not come to its end
    copy_to_new_file(*connect(path, patience), copy);
}

void upgrade(SQLite::Database& db, const fs::path& path, const Opening& opening) {
    const int newest = static_cast<int>(opening.steps.size());
    bool made_here = false;  // nothing in it that a copy could keep
    for (int layout = layout_of(db); layout < newest; layout = layout_of(db)) {
        Transaction transaction(db, Transaction::Kind::change);
        if (layout_of(db) != layout) continue;  // another program took the step
        made_here = made_here || has_nothing(db);
        if (!made_here) copy_beside(path, layout, opening.patience);
        take_step(db, layout, opening.steps[static_cast<std::size_t>(layout)]());
        transaction.commit();
    }
    refuse_newer(db, path, newest);
}

void copy_all(SQLite::Database& from, SQLite::Database& to) {
    SQLite::Backup backup(to, from);
    const int result = backup.executeStep(-1);
    if (result != SQLITE_DONE) throw SQLite::Exception("the copy was not finished", result);
}

OpenDatabase upgraded_in_memory(SQLite::Database& db, const Opening& opening) {
    auto memory = std::make_unique<SQLite::Database>(":memory:",
                                                     SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    copy_all(db, *memory);
    distrust(*memory);
    for (auto at = static_cast<std::size_t>(layout_of(*memory)); at < opening.steps.size(); ++at)
        take_step(*memory, static_cast<int>(at), opening.steps[at]());
    return memory;
}

OpenDatabase checked(OpenDatabase db, const fs::path& path, const Opening& opening) {
    const int newest = static_cast<int>(opening.steps.size());
    if (has_nothing(*db)) return nullptr;
    const int layout = check_is_notebook(*db, path, newest);
    if (opening.mode == Notebook::Mode::change) {
        keep_one_file(*db);
        upgrade(*db, path, opening);
    } else {
        if (layout < newest) db = upgraded_in_memory(*db, opening);
        db->exec("PRAGMA query_only = ON");
    }
    return db;
}

}  // namespace

void say_again(const SQLite::Exception& error, const fs::path& path) {
    const auto said = [&](const char* what) {
        return fmt::format("the notebook '{}' {} ({})", path.string(), what, error.what());
    };
    switch (error.getErrorCode() & 0xff) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            throw NotebookBusy(
                said("is in use by another program; nothing was changed, try again"));
        case SQLITE_NOTADB:
            throw NotebookRefused(said("is not a notebook; it was left as it is"));
        case SQLITE_CORRUPT:
            throw NotebookRefused(said("is damaged; take a backup in its place"));
        case SQLITE_CONSTRAINT:
        case SQLITE_TOOBIG:
            throw NotebookRefused(said("cannot keep this; nothing was changed"));
        case SQLITE_FULL:
            throw NotebookFailed(said("cannot grow, the disk is full; this was not kept"));
        case SQLITE_NOMEM:
            throw NotebookFailed(said("ran out of memory; this was not kept"));
        case SQLITE_READONLY:
        case SQLITE_PERM:
        case SQLITE_CANTOPEN:
            throw NotebookFailed(said("cannot be opened or written"));
        default:
            throw NotebookFailed(said("could not be read or written"));
    }
}

// Opened for writing even to read: only so can a change be rolled back that another program left
// half done. SQLite falls back to reading by itself where the file cannot be written.
OpenDatabase connect(const fs::path& path, std::chrono::milliseconds patience) {
    auto db = std::make_unique<SQLite::Database>(
        fs::absolute(path).string(),  // begins with '/', so it is never taken for a URI
        SQLite::OPEN_READWRITE, static_cast<int>(patience.count()));
    distrust(*db);
    db->exec("PRAGMA foreign_keys = ON");
    db->exec("PRAGMA synchronous = EXTRA");
    return db;
}

int check_is_notebook(SQLite::Database& db, const fs::path& path, int newest) {
    refuse_foreign(db, path);
    refuse_newer(db, path, newest);
    return layout_of(db);
}

Transaction::Transaction(SQLite::Database& db, Kind kind) : db_(db) {
    db_.exec(kind == Kind::change ? "BEGIN IMMEDIATE" : "BEGIN");
}

Transaction::~Transaction() {
    // After some errors SQLite has rolled back by itself; then this one is refused, rightly.
    if (sqlite3_get_autocommit(db_.getHandle()) == 0) db_.tryExec("ROLLBACK");
}

void Transaction::commit() { db_.exec("COMMIT"); }

OpenDatabase open_notebook(const fs::path& path, const Opening& opening) {
    std::error_code none;
    if (!fs::exists(path, none)) return nullptr;
    return in_our_words(path,
                        [&] { return checked(connect(path, opening.patience), path, opening); });
}

OpenDatabase make_notebook(const fs::path& path, const Opening& opening) {
    return in_our_words(path, [&] {
        make_private_folders(fs::absolute(path).parent_path());
        make_private_file(path);
        auto db = connect(path, opening.patience);
        keep_one_file(*db);
        if (!has_nothing(*db)) refuse_foreign(*db, path);
        upgrade(*db, path, opening);
        return db;
    });
}

void copy_to_new_file(SQLite::Database& from, const fs::path& to) {
    if (!make_private_file(to))
        throw NotebookRefused(
            fmt::format("'{}' is there already; it was left as it is", to.string()));
    try {
        in_our_words(to, [&] { copy_all(from, *connect(to, std::chrono::milliseconds(0))); });
    } catch (...) {
        std::error_code none;
        fs::remove(to, none);
        throw;
    }
}

}  // namespace gristwright::catalog
