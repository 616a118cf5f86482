#include "engine/yarn/kinds.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <string>

#include "engine/yarn/constants.hpp"

namespace gristwright {
namespace {

// Fibre and colour in one text; skeins of the same text are alike in them.
std::string make_of(const Skein& skein) {
    std::vector<std::string> parts;
    for (const auto& part : skein.fibre)
        parts.push_back(part.name + " " + std::to_string(std::lround(100 * part.share)));
    std::sort(parts.begin(), parts.end());
    std::string out = skein.colour;
    for (const auto& part : parts) out += "|" + part;
    return out;
}

using Places = std::vector<std::size_t>;

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

std::vector<std::size_t> kinds_of(const std::vector<Skein>& skeins) {
    std::map<std::string, Places> makes;
    std::vector<std::string> in_order;
    for (std::size_t s = 0; s < skeins.size(); ++s) {
        const auto make = make_of(skeins[s]);
        if (makes[make].empty()) in_order.push_back(make);
        makes[make].push_back(s);
    }
    std::vector<std::size_t> kinds(skeins.size());
    std::size_t next = 0;
    for (const auto& make : in_order) part_by_wraps(skeins, makes[make], kinds, next);
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
