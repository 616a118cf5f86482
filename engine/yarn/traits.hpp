// How a yarn behaves, 0 (not at all) to 1 (as much as a yarn can), from its fibre and make-up.
//
// A table of rows says what each feature of the make-up adds to each trait. Nobody has published
// such scores, so the rows are judgement unless a row's source says otherwise; they are data
// (catalog/tables/traits.csv) and can be argued with.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/estimate/constant.hpp"
#include "engine/yarn/batch.hpp"

namespace gristwright {

enum class TraitName {
    softness,
    wear,
    definition,
    bloom,
    elasticity,
    warp_fitness,
    warmth,
    drape,
    felting,
    absorbency,
    heat,  // bears a hot pot and a hot iron
    halo,
};
inline constexpr std::size_t trait_count = 12;
std::string_view words(TraitName name);
std::optional<TraitName> trait_named(std::string_view word);

// What a row can depend on: a feature of the make-up, or how the fibre behaves. Flags are 0 or 1.
enum class Driver {
    base,       // always 1
    staple,     // mean staple as spun, mm
    plies,      // 1, 2, 3, ...
    twist,      // plied twist factor, turns per inch / sqrt(worsted count)
    packing,    // share of the wrapped yarn that is fibre, laid wraps
    combed,     // 1 combed, 0 carded
    long_draw,  // 1 long, 0 short
    variegated,
    spring,  // from here on: behaviour of the fibre, 0 to 1
    strength,
    fibre_wear,
    fibre_warmth,
    felts,
    absorbency,
    halo,
    fibre_softness,
    crispness,
    heat,
    thick_and_thin,  // from here on: how it is built, in the order of Made
    core_spun,
    boucle,
    chain_plied,
    cabled,
    energised,
    fulled,
    overplied,
    underplied,
    plied_z,
};
inline constexpr std::size_t driver_count = 28;
std::optional<Driver> driver_named(std::string_view word);

// Adds `adds` in full when the driver is at `to` or beyond, nothing at `from`, a share between.
struct TraitRow {
    TraitName trait{};
    Driver driver{};
    double from = 0, to = 1;
    double adds = 0;
    std::string more, less;  // said when the driver is above or below the middle
    Mark mark = Mark::judgement;
    std::string source;
};

// A driver as far as it is known: `width` is what a range leaves open.
struct Known {
    double value = 0, width = 0;
    constexpr Known(double at = 0, double open = 0) : value(at), width(open) {}
};
using Drivers = std::array<std::optional<Known>, driver_count>;  // nothing: not known

struct Trait {
    double value = 0;                     // 0..1
    double spread = 0;                    // one standard deviation: what is not known widens it
    std::vector<std::string> reasons;     // strongest first
    double unsure = 0;                    // what the fibre's own range leaves open, one deviation
    std::vector<std::string> lowering{};  // those reasons that take from it

    // What may be counted on: a fibre that is not known is never taken as middling.
    double sure() const;
};

// A driver that is not known counts for half its row and widens the spread.
Trait trait(TraitName name, const Drivers& drivers, const std::vector<TraitRow>& rows);

// What the batch says about each driver; a fibre that is not given is a wool of any kind; packing
// and twist factor are computed by the profile.
Drivers drivers_of(const Batch& batch, std::optional<double> packing, std::optional<double> twist);

// Of a blend by mass; nothing when a part does not say.
std::optional<Length> mean_diameter(const std::vector<FibrePart>& fibre);

}  // namespace gristwright
