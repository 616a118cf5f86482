#include <algorithm>

#include "engine/yarn/batch.hpp"

namespace gristwright {
namespace {

constexpr std::array<std::string_view, made_count> made_words{
    "thick-and-thin", "core-spun", "boucle",    "chain-ply",  "cabled",
    "energised",      "fulled",    "overplied", "underplied", "Z-plied"};

}  // namespace

std::string_view words(Made made) { return made_words[static_cast<std::size_t>(made)]; }

std::optional<Made> made_named(std::string_view word) {
    const auto found = std::find(made_words.begin(), made_words.end(), word);
    if (found == made_words.end()) return {};
    return static_cast<Made>(found - made_words.begin());
}

}  // namespace gristwright
