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

}  // namespace

void write_file(const std::string& path, const std::string& text) {
    const auto beside = path + ".part-" + std::to_string(::getpid());
    const int file = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (file < 0) fail(path, "");
    std::size_t done = 0;
    while (done < text.size()) {
        const auto wrote = ::write(file, text.data() + done, text.size() - done);
        if (wrote < 0 && errno == EINTR) continue;
        if (wrote <= 0) {
            ::close(file);
            fail(path, beside);
        }
        done += static_cast<std::size_t>(wrote);
    }
    const bool kept = ::fsync(file) == 0;
    if (::close(file) != 0 || !kept) fail(path, beside);
    if (std::rename(beside.c_str(), path.c_str()) != 0) fail(path, beside);
}

}  // namespace gristwright::cli
