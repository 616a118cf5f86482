// Boost.Graph's successive shortest paths: 64-bit integers throughout, positional arguments (the
// named ones do not compile on a const graph in 1.74), every reverse arc by hand.
#include "engine/allocation/network.hpp"

// clang-format off
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/successive_shortest_path_nonnegative_weights.hpp>
// clang-format on

#include <algorithm>

namespace gristwright::allocation {
namespace {

using Traits = boost::adjacency_list_traits<boost::vecS, boost::vecS, boost::directedS>;
struct Arc {
    Cm capacity = 0, residual = 0;
    Price weight = 0;
    Traits::edge_descriptor reverse;
};
using Boosted =
    boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, boost::no_property, Arc>;

// Every arc from skein to piece costs at least this, so that every way costs about the same and a
// gain is a saving: Dijkstra needs weights of 0 and more.
constexpr Price toll = 200'000'000'000'000;
constexpr Price reward = toll / 2;

// Boost adds the distances of two rounds, also where both are "infinite": held far below overflow.
struct Distances {
    using key_type = std::size_t;
    using value_type = Price;
    using reference = Price;
    using category = boost::read_write_property_map_tag;
    std::vector<Price>* data;
};
constexpr Price infinite = Price{1} << 61;
Price get(const Distances& map, std::size_t v) { return std::min((*map.data)[v], infinite); }
void put(const Distances& map, std::size_t v, Price d) { (*map.data)[v] = d; }

}  // namespace

struct Network::Graph {
    Graph(std::size_t of_skeins, std::size_t of_pieces)
        : skeins(of_skeins), pieces(of_pieces), g(of_skeins + of_pieces + 3) {}

    std::size_t skeins, pieces;
    Boosted g;
    std::vector<Arc*> arcs;                            // all of them; Boost keeps each at its place
    std::vector<Traits::edge_descriptor> gives;  // by skein
    // All that the skeins hold comes in by one arc, and what no piece takes goes out by one: a round
    // of the search for both, not one for each skein.
    Traits::edge_descriptor supply, rest;
    std::vector<std::vector<Traits::edge_descriptor>> meet, takes;  // by skein and piece; by piece
    std::vector<std::vector<bool>> may_meet;
    std::vector<Price> now, before;            // distances of two rounds
    std::vector<Traits::edge_descriptor> way;  // to each vertex

    std::size_t source() const { return skeins + pieces; }
    std::size_t sink() const { return skeins + pieces + 1; }
    std::size_t origin() const { return skeins + pieces + 2; }

    Traits::edge_descriptor join(std::size_t a, std::size_t b) {
        const auto there = boost::add_edge(a, b, g).first;
        const auto back = boost::add_edge(b, a, g).first;
        g[there].reverse = back;
        g[back].reverse = there;
        arcs.push_back(&g[there]);
        arcs.push_back(&g[back]);
        return there;
    }
    void set(Traits::edge_descriptor arc, Cm capacity, Price weight) {
        g[arc].capacity = capacity;
        g[arc].weight = weight;
        g[g[arc].reverse].weight = -weight;
    }
    Cm flow(Traits::edge_descriptor arc) const { return g[arc].capacity - g[arc].residual; }
};

Network::Network(const std::vector<std::vector<bool>>& may_meet,
                 const std::vector<std::size_t>& arcs)
    : graph_(std::make_unique<Graph>(may_meet.size(), arcs.size())) {
    auto& net = *graph_;
    net.may_meet = may_meet;
    net.meet.resize(net.skeins, std::vector<Traits::edge_descriptor>(net.pieces));
    net.takes.resize(net.pieces);
    net.supply = net.join(net.origin(), net.source());
    net.rest = net.join(net.source(), net.sink());
    for (std::size_t i = 0; i < net.skeins; ++i) {
        net.gives.push_back(net.join(net.source(), i));
        for (std::size_t j = 0; j < net.pieces; ++j)
            if (may_meet[i][j]) net.meet[i][j] = net.join(i, net.skeins + j);
    }
    for (std::size_t j = 0; j < net.pieces; ++j)
        for (std::size_t a = 0; a < arcs[j]; ++a)
            net.takes[j].push_back(net.join(net.skeins + j, net.sink()));
}

Network::~Network() = default;

void Network::skein(std::size_t i, Cm gives) {
    graph_->set(graph_->gives[i], gives, 0);
}

void Network::meet(std::size_t i, std::size_t j, Cm most, Price cost) {
    if (graph_->may_meet[i][j]) graph_->set(graph_->meet[i][j], most, toll + cost);
}

void Network::take(std::size_t j, std::size_t arc, Cm most, Price gain) {
    graph_->set(graph_->takes[j][arc], most, toll - gain);
}

void Network::must_take(std::size_t j, Cm base) { take(j, 0, base, reward); }

void Network::run() {
    auto& g = graph_->g;
    Cm all = 0;
    for (const auto& gives : graph_->gives) all += g[gives].capacity;
    graph_->set(graph_->supply, all, 0);
    graph_->set(graph_->rest, all, 2 * toll);
    for (auto* arc : graph_->arcs) arc->residual = arc->capacity;
    graph_->now.assign(boost::num_vertices(g), 0);
    graph_->before.assign(boost::num_vertices(g), 0);
    graph_->way.resize(boost::num_vertices(g));
    const auto index = boost::get(boost::vertex_index, g);
    boost::successive_shortest_path_nonnegative_weights(
        g, graph_->origin(), graph_->sink(), boost::get(&Arc::capacity, g),
        boost::get(&Arc::residual, g), boost::get(&Arc::weight, g), boost::get(&Arc::reverse, g),
        index, boost::make_iterator_property_map(graph_->way.begin(), index),
        Distances{&graph_->now}, Distances{&graph_->before});
}

Cm Network::flow(std::size_t i, std::size_t j) const {
    return graph_->may_meet[i][j] ? graph_->flow(graph_->meet[i][j]) : 0;
}

Cm Network::taken(std::size_t j, std::size_t arc) const {
    return graph_->flow(graph_->takes[j][arc]);
}

}  // namespace gristwright::allocation
