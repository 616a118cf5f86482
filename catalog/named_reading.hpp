// A text read by one of our readers, its complaint headed by where the text stood.
#pragma once

#include <fmt/core.h>

#include <stdexcept>
#include <string>
#include <string_view>

namespace gristwright::catalog {

// What `read(text)` gives. A std::invalid_argument is thrown again as "where: complaint"; as it is
// where no place is known.
template <class Read>
auto read_named(std::string_view where, const std::string& text, Read read) {
    try {
        return read(text);
    } catch (const std::invalid_argument& error) {
        if (where.empty()) throw;
        throw std::invalid_argument(fmt::format("{}: {}", where, error.what()));
    }
}

}  // namespace gristwright::catalog
