#include "engine/yarn/behaviour.hpp"

namespace gristwright {
namespace {

constexpr std::array<std::string_view, behaviour_count> behaviour_words{
    "spring",     "strength", "wear",     "warmth",    "felts",
    "absorbency", "halo",     "softness", "crispness", "heat_safety"};

}  // namespace

std::string_view words(Behaviour behaviour) {
    return behaviour_words[static_cast<std::size_t>(behaviour)];
}

}  // namespace gristwright
