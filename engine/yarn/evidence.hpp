// What swatches have told about a yarn: narrower estimates than its grist and wraps alone give.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/estimate/estimate.hpp"
#include "engine/units/quantity.hpp"
#include "engine/yarn/make_up.hpp"

namespace gristwright {

enum class Firmness;  // engine/cloth/loop.hpp

// What weighed swatches tell of one fabric: metres per area, measured / predicted. `own` is how far
// the fabric itself may lie from the table, which another fabric does not share.
struct WeighedFabric {
    std::string fabric;
    Estimate<double> metres;
    double own = 0;
};

// On what an estimate stands besides the yarn's own measures.
enum class Basis { knitted_swatch, woven_sample, habit, looks_alike };
struct Standing {
    Basis on{};
    std::string fabric = "";               // knitted_swatch: in which it was knitted
    bool washed = false, weighed = false;  // knitted_swatch
    std::size_t batches = 0;               // habit, looks_alike: how many others tell it
    MakeUp made{};                         // looks_alike

    bool operator==(const Standing&) const = default;
};

// What was seen otherwise than this yarn lets expect.
enum class Seen { gauge, rows_for_stitches, yarn_for_area, width_kept, length_kept };
struct Contradiction {
    Seen what{};
    double by = 0;  // seen / expected - 1

    bool operator==(const Contradiction&) const = default;
};

struct Evidence {
    std::optional<Estimate<Gauge>> gauge;  // stocking stitch, washed
    // On which needle the last knitted swatch was made of which that was said, with the stocking
    // stitch that this needle gave.
    std::optional<Length> needle;
    Gauge on_needle;
    std::optional<Firmness> knitted_for;          // what its swatch was knitted for, the last one
    std::optional<Estimate<double>> rows;         // rows for their stitches, counted / predicted
    std::vector<WeighedFabric> weighed;           // swatches of which the yarn was weighed
    std::optional<Estimate<double>> width_kept;   // woven: finished width / width in the heddle
    std::optional<Estimate<double>> length_kept;  // woven: finished length / woven length
    std::vector<double> looks;                    // 0..1, as rated on its swatches
    std::optional<Estimate<double>> habit;  // other batches of these hands: gauge / the table's
    std::vector<double> looks_alike;        // other batches made up alike: look minus the table's
    std::vector<Standing> stands_on;
    std::vector<Contradiction> questions;

    const WeighedFabric* weighed_in(std::string_view fabric) const;
    bool empty() const { return stands_on.empty(); }
};

// Log-normal prior and observation of one quantity, both with known spreads: the posterior's
// logarithm is their mean weighted by precision (normal with known variance; Gelman et al.,
// Bayesian Data Analysis, section 2.5 - from memory; checked against a grid in the tests).
Estimate<double> posterior(Estimate<double> prior, Estimate<double> seen);

template <class Q>
Estimate<Q> posterior(const Estimate<Q>& prior, const Estimate<Q>& seen) {
    const auto both =
        posterior(Estimate<double>{prior.mid.si(), prior.spread}, {seen.mid.si(), seen.spread});
    return {Q::from_si(both.mid), both.spread};
}

// The gauge of these hands' next yarn: the table's moved by the habit, never wider than before.
Estimate<Gauge> by_habit(const Estimate<Gauge>& table, const Estimate<double>& habit);

// Standard deviations between what was expected and what was seen.
double surprise(Estimate<double> prior, Estimate<double> seen);

}  // namespace gristwright
