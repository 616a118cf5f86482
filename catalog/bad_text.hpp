// Something in a text a person wrote is wrong: which file, which line, and what would be right.
#pragma once

#include <fmt/core.h>

#include <stdexcept>
#include <string>

namespace gristwright::catalog {

struct BadText : std::invalid_argument {
    BadText(const std::string& file, std::size_t line, const std::string& why)
        : std::invalid_argument(line > 0 ? fmt::format("{}:{}: {}", file, line, why)
                                         : fmt::format("{}: {}", file, why)) {}
};

}  // namespace gristwright::catalog
