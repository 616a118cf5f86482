#include "cli/output/new_file.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>

namespace gristwright::cli {
namespace {

[[noreturn]] void fail(const std::string& path, const std::string& beside) {
    const std::string why = std::strerror(errno);
    if (!beside.empty()) ::unlink(beside.c_str());
    throw CannotCreate("cannot write '" + path + "': " + why);
}

bool write_all(int file, const std::string& text) {
    std::size_t done = 0;
    while (done < text.size()) {
        const auto wrote = ::write(file, text.data() + done, text.size() - done);
        if (wrote < 0 && errno == EINTR) continue;
        if (wrote <= 0) return false;
        done += static_cast<std::size_t>(wrote);
    }
    return true;
}

}  // namespace

void write_file(const std::string& path, const std::string& text) {
    const auto beside = path + ".part-" + std::to_string(::getpid());
    const auto slash = path.rfind('/');
    const auto folder = slash == std::string::npos ? std::string(".") : path.substr(0, slash + 1);
    // A file without a name is gone if we are stopped; it gets one only when it is whole.
    int file = ::open(folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, 0644);
    const bool nameless = file >= 0;
    if (!nameless) file = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (file < 0) fail(path, "");
    const bool whole = write_all(file, text) && ::fsync(file) == 0;
    const auto self = "/proc/self/fd/" + std::to_string(file);
    const bool named = !nameless || (whole && ::linkat(AT_FDCWD, self.c_str(), AT_FDCWD,
                                                       beside.c_str(), AT_SYMLINK_FOLLOW) == 0);
    const int why = errno;
    if (::close(file) != 0 || !whole || !named) {
        errno = why;
        fail(path, beside);
    }
    if (std::rename(beside.c_str(), path.c_str()) != 0) fail(path, beside);
}

}  // namespace gristwright::cli
