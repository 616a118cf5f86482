#include "engine/yarn/traits.hpp"

#include "engine/yarn/constants.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

constexpr std::array<std::string_view, trait_count> trait_words{
    "softness", "wear",  "definition", "bloom",      "elasticity",  "warp fitness",
    "warmth",   "drape", "felting",    "absorbency", "heat safety", "halo"};
constexpr std::array<std::string_view, driver_count> driver_words{
    "base",           "staple",     "plies",      "twist",          "packing",    "combed",
    "long draw",      "variegated", "spring",     "strength",       "fibre wear", "fibre warmth",
    "felts",          "absorbency", "halo",       "fibre softness", "crispness",  "heat",
    "thick-and-thin", "core-spun",  "boucle",     "chain-ply",      "cabled",     "energised",
    "fulled",         "overplied",  "underplied", "Z-plied"};

template <class Enum, std::size_t n>
std::optional<Enum> named(const std::array<std::string_view, n>& table, std::string_view word) {
    const auto found = std::find(table.begin(), table.end(), word);
    if (found == table.end()) return {};
    return static_cast<Enum>(found - table.begin());
}

double ramp(double x, double from, double to) {
    return std::clamp((x - from) / (to - from), 0.0, 1.0);
}

std::optional<double> middle(std::optional<Length> low, std::optional<Length> high) {
    if (!low || !high) return {};
    return (low->si() + high->si()) / 2;
}

// The mean over a blend by mass of the parts that say; nothing when none does.
template <class F>
std::optional<double> blended(const std::vector<FibrePart>& fibre, F value) {
    double sum = 0, shares = 0;
    for (const auto& part : fibre) {
        const std::optional<double> v = value(part);
        if (!v) continue;
        sum += part.share * *v;
        shares += part.share;
    }
    if (shares <= 0) return {};
    return sum / shares;
}

// The air that a long draw leaves stays where crimp holds it: the fibre's spring, or that of wool
// where no fibre is said. Cotton is drawn long too, and is no woollen yarn.
Known air_of_draw(const Batch& batch, const FibreBehaviour& fibre) {
    if (batch.draw != Draw::long_draw) return Known(0);
    const auto& spring = fibre.of(Behaviour::spring);
    return spring ? Known(spring->middle(), spring->high - spring->low) : Known(1);
}

std::optional<double> flag(bool known, bool set) {
    if (!known) return {};
    return set ? 1.0 : 0.0;
}

}  // namespace

std::string_view words(TraitName name) { return trait_words[static_cast<std::size_t>(name)]; }
std::optional<TraitName> trait_named(std::string_view word) {
    return named<TraitName>(trait_words, word);
}
std::optional<Driver> driver_named(std::string_view word) {
    return named<Driver>(driver_words, word);
}

double Trait::sure() const { return std::max(0.0, value - not_counted * unsure); }

Trait trait(TraitName name, const Drivers& drivers, const std::vector<TraitRow>& rows) {
    Trait out;
    double variance = own_doubt * own_doubt, of_fibre = 0;
    std::vector<std::pair<double, const std::string*>> said;  // how far it moved the value
    for (const auto& row : rows) {
        if (row.trait != name) continue;
        const auto& x = drivers[static_cast<std::size_t>(row.driver)];
        const double share = x ? ramp(x->value, row.from, row.to) : 0.5;
        out.value += row.adds * share;
        const double open = x ? x->width / std::abs(row.to - row.from) : 1;
        const double doubt = row.adds * row.adds * std::min(open * open, 1.0) / 12;
        variance += doubt;
        if (x) of_fibre += doubt;
        const double moved = row.adds * (share - 0.5);
        const auto& why = share > 0.5 ? row.more : row.less;
        if (x && std::abs(moved) >= trait_worth_saying && !why.empty())
            said.emplace_back(moved, &why);
    }
    out.value = std::clamp(out.value, 0.0, 1.0);
    out.spread = std::sqrt(variance);
    out.unsure = std::sqrt(of_fibre);
    std::stable_sort(said.begin(), said.end(), [](const auto& a, const auto& b) {
        return std::abs(a.first) > std::abs(b.first);
    });
    for (const auto& [moved, why] : said) {
        out.reasons.push_back(*why);
        if (moved < 0) out.lowering.push_back(*why);
    }
    return out;
}

Drivers drivers_of(const Batch& batch, std::optional<double> packing, std::optional<double> twist) {
    Drivers d;
    const auto set = [&](Driver which, std::optional<double> value) {
        if (value) d[static_cast<std::size_t>(which)] = Known(*value);
    };
    set(Driver::base, 1);
    set(Driver::staple, blended(batch.fibre, [](const FibrePart& p) {
            const auto mid = middle(p.staple_low, p.staple_high);
            return mid ? std::optional{*mid * 1e3} : mid;
        }));
    if (batch.plies > 0) set(Driver::plies, batch.plies);
    set(Driver::twist, twist);
    set(Driver::packing, packing);
    set(Driver::combed,
        flag(batch.preparation != Preparation::unknown, batch.preparation == Preparation::combed));
    set(Driver::variegated, batch.variegated ? 1.0 : 0.0);
    for (std::size_t m = 0; m < made_count; ++m)
        d[static_cast<std::size_t>(Driver::thick_and_thin) + m] = Known(batch.made[m] ? 1.0 : 0.0);
    const auto fibre = behaviour_of(batch.fibre);
    for (std::size_t b = 0; b < behaviour_count; ++b)
        if (const auto& level = fibre.levels[b])
            d[static_cast<std::size_t>(Driver::spring) + b] =
                Known(level->middle(), level->high - level->low);
    if (batch.draw != Draw::unknown)
        d[static_cast<std::size_t>(Driver::long_draw)] = air_of_draw(batch, fibre);
    return d;
}

std::optional<Length> mean_diameter(const std::vector<FibrePart>& fibre) {
    double sum = 0, shares = 0;
    for (const auto& part : fibre) {
        const auto mid = middle(part.micron_low, part.micron_high);
        if (!mid) return {};
        sum += part.share * *mid;
        shares += part.share;
    }
    if (shares <= 0) return {};
    return metres(sum / shares);
}

}  // namespace gristwright
