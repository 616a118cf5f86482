// The flow against two other algorithms of Boost.Graph on a graph built here: how much can be
// carried at all, and what the cheapest way costs.
#include "engine/allocation/network.hpp"

#include <doctest/doctest.h>

#pragma GCC diagnostic push
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"  // false, inside Boost's edge iterator
#endif

// clang-format off
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/cycle_canceling.hpp>
#include <boost/graph/push_relabel_max_flow.hpp>
// clang-format on

#include <random>

using namespace gristwright::allocation;

namespace {

struct Bid {
    Cm length = 0;
    Price gain = 0;
    bool must = false;
};

// Skeins, pieces with a base and one stretch, and what meets at which cost.
struct Shelf {
    std::vector<Cm> gives;
    std::vector<Bid> base, stretch;
    std::vector<std::vector<bool>> may_meet;
    std::vector<std::vector<Price>> cost;
    std::vector<std::vector<Cm>> most;
};

Shelf random_shelf(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto any = [&](std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(high - low));
    };
    Shelf out;
    const auto skeins = any(1, 6), pieces = any(1, 6);
    for (std::int64_t j = 0; j < pieces; ++j) {
        out.base.push_back({any(500, 9000), any(900, 4000) * price_unit, any(0, 2) == 0});
        out.stretch.push_back({any(0, 2000), any(0, 900) * price_unit, false});
    }
    for (std::int64_t i = 0; i < skeins; ++i) {
        out.gives.push_back(any(0, 12'000));
        out.may_meet.emplace_back();
        out.cost.emplace_back();
        out.most.emplace_back();
        for (std::int64_t j = 0; j < pieces; ++j) {
            out.may_meet.back().push_back(any(0, 4) > 0);
            out.cost.back().push_back(any(0, 700) * price_unit);
            out.most.back().push_back(any(0, 6000));
        }
    }
    return out;
}

void fill(Network& net, const Shelf& shelf) {
    for (std::size_t i = 0; i < shelf.gives.size(); ++i) {
        net.skein(i, shelf.gives[i]);
        for (std::size_t j = 0; j < shelf.base.size(); ++j)
            if (shelf.may_meet[i][j]) net.meet(i, j, shelf.most[i][j], shelf.cost[i][j]);
    }
    for (std::size_t j = 0; j < shelf.base.size(); ++j) {
        if (shelf.base[j].must)
            net.must_take(j, shelf.base[j].length);
        else
            net.take(j, 0, shelf.base[j].length, shelf.base[j].gain);
        net.take(j, 1, shelf.stretch[j].length, shelf.stretch[j].gain);
    }
}

// The gains less the costs of the flow found; a base that must be filled gains nothing here.
Price worth(const Network& net, const Shelf& shelf) {
    Price sum = 0;
    for (std::size_t j = 0; j < shelf.base.size(); ++j) {
        if (!shelf.base[j].must) sum += net.taken(j, 0) * shelf.base[j].gain;
        sum += net.taken(j, 1) * shelf.stretch[j].gain;
        for (std::size_t i = 0; i < shelf.gives.size(); ++i)
            sum -= net.flow(i, j) * shelf.cost[i][j];
    }
    return sum;
}

using Traits = boost::adjacency_list_traits<boost::vecS, boost::vecS, boost::directedS>;
struct Arc {
    Cm capacity = 0, residual = 0;
    Price weight = 0;
    Traits::edge_descriptor reverse;
};
using Graph =
    boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, boost::no_property, Arc>;

// The second opinion. Vertices: skeins, pieces, source, sink.
class Second {
  public:
    Second(const Shelf& shelf, bool only_musts)
        : shelf_(shelf), g_(shelf.gives.size() + shelf.base.size() + 2) {
        const auto skeins = shelf.gives.size();
        source_ = skeins + shelf.base.size();
        sink_ = source_ + 1;
        for (std::size_t i = 0; i < skeins; ++i) {
            join(source_, i, shelf.gives[i], 0);
            if (!only_musts) join(i, sink_, shelf.gives[i], 0);
            for (std::size_t j = 0; j < shelf.base.size(); ++j)
                if (shelf.may_meet[i][j]) join(i, skeins + j, shelf.most[i][j], shelf.cost[i][j]);
        }
        for (std::size_t j = 0; j < shelf.base.size(); ++j) offer(skeins + j, j, only_musts);
    }

    Cm most_flow() {
        const auto index = boost::get(boost::vertex_index, g_);
        return boost::push_relabel_max_flow(g_, source_, sink_, boost::get(&Arc::capacity, g_),
                                            boost::get(&Arc::residual, g_),
                                            boost::get(&Arc::reverse, g_), index);
    }

    // Gains less costs of the best flow, the reward for musts taken off again.
    Price worth() {
        most_flow();
        std::vector<Price> distance(boost::num_vertices(g_));
        std::vector<Traits::edge_descriptor> way(boost::num_vertices(g_));
        const auto index = boost::get(boost::vertex_index, g_);
        boost::cycle_canceling(g_, boost::get(&Arc::weight, g_), boost::get(&Arc::reverse, g_),
                               boost::get(&Arc::residual, g_),
                               boost::make_iterator_property_map(way.begin(), index),
                               boost::make_iterator_property_map(distance.begin(), index));
        Price sum = 0;
        for (const auto& arc : all_) {
            const auto weight = g_[arc].weight == -reward ? 0 : g_[arc].weight;
            sum -= (g_[arc].capacity - g_[arc].residual) * weight;
        }
        return sum;
    }

  private:
    static constexpr Price reward = 100'000 * price_unit;

    void join(std::size_t a, std::size_t b, Cm capacity, Price weight) {
        const auto there = boost::add_edge(a, b, Arc{capacity, 0, weight, {}}, g_).first;
        const auto back = boost::add_edge(b, a, Arc{0, 0, -weight, {}}, g_).first;
        g_[there].reverse = back;
        g_[back].reverse = there;
        all_.push_back(there);
    }

    void offer(std::size_t vertex, std::size_t j, bool only_musts) {
        const auto& base = shelf_.base[j];
        if (base.must || !only_musts)
            join(vertex, sink_, base.length, base.must ? -reward : -base.gain);
        if (!only_musts) join(vertex, sink_, shelf_.stretch[j].length, -shelf_.stretch[j].gain);
    }

    const Shelf& shelf_;
    Graph g_;
    std::size_t source_ = 0, sink_ = 0;
    std::vector<Traits::edge_descriptor> all_;
};

constexpr std::uint64_t shelves = 300;

Network network_of(const Shelf& shelf) {
    return Network(shelf.may_meet, std::vector<std::size_t>(shelf.base.size(), 2));
}

}  // namespace

TEST_CASE("all musts are filled exactly when a maximum flow fills them") {
    int filled = 0;
    for (std::uint64_t seed = 0; seed < shelves; ++seed) {
        CAPTURE(seed);
        const auto shelf = random_shelf(seed);
        auto net = network_of(shelf);
        fill(net, shelf);
        net.run();
        Cm wanted = 0, taken = 0;
        for (std::size_t j = 0; j < shelf.base.size(); ++j) {
            if (!shelf.base[j].must) continue;
            wanted += shelf.base[j].length;
            taken += net.taken(j, 0);
        }
        const auto most = Second(shelf, true).most_flow();
        CHECK(taken == most);
        filled += most == wanted ? 1 : 0;
    }
    CHECK(filled > 50);
    CHECK(filled < 250);
}

TEST_CASE("the cheapest flow is worth what cycle cancelling finds") {
    for (std::uint64_t seed = 0; seed < shelves; ++seed) {
        CAPTURE(seed);
        const auto shelf = random_shelf(seed);
        auto net = network_of(shelf);
        fill(net, shelf);
        net.run();
        CHECK(worth(net, shelf) == Second(shelf, false).worth());
    }
}

TEST_CASE("a network is used again for other numbers") {
    const auto first = random_shelf(7);
    auto second = first;
    for (auto& gives : second.gives) gives = gives / 2 + 1;
    auto again = network_of(first), fresh = network_of(second);
    fill(again, first);
    again.run();
    fill(again, second);
    again.run();
    fill(fresh, second);
    fresh.run();
    CHECK(worth(again, second) == worth(fresh, second));
}

#pragma GCC diagnostic pop
