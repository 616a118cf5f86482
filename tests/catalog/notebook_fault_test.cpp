// Whatever breaks during a change, the notebook holds what it held before or the whole change,
// and a change that is reported is there.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>

#include "failing_files.hpp"
#include "notebook_help.hpp"

using namespace notebook_tests;
using How = FailingFiles::How;

namespace {

// The changes of notebook_help.hpp, then taking the last one back.
std::vector<Step> every_change_and_undo() {
    auto out = every_change();
    out.push_back({"undo", [](Notebook& n) { n.undo(); }});
    return out;
}

// A notebook before and after one change.
struct ChangedNotebook {
    std::string before_file, before, after;
    std::function<void(Notebook&)> make;
};

std::vector<ChangedNotebook> every_case() {
    Scratch scratch;
    std::vector<ChangedNotebook> out;
    for (const auto& step : every_change_and_undo()) {
        auto notebook = changing(scratch.file());
        ChangedNotebook one{bytes_of(scratch.file()), notebook.export_json(), "", step.make};
        step.make(notebook);
        one.after = notebook.export_json();
        out.push_back(one);
    }
    return out;
}

// The file as it was before the change, and no leftovers; the first case has no file.
void put_back(const ChangedNotebook& one, const fs::path& path) {
    for (const auto& entry : fs::directory_iterator(path.parent_path())) fs::remove(entry.path());
    if (!one.before_file.empty()) std::ofstream(path, std::ios::binary) << one.before_file;
}

bool makes_it(const ChangedNotebook& one, const fs::path& path) {
    try {
        auto notebook = Notebook::open(path, Notebook::Mode::change, std::chrono::milliseconds(0));
        one.make(notebook);
        return true;
    } catch (const NotebookFailed&) {
        return false;
    }
}

void check_whole(const ChangedNotebook& one, const fs::path& path, bool reported_kept) {
    const auto content = looking(path).export_json();
    CHECK((content == one.after || (content == one.before && !reported_kept)));
    if (!fs::exists(path)) return;
    SQLite::Database db(path.string(), SQLite::OPEN_READWRITE);
    CHECK(db.execAndGet("PRAGMA integrity_check").getString() == "ok");
    CHECK(db.execAndGet("SELECT count(*) FROM pragma_foreign_key_check").getInt() == 0);
}

// Fails the call 0, 1, 2, ... of each change until none is left to fail; returns how many.
int fail_everywhere(How how) {
    const auto cases = every_case();
    Scratch scratch;
    FailingFiles files;
    int tried = 0;
    for (std::size_t c = 0; c < cases.size(); ++c) {
        bool reached = true;
        for (int call = 0; reached; ++call, ++tried) {
            CAPTURE(c);
            CAPTURE(call);
            put_back(cases[c], scratch.file());
            files.fail_at(call, how);
            const bool kept = makes_it(cases[c], scratch.file());
            reached = files.has_failed();
            files.never_fail();
            if (!reached) CHECK(kept);
            check_whole(cases[c], scratch.file(), kept);
        }
    }
    MESSAGE(tried << " failures tried");
    return tried;
}

}  // namespace

TEST_CASE("notebook faults: from the N-th call on every write, sync, open, delete fails") {
    CHECK(fail_everywhere(How::error) > 100);
}

TEST_CASE("notebook faults: only the N-th call fails") {
    CHECK(fail_everywhere(How::once_then_fine) > 100);
}

TEST_CASE("notebook faults: the disk is full from the N-th write on") {
    CHECK(fail_everywhere(How::full) > 100);
}

TEST_CASE("notebook faults: a full disk is called so") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    SQLite::Database db(scratch.file().string(), SQLite::OPEN_READWRITE);
    const int pages = db.execAndGet("PRAGMA page_count").getInt();
    FailingFiles files;
    auto second = changing(scratch.file());
    bool called_full = false;
    for (int call = 0; call < 4 * pages && !called_full; ++call) {
        files.fail_at(call, How::full);
        try {
            second.add_swatch("heron", woven_swatch());
        } catch (const NotebookFailed& failure) {
            called_full = std::string(failure.what()).find("disk is full") != std::string::npos;
        }
        files.never_fail();
    }
    CHECK(called_full);
}

TEST_CASE("notebook faults: the program is killed at the N-th call") {
    const auto cases = every_case();
    Scratch scratch;
    FailingFiles files;
    int tried = 0;
    for (std::size_t c = 0; c < cases.size(); ++c) {
        for (int call = 0, status = 1; status != 0; ++call, ++tried) {
            CAPTURE(c);
            CAPTURE(call);
            put_back(cases[c], scratch.file());
            const auto child = ::fork();
            if (child == 0) {
                files.fail_at(call, How::process_ends);
                ::_exit(makes_it(cases[c], scratch.file()) ? 0 : 1);
            }
            REQUIRE(::waitpid(child, &status, 0) == child);
            REQUIRE(WIFEXITED(status));
            status = WEXITSTATUS(status);
            CHECK((status == 0 || status == 9));
            check_whole(cases[c], scratch.file(), status == 0);
        }
    }
    MESSAGE(tried << " kills");
    CHECK(tried > 100);
}

TEST_CASE("notebook faults: a backup that fails leaves no file") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    const auto copy = scratch.folder / "copy.sqlite";
    FailingFiles files;
    bool done = false;
    for (int call = 0; !done; ++call) {
        files.fail_at(call, How::error);
        try {
            looking(scratch.file()).backup(copy);
            done = true;
        } catch (const NotebookFailed&) {
            CHECK_FALSE(fs::exists(copy));
        }
        files.never_fail();
    }
    CHECK(looking(copy).load_batch("heron") == heron());
}
