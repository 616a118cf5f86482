// The one place where an answer or a failure leaves the program.
#include <cstdio>
#include <exception>
#include <string>

#include "cli/command.hpp"
#include "cli/commands/help.hpp"
#include "cli/exit_codes.hpp"
#include "cli/failure.hpp"
#include "cli/output/layout.hpp"

namespace {

using namespace gristwright;

// A full disk or a closed pipe is noticed, not ignored.
int print(const std::string& text, int exit_code, const std::string& stands = "") {
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if (written && std::fflush(stdout) == 0) return exit_code;
    std::fprintf(stderr, "gristwright: the answer could not be written%s%s\n",
                 stands.empty() ? "" : "; but ", cli::inert(stands).c_str());
    return cli::io_error;
}

// A complaint may quote what was typed: no byte of it may drive the terminal.
int complain(const std::exception& error) {
    const auto code = cli::exit_code_of(error);
    std::fprintf(stderr, "gristwright: %s%s\n",
                 code == cli::our_bug ? "this is our mistake, please report it: " : "",
                 cli::inert(error.what()).c_str());
    return code;
}

bool asks_for_help(const std::vector<std::string>& typed) {
    for (const auto& word : typed)
        if (word == "--help" || word == "-h") return true;
    return false;
}

int run(const std::vector<std::string>& typed) {
    if (typed.empty()) return std::fputs(cli::overview().c_str(), stderr), cli::usage;
    if (typed[0] == "--help" || typed[0] == "-h") return print(cli::overview(), cli::answered);
    if (typed[0] == "--version")
        return print("gristwright " GRISTWRIGHT_VERSION "\n", cli::answered);
    const auto& command = cli::command_named(typed[0]);
    const std::vector<std::string> rest(typed.begin() + 1, typed.end());
    if (asks_for_help(rest)) return print(cli::help(command), cli::answered);
    const auto answer = command.run(cli::parse(command, rest));
    for (const auto& note : cli::apart(answer.notes, '\n'))
        std::fprintf(stderr, "gristwright: %s\n", cli::inert(note).c_str());
    return print(answer.text, answer.exit_code, answer.stands);
}

}  // namespace

int main(int argc, char** argv) {
    try {
        return run({argv + 1, argv + argc});
    } catch (const std::exception& error) {
        return complain(error);
    }
}
