// One idea typed: what is no idea and what is no file of answers is refused before anything is
// done.
#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>

#include "tests/cli/asked.hpp"

using asked::and_more;
using asked::complaint;
using asked::holds;

namespace {

std::string answer_complaint(const asked::Typed& more) {
    return complaint(
        [&] { asked::said("answer", and_more({asked::example("heron.toml")}, more)); });
}

}  // namespace

TEST_CASE("an idea without a word is refused, whatever it is made of") {
    for (const char* empty : {"", " ", "   ", "\u00A0"}) {
        CAPTURE(empty);
        CHECK(holds(answer_complaint({"--idea", empty}), "answer needs --idea"));
    }
    CHECK(holds(answer_complaint({}), "answer needs --idea"));
}

TEST_CASE("answers are written to a file that says what is in it, or are not written") {
    const asked::Folder folder;
    for (const char* name : {"a.html", "a.txt", "a.pdf", "a.csv.html"}) {
        const auto out = folder.file(name);
        CAPTURE(out);
        CHECK(holds(answer_complaint({"--idea", "a hat", "--out", out}), ".csv or .json"));
        CHECK_FALSE(std::filesystem::exists(out));
    }
    CHECK(holds(answer_complaint({"--idea", "a hat", "--out", folder.file("b.html")}),
                "gristwright page"));
    for (const auto& [name, begins] :
         {std::pair{"a.csv", 'r'}, std::pair{"a.CSV", 'r'}, std::pair{"plain", 'r'},
          std::pair{"a.json", '{'}, std::pair{"a.JSON", '{'}}) {
        const auto out = folder.file(name);
        CAPTURE(out);
        CHECK(holds(
            asked::said("answer", {asked::example("heron.toml"), "--idea", "a hat", "--out", out}),
            "1 suggestion"));
        std::ifstream in(out);
        CHECK(static_cast<char>(in.get()) == begins);
    }
}
