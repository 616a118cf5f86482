// The one place where a failure becomes an exit code and a next step.
#include <fmt/core.h>

#include <cstdio>
#include <exception>
#include <string>

#include "catalog/nearest.hpp"
#include "catalog/notebook.hpp"
#include "catalog/source.hpp"
#include "cli/command.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/new_file.hpp"

namespace {

using namespace gristwright;

enum Exit {
    answered = 0,
    usage = 64,
    bad_data = 65,
    no_input = 66,
    our_bug = 70,
    cannot_create = 73,
    io_error = 74,
    busy = 75
};

// A full disk or a closed pipe is noticed, not ignored.
int print(const std::string& text, int exit_code) {
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if (written && std::fflush(stdout) == 0) return exit_code;
    std::fputs("gristwright: the answer could not be written\n", stderr);
    return io_error;
}

// A complaint may quote what was typed: no byte of it may drive the terminal.
int complain(const std::exception& error, int code) {
    std::fprintf(stderr, "gristwright: %s\n", cli::inert(error.what()).c_str());
    return code;
}

std::string overview() {
    std::string out = "gristwright: what a finished batch of handspun can make\n\n";
    for (const auto& command : cli::commands())
        out += cli::labelled(cli::padded(std::string(command.name), 10), command.summary, 2) + "\n";
    return out + "\nOptions of each: gristwright COMMAND --help\n";
}

const cli::Command& command_named(const std::string& name) {
    std::vector<std::string> names;
    for (const auto& command : cli::commands()) {
        if (command.name == name) return command;
        names.emplace_back(command.name);
    }
    throw cli::Misused(fmt::format("there is no command '{}'{}; the commands are: {}", name,
                                   catalog::did_you_mean(name, names), cli::joined(names)));
}

bool asks_for_help(const std::vector<std::string>& typed) {
    for (const auto& word : typed)
        if (word == "--help" || word == "-h") return true;
    return false;
}

int run(const std::vector<std::string>& typed) {
    if (typed.empty()) return std::fputs(overview().c_str(), stderr), usage;
    if (typed[0] == "--help" || typed[0] == "help") return print(overview(), answered);
    if (typed[0] == "--version") return print("gristwright " GRISTWRIGHT_VERSION "\n", answered);
    const auto& command = command_named(typed[0]);
    const std::vector<std::string> rest(typed.begin() + 1, typed.end());
    if (asks_for_help(rest)) return print(cli::help(command), answered);
    const auto answer = command.run(cli::parse(command, rest));
    if (!answer.notes.empty())
        std::fprintf(stderr, "gristwright: %s\n", cli::inert(answer.notes).c_str());
    return print(answer.text, answer.exit_code);
}

}  // namespace

int main(int argc, char** argv) {
    try {
        return run({argv + 1, argv + argc});
    } catch (const cli::Misused& error) {
        return complain(error, usage);
    } catch (const catalog::MissingFile& error) {
        return complain(error, no_input);
    } catch (const catalog::NotebookBusy& error) {
        return complain(error, busy);
    } catch (const catalog::NotebookFailed& error) {
        return complain(error, io_error);
    } catch (const cli::CannotCreate& error) {
        return complain(error, cannot_create);
    } catch (const std::invalid_argument& error) {
        return complain(error, bad_data);
    } catch (const std::exception& error) {
        return complain(error, our_bug);
    }
}
