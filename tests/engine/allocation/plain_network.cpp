// Successive shortest paths on dense arrays: Dijkstra on reduced costs, one way after the other
// until none gains. A second, independent flow for the tests: equal in every bound to the
// product's, and the measured alternative to it.
#include "tests/engine/allocation/plain_network.hpp"

#include <algorithm>
#include <limits>

namespace gristwright::allocation {
namespace {

constexpr Price unreached = std::numeric_limits<Price>::max();
constexpr Price reward = 100'000'000'000'000;  // above any gain that check() lets in
constexpr std::size_t nobody = std::numeric_limits<std::size_t>::max();

struct Meeting {
    Cm most = 0, flow = 0;
    Price cost = 0;
};

struct Taking {
    Cm most = 0, flow = 0;
    Price gain = 0;
};

}  // namespace

// Vertices: the skeins, then the pieces. `height` is each one's distance from the source, so that
// the reduced cost of every arc with room is 0 or more.
struct PlainNetwork::Graph {
    Graph(std::size_t of_skeins, std::size_t of_pieces)
        : skeins(of_skeins),
          pieces(of_pieces),
          left(skeins),
          meets(skeins * pieces),
          takes(pieces),
          height(skeins + pieces),
          distance(skeins + pieces),
          from(skeins + pieces),
          done(skeins + pieces) {}

    Meeting& meet(std::size_t i, std::size_t j) { return meets[i * pieces + j]; }

    void reach(std::size_t v, std::size_t by, Price cost) {
        const Price there = distance[by] + cost + height[by] - height[v];
        if (there < distance[v]) distance[v] = there, from[v] = by;
    }

    void look_on(std::size_t v) {
        if (v < skeins) {
            for (std::size_t j = 0; j < pieces; ++j)
                if (const auto& m = meet(v, j); m.flow < m.most) reach(skeins + j, v, m.cost);
        } else {
            for (std::size_t i = 0; i < skeins; ++i)
                if (const auto& m = meet(i, v - skeins); m.flow > 0) reach(i, v, -m.cost);
        }
    }

    std::size_t nearest() const {
        std::size_t best = nobody;
        for (std::size_t v = 0; v < distance.size(); ++v)
            if (!done[v] && distance[v] < unreached &&
                (best == nobody || distance[v] < distance[best]))
                best = v;
        return best;
    }

    void measure() {
        std::fill(done.begin(), done.end(), false);
        std::fill(from.begin(), from.end(), nobody);
        std::fill(distance.begin(), distance.end(), unreached);
        for (std::size_t i = 0; i < skeins; ++i)
            if (left[i] > 0) distance[i] = -height[i];
        for (auto v = nearest(); v != nobody; v = nearest()) {
            done[v] = true;
            look_on(v);
        }
        for (std::size_t v = 0; v < distance.size(); ++v)
            if (distance[v] < unreached) height[v] += distance[v];
    }

    // The arcs of a piece gain less and less: the first with room is the best.
    Taking* next_taking(std::size_t j) {
        for (auto& t : takes[j])
            if (t.flow < t.most) return &t;
        return nullptr;
    }

    // The piece at the end of the way that gains most; nobody when none gains.
    std::size_t best_end() {
        std::size_t best = nobody;
        Price most = 0;
        for (std::size_t j = 0; j < pieces; ++j) {
            const auto* t = next_taking(j);
            if (!t || distance[skeins + j] == unreached) continue;
            const Price gain = t->gain - height[skeins + j];
            if (gain > most) most = gain, best = j;
        }
        return best;
    }

    // Calls `step` with every meeting of the way to piece j, and whether it is gone forwards; gives
    // the skein that the way starts from.
    template <class Step>
    std::size_t walk_back(std::size_t j, Step step) {
        std::size_t v = skeins + j;
        for (; from[v] != nobody; v = from[v]) {
            const bool forwards = v >= skeins;
            forwards ? step(meet(from[v], v - skeins), true)
                     : step(meet(v, from[v] - skeins), false);
        }
        return v;
    }

    void send_to(std::size_t j) {
        auto& end = *next_taking(j);
        Cm amount = end.most - end.flow;
        const auto start = walk_back(j, [&](const Meeting& m, bool forwards) {
            amount = std::min(amount, forwards ? m.most - m.flow : m.flow);
        });
        amount = std::min(amount, left[start]);
        walk_back(j, [&](Meeting& m, bool forwards) { m.flow += forwards ? amount : -amount; });
        left[start] -= amount;
        end.flow += amount;
    }

    std::size_t skeins, pieces;
    std::vector<Cm> left;
    std::vector<Meeting> meets;
    std::vector<std::vector<Taking>> takes;
    std::vector<Price> height, distance;
    std::vector<std::size_t> from;
    std::vector<bool> done;
};

PlainNetwork::PlainNetwork(const std::vector<std::vector<bool>>& may_meet,
                           const std::vector<std::size_t>& arcs)
    : graph_(std::make_unique<Graph>(may_meet.size(), arcs.size())) {
    for (std::size_t j = 0; j < arcs.size(); ++j) graph_->takes[j].resize(arcs[j]);
}

PlainNetwork::~PlainNetwork() = default;

void PlainNetwork::skein(std::size_t i, Cm gives) { graph_->left[i] = gives; }

void PlainNetwork::meet(std::size_t i, std::size_t j, Cm most, Price cost) {
    graph_->meet(i, j) = {most, 0, cost};
}

void PlainNetwork::take(std::size_t j, std::size_t arc, Cm most, Price gain) {
    graph_->takes[j][arc] = {most, 0, gain};
}

void PlainNetwork::must_take(std::size_t j, Cm base) { take(j, 0, base, reward); }

void PlainNetwork::run() {
    auto& net = *graph_;
    std::fill(net.height.begin(), net.height.end(), 0);
    for (net.measure();; net.measure()) {
        const auto end = net.best_end();
        if (end == nobody) return;
        net.send_to(end);
    }
}

Cm PlainNetwork::flow(std::size_t i, std::size_t j) const { return graph_->meet(i, j).flow; }

Cm PlainNetwork::taken(std::size_t j, std::size_t arc) const { return graph_->takes[j][arc].flow; }

}  // namespace gristwright::allocation
