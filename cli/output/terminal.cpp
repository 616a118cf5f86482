#include "cli/output/terminal.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>

#include "cli/output/line_width.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t usual_columns = 80, fewest_columns = 40, most_of_text = 99;
constexpr std::size_t endless_columns = 1000;

// 0 where the variable says nothing.
std::size_t columns_said() {
    const char* said = std::getenv("COLUMNS");
    if (!said) return 0;
    std::size_t columns = 0;
    for (; *said; ++said) {
        if (*said < '0' || *said > '9' || columns > 9999) return 0;
        columns = 10 * columns + static_cast<std::size_t>(*said - '0');
    }
    return columns;
}

std::size_t columns_of_terminal() {
    winsize size{};
    if (::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0) return 0;
    return size.ws_col;
}

std::size_t columns() {
    if (const auto said = columns_said(); said > 0) return said;
    static const auto there = columns_of_terminal();  // asked once for all lines
    return there > 0 ? there : usual_columns;
}

bool wants_colour() {
    const char* term = std::getenv("TERM");
    const char* no_colour = std::getenv("NO_COLOR");
    return isatty(STDOUT_FILENO) == 1 && !(no_colour && *no_colour) && term &&
           std::string_view(term) != "dumb";
}

const char* code(Dye dye) {
    switch (dye) {
        case Dye::heading:
            return "\033[1m";
        case Dye::knitted:
            return "\033[33m";
        case Dye::woven:
            return "\033[36m";
        case Dye::lacking:
            return "\033[31m";
        case Dye::aside:
            return "\033[2m";
    }
    return "";
}

}  // namespace

std::size_t table_width() { return std::max(columns(), fewest_columns) - 1; }

std::size_t text_width() { return std::min(table_width(), most_of_text); }

std::size_t line_width() { return columns() < endless_columns ? text_width() : std::string::npos; }

std::string dyed(std::string_view text, Dye dye) {
    static const bool colour = wants_colour();
    if (!colour || text.empty()) return std::string(text);
    return code(dye) + std::string(text) + "\033[0m";
}

}  // namespace gristwright::cli
