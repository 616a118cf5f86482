// What every fuzz target shares: bytes as text, the complaint that a reader may make, and a stop
// when a promise is broken.
#pragma once

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>
#include <string>
#include <string_view>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::fuzz {

inline std::string_view text_of(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

// Refusing is right, and says why; any other exception ends the run as a finding.
template <class Read>
void may_refuse(Read read) {
    try {
        read();
    } catch (const std::invalid_argument& refusal) {
        if (*refusal.what() == '\0') std::abort();
    }
}

inline void promise(bool kept, const char* what) {
    if (kept) return;
    std::fprintf(stderr, "broken promise: %s\n", what);
    std::abort();
}

inline const catalog::Catalogue& catalogue() {
    static const auto once = catalog::built_in();
    return once;
}

}  // namespace gristwright::fuzz
