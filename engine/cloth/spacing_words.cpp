#include "engine/cloth/spacing_words.hpp"

#include <fmt/core.h>

#include <array>

namespace gristwright {
namespace {

std::string counted(int n) {
    constexpr std::array<std::string_view, 4> said{"no", "one", "two", "three"};
    return n < 4 ? std::string(said[static_cast<std::size_t>(n)]) : fmt::format("{}", n);
}

}  // namespace

std::string_view spaced_in(const WovenCloth& cloth) {
    switch (cloth.by) {
        case Spaced::heddle:
            return "heddle";
        case Spaced::reed:
            return "reed";
        case Spaced::pins:
            return "frame";
        case Spaced::weft:
            break;
    }
    return "loom";
}

std::string spacing_words(const WovenCloth& cloth) {
    const auto name = heddle_name(cloth.heddle);
    if (cloth.by == Spaced::pins) return "frame with pins at " + name;
    if (cloth.heddles_together == 2)
        return fmt::format("two {} heddles (one behind the other)", name);
    const auto one = fmt::format("{} {}", name, spaced_in(cloth));
    const auto& order = cloth.sleying;
    if (order.even() && order.ends() == 1) return one;
    if (order.ends() == 1) return one + " (one end in every other dent)";
    if (!order.even()) return fmt::format("{} (sleyed {})", one, order.order);
    const auto where = cloth.by == Spaced::reed ? "to a dent" : "in each hole and slot, as one";
    return fmt::format("{} ({} ends {})", one, counted(order.ends()), where);
}

}  // namespace gristwright
