#include "engine/allocation/pattern.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

using namespace gristwright::allocation;

namespace {

bool holds(unsigned set, const std::vector<Offer>& offers, std::size_t piece) {
    for (std::size_t o = 0; o < offers.size(); ++o)
        if (offers[o].piece == piece && (set >> o & 1U) != 0) return true;
    return false;
}

// Every set of offers, stretched from the steepest on: nothing of the searching is shared.
double by_trying_all(double length, const std::vector<Offer>& offers,
                     const std::vector<TwoPieces>& apart, const std::vector<TwoPieces>& together) {
    double best = -1e300;
    for (unsigned set = 0; set < 1U << offers.size(); ++set) {
        double left = length, worth = 0;
        bool fine = true;
        std::vector<Offer::More> more;
        for (std::size_t o = 0; o < offers.size(); ++o) {
            const bool in = (set >> o & 1U) != 0;
            fine = fine && (in || !offers[o].must);
            if (!in) continue;
            left -= offers[o].least;
            worth += offers[o].worth;
            more.insert(more.end(), offers[o].more.begin(), offers[o].more.end());
        }
        for (const auto& [a, b] : apart)
            fine = fine && !(holds(set, offers, a) && holds(set, offers, b));
        for (const auto& [a, b] : together)
            fine = fine && holds(set, offers, a) == holds(set, offers, b);
        if (!fine || left < 0) continue;
        std::sort(more.begin(), more.end(),
                  [](const auto& a, const auto& b) { return a.per_cm > b.per_cm; });
        for (const auto& m : more) {
            if (m.per_cm <= 0) break;
            const double part = std::min(left, m.length);
            worth += part * m.per_cm;
            left -= part;
        }
        best = std::max(best, worth);
    }
    return best;
}

}  // namespace

TEST_CASE("pattern: the best way to cut a skein is what trying all ways gives") {
    std::mt19937_64 random(3);
    const auto any = [&](int from, int to) {
        return from + static_cast<int>(random() % static_cast<unsigned>(to - from + 1));
    };
    for (int round = 0; round < 400; ++round) {
        CAPTURE(round);
        std::vector<Offer> offers;
        const int count = any(0, 8);
        for (int o = 0; o < count; ++o) {
            Offer offer{static_cast<std::size_t>(o),
                        double(any(10, 400)),
                        double(any(-200, 800)),
                        {},
                        any(1, 8) == 1};
            int slope = any(-1, 4);
            for (int m = any(0, 3); m > 0; --m, slope -= any(0, 2))
                offer.more.push_back({double(any(10, 200)), double(slope)});
            offers.push_back(offer);
        }
        std::vector<TwoPieces> apart, together;
        if (count > 2 && any(1, 2) == 1) apart.push_back({0, 2});
        if (count > 3 && any(1, 2) == 1) together.push_back({1, 3});
        if (count > 0 && any(1, 6) == 1) together.push_back({0, 77});  // 77 offers nothing here
        const double length = any(50, 900);
        const double all = by_trying_all(length, offers, apart, together);
        const auto found = best_pattern(length, offers, apart, together);
        CHECK(found.possible == (all > -1e299));
        if (!found.possible) continue;
        CHECK(found.at_most >= all - 1e-6);
        CHECK(found.worth <= all + 1e-6);
        CHECK(found.at_most - found.worth <= 1e-4 * std::max(1.0, std::abs(all)) + 0.1);
        double used = 0;
        for (const auto& use : found.uses) used += use.length;
        CHECK(used <= length + 1e-6);
    }
}
