#include "engine/yarn/squeezed.hpp"

#include <algorithm>
#include <cmath>

#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"
#include "engine/yarn/loft.hpp"

namespace gristwright {
namespace {

using namespace constants;

struct Kind {
    double c, packing;  // packing: of laid wraps
};

Kind of(const KindConstants& row) { return {row.c, row.packing}; }

bool is_hair(const FibrePart& part) {
    return part.kind.empty() || part.kind == "sheep" || part.kind == "goat" ||
           part.kind == "other animal";
}

// Not said how it was prepared: half way, as the answer says.
Kind hair_of(Preparation preparation) {
    if (preparation == Preparation::combed) return of(worsted_spun);
    if (preparation == Preparation::carded) return of(woollen_spun);
    return {std::sqrt(worsted_spun.c * woollen_spun.c),
            std::sqrt(worsted_spun.packing * woollen_spun.packing)};
}

Kind kind_of(const FibrePart& part, Preparation preparation) {
    if (is_hair(part)) return hair_of(preparation);
    if (part.kind == "silk") return of(silk_spun);
    if (part.kind == "plant") return of(part.category == "bast" ? bast_spun : cotton_spun);
    return of(made_fibre_spun);
}

Kind kind_of(const Batch& batch) {
    if (batch.fibre.empty()) return hair_of(batch.preparation);
    Kind out{0, 0};
    for (const auto& part : batch.fibre) {
        const auto kind = kind_of(part, batch.preparation);
        out.c += part.share * kind.c;
        out.packing += part.share * kind.packing;
    }
    return out;
}

Density density_of(const Batch& batch) {
    double volume = batch.fibre.empty() ? 1 / FibrePart{}.density.si() : 0;
    for (const auto& part : batch.fibre) volume += part.share / part.density.si();
    return Density::from_si(1 / volume);
}

}  // namespace

double share_of_hair(const Batch& batch) {
    double out = batch.fibre.empty() ? 1 : 0;
    for (const auto& part : batch.fibre)
        if (is_hair(part)) out += part.share;
    return std::min(out, 1.0);
}

double usual_close_packing(const Batch& batch) { return kind_of(batch).c; }

double close_packing(const Batch& batch, LinearDensity grist) {
    const auto kind = kind_of(batch);
    if (!batch.wraps) return kind.c;
    const auto within = [](double c) { return std::clamp(c, any_c.low, any_c.high); };
    if (batch.wraps->how == WrapsHow::packed)
        return within(in_wraps_per_inch(batch.wraps->count) /
                      std::sqrt(count_of(grist, count_system("yards per pound"))));
    const double packing = packing_from_wraps(grist, batch.wraps->count, density_of(batch));
    // Diameters go as the root of the packing.
    return within(kind.c * std::pow(packing / kind.packing, loft_in_cloth / 2));
}

}  // namespace gristwright
