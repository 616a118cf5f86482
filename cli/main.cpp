// The one place where a failure becomes an exit code and a next step.
#include <CLI/CLI.hpp>
#include <cstdio>
#include <exception>
#include <string>
#include <string_view>

#include "cli/commands/yarn.hpp"

namespace {

enum Exit { answered = 0, usage = 64, bad_data = 65, our_bug = 70, io_error = 74 };

// A full disk or a closed pipe is noticed, not ignored.
int print(const std::string& text) {
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if (written && std::fflush(stdout) == 0) return answered;
    std::fputs("gristwright: the answer could not be written\n", stderr);
    return io_error;
}

// A complaint may quote what was typed: no byte of it may drive the terminal.
std::string inert(std::string text) {
    for (char& c : text)
        if (c < ' ' || c > '~') c = '?';
    return text;
}

int complain(const std::exception& error, int code) {
    std::fprintf(stderr, "gristwright: %s\n", inert(error.what()).c_str());
    return code;
}

// The parser calls a mistyped command "missing": say the word that was typed instead.
void check_command_name(int argc, char** argv) {
    if (argc < 2 || argv[1][0] == '-' || std::string_view(argv[1]) == "yarn") return;
    throw CLI::ParseError("there is no command of that name; the commands are: yarn", usage);
}

int run(int argc, char** argv) {
    CLI::App app{"gristwright: what a finished batch of handspun is", "gristwright"};
    app.require_subcommand(1);
    gristwright::cli::YarnRequest request;
    auto* yarn = app.add_subcommand("yarn", "say what yarn a batch is");
    yarn->add_option("--skein", request.skeins, "length/mass of a skein, 171m/38.5g; repeat it")
        ->required()
        ->allow_extra_args(false);
    yarn->add_option("--wraps", request.wraps, "wraps laid side by side, 16wpi or 6.3 wraps/cm");
    yarn->add_option("--prep", request.preparation, "carded or combed");
    yarn->add_option("--draw", request.draw, "long or short");
    yarn->add_option("--micron", request.micron, "fibre diameter, 24-27");
    yarn->add_option("--scale", request.scale, "what the scale reads to, 1g; else as written");
    try {
        check_command_name(argc, argv);
        app.parse(argc, argv);
    } catch (const CLI::Success& help) {
        return app.exit(help);
    } catch (const CLI::ParseError& error) {
        return complain(error, usage);
    }
    return print(gristwright::cli::yarn_answer(request));
}

}  // namespace

int main(int argc, char** argv) {
    try {
        return run(argc, argv);
    } catch (const std::invalid_argument& error) {
        return complain(error, bad_data);
    } catch (const std::exception& error) {
        return complain(error, our_bug);
    }
}
