#include "engine/yarn/traits.hpp"

#include "engine/yarn/constants.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

constexpr std::array<std::string_view, trait_count> trait_words{
    "softness", "wear", "definition", "bloom", "elasticity", "warp fitness", "warmth", "drape"};
constexpr std::array<std::string_view, driver_count> driver_words{
    "base",   "micron",    "staple", "plies",  "twist",     "packing",
    "combed", "long draw", "crimp",  "lustre", "inelastic", "variegated"};

constexpr double worth_saying = 0.03;

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

bool starts(std::string_view text, std::string_view head) {
    return text.substr(0, head.size()) == head;
}

// Crimp, lustre and elasticity of one fibre by its category in the fibre table.
// Of a wool without a category, by its diameter: finer wool is crimpier.
double crimp_by_diameter(const FibrePart& part) {
    const auto mid = middle(part.micron_low, part.micron_high);
    return mid ? 1 - ramp(*mid * 1e6, 20, 38) : 0.6;
}

double crimp_of(const FibrePart& part) {
    if (part.kind == "plant" || part.kind == "silk" || part.kind == "man-made") return 0;
    if (part.category.empty()) return crimp_by_diameter(part);
    if (starts(part.category, "longwool")) return 0.2;
    if (starts(part.category, "fine") || starts(part.category, "down")) return 1;
    return 0.6;
}

double lustre_of(const FibrePart& part) {
    if (part.kind == "silk") return 1;
    if (starts(part.category, "longwool") || starts(part.category, "goat")) return 0.9;
    if (starts(part.category, "down")) return 0;
    return 0.4;
}

double inelastic_of(const FibrePart& part) {
    return part.kind == "plant" || part.kind == "silk" || part.kind == "man-made" ? 1 : 0;
}

// The mean over a blend by mass; nothing when a part does not say.
template <class F>
std::optional<double> blended(const std::vector<FibrePart>& fibre, F value) {
    if (fibre.empty()) return {};
    double sum = 0, shares = 0;
    for (const auto& part : fibre) {
        const std::optional<double> v = value(part);
        if (!v) return {};
        sum += part.share * *v;
        shares += part.share;
    }
    return sum / shares;
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

Trait trait(TraitName name, const Drivers& drivers, const std::vector<TraitRow>& rows) {
    Trait out;
    double variance = own_doubt * own_doubt;
    std::vector<std::pair<double, const std::string*>> said;
    for (const auto& row : rows) {
        if (row.trait != name) continue;
        const auto x = drivers[static_cast<std::size_t>(row.driver)];
        const double share = x ? ramp(*x, row.from, row.to) : 0.5;
        out.value += row.adds * share;
        if (!x) variance += row.adds * row.adds / 12;
        const double moved = row.adds * (share - 0.5);
        const auto& why = share > 0.5 ? row.more : row.less;
        if (x && std::abs(moved) >= worth_saying && !why.empty())
            said.emplace_back(std::abs(moved), &why);
    }
    out.value = std::clamp(out.value, 0.0, 1.0);
    out.spread = std::sqrt(variance);
    std::stable_sort(said.begin(), said.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    for (const auto& [size, why] : said) out.reasons.push_back(*why);
    return out;
}

Drivers drivers_of(const Batch& batch, std::optional<double> packing, std::optional<double> twist) {
    Drivers d;
    const auto set = [&](Driver which, std::optional<double> value) {
        d[static_cast<std::size_t>(which)] = value;
    };
    set(Driver::base, 1);
    set(Driver::micron, blended(batch.fibre, [](const FibrePart& p) {
            const auto mid = middle(p.micron_low, p.micron_high);
            return mid ? std::optional{*mid * 1e6} : mid;
        }));
    set(Driver::staple, blended(batch.fibre, [](const FibrePart& p) {
            const auto mid = middle(p.staple_low, p.staple_high);
            return mid ? std::optional{*mid * 1e3} : mid;
        }));
    if (batch.plies > 0) set(Driver::plies, batch.plies);
    set(Driver::twist, twist);
    set(Driver::packing, packing);
    set(Driver::combed,
        flag(batch.preparation != Preparation::unknown, batch.preparation == Preparation::combed));
    set(Driver::long_draw, flag(batch.draw != Draw::unknown, batch.draw == Draw::long_draw));
    // Fibre not given is taken as wool, as the profile says; its crimp and lustre stay open.
    set(Driver::crimp, blended(batch.fibre, crimp_of));
    set(Driver::lustre, blended(batch.fibre, lustre_of));
    set(Driver::inelastic, batch.fibre.empty() ? 0 : blended(batch.fibre, inelastic_of));
    set(Driver::variegated, batch.variegated ? 1.0 : 0.0);
    return d;
}

}  // namespace gristwright
