#include "cli/output/new_file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <optional>
#include <utility>

namespace gristwright::cli {
namespace {

namespace fs = std::filesystem;
using Status = struct stat;

constexpr mode_t usual_mode = 0644;  // of a new file, before the person's own mask
constexpr mode_t any_may_write = 0222;
constexpr int most_links = 40;  // one to the next, as the system itself follows them

[[noreturn]] void fail(const std::string& path, const std::string& why) {
    throw CannotCreate("cannot write '" + path + "': " + why);
}
[[noreturn]] void fail(const std::string& path) { fail(path, std::strerror(errno)); }

// What stands at the end of the links; nothing when nothing does.
std::optional<Status> status_of(const std::string& path) {
    Status found{};
    if (::stat(path.c_str(), &found) == 0) return found;
    if (errno == ENOENT) return std::nullopt;
    fail(path);
}

bool same_file(const Status& a, const Status& b) {
    return a.st_dev == b.st_dev && a.st_ino == b.st_ino;
}

bool is(const Status& status, const std::string& path) {
    Status other{};
    return ::stat(path.c_str(), &other) == 0 && same_file(status, other);
}

bool is_standard_output(const Status& status) {
    Status out{};
    return ::fstat(STDOUT_FILENO, &out) == 0 && same_file(status, out);
}

// Checks what stands there already.
void check(const NewFile& file, const Status& found) {
    const auto spared = [&](const std::string& path) { return is(found, path); };
    if (std::any_of(file.spared.begin(), file.spared.end(), spared))
        fail(file.path, "it is read here, or kept for you; choose another name");
    if (S_ISDIR(found.st_mode)) fail(file.path, "it is a folder; name a file in it");
    if (S_ISBLK(found.st_mode)) fail(file.path, "it is a whole disk; name a file");
    if (!S_ISREG(found.st_mode) || is_standard_output(found)) return;
    if (!file.replace)
        fail(file.path, "it is there already; --replace puts the new one in its place");
    if ((found.st_mode & any_may_write) == 0 || ::access(file.path.c_str(), W_OK) != 0)
        fail(file.path, "it is write-protected");
}

// The name at the end of the links, whether something stands there or not.
std::string end_of_links(const std::string& path) {
    fs::path end = path;
    std::error_code none;
    for (int i = 0; i < most_links && fs::is_symlink(fs::symlink_status(end, none)); ++i) {
        const auto next = fs::read_symlink(end, none);
        end = next.is_absolute() ? next : end.parent_path() / next;
    }
    return end.string();
}

bool write_all(int out, const std::string& text) {
    std::size_t done = 0;
    while (done < text.size()) {
        const auto wrote = ::write(out, text.data() + done, text.size() - done);
        if (wrote < 0 && errno == EINTR) continue;
        if (wrote <= 0) return false;
        done += static_cast<std::size_t>(wrote);
    }
    return true;
}

bool write_all(int out, const Pieces& pieces) {
    for (auto piece = pieces(); !piece.empty(); piece = pieces())
        if (!write_all(out, piece)) return false;
    return true;
}

// Into a pipe, a device or the answer itself: it stays what it is.
void write_through(const std::string& path, bool to_answer, const Pieces& pieces) {
    const int out =
        to_answer ? ::dup(STDOUT_FILENO) : ::open(path.c_str(), O_WRONLY | O_NOCTTY | O_CLOEXEC);
    if (out < 0) fail(path);
    const bool whole = write_all(out, pieces);
    const int why = errno;
    const bool closed = ::close(out) == 0;
    if (!whole) errno = why;
    if (!whole || !closed) fail(path);
}

// The file as it is made: without a name where that can be, so that it is gone if we are stopped.
class Beside {
  public:
    explicit Beside(const std::string& path) : path_(path) {
        const auto folder = fs::path(path).parent_path();
        out_ = ::open(folder.empty() ? "." : folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC,
                      usual_mode);
        nameless_ = out_ >= 0;
        if (!nameless_)
            out_ = ::open(name().c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, usual_mode);
        if (out_ < 0) fail(path);
        named_ = !nameless_;
    }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;
    ~Beside() {
        if (out_ >= 0) ::close(out_);
        if (named_) ::unlink(name().c_str());
    }

    // The owner is handed on where we may; the mode always.
    void be_like(const Status& old) {
        if (::fchown(out_, old.st_uid, old.st_gid) != 0) errno = 0;
        if (::fchmod(out_, old.st_mode & 0777) != 0) fail(path_);
    }

    void fill(const Pieces& pieces) {
        if (!write_all(out_, pieces) || ::fsync(out_) != 0) fail(path_);
        const auto self = "/proc/self/fd/" + std::to_string(out_);
        if (nameless_) {
            if (::linkat(AT_FDCWD, self.c_str(), AT_FDCWD, name().c_str(), AT_SYMLINK_FOLLOW) != 0)
                fail(path_);
            named_ = true;
        }
        const int closed = ::close(out_);
        out_ = -1;
        if (closed != 0) fail(path_);
    }

    // A file that came to stand there meanwhile is kept, where the file system can promise that.
    void move_into_place(bool replace) {
        int moved = ::renameat2(AT_FDCWD, name().c_str(), AT_FDCWD, path_.c_str(),
                                replace ? 0 : RENAME_NOREPLACE);
        if (moved != 0 && (errno == EINVAL || errno == ENOSYS))
            moved = std::rename(name().c_str(), path_.c_str());
        if (moved != 0) fail(path_);
        named_ = false;
    }

  private:
    std::string name() const { return path_ + ".part-" + std::to_string(::getpid()); }

    const std::string& path_;
    int out_ = -1;
    bool nameless_ = false, named_ = false;
};

}  // namespace

bool is_standard_output(const NewFile& file) {
    const auto found = status_of(file.path);
    return found && is_standard_output(*found);
}

void check_new_file(const NewFile& file) {
    if (const auto found = status_of(file.path)) check(file, *found);
}

void write_file(const NewFile& file, const Pieces& pieces) {
    const auto found = status_of(file.path);
    if (found) {
        check(file, *found);
        const bool to_answer = is_standard_output(*found);
        if (to_answer || !S_ISREG(found->st_mode))
            return write_through(file.path, to_answer, pieces);
    }
    const auto path = end_of_links(file.path);
    Beside beside(path);
    if (found) beside.be_like(*found);
    beside.fill(pieces);
    beside.move_into_place(found.has_value());
}

void write_file(const NewFile& file, const std::string& text) {
    bool told = false;
    write_file(file, [&] { return std::exchange(told, true) ? std::string() : text; });
}

}  // namespace gristwright::cli
