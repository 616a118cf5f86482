#include "engine/yarn/agreement.hpp"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>
#include <functional>
#include <map>
#include <numeric>

#include "engine/estimate/estimate.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright {
namespace {

struct Weighted {
    double weights = 0, squares = 0, statistic = 0;
};

// Cochran's Q about the weighted mean.
Weighted scatter(const std::vector<GristReading>& skeins) {
    Weighted sum;
    double weighted = 0;
    for (const auto& s : skeins) {
        const double w = 1 / (s.own_spread * s.own_spread);
        sum.weights += w;
        sum.squares += w * w;
        weighted += w * s.log_tex;
    }
    const double mean = weighted / sum.weights;
    for (const auto& s : skeins) sum.statistic += std::pow((s.log_tex - mean) / s.own_spread, 2);
    return sum;
}

// Spread between skeins beyond measuring: DerSimonian and Laird's estimate by moments, for two as
// for more.
double between(const std::vector<GristReading>& skeins) {
    const auto sum = scatter(skeins);
    const double freedom = static_cast<double>(skeins.size() - 1);
    return std::sqrt(
        std::max(0.0, (sum.statistic - freedom) / (sum.weights - sum.squares / sum.weights)));
}

// The largest reach of any pair's 90 % interval from zero: inside the margin, all are the same.
double furthest_reach(const std::vector<GristReading>& skeins) {
    double furthest = 0;
    for (std::size_t i = 0; i < skeins.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            furthest =
                std::max(furthest, std::abs(skeins[i].log_tex - skeins[j].log_tex) +
                                       normal_quantile(0.95) *
                                           together(skeins[i].own_spread, skeins[j].own_spread));
    return furthest;
}

double smallest_difference_shown(const std::vector<GristReading>& skeins) {
    std::vector<double> spreads;
    for (const auto& s : skeins) spreads.push_back(s.own_spread);
    std::nth_element(spreads.begin(), spreads.begin() + 1, spreads.end());
    return std::expm1(normal_quantile(0.975) * together(spreads[0], spreads[1]));
}

double widest_difference(const std::vector<GristReading>& skeins) {
    const auto [low, high] =
        std::minmax_element(skeins.begin(), skeins.end(),
                            [](const auto& a, const auto& b) { return a.log_tex < b.log_tex; });
    return std::expm1(high->log_tex - low->log_tex);
}

double chi_square(std::size_t skeins) {
    const double freedom = static_cast<double>(skeins - 1);
    return boost::math::quantile(boost::math::chi_squared{freedom}, 0.95);
}

// About one mean, and not surely wider (5 %) than a consistent spinner's: what several tell
// together.
bool consistent(const std::vector<GristReading>& skeins) {
    if (skeins.size() < 3) return false;
    auto allowed = skeins;
    for (auto& s : allowed) s.own_spread = together(s.own_spread, constants::consistent_grist);
    return scatter(allowed).statistic <= chi_square(skeins.size());
}

// Any two skeins of such a spread are alike nineteen times in twenty.
bool alike(const std::vector<GristReading>& skeins, const Agreement& found) {
    const double of_two = std::sqrt(2.0) * normal_quantile(0.975);
    return found.widest <= constants::alike_grist ||
           (skeins.size() > 2 && of_two * found.between <= constants::alike_grist &&
            consistent(skeins));
}

bool one_yarn(const std::vector<GristReading>& skeins) {
    return widest_difference(skeins) <= constants::alternated_grist || consistent(skeins);
}

using Places = std::vector<std::size_t>;

std::vector<GristReading> at(const std::vector<GristReading>& skeins, const Places& places) {
    std::vector<GristReading> out;
    for (const auto place : places) out.push_back(skeins[place]);
    return out;
}

// Parts skeins in order of grist at the widest gap, and each part again, until each is one yarn.
void part(const std::vector<GristReading>& skeins, const Places& ordered,
          std::vector<Places>& yarns) {
    if (ordered.size() < 2 || one_yarn(at(skeins, ordered))) {
        yarns.push_back(ordered);
        std::sort(yarns.back().begin(), yarns.back().end());
        return;
    }
    std::size_t cut = 1;
    const auto gap = [&](std::size_t i) {
        return skeins[ordered[i]].log_tex - skeins[ordered[i - 1]].log_tex;
    };
    for (std::size_t i = 2; i < ordered.size(); ++i)
        if (gap(i) > gap(cut)) cut = i;
    const auto middle = ordered.begin() + static_cast<std::ptrdiff_t>(cut);
    part(skeins, {ordered.begin(), middle}, yarns);
    part(skeins, {middle, ordered.end()}, yarns);
}

Places by_grist(const std::vector<GristReading>& skeins) {
    Places out(skeins.size());
    std::iota(out.begin(), out.end(), std::size_t{0});
    std::stable_sort(out.begin(), out.end(), [&](std::size_t a, std::size_t b) {
        return skeins[a].log_tex < skeins[b].log_tex;
    });
    return out;
}

SameYarn answer(const std::vector<GristReading>& skeins, const Agreement& found) {
    if (found.statistic <= found.critical) {
        const double within =
            alike(skeins, found) ? constants::alternated_grist : constants::alike_grist;
        return furthest_reach(skeins) <= std::log1p(within) ? SameYarn::same
                                                            : SameYarn::cannot_tell;
    }
    if (alike(skeins, found)) return SameYarn::same;
    return one_yarn(skeins) ? SameYarn::alternate : SameYarn::differ;
}

// Kind by kind, each parted by its grist; in the order of their first skeins, as they were given.
void part_by_kind(const std::vector<GristReading>& skeins, const Places& ordered,
                  const std::vector<std::size_t>& kinds, std::vector<Places>& yarns) {
    std::map<std::size_t, Places> of_kind;
    for (const auto place : ordered) of_kind[kinds.empty() ? 0 : kinds[place]].push_back(place);
    for (const auto& [kind, places] : of_kind) part(skeins, places, yarns);
    std::sort(yarns.begin(), yarns.end(),
              [](const Places& a, const Places& b) { return a.front() < b.front(); });
}

bool several(const std::vector<std::size_t>& kinds) {
    return std::adjacent_find(kinds.begin(), kinds.end(), std::not_equal_to<>()) != kinds.end();
}

}  // namespace

std::size_t Agreement::yarn_with(std::size_t skein) const {
    const auto found = std::find_if(yarns.begin(), yarns.end(), [&](const auto& yarn) {
        return std::find(yarn.begin(), yarn.end(), skein) != yarn.end();
    });
    if (found == yarns.end()) throw OurMistake("a skein is in none of the yarns");
    return static_cast<std::size_t>(found - yarns.begin());
}

Agreement agree(const std::vector<GristReading>& skeins, const std::vector<std::size_t>& kinds) {
    Agreement found;
    const auto ordered = by_grist(skeins);
    if (!skeins.empty()) found.yarns.push_back(ordered);
    if (skeins.size() < 2) return found;
    found.statistic = scatter(skeins).statistic;
    found.critical = chi_square(skeins.size());
    if (skeins.size() == 2) {  // one degree of freedom: Q is z squared
        found.statistic = std::sqrt(found.statistic);
        found.critical = normal_quantile(0.975);
    }
    found.between = between(skeins);
    found.smallest_shown = smallest_difference_shown(skeins);
    found.widest = widest_difference(skeins);
    found.answer = answer(skeins, found);
    std::sort(found.yarns.front().begin(), found.yarns.front().end());
    found.of_several_kinds = several(kinds);
    if (found.of_several_kinds) found.answer = SameYarn::differ;
    if (found.answer == SameYarn::differ) {
        found.yarns.clear();
        part_by_kind(skeins, ordered, kinds, found.yarns);
    }
    return found;
}

}  // namespace gristwright
