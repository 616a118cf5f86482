#include "engine/suggestion/taken.hpp"

#include <algorithm>

namespace gristwright {
namespace {

constexpr std::string_view roles[] = {
    "",       "weft only", "warp only", "border", "doubled", "with another yarn", "plied again",
    "fulled", "all",       "part"};
constexpr std::string_view wearers[] = {"", "baby", "child", "adult", "animal", "home"};
constexpr std::string_view topics[] = {
    "itch",      "enough", "size",    "count",    "metres",  "skeins", "wear",    "warmth", "drape",
    "blocking",  "care",   "felting", "stitches", "pooling", "needle", "gauge",   "sett",   "left",
    "spin more", "choice", "mass",    "bias",     "warp",    "waste",  "pattern", "time",   "ply",
    "spring",    "dye",    "weight",  "allergy",  "cost",    "skill",  "cutting"};

template <class Enum, std::size_t n>
std::optional<Enum> named(const std::string_view (&names)[n], std::string_view name) {
    const auto* found = std::find(std::begin(names), std::end(names), name);
    if (found == std::end(names) || name.empty()) return {};
    return static_cast<Enum>(found - std::begin(names));
}

}  // namespace

std::string_view words(YarnRole role) { return roles[static_cast<std::size_t>(role)]; }
std::optional<YarnRole> yarn_role_named(std::string_view name) {
    return named<YarnRole>(roles, name);
}
std::string_view words(Wearer wearer) { return wearers[static_cast<std::size_t>(wearer)]; }
std::optional<Wearer> wearer_named(std::string_view name) { return named<Wearer>(wearers, name); }
std::string_view words(Topic topic) { return topics[static_cast<std::size_t>(topic)]; }
std::optional<Topic> topic_named(std::string_view name) { return named<Topic>(topics, name); }

bool Taken::about(Topic topic) const {
    return std::find(topics.begin(), topics.end(), topic) != topics.end();
}

}  // namespace gristwright
