// Count systems by their hank, from the GNU units definitions (package units 2.22); the Galashiels
// cut (200 yd/lb) and the Yorkshire skein (256 yd/lb) from W. Davis, Hosiery Manufacture (c. 1920).
#include "engine/yarn/count.hpp"

#include <array>
#include <stdexcept>
#include <string>

namespace gristwright {
namespace {

constexpr double tex_yards_per_pound = in_tex(pounds(1) / yards(1));

constexpr CountSystem hanks(std::string_view name, std::string_view symbol, double hank_yards,
                            std::string_view source) {
    return {name, symbol, false, tex_yards_per_pound / hank_yards, source};
}

constexpr std::string_view gnu_units = "GNU units 2.22 definitions";
constexpr std::string_view davis = "W. Davis, Hosiery Manufacture (c. 1920), ch. V";
constexpr std::string_view iso = "ISO 1144";

constexpr std::array systems{
    CountSystem{"tex", "tex", true, 1, iso},
    CountSystem{"metres per gram", "m/g", false, 1000, iso},
    CountSystem{"metres per 100 g", "m/100g", false, 100'000, iso},
    hanks("yards per pound", "yd/lb", 1, gnu_units),
    CountSystem{"metric count", "Nm", false, 1000, gnu_units},
    hanks("worsted count", "Nw", 560, gnu_units),
    hanks("cotton count", "Ne", 840, gnu_units),
    hanks("woollen run", "run", 1600, gnu_units),
    hanks("linen lea", "lea", 300, gnu_units),
    hanks("Philadelphia cut", "cut", 300, "W. H. Dooley, Textiles (1914), ch. V"),
    hanks("Galashiels cut", "Gal", 200, davis),
    hanks("Yorkshire skein", "YSk", 256, davis),
    CountSystem{"denier", "den", true, 9, gnu_units},
};

}  // namespace

std::span<const CountSystem> count_systems() { return systems; }

const CountSystem& count_system(std::string_view name) {
    for (const auto& system : systems)
        if (system.name == name) return system;
    throw std::out_of_range("no count system is called '" + std::string(name) + "'");
}

double count_of(LinearDensity d, const CountSystem& system) {
    return system.direct ? system.factor * in_tex(d) : system.factor / in_tex(d);
}

LinearDensity linear_density_of(double count, const CountSystem& system) {
    return tex(system.direct ? count / system.factor : system.factor / count);
}

}  // namespace gristwright
