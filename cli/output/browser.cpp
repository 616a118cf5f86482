#include "cli/output/browser.hpp"

#include <fcntl.h>
#include <spawn.h>
#include <unistd.h>

#include <cstdlib>
#include <memory>

// POSIX leaves this to the program; glibc declares it as well.
extern char** environ;  // NOLINT(readability-redundant-declaration)

namespace gristwright::cli {
namespace {

constexpr const char* opener = "xdg-open";

bool has_screen() { return std::getenv("DISPLAY") || std::getenv("WAYLAND_DISPLAY"); }

// The path from the root: no file's name looks like an option.
std::string from_root(const std::string& path) {
    const std::unique_ptr<char, decltype(&std::free)> full(::realpath(path.c_str(), nullptr),
                                                           &std::free);
    return full ? full.get() : path;
}

bool start(const std::string& file) {
    posix_spawn_file_actions_t quiet;
    posix_spawn_file_actions_init(&quiet);
    posix_spawn_file_actions_addopen(&quiet, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&quiet, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
    posix_spawn_file_actions_addopen(&quiet, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    std::string name = opener, argument = file;
    char* words[] = {name.data(), argument.data(), nullptr};
    pid_t child = 0;
    const int failed = ::posix_spawnp(&child, opener, &quiet, nullptr, words, environ);
    posix_spawn_file_actions_destroy(&quiet);
    return failed == 0;
}

}  // namespace

std::string open_in_browser(const std::string& path) {
    if (!has_screen()) return "not opened: there is no screen here; open the file in a browser";
    if (!start(from_root(path)))
        return "not opened: there is no xdg-open here; open the file in a browser";
    return "";
}

}  // namespace gristwright::cli
