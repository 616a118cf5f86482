// A batch that cannot be, or is very unlikely to be, yarn.
#pragma once

#include <optional>
#include <string>

#include "engine/units/failure.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

// What a measurement that is merely unlikely says: a skein of a grist that no yarn has, or wraps
// that leave more or less of the space to fibre than laid yarn has.
struct UnlikelyMeasure {
    enum class Of { skein, wraps };
    Of of = Of::skein;
    std::string name = "";  // the skein's
    Length length{};
    Mass mass{};
    Wraps wraps{};
    double fibre = 0;      // share of the space
    bool slipped = false;  // length and mass look swapped; the wraps look packed

    auto operator<=>(const UnlikelyMeasure&) const = default;
};

// With a doubt it passes when one insists; without, it cannot be at all.
struct ImplausibleYarn : Refused {
    using Refused::Refused;
    explicit ImplausibleYarn(UnlikelyMeasure of)
        : Refused(of.of == UnlikelyMeasure::Of::skein
                      ? of.name + ": no yarn has that grist"
                      : "no yarn laid side by side counts those wraps"),
          doubt(std::move(of)) {}
    std::optional<UnlikelyMeasure> doubt{};
};

}  // namespace gristwright
