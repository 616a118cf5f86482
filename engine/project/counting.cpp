#include "engine/project/counting.hpp"

#include <array>

#include "engine/project/constants.hpp"

namespace gristwright {
namespace {

constexpr std::array<std::string_view, follows_count> names{
    "article", "neck", "upper arm", "wrist", "armhole", "back length", "arm length", "yoke"};

}  // namespace

std::string_view words(Follows follows) { return names[static_cast<std::size_t>(follows)]; }

double growth(Follows follows, bool grows) {
    using namespace constants;
    switch (follows) {
        case Follows::article:
            return grows ? 1 : 0;
        case Follows::neck:
            return neck_growth;
        case Follows::upper_arm:
            return upper_arm_growth;
        case Follows::wrist:
            return wrist_growth;
        case Follows::armhole:
            return armhole_growth;
        case Follows::back_length:
            return back_length_growth;
        case Follows::arm_length:
            return arm_length_growth;
        case Follows::yoke:
            return yoke_growth;
    }
    return 0;
}

}  // namespace gristwright
