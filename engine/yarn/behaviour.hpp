// How a fibre behaves, whatever yarn is spun of it: one level each, 0 (not at all) to 1 (as much
// as a fibre of hand spinning can). Data: the columns of catalog/tables/fibres.csv, with a mark.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "engine/estimate/constant.hpp"

namespace gristwright {

enum class Behaviour {
    spring,      // comes back after stretching: crimp and elastic recovery
    strength,    // breaking strength, dry and wet
    wear,        // stands rubbing
    warmth,      // holds air
    felts,       // 0: never
    absorbency,  // takes up liquid water
    halo,        // hairs that stand out
    softness,    // next to the skin
    crispness,   // stands in pleats
    heat,        // bears a hot pot; low: melts
};
inline constexpr std::size_t behaviour_count = 10;
std::string_view words(Behaviour behaviour);

// What is known: a range is what a group of breeds, or sources that disagree, leave open.
struct Level {
    double low = 0, high = 0;
    Mark mark = Mark::judgement;

    double middle() const { return (low + high) / 2; }
};

struct FibreBehaviour {
    std::array<std::optional<Level>, behaviour_count> levels;  // nothing: not known

    const std::optional<Level>& of(Behaviour b) const {
        return levels[static_cast<std::size_t>(b)];
    }
    std::optional<Level>& of(Behaviour b) { return levels[static_cast<std::size_t>(b)]; }
};

}  // namespace gristwright
