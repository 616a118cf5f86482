// Files that are written: whole or not there, and nothing destroyed by a slip. Devices are private
// ones in the test's own folder, never the system's.
#include "cli/output/new_file.hpp"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/sysmacros.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <fstream>
#include <functional>
#include <thread>

#include "cli/out_file.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright::cli;

namespace {
int times_synced = 0;
bool sync_fails = false;
}  // namespace

// In place of the system's: whether what is written was asked to reach the disk.
extern "C" int fsync(int file) {
    ++times_synced;
    if (sync_fails) return errno = EIO, -1;
    return static_cast<int>(::syscall(SYS_fsync, file));
}

namespace {

namespace fs = std::filesystem;

std::ptrdiff_t files_in(const asked::Folder& folder) {
    return std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator());
}

std::string contents(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void put(const std::string& path, const std::string& text) { std::ofstream(path) << text; }

struct stat status(const std::string& path) {
    struct stat out {};
    REQUIRE(::lstat(path.c_str(), &out) == 0);
    return out;
}

// Why it is not written, by the check beforehand and by the writing alike.
std::string refused(const NewFile& file) {
    const auto said = [&](const std::function<void()>& call) -> std::string {
        try {
            call();
        } catch (const CannotCreate& error) {
            return error.what();
        }
        return "written";
    };
    const auto before = said([&] { check_new_file(file); });
    CHECK(before == said([&] { write_file(file, "x"); }));
    return before;
}

// A character device of our own that takes everything (1, 3) or is always full (1, 7); false where
// making or opening one is not permitted.
bool make_device(const std::string& path, unsigned minor) {
    if (::mknod(path.c_str(), S_IFCHR | 0600, makedev(1, minor)) != 0) return false;
    const int opened = ::open(path.c_str(), O_WRONLY);
    if (opened >= 0) ::close(opened);
    return opened >= 0;
}

}  // namespace

TEST_CASE("a file is there whole or not at all, and takes the place of an old one when told to") {
    const asked::Folder folder;
    const auto path = folder.file("out.html");
    for (const auto& text : {std::string("first"), std::string(300'000, 'x'), std::string()}) {
        write_file({path, true}, text);
        CHECK(contents(path) == text);
        CHECK(files_in(folder) == 1);  // nothing is left beside it
    }
    CHECK((status(path).st_mode & 0111) == 0);
}

TEST_CASE("where a file cannot be, it is said, and what was there stays") {
    const asked::Folder folder;
    fs::create_directory(folder.path() / "taken");
    put(folder.file("taken/inside"), "kept");
    for (const auto& path : {folder.file("no/such/out.html"), folder.file("taken")}) {
        CHECK_THROWS_WITH_AS(write_file({path, true}, "x"), doctest::Contains("cannot write '"),
                             CannotCreate);
        CHECK(files_in(folder) == 1);
    }
    CHECK(contents(folder.file("taken/inside")) == "kept");
    CHECK(asked::holds(refused({folder.file("taken"), true}), "it is a folder"));
}

TEST_CASE("what stands there is replaced only when that was asked for") {
    const asked::Folder folder;
    const auto path = folder.file("out.html");
    put(path, "old");
    CHECK(asked::holds(refused({path}), "--replace"));
    CHECK(contents(path) == "old");
    write_file({path, true}, "new");
    CHECK(contents(path) == "new");
}

TEST_CASE("a spared file is never written over, by whatever name it is reached") {
    // A page written over its own batch left a batch file that was HTML, with exit code 0.
    const asked::Folder folder;
    const auto batch = folder.file("batch.toml");
    put(batch, "kept");
    fs::create_symlink(batch, folder.file("soft.toml"));
    fs::create_hard_link(batch, folder.file("hard.toml"));
    for (const auto* name : {"batch.toml", "soft.toml", "hard.toml", "../batch.toml"}) {
        const auto path = name[0] == '.' ? folder.file("in/../batch.toml") : folder.file(name);
        fs::create_directories(folder.path() / "in");
        CHECK(asked::holds(refused({path, true, {batch}}), "it is read here, or kept for you"));
    }
    CHECK(contents(batch) == "kept");
}

TEST_CASE("a link is followed and stays a link, and the file at its end keeps its mode") {
    const asked::Folder folder;
    const auto file = folder.file("file"), link = folder.file("link"), far = folder.file("far");
    put(file, "old");
    REQUIRE(::chmod(file.c_str(), 0640) == 0);
    fs::create_symlink("file", link);  // told from where the link is
    fs::create_symlink(link, far);
    write_file({far, true}, "new");
    CHECK(contents(file) == "new");
    CHECK((status(file).st_mode & 07777) == 0640);
    CHECK(fs::is_symlink(link));
    CHECK(fs::is_symlink(far));
    fs::create_symlink("not there yet", folder.file("dangling"));
    write_file({folder.file("dangling")}, "made");
    CHECK(contents(folder.file("not there yet")) == "made");
    CHECK(fs::is_symlink(folder.file("dangling")));
    fs::create_symlink("ring", folder.file("ring"));
    CHECK_THROWS_AS(write_file({folder.file("ring"), true}, "x"), CannotCreate);
}

TEST_CASE("a write-protected file is not replaced") {
    const asked::Folder folder;
    const auto path = folder.file("kept");
    put(path, "old");
    REQUIRE(::chmod(path.c_str(), 0444) == 0);
    CHECK(asked::holds(refused({path, true}), "write-protected"));  // not even for root
    CHECK(contents(path) == "old");
}

TEST_CASE("a pipe gets the text and stays a pipe") {
    const asked::Folder folder;
    const auto pipe = folder.file("pipe");
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    const std::string text(100'000, 'y');  // more than the pipe holds at once
    std::string read;
    std::thread reader([&] { read = contents(pipe); });
    write_file({pipe}, text);
    reader.join();
    CHECK(read == text);
    CHECK(S_ISFIFO(status(pipe).st_mode));
    CHECK(files_in(folder) == 1);
}

TEST_CASE("a device gets the text and stays a device, and a full one is noticed") {
    // As root, -o onto a device put a plain file in its place.
    const asked::Folder folder;
    const auto sink = folder.file("sink"), full = folder.file("full");
    if (!make_device(sink, 3) || !make_device(full, 7)) {
        MESSAGE("skipped: making device nodes is not permitted here");
        return;
    }
    write_file({sink}, "x");
    write_file({sink, true}, "x");
    CHECK(S_ISCHR(status(sink).st_mode));
    CHECK_THROWS_AS(write_file({full, true}, "x"), CannotCreate);
    CHECK(S_ISCHR(status(full).st_mode));
    fs::create_symlink(sink, folder.file("link"));
    write_file({folder.file("link")}, "x");
    CHECK(fs::is_symlink(folder.file("link")));
    CHECK(S_ISCHR(status(sink).st_mode));
}

TEST_CASE("a whole disk is refused, whatever was asked for") {
    const asked::Folder folder;
    const auto disk = folder.file("disk");  // of a number that no driver has
    if (::mknod(disk.c_str(), S_IFBLK | 0600, makedev(240, 77)) != 0) {
        MESSAGE("skipped: making device nodes is not permitted here");
        return;
    }
    CHECK(asked::holds(refused({disk, true}), "a whole disk"));
}

TEST_CASE("a file stands in its place only once the disk has it") {
    // Without fsync a power cut left an empty file under the new name; no test missed it.
    const asked::Folder folder;
    const auto path = folder.file("out.html");
    times_synced = 0;
    write_file({path, false}, "first");
    CHECK(times_synced == 1);
    sync_fails = true;
    CHECK_THROWS_AS(write_file({path, true}, "second"), CannotCreate);
    CHECK_THROWS_AS(write_file({folder.file("other.html"), false}, "x"), CannotCreate);
    sync_fails = false;
    CHECK(contents(path) == "first");
    CHECK(files_in(folder) == 1);
}
