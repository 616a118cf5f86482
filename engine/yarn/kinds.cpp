#include "engine/yarn/kinds.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/yarn/constants.hpp"

namespace gristwright {
namespace {

using Places = std::vector<std::size_t>;

bool same_make(const Skein& a, const Skein& b) {
    return a.colour == b.colour && same_fibre(a.fibre, b.fibre);
}

// Skeins of one fibre and one colour together, in the order in which the first of each stands.
std::vector<Places> by_make(const std::vector<Skein>& skeins) {
    std::vector<Places> out;
    for (std::size_t s = 0; s < skeins.size(); ++s) {
        const auto alike = std::find_if(out.begin(), out.end(), [&](const Places& make) {
            return same_make(skeins[make.front()], skeins[s]);
        });
        (alike == out.end() ? out.emplace_back() : *alike).push_back(s);
    }
    return out;
}

// Those of one make, parted where their wraps, in order, leave a gap. Without wraps: one.
void part_by_wraps(const std::vector<Skein>& skeins, Places of_one_make,
                   std::vector<std::size_t>& kinds, std::size_t& next) {
    const auto wraps = [&](std::size_t s) {
        return skeins[s].wraps ? skeins[s].wraps->count.si() : 0;
    };
    std::stable_sort(of_one_make.begin(), of_one_make.end(),
                     [&](std::size_t a, std::size_t b) { return wraps(a) < wraps(b); });
    double before = 0;
    for (const auto place : of_one_make) {
        if (before > 0 && wraps(place) > before * constants::alike_wraps) ++next;
        before = wraps(place);
        kinds[place] = next;
    }
    ++next;
}

std::optional<WrapsReading> mean_wraps(const std::vector<Skein>& skeins) {
    std::optional<WrapsReading> out;
    double logs = 0;
    int counted = 0;
    for (const auto& skein : skeins) {
        if (!skein.wraps) continue;
        if (!out) out = skein.wraps;
        logs += std::log(skein.wraps->count.si());
        ++counted;
    }
    if (out) out->count = Wraps::from_si(std::exp(logs / counted));
    return out;
}

// A blend of what the skeins are of, each by its mass.
std::vector<FibrePart> blended(const std::vector<Skein>& skeins) {
    std::vector<FibrePart> out;
    Mass all;
    for (const auto& skein : skeins) all += skein.mass;
    for (const auto& skein : skeins)
        for (auto part : skein.fibre) {
            part.share *= skein.mass / all;
            const auto same = std::find_if(out.begin(), out.end(),
                                           [&](const auto& had) { return had.name == part.name; });
            if (same == out.end())
                out.push_back(std::move(part));
            else
                same->share += part.share;
        }
    return out;
}

}  // namespace

bool same_fibre(const std::vector<FibrePart>& a, const std::vector<FibrePart>& b) {
    const auto same_part = [](const FibrePart& x, const FibrePart& y) {
        return x.name == y.name && std::lround(100 * x.share) == std::lround(100 * y.share);
    };
    return std::is_permutation(a.begin(), a.end(), b.begin(), b.end(), same_part);
}

std::vector<std::size_t> kinds_of(const std::vector<Skein>& skeins) {
    std::vector<std::size_t> kinds(skeins.size());
    std::size_t next = 0;
    for (auto& make : by_make(skeins)) part_by_wraps(skeins, std::move(make), kinds, next);
    return kinds;
}

Batch with_skeins(const Batch& batch, const std::vector<std::size_t>& places) {
    Batch out = batch;
    out.skeins.clear();
    for (const auto place : places) out.skeins.push_back(batch.skeins[place]);
    if (const auto wraps = mean_wraps(out.skeins)) out.wraps = wraps;
    if (auto fibre = blended(out.skeins); !fibre.empty()) out.fibre = std::move(fibre);
    return out;
}

Batch as_its_skeins_say(const Batch& batch) {
    Places all(batch.skeins.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return with_skeins(batch, all);
}

}  // namespace gristwright
