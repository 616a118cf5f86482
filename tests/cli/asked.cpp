#include "tests/cli/asked.hpp"

#include <fmt/core.h>
#include <unistd.h>

#include <cstdlib>
#include <random>

namespace asked {
namespace {

// No test reads what the person who runs it keeps, nor depends on the terminal.
const bool apart_from_home = [] {
    ::setenv("XDG_DATA_HOME", ROOT_DIR "/tests/cli/no-such-folder", 1);
    ::setenv("NO_COLOR", "1", 1);
    ::unsetenv("COLUMNS");
    return true;
}();

}  // namespace

Arguments arguments(const std::string& command, const Typed& typed) {
    return parse(command_named(command), typed);
}

Answer run(const std::string& command, const Typed& typed) {
    const auto& c = command_named(command);
    return c.run(parse(c, typed));
}

std::string said(const std::string& command, const Typed& typed) {
    return run(command, typed).text;
}

Typed and_more(Typed typed, const Typed& more) {
    typed.insert(typed.end(), more.begin(), more.end());
    return typed;
}

std::string example(const std::string& file) { return ROOT_DIR "/docs/examples/" + file; }

Question of_heron(const Typed& more) {
    return ask(arguments("makes", more), example("heron.toml"));
}

Question of_options(const Typed& typed) { return ask(arguments("makes", typed), ""); }

const Question& heron() {
    static const Question once = of_heron();
    return once;
}

Question random_batch(unsigned seed, std::size_t skeins) {
    std::mt19937 random{seed};
    std::uniform_real_distribution<double> tex(60, 900), hand(15, 300), uneven(0.94, 1.06);
    const double grist = tex(random);
    Typed typed;
    for (std::size_t i = 0; i < skeins; ++i) {
        const double metres = hand(random);
        typed.insert(typed.end(), {"--skein", fmt::format("{:.1f}m/{:.2f}g", metres,
                                                          metres * grist * uneven(random) / 1000)});
    }
    if (seed % 2 == 1)
        typed.insert(typed.end(), {"--fibre", "Corriedale", "--prep", "combed", "--ply", "2"});
    if (seed % 3 == 1) typed.insert(typed.end(), {"--heddles", "30/10cm,50/10cm"});
    return of_options(typed);
}

bool holds(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

std::size_t times(const std::string& text, const std::string& part) {
    std::size_t out = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++out;
    return out;
}

Folder::Folder() {
    static int made = 0;
    path_ = std::filesystem::temp_directory_path() /
            fmt::format("gristwright-test-{}-{}", ::getpid(), ++made);
    std::filesystem::create_directories(path_);
}

Folder::~Folder() { std::filesystem::remove_all(path_); }

std::vector<std::string> lines(const std::string& text) { return apart(text, '\n'); }

}  // namespace asked
