// Where the file is, who may read it, when it is written, which files are refused, how it grows up.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <thread>

#include "catalog/notebook/file.hpp"
#include "catalog/notebook/schema.hpp"
#include "notebook_help.hpp"

using namespace notebook_tests;

namespace {

unsigned mode_of(const fs::path& path) {
    struct stat about {};
    REQUIRE(::stat(path.c_str(), &about) == 0);
    return about.st_mode & 0777u;
}

SQLite::Database raw(const fs::path& path) {
    return {path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
}

void look_everywhere(const Notebook& notebook) {
    for (const auto& name : notebook.batch_names()) {
        notebook.load_batch(name);
        notebook.swatches(name);
        notebook.project(name);
        notebook.weighings(name);
        notebook.suggestions(name);
    }
    notebook.has_batch("wren");
    notebook.describe();
    notebook.newest_batches(20);
    notebook.swatched_last(20);
    notebook.export_json();
    notebook.export_csv();
}

std::size_t files_in(const fs::path& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

LayoutStep step(std::string sql) {
    return [sql] { return sql; };
}

// Two layouts that never were: names first, then names that are never empty, with a colour.
const std::vector<LayoutStep> old_steps{step("CREATE TABLE yarn (name TEXT NOT NULL) STRICT;")};
const std::vector<LayoutStep> new_steps{
    old_steps[0], step("ALTER TABLE yarn ADD COLUMN colour TEXT NOT NULL DEFAULT 'grey';"),
    step("UPDATE yarn SET name = upper(name); CREATE UNIQUE INDEX yarn_name ON yarn (name);")};

Opening opening(Notebook::Mode mode, const std::vector<LayoutStep>& steps) {
    return {mode, std::chrono::milliseconds(100), steps};
}

void make_old(const fs::path& path) {
    const auto db = make_notebook(path, opening(Notebook::Mode::change, old_steps));
    db->exec("INSERT INTO yarn VALUES ('heron'), ('wren')");
}

std::string names(SQLite::Database& db) {
    return db.execAndGet("SELECT group_concat(name) FROM yarn").getString();
}

int layout(SQLite::Database& db) { return db.execAndGet("PRAGMA user_version").getInt(); }

}  // namespace

TEST_CASE("notebook file: the usual place") {
    const char* data = std::getenv("XDG_DATA_HOME");
    const std::string data_was = data ? data : "";
    const std::string home_was = std::getenv("HOME") ? std::getenv("HOME") : "";
    ::setenv("HOME", "/home/spinner", 1);
    ::setenv("XDG_DATA_HOME", "/data", 1);
    CHECK(Notebook::usual_place() == "/data/gristwright/notebook.sqlite");
    ::setenv("XDG_DATA_HOME", "", 1);
    CHECK(Notebook::usual_place() == "/home/spinner/.local/share/gristwright/notebook.sqlite");
    ::setenv("XDG_DATA_HOME", "data", 1);  // from where one stands: as if it were not set
    CHECK(Notebook::usual_place() == "/home/spinner/.local/share/gristwright/notebook.sqlite");
    ::setenv("HOME", "home", 1);
    CHECK(Notebook::usual_place().empty());
    ::unsetenv("HOME");
    CHECK(Notebook::usual_place().empty());
    ::setenv("HOME", home_was.c_str(), 1);
    if (data)
        ::setenv("XDG_DATA_HOME", data_was.c_str(), 1);
    else
        ::unsetenv("XDG_DATA_HOME");
}

TEST_CASE("notebook file: made by the first change only, private, with its folders") {
    Scratch scratch;
    const auto path = scratch.folder / "data" / "gristwright" / "notebook.sqlite";
    auto notebook = changing(path);
    look_everywhere(notebook);
    CHECK_FALSE(notebook.describe().exists);
    CHECK_FALSE(notebook.undo());
    CHECK_THROWS_AS(notebook.remove_batch("heron"), NotebookRefused);
    look_everywhere(looking(path));
    CHECK_FALSE(fs::exists(scratch.folder / "data"));

    const auto umask_was = ::umask(0);
    notebook.add_batch("heron", heron());
    ::umask(umask_was);
    CHECK(mode_of(scratch.folder / "data") == 0700);
    CHECK(mode_of(path.parent_path()) == 0700);
    CHECK(mode_of(path) == 0600);
    CHECK(files_in(path.parent_path()) == 1);
    CHECK(looking(path).has_batch("heron"));
}

TEST_CASE("notebook file: an empty file is a notebook with nothing in it yet") {
    Scratch scratch;
    std::ofstream(scratch.file()).close();
    CHECK(looking(scratch.file()).batch_names().empty());
    CHECK(fs::file_size(scratch.file()) == 0);
    changing(scratch.file()).add_batch("heron", heron());
    CHECK(looking(scratch.file()).has_batch("heron"));
}

TEST_CASE("notebook file: looking never changes it, and changing needs the right mode") {
    Scratch scratch;
    for (const auto& step : every_change()) {
        auto notebook = changing(scratch.file());
        step.make(notebook);
    }
    changing(scratch.file()).undo();
    const auto before = bytes_of(scratch.file());
    const auto time = fs::last_write_time(scratch.file());
    look_everywhere(looking(scratch.file()));
    look_everywhere(changing(scratch.file()));
    auto notebook = looking(scratch.file());
    CHECK_THROWS_AS(notebook.add_batch("robin", {}), std::logic_error);
    CHECK_THROWS_AS(notebook.undo(), std::logic_error);
    CHECK(bytes_of(scratch.file()) == before);
    CHECK(fs::last_write_time(scratch.file()) == time);
    CHECK(files_in(scratch.folder) == 1);
}

TEST_CASE("notebook file: works from a place that can only be read") {
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    fs::permissions(scratch.file(), fs::perms(0444));
    fs::permissions(scratch.folder, fs::perms(0555));
    const auto child = ::fork();
    if (child == 0) {  // permissions do not bind root, so the child is nobody
        if (::geteuid() == 0 && ::setuid(65534) != 0) ::_exit(3);
        int result = 0;
        try {
            if (looking(scratch.file()).load_batch("heron") != heron()) result = 1;
            auto notebook = changing(scratch.file());
            if (!notebook.has_batch("heron")) result = 1;
            try {
                notebook.remove_batch("heron");
                result = 2;
            } catch (const NotebookFailed&) {
            }
        } catch (...) {
            result = 4;
        }
        ::_exit(result);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    CHECK(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 0);
    fs::permissions(scratch.folder, fs::perms(0700));
}

TEST_CASE("notebook file: newer, foreign and damaged files are refused and left as they are") {
    Scratch scratch;
    const auto refused = [&](const std::string& says) {
        const auto before = bytes_of(scratch.file());
        for (const auto mode : {Notebook::Mode::read_only, Notebook::Mode::change}) {
            try {
                Notebook::open(scratch.file(), mode);
                FAIL("was not refused");
            } catch (const NotebookRefused& refusal) {
                CAPTURE(refusal.what());
                CHECK(std::string(refusal.what()).find(says) != std::string::npos);
            }
        }
        CHECK(bytes_of(scratch.file()) == before);
        fs::remove(scratch.file());
    };
    SUBCASE("newer") {
        changing(scratch.file()).add_batch("heron", heron());
        raw(scratch.file()).exec("PRAGMA user_version = 7");
        refused("it has layout 7, this program reads up to 3");
    }
    SUBCASE("of another program, marked") {
        raw(scratch.file()).exec("PRAGMA application_id = 77; CREATE TABLE t (x)");
        refused("it is marked 77, a notebook is marked 1198681698");
    }
    SUBCASE("of another program, not marked") {
        raw(scratch.file()).exec("CREATE TABLE t (x)");
        refused("it is marked 0");
    }
    SUBCASE("not a database") {
        std::ofstream(scratch.file()) << std::string(5000, 'x');
        refused("is not a notebook");
    }
}

TEST_CASE("notebook file: an upgrade goes step by step, with a copy before each") {
    Scratch scratch;
    make_old(scratch.file());
    const auto db = open_notebook(scratch.file(), opening(Notebook::Mode::change, new_steps));
    CHECK(layout(*db) == 3);
    CHECK(names(*db) == "HERON,WREN");
    const auto copy_1 = scratch.file().string() + ".layout-1";
    const auto copy_2 = scratch.file().string() + ".layout-2";
    CHECK(mode_of(copy_1) == 0600);
    auto first = raw(copy_1), second = raw(copy_2);
    CHECK(layout(first) == 1);
    CHECK(names(first) == "heron,wren");
    CHECK(layout(second) == 2);
    CHECK(names(second) == "heron,wren");
}

TEST_CASE("notebook file: a step that fails leaves the layout before it whole") {
    Scratch scratch;
    make_old(scratch.file());
    auto steps = new_steps;
    steps[2] = step("UPDATE yarn SET name = 'same'; CREATE UNIQUE INDEX yarn_name ON yarn (name);");
    for (int twice = 0; twice < 2; ++twice)  // the copy of the first try is no hindrance
        CHECK_THROWS_AS(open_notebook(scratch.file(), opening(Notebook::Mode::change, steps)),
                        NotebookRefused);
    auto db = raw(scratch.file());
    CHECK(layout(db) == 2);
    CHECK(names(db) == "heron,wren");
}

TEST_CASE("notebook file: an older layout is looked at without touching it") {
    Scratch scratch;
    make_old(scratch.file());
    const auto before = bytes_of(scratch.file());
    const auto db = open_notebook(scratch.file(), opening(Notebook::Mode::read_only, new_steps));
    CHECK(names(*db) == "HERON,WREN");
    CHECK_THROWS(db->exec("DELETE FROM yarn"));
    CHECK(bytes_of(scratch.file()) == before);
    CHECK(files_in(scratch.folder) == 1);
}

TEST_CASE("notebook file: the second of two programs waits, then says busy") {
    using std::chrono::milliseconds, std::chrono::steady_clock;
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    auto second = Notebook::open(scratch.file(), Notebook::Mode::change, milliseconds(300));
    auto first = raw(scratch.file());
    first.exec("BEGIN IMMEDIATE");
    const auto from = steady_clock::now();
    CHECK_THROWS_AS(second.add_swatch("heron", woven_swatch()), NotebookBusy);
    CHECK(steady_clock::now() - from >= milliseconds(290));
    CHECK(second.swatches("heron").empty());  // looking goes on meanwhile
    first.exec("COMMIT");
    second.add_swatch("heron", woven_swatch());
    CHECK(second.swatches("heron").size() == 1);
}

TEST_CASE("notebook file: a lock that is let go in time is waited for") {
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    auto first = raw(scratch.file());
    first.exec("BEGIN EXCLUSIVE");
    std::thread other([&] {
        std::this_thread::sleep_for(std::chrono::milliseconds(200));
        first.exec("COMMIT");
    });
    changing(scratch.file()).add_swatch("heron", woven_swatch());
    other.join();
    CHECK(looking(scratch.file()).swatches("heron").size() == 1);
}

TEST_CASE("notebook file: two at once make it and write to it, and nothing is lost") {
    Scratch scratch;
    const auto add_ten = [&](const std::string& bird) {
        auto notebook = changing(scratch.file());
        for (int i = 0; i < 10; ++i) notebook.add_batch(bird + std::to_string(i), heron());
    };
    std::thread other([&] { add_ten("wren"); });
    add_ten("robin");
    other.join();
    CHECK(looking(scratch.file()).batch_names().size() == 20);
    CHECK(looking(scratch.file()).describe().changes == 20);
}

TEST_CASE("notebook file: the tables themselves refuse what the program should never write") {
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    const auto db = open_notebook(
        scratch.file(), {Notebook::Mode::change, std::chrono::milliseconds(0), notebook_steps()});
    for (const char* sql : {
             "INSERT INTO batch (name) VALUES ('')",
             "INSERT INTO batch (name) VALUES (NULL)",
             "INSERT INTO batch (name) VALUES ('heron')",
             "INSERT INTO swatch (batch, kind, date) VALUES (99, 'woven', '')",
             "INSERT INTO swatch (batch, kind, date) VALUES (1, 'felted', '')",
             "INSERT INTO skein VALUES (99, 1, 'two', '', '', '', '', '', '', '', '')",
             "INSERT INTO skein VALUES (99, 1, 0, '', '', '', '', '', '', '', '')",
             "INSERT INTO project (batch, template, size, certainty, started) "
             "VALUES (1, '', '', '', '')",
             "ATTACH ':memory:' AS other",
         })
        CHECK_THROWS_AS(db->exec(sql), SQLite::Exception);
}

TEST_CASE("notebook file: one of layout 1 keeps everything, undo too, and takes suggestions") {
    Scratch scratch;
    const std::vector<LayoutStep> first_step{notebook_steps().front()};
    {
        const auto db = make_notebook(scratch.file(), opening(Notebook::Mode::change, first_step));
        db->exec(
            "INSERT INTO change (said) VALUES ('add batch heron');"
            "INSERT INTO batch (name) VALUES ('heron');"
            "INSERT INTO change (said) VALUES ('swatch of heron');"
            "INSERT INTO swatch (batch, kind, date) VALUES (1, 'knitted', '2026-03-01');"
            "INSERT INTO measure (swatch, key, text) VALUES (1, 'stitches', '28/10cm')");
    }
    CHECK(looking(scratch.file()).swatches("heron").at(0).own_hands);  // through a copy in memory
    auto notebook = changing(scratch.file());
    CHECK(notebook.swatched_last(5).size() == 1);
    notebook.add_suggestions("heron", {{{"idea", "hat"}}});
    CHECK(notebook.undo() == "1 suggestion to heron");
    CHECK(notebook.undo() == "swatch of heron");
    CHECK(notebook.swatches("heron").empty());
    auto old = raw(fs::path(scratch.file().string() + ".layout-1"));
    CHECK(layout(old) == 1);
    CHECK(old.execAndGet("SELECT count(*) FROM swatch").getInt() == 1);
}

TEST_CASE("notebook file: one of layout 2 keeps its project, undo too, and takes a part in it") {
    Scratch scratch;
    const std::vector<LayoutStep> two{notebook_steps()[0], notebook_steps()[1]};
    {
        const auto db = make_notebook(scratch.file(), opening(Notebook::Mode::change, two));
        db->exec(
            "INSERT INTO change (said) VALUES ('add batch heron');"
            "INSERT INTO batch (name) VALUES ('heron');"
            "INSERT INTO skein (batch, place, name, name_where, length, length_where, mass, "
            "mass_where, state, state_where) VALUES (1, 0, 'A', '', '9m', '', '2g', '', '', '');"
            "INSERT INTO change (said) VALUES ('start cowl with heron');"
            "INSERT INTO project (batch, template, size, certainty, started) "
            "VALUES (1, 'cowl', '60cm', '', '')");
    }
    CHECK(looking(scratch.file()).project("heron")->part.empty());  // through a copy in memory
    auto notebook = changing(scratch.file());
    CHECK(notebook.project("heron") == ProjectText{"cowl", "60cm", "", "", "", "", ""});
    const ProjectText weft{"scarf", "1m", "", "", "weft", "8/2 cotton", ""};
    notebook.start_project("heron", weft);
    CHECK(notebook.project("heron") == weft);
    CHECK(notebook.undo() == "start scarf with heron");
    CHECK(notebook.project("heron")->template_name == "cowl");
    CHECK(notebook.undo() == "start cowl with heron");
    CHECK_FALSE(notebook.project("heron"));
}

// Found by fuzzing: bytes that are no UTF-8 in a damaged file ended an export as a mistake of ours.
TEST_CASE(
    "notebook file: a text that is not UTF-8 is refused by an export, not taken for our bug") {
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    raw(scratch.file()).exec("UPDATE skein SET name = CAST(x'41ff42' AS TEXT)");
    const auto notebook = Notebook::open(scratch.file(), Notebook::Mode::read_only);
    CHECK_THROWS_WITH_AS(notebook.export_json(), doctest::Contains("not UTF-8"), NotebookRefused);
}

// Found by fuzzing: a complaint that began with such a byte was empty.
TEST_CASE("notebook file: a text with a zero byte is refused with a reason") {
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    for (const char* column : {"name", "length", "length_where"}) {
        CAPTURE(column);
        raw(scratch.file())
            .exec(std::string("UPDATE skein SET ") + column + " = CAST(x'0041' AS TEXT)");
        const auto notebook = Notebook::open(scratch.file(), Notebook::Mode::read_only);
        CHECK_THROWS_WITH_AS(notebook.load_batch("heron"), doctest::Contains("zero byte"),
                             NotebookRefused);
        raw(scratch.file()).exec(std::string("UPDATE skein SET ") + column + " = '171m'");
    }
}
