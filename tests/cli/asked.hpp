// Questions put to the command line's own parts, away from the person's notebook and templates.
#pragma once

#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "cli/question.hpp"

namespace asked {

using namespace gristwright;
using namespace gristwright::cli;
using Typed = std::vector<std::string>;

// What the command makes of the words typed after it.
Arguments arguments(const std::string& command, const Typed& typed);
// What the command answers to them; its text alone.
Answer run(const std::string& command, const Typed& typed);
std::string said(const std::string& command, const Typed& typed);
Typed and_more(Typed typed, const Typed& more);
// Of the demo batch docs/examples/heron.toml, with what else was typed; of these options alone.
Question of_heron(const Typed& more = {});
Question of_options(const Typed& typed);
// Heron, asked once.
const Question& heron();

// A batch of `skeins` skeins of any thickness a hand can spin, the same for the same seed.
Question random_batch(unsigned seed, std::size_t skeins);

std::string example(const std::string& file);  // its path in docs/examples

// What the call complains of; fails the test when it does not.
template <class Call>
std::string complaint(Call call) {
    try {
        call();
    } catch (const std::invalid_argument& error) {
        return error.what();
    }
    return "nothing was wrong";
}

bool holds(const std::string& text, std::string_view part);
std::size_t times(const std::string& text, const std::string& part);
std::vector<std::string> lines(const std::string& text);

// A folder of its own, gone with the test.
class Folder {
  public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const std::filesystem::path& path() const { return path_; }
    std::string file(const std::string& name) const { return (path_ / name).string(); }

  private:
    std::filesystem::path path_;
};

}  // namespace asked
