// What is made from the commands' records: completion, manual pages, the reference.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "cli/exit_codes.hpp"
#include "cli/output/completion.hpp"
#include "cli/output/manual.hpp"
#include "cli/output/reference.hpp"
#include "cli/topics.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright::cli;
using asked::holds;
using asked::lines;
using asked::times;
using asked::Typed;

namespace {

// The words in single quotes of a line.
Typed quoted(const std::string& line) {
    Typed out;
    const auto parts = apart(line, '\'');
    for (std::size_t i = 1; i < parts.size(); i += 2) out.push_back(parts[i]);
    return out;
}

// The lines of a shell function, by its name.
Typed body_of(const std::string& script, const std::string& name) {
    Typed out;
    bool inside = false;
    for (const auto& line : lines(script)) {
        if (line == name + "() {") inside = true;
        if (line == "}") inside = false;
        if (inside) out.push_back(line);
    }
    return out;
}

// The line that begins with that case, or "".
std::string case_of(const Typed& body, const std::string& label) {
    for (const auto& line : body)
        if (line.find("        " + label + ") ") == 0) return line;
    return "";
}

}  // namespace

TEST_CASE("completion knows every command's options and no others") {
    const auto body = body_of(bash_completion(), "_gristwright_options");
    for (const auto& command : commands()) {
        INFO(command.name);
        auto names = quoted(case_of(body, std::string(command.name)));
        REQUIRE_FALSE(names.empty());
        names.erase(names.begin());  // the format
        Typed wanted;
        for (const auto& option : command.options)
            wanted.push_back("--" + std::string(option.name));
        CHECK(names == wanted);
    }
}

TEST_CASE(
    "completion offers an option's words, templates where they are meant, and after a flag "
    "goes on") {
    const auto body = body_of(bash_completion(), "_gristwright_values");
    for (const auto& command : commands())
        for (const auto& option : command.options) {
            const auto label =
                "'" + std::string(command.name) + " --" + std::string(option.name) + "'";
            const auto line = case_of(body, label);
            INFO(label);
            CHECK(line.empty() == option.value.empty());
            if (!option.words.empty())
                for (const auto& word : apart(option.words)) CHECK(holds(line, " '" + word + "'"));
            CHECK(holds(line, "_gristwright_names templates") ==
                  (option.value == "TEMPLATE" && option.words.empty()));
        }
}

TEST_CASE("completion offers the words that a command takes as they stand") {
    const auto body = body_of(bash_completion(), "_gristwright_words");
    const std::pair<const char*, Typed> cases[] = {
        {"batch", {"add", "list"}},
        {"picture", {"plan", "split", "cloth", "yarn"}},
        {"help", {"units", "exit-codes", "plan", "undo"}}};
    for (const auto& [command, wanted] : cases) {
        const auto offered = quoted(case_of(body, command));
        for (const auto& word : wanted) {
            INFO(command, " ", word);
            CHECK(std::count(offered.begin(), offered.end(), word) == 1);
        }
    }
    CHECK(holds(case_of(body, "plan"), "_gristwright_names templates"));
    CHECK(case_of(body, "undo").empty());
}

TEST_CASE("completion's quotes and braces come in pairs") {
    int braces = 0;
    for (const auto& line : lines(bash_completion())) {
        if (line[0] == '#') continue;
        INFO(line);
        CHECK(std::count(line.begin(), line.end(), '\'') % 2 == 0);
        for (const char c : line) braces += c == '{' ? 1 : c == '}' ? -1 : 0;
    }
    CHECK(braces == 0);
}

TEST_CASE("no line of a manual page is a request that we did not write") {
    const std::set<std::string> known{".Dd", ".Dt", ".Os", ".Sh", ".Ss", ".Nm",
                                      ".Nd", ".Op", ".Ar", ".Cm", ".Fl", ".Bl",
                                      ".It", ".El", ".Bd", ".Ed", ".Dl", ".Xr"};
    std::vector<std::string> pages{manual()};
    for (const auto& command : commands()) pages.push_back(manual(command));
    for (const auto& page : pages) {
        for (const auto& line : lines(page)) {
            INFO(line);
            if (line.empty()) continue;  // in a text that stands as it is
            if (line[0] == '.') CHECK(known.count(line.substr(0, 3)) == 1);
            CHECK(line[0] != '\'');
        }
        CHECK(times(page, "\n.Bl ") == times(page, "\n.El\n"));
        CHECK(times(page, "\n.Bd ") == times(page, "\n.Ed\n"));
    }
}

TEST_CASE("a command's page has each option once, in the record's order, and every exit code") {
    for (const auto& command : commands()) {
        const auto page = manual(command);
        INFO(command.name);
        std::size_t at = 0;
        for (const auto& option : command.options) {
            const auto item =
                "\n.It Fl -" + std::string(option.name) + (option.value.empty() ? "\n" : " Ar \"");
            CHECK(times(page, item) == 1);
            CHECK(page.find(item) > at);
            at = page.find(item);
        }
        for (const auto& [code, meaning] : exit_meanings)
            CHECK(times(page, "\n.It " + std::to_string(int{code}) + "\n") == 1);
        CHECK(holds(page, "EXAMPLES") == !command.example.empty());
        CHECK(holds(page, "May be given again.") ==
              std::any_of(command.options.begin(), command.options.end(),
                          [](const auto& option) { return option.repeats; }));
    }
}

TEST_CASE("the program's page names every command twice and every topic") {
    const auto page = manual();
    for (const auto& name : command_names()) {
        CHECK(times(page, "\n.It Cm " + name + "\n") == 1);
        CHECK(times(page, "\n.Xr gristwright-" + name + " 1") == 1);
    }
    for (const auto& topic : topics())
        CHECK(holds(page, ".Ss " + topic.text.substr(0, topic.text.find(':'))) ==
              (topic.name != "exit-codes"));
}

TEST_CASE("what stands in quotes or with a backslash reaches the manual as it is") {
    const std::vector<Option> options{{"odd", "\"a b\\c", ".begins with a stop"}};
    const Command odd{"odd",        "'Tis odd. And so is this.", "", 0, 0, options, nullptr,
                      "--odd \"x\""};
    const auto page = manual(odd);
    CHECK(holds(page, ".It Fl -odd Ar \"\\&\\(dqa b\\ec\"\n"));
    CHECK(holds(page, "\n\\&.begins with a stop.\n"));
    CHECK(holds(page, "\n\\&'Tis odd.\nAnd so is this.\n"));
    CHECK(holds(page, ".Dl \"\\&gristwright odd --odd \\(dqx\\(dq\"\n"));
}

TEST_CASE("the reference has a section for every command, a row of three cells for every option") {
    const auto text = reference();
    for (const auto& command : commands()) {
        const auto head = "\n## gristwright " + std::string(command.name) + "\n";
        REQUIRE(times(text, head) == 1);
        const auto begin = text.find(head) + 1;
        const auto section = text.substr(begin, text.find("\n## ", begin) - begin);
        for (const auto& option : command.options) {
            INFO(command.name, " ", option.name);
            CHECK(times(section, "| `--" + std::string(option.name) + "` |") == 1);
        }
        for (const auto& line : lines(section))
            if (line[0] == '|') CHECK(times(line, "|") - times(line, "\\|") == 4);
    }
    for (const auto& topic : topics()) CHECK(holds(text, topic.text));
}
