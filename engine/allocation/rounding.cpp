#include "engine/allocation/rounding.hpp"

#include <algorithm>
#include <numeric>

namespace gristwright::allocation {
namespace {

std::vector<Cm> rooms(const Model& m, const Decisions& d) {
    auto room = m.length;
    for (std::size_t i = 0; i < m.skeins; ++i)
        for (std::size_t j = 0; j < m.pieces; ++j)
            if (d.pair(i, j) == Say::yes) room[i] -= least_gross(m, d, j);
    return room;
}

bool all_serve(const Model& m, const Decisions& d, std::size_t j) {
    int serving = 0;
    for (std::size_t i = 0; i < m.skeins; ++i) serving += d.pair(i, j) == Say::yes ? 1 : 0;
    return d.fewest[j] == d.most[j] && serving == d.most[j];
}

// The piece from exactly these skeins.
std::optional<Decisions> from_skeins(const Model& m, Decisions d, std::size_t j,
                                     const std::vector<std::size_t>& skeins) {
    d.made[j] = Say::yes;
    d.fewest[j] = d.most[j] = static_cast<int>(skeins.size());
    for (const auto i : skeins) {
        if (d.pair(i, j) == Say::no) return {};
        d.pair(i, j) = Say::yes;
    }
    if (!conclude(m, d)) return {};
    return d;
}

// One skein first, the snuggest that holds it and is opened anyway; then several, the roomiest.
std::optional<Decisions> fitted_in(const Model& m, const Decisions& d, std::size_t j) {
    const auto room = rooms(m, d);
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < m.skeins; ++i)
        if (d.pair(i, j) != Say::no) order.push_back(i);
    const auto cost = [&](std::size_t i) {
        const bool breaks = d.opened[i] == Say::open && m.piece[j].opens;
        return std::tuple(breaks ? m.bonus[i] : 0, *m.cost[i][j], room[i]);
    };
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return cost(a) < cost(b); });
    if (d.fewest[j] == 1)
        for (const auto i : order)
            if (auto out = from_skeins(m, d, j, {i})) return out;
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return room[a] > room[b]; });
    for (int count = std::max(2, d.fewest[j]);
         count <= d.most[j] && static_cast<std::size_t>(count) <= order.size(); ++count) {
        const std::vector<std::size_t> roomiest(order.begin(), order.begin() + count);
        if (auto out = from_skeins(m, d, j, roomiest)) return out;
    }
    return {};
}

// Decides what the flow decides: whole pieces from the skeins they flow from.
std::optional<Decisions> as_the_flow(const Model& m, Decisions d, const Relaxation& flow) {
    for (std::size_t j = 0; j < m.pieces; ++j) {
        if (d.made[j] == Say::no || flow.gross_of(j) < flow.base(j)) continue;
        std::vector<std::size_t> skeins;
        for (std::size_t i = 0; i < m.skeins; ++i)
            if (flow.gross(i, j) > 0) skeins.push_back(i);
        std::stable_sort(skeins.begin(), skeins.end(), [&](std::size_t a, std::size_t b) {
            return flow.gross(a, j) > flow.gross(b, j);
        });
        const auto most = static_cast<std::size_t>(d.most[j]);
        if (skeins.size() > most) skeins.resize(most);
        while (skeins.size() > 1 && flow.gross(skeins.back(), j) < m.shortest + m.piece[j].tail)
            skeins.pop_back();
        if (auto next = from_skeins(m, d, j, skeins)) d = std::move(*next);
    }
    return d;
}

}  // namespace

std::optional<Decisions> filled_up(const Model& m, Decisions d) {
    std::vector<std::size_t> order(m.pieces);
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto first = [&](std::size_t a, std::size_t b) {
        const auto &x = m.piece[a], &y = m.piece[b];
        if (x.required != y.required) return x.required;
        if (x.required) return x.least > y.least;
        return x.value * y.least > y.value * x.least;
    };
    std::stable_sort(order.begin(), order.end(), first);
    for (const auto j : order) {
        if (d.made[j] == Say::no || all_serve(m, d, j)) continue;
        if (auto next = fitted_in(m, d, j)) {
            d = std::move(*next);
        } else {
            if (d.made[j] == Say::yes) return {};
            d.made[j] = Say::no;
            if (!conclude(m, d)) return {};
        }
    }
    return d;
}

std::optional<Decisions> rounded(const Model& m, const Decisions& d, const Relaxation& flow) {
    auto near = as_the_flow(m, d, flow);
    if (!near) return {};
    return filled_up(m, std::move(*near));
}

}  // namespace gristwright::allocation
