// A text read by one of our readers, its complaint headed by where the text stood.
#pragma once

#include <fmt/core.h>

#include <stdexcept>
#include <string>
#include <string_view>

#include "engine/units/failure.hpp"

namespace gristwright::catalog {

// What `read(text)` gives. A Refused is thrown again as "where: complaint"; as it is
// where no place is known.
template <class Read>
auto read_named(std::string_view where, const std::string& text, Read read) {
    try {
        return read(text);
    } catch (const Refused& error) {
        if (where.empty()) throw;
        throw Refused(fmt::format("{}: {}", where, error.what()));
    }
}

}  // namespace gristwright::catalog
