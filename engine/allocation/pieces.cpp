#include "engine/allocation/pieces.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/allocation/constants.hpp"

namespace gristwright::allocation {
namespace {

struct Share {
    std::string name;
    double metres = 0;
    bool unbroken = false, of_pair = false, weft = false;
};

// Mitts, socks, strips: every piece as often as the others. 1: no such set.
int alike(const Plan& plan) {
    int count = 0;
    for (const auto& p : plan.pieces) {
        if (p.ours.si() <= 0) continue;
        if (p.woven || (count > 0 && p.piece->count != count)) return 1;
        count = p.piece->count;
    }
    return count;
}

std::vector<Share> shares(const Plan& plan, bool whole_warp) {
    std::vector<Share> out;
    Share knitted;
    for (const auto& p : plan.pieces) {
        if (p.ours.si() <= 0) continue;
        if (p.woven) {
            const auto& name = p.piece->name;
            if (const double warp = p.warp.si() * p.piece->warp_ours(); warp > 0)
                out.push_back({name + ", warp", warp, whole_warp || p.piece->unbroken});
            if (const double weft = p.weft.si() * p.piece->weft_ours(); weft > 0)
                out.push_back({name + ", weft", weft, false, false, true});
        } else {
            knitted.metres += p.ours.si();
            knitted.unbroken = knitted.unbroken || p.piece->unbroken;
        }
    }
    const int count = alike(plan);
    for (int k = 1; knitted.metres > 0 && k <= count; ++k)
        out.push_back({count > 1 ? fmt::format("{} of {}", k, count) : "", knitted.metres / count,
                       knitted.unbroken, count > 1});
    return out;
}

}  // namespace

std::size_t count_of_pieces(const Plan& plan) { return shares(plan, false).size(); }

double unbroken_share(const Plan& plan, bool whole_warp) {
    double sum = 0, most = 0;
    for (const auto& s : shares(plan, whole_warp)) {
        sum += s.metres;
        if (s.unbroken) most = std::max(most, s.metres);
    }
    return sum > 0 ? most / sum : 0;
}

std::vector<LaidPiece> laid_out(const Plan& plan, std::size_t wish, Cm net, bool whole_warp) {
    const auto all = shares(plan, whole_warp);
    double sum = 0, before = 0;
    for (const auto& s : all) sum += s.metres;
    std::vector<LaidPiece> out;
    Cm given = 0;
    for (const auto& s : all) {
        before += s.metres;
        const auto upto = static_cast<Cm>(std::llround(before / sum * static_cast<double>(net)));
        if (upto > given)
            out.push_back({wish, s.name, upto - given, s.unbroken, s.of_pair, s.weft});
        given = upto;
    }
    return out;
}

Problem placing(const Problem& whole, const std::vector<LaidPiece>& pieces,
                const std::vector<double>& grist) {
    Problem out;
    out.skeins = whole.skeins;
    out.tail = whole.tail;
    out.shortest = whole.shortest;
    out.reserve = whole.reserve;
    for (const auto& p : pieces) {
        const auto& wish = whole.pieces[p.wish];
        const auto join = std::llround((p.of_pair ? double(constants::join_in_pair) : 1) *
                                       double(wish.join_cost));
        out.pieces.push_back({p.name.empty() ? wish.name : wish.name + ", " + p.name,
                              p.length,
                              0,
                              {},
                              join,
                              p.unbroken ? 0 : wish.max_joins,
                              true});
    }
    for (std::size_t i = 0; i < out.skeins.size(); ++i) {
        out.mismatch.emplace_back();
        for (const auto& p : pieces) {
            auto cost = whole.mismatch[i][p.wish];
            if (cost && p.weft)
                *cost += std::llround(constants::worth_of_fine_weft * 1e4 * (grist[i] - 1));
            out.mismatch[i].push_back(cost);
        }
    }
    return out;
}

}  // namespace gristwright::allocation
