#include "engine/yarn/behaviour.hpp"

#include <algorithm>

#include "engine/yarn/batch.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

constexpr std::array<std::string_view, behaviour_count> behaviour_words{
    "spring",     "strength", "wear",     "warmth",    "felts",
    "absorbency", "halo",     "softness", "crispness", "heat_safety"};

Level at(double value) {
    const double inside = std::clamp(value, 0.0, 1.0);
    return {inside, inside, Mark::judgement};
}

Level between(double low, double high) { return {low, high, Mark::judgement}; }

// A wool of which nothing is known: as wide as the breeds of the fibre table are.
FibreBehaviour of_any_wool() {
    FibreBehaviour out;
    for (std::size_t b = 0; b < any_wool.size(); ++b)
        out.of(static_cast<Behaviour>(b)) = between(any_wool[b].low, any_wool[b].high);
    return out;
}

// Of a wool whose diameter is known: what follows from it; the rest stays as wide as any wool's.
FibreBehaviour wool_of(double micron) {
    auto out = of_any_wool();
    const double coarse =
        std::clamp((micron - finest_wool) / (coarsest_wool - finest_wool), 0.0, 1.0);
    out.of(Behaviour::spring) = at(finest_spring - spring_lost * coarse);
    out.of(Behaviour::wear) = at(wear_at_19 + wear_per_micron * (micron - 19));
    out.of(Behaviour::warmth) = at(finest_warmth - warmth_lost * coarse);
    out.of(Behaviour::halo) = at(finest_halo + halo_gained * coarse);
    out.of(Behaviour::softness) = at(1 - (micron - softest_micron) / softness_span);
    out.of(Behaviour::crispness) = at((micron - crisp_from) / crisp_span);
    return out;
}

bool says_nothing(const FibreBehaviour& b) {
    return std::none_of(b.levels.begin(), b.levels.end(), [](const auto& l) { return l; });
}

FibreBehaviour own_or_table(const FibrePart& part) {
    if (!says_nothing(part.behaviour)) return part.behaviour;
    if (!part.micron_low || !part.micron_high) return of_any_wool();
    return wool_of((part.micron_low->si() + part.micron_high->si()) / 2 * 1e6);
}

// By mass; the widths of independent ranges would average out, but a blend's are mostly one doubt.
std::optional<Level> by_mass(const std::vector<std::pair<double, FibreBehaviour>>& parts,
                             Behaviour which) {
    Level out{0, 0, Mark::read};
    double shares = 0;
    for (const auto& [share, behaviour] : parts) {
        const auto& level = behaviour.of(which);
        if (!level) continue;
        out.low += share * level->low;
        out.high += share * level->high;
        out.mark = std::max(out.mark, level->mark);
        shares += share;
    }
    if (shares <= 0) return {};
    out.low /= shares;
    out.high /= shares;
    return out;
}

void move(std::optional<Level>& level, double by) {
    if (!level || by == 0) return;
    level->low = std::clamp(level->low + by, 0.0, 1.0);
    level->high = std::clamp(level->high + by, 0.0, 1.0);
    level->mark = Mark::judgement;
}

// Half way from the mean to the roughest part that is more than a trace: skin feels the thick
// fibres, and a few in a hundred are enough.
double rough_part(const std::vector<std::pair<double, FibreBehaviour>>& parts, double mean) {
    double least = mean;
    for (const auto& [share, behaviour] : parts)
        if (const auto& soft = behaviour.of(Behaviour::softness); soft && share >= felt_share)
            least = std::min(least, soft->middle());
    return (least - mean) / 2;
}

// Strong man-made staple holds the yarn together where the softer fibre has worn away.
double reinforced(const std::vector<FibrePart>& fibre) {
    double share = 0;
    for (const auto& part : fibre)
        if (const auto& wear = part.behaviour.of(Behaviour::wear);
            part.category == "synthetic" && wear && wear->middle() >= strong_wear)
            share += part.share;
    return share >= 1 ? 0 : reinforcement * std::min(1.0, share / reinforcing_share);
}

}  // namespace

FibreBehaviour behaviour_of(const std::vector<FibrePart>& fibre) {
    if (fibre.empty()) return of_any_wool();
    std::vector<std::pair<double, FibreBehaviour>> parts;
    for (const auto& part : fibre) parts.emplace_back(part.share, own_or_table(part));
    FibreBehaviour out;
    for (std::size_t b = 0; b < behaviour_count; ++b)
        out.levels[b] = by_mass(parts, static_cast<Behaviour>(b));
    if (const auto& soft = out.of(Behaviour::softness))
        move(out.of(Behaviour::softness), rough_part(parts, soft->middle()));
    move(out.of(Behaviour::wear), reinforced(fibre));
    return out;
}

std::string_view words(Behaviour behaviour) {
    return behaviour_words[static_cast<std::size_t>(behaviour)];
}

}  // namespace gristwright
