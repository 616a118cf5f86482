// Something in a text a person wrote is wrong: which file, which line, and what would be right.
#pragma once

#include <fmt/core.h>

#include <stdexcept>
#include <string>

#include "engine/units/failure.hpp"

namespace gristwright::catalog {

struct BadText : Refused {
    BadText(const std::string& file, std::size_t line, const std::string& why)
        : Refused(line > 0 ? fmt::format("{}:{}: {}", file, line, why)
                           : fmt::format("{}: {}", file, why)) {}
};

}  // namespace gristwright::catalog
