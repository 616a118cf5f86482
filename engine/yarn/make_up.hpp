// What decides how clearly stitches read, as far as it is the spinner's doing.
#pragma once

#include <string>

#include "engine/yarn/batch.hpp"

namespace gristwright {

struct MakeUp {
    Preparation preparation = Preparation::unknown;
    Draw draw = Draw::unknown;
    int plies = 0;
    std::string fibre;  // kind of its first fibre; may be empty

    // Preparation, draw and plies are; only then can another be like it.
    bool known() const {
        return preparation != Preparation::unknown && draw != Draw::unknown && plies > 0;
    }
    bool operator==(const MakeUp&) const = default;
};

inline MakeUp make_up_of(const Batch& batch) {
    return {batch.preparation, batch.draw, batch.plies,
            batch.fibre.empty() ? "" : batch.fibre.front().kind};
}

}  // namespace gristwright
