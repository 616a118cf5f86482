// Found a bug: a second template of one's own on the line moved the catalogue's templates from
// under the plan of the first, and split answered "0.0 cm from 0.0 m ... (proven)".
#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;
using asked::said;
using asked::Typed;

namespace {

const char* const originals[] = {"fingerless-mitts", "triangle-shawl", "garter-scarf"};

std::string written(const std::string& path) {
    std::ostringstream out;
    out << std::ifstream(path).rdbuf();
    return out.str();
}

// The built-in templates copied under names of one's own.
struct Own {
    asked::Folder folder;
    Own() {
        for (const char* name : originals)
            std::filesystem::copy_file(ROOT_DIR "/catalog/templates/" + std::string(name) + ".toml",
                                       file(name));
    }
    std::string file(const std::string& name) const { return folder.file("own-" + name + ".toml"); }

    // The same words with each built-in template named by its copy.
    Typed with_own(Typed typed) const {
        for (auto& word : typed)
            for (const char* name : originals)
                if (word == name) word = file(name);
        return typed;
    }
};

// The copies' names are not the originals', and the next command names the file.
std::string without_own(std::string text) {
    if (const auto next = text.find("\nNext: "); next != std::string::npos)
        text.erase(next, text.find('\n', next + 1) - next);
    for (std::size_t at; (at = text.find("own-")) != std::string::npos;) text.erase(at, 4);
    return text;
}

}  // namespace

TEST_CASE("any number of own templates on one line give the answers of the same built in") {
    const Own own;
    const auto heron = asked::example("heron.toml");
    const Typed split{heron,     "--sample",         "knitted", "--main",        "garter-scarf",
                      "--piece", "fingerless-mitts", "--piece", "triangle-shawl"};
    auto as_json = split, twice = split;
    as_json.push_back("--json");
    twice.insert(twice.end(), {"--piece", "fingerless-mitts"});
    const std::pair<const char*, Typed> lines[] = {{"split", split},
                                                   {"split", as_json},
                                                   {"split", twice},
                                                   {"plan", {"triangle-shawl", heron, "--working"}},
                                                   {"spin-more", {"fingerless-mitts", heron}},
                                                   {"spin-for", {"fingerless-mitts"}}};
    for (const auto& [command, typed] : lines) {
        INFO(command);
        const auto built_in = said(command, typed);
        CHECK(built_in.size() > 60);
        CHECK(without_own(said(command, own.with_own(typed))) == without_own(built_in));
        CHECK_FALSE(holds(built_in, " 0.0 m,"));
    }
}

TEST_CASE("pictures and pages of two own templates are those of the same built in") {
    const Own own;
    int files = 0;
    const auto drawn = [&](const std::string& command, Typed typed) {
        const auto file = own.folder.file("drawn" + std::to_string(++files));
        typed.insert(typed.end(), {"--out", file});
        said(command, typed);
        return without_own(written(file));
    };
    const auto heron = asked::example("heron.toml");
    const Typed wishes{"--main", "garter-scarf", "--piece", "fingerless-mitts"};
    for (const auto& [command, words] :
         {std::pair<std::string, Typed>{"picture", {"split", heron}}, {"page", {heron}}}) {
        auto typed = words;
        typed.insert(typed.end(), wishes.begin(), wishes.end());
        const auto built_in = drawn(command, typed);
        INFO(command);
        CHECK(built_in.size() > 600);
        CHECK(drawn(command, own.with_own(typed)) == built_in);
    }
    for (const char* what : {"plan", "cloth"})
        CHECK(drawn("picture", own.with_own({what, "garter-scarf", heron})) ==
              drawn("picture", {what, "garter-scarf", heron}));
}
