#include "engine/allocation/network.hpp"

#include <doctest/doctest.h>

#include <random>

#include "tests/engine/allocation/plain_network.hpp"

using namespace gristwright::allocation;

namespace {

struct Case {
    std::vector<std::vector<bool>> may_meet;
    std::vector<std::size_t> arcs;
    std::vector<Cm> gives;
    std::vector<std::vector<Cm>> most;
    std::vector<std::vector<Price>> cost;
    std::vector<std::vector<std::pair<Cm, Price>>> takes;
    std::vector<bool> must;
};

Case random_case(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto any = [&](Cm from, Cm to) {
        return from + static_cast<Cm>(random() % static_cast<std::uint64_t>(to - from + 1));
    };
    Case c;
    const auto skeins = static_cast<std::size_t>(any(1, 7));
    const auto pieces = static_cast<std::size_t>(any(1, 7));
    for (std::size_t i = 0; i < skeins; ++i) {
        c.gives.push_back(any(0, 3) == 0 ? 0 : any(1, 30000));
        c.may_meet.emplace_back();
        c.most.emplace_back();
        c.cost.emplace_back();
        for (std::size_t j = 0; j < pieces; ++j) {
            c.may_meet[i].push_back(any(0, 5) > 0);
            c.most[i].push_back(c.may_meet[i][j] ? any(0, 20000) : 0);
            c.cost[i].push_back(any(0, 1) * any(0, 2'000'000'000));
        }
    }
    for (std::size_t j = 0; j < pieces; ++j) {
        c.must.push_back(any(0, 2) == 0);
        c.takes.emplace_back();
        Price gain = any(0, 20'000'000'000);
        for (auto a = any(1, 4); a > 0; --a, gain = gain * any(0, 90) / 100)
            c.takes[j].push_back({any(0, 20000), gain});
        c.arcs.push_back(c.takes[j].size());
    }
    return c;
}

struct Result {
    Cm filled = 0;  // of what must be
    Price worth = 0;
    friend bool operator==(const Result&, const Result&) = default;
};

template <class AnyNetwork>
Result solved(const Case& c, AnyNetwork& net) {
    for (std::size_t i = 0; i < c.gives.size(); ++i) {
        net.skein(i, c.gives[i]);
        for (std::size_t j = 0; j < c.arcs.size(); ++j)
            if (c.may_meet[i][j]) net.meet(i, j, c.most[i][j], c.cost[i][j]);
    }
    for (std::size_t j = 0; j < c.arcs.size(); ++j)
        for (std::size_t a = 0; a < c.arcs[j]; ++a)
            if (a == 0 && c.must[j])
                net.must_take(j, c.takes[j][a].first);
            else
                net.take(j, a, c.takes[j][a].first, c.takes[j][a].second);
    net.run();
    Result out;
    for (std::size_t j = 0; j < c.arcs.size(); ++j) {
        Cm in = 0, taken = 0;
        for (std::size_t a = 0; a < c.arcs[j]; ++a) {
            taken += net.taken(j, a);
            CHECK(net.taken(j, a) <= c.takes[j][a].first);
            if (a == 0 && c.must[j])
                out.filled += net.taken(j, a);
            else
                out.worth += net.taken(j, a) * c.takes[j][a].second;
        }
        for (std::size_t i = 0; i < c.gives.size(); ++i) {
            CHECK(net.flow(i, j) >= 0);
            CHECK(net.flow(i, j) <= c.most[i][j]);
            in += net.flow(i, j);
            out.worth -= net.flow(i, j) * c.cost[i][j];
        }
        CHECK(in == taken);
    }
    for (std::size_t i = 0; i < c.gives.size(); ++i) {
        Cm given = 0;
        for (std::size_t j = 0; j < c.arcs.size(); ++j) given += net.flow(i, j);
        CHECK(given <= c.gives[i]);
    }
    return out;
}

}  // namespace

TEST_CASE("our flow and Boost.Graph's are worth exactly the same") {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        CAPTURE(seed);
        const auto c = random_case(seed);
        Network ours(c.may_meet, c.arcs);
        PlainNetwork theirs(c.may_meet, c.arcs);
        const auto result = solved(c, ours);
        CHECK(result == solved(c, theirs));
        CHECK(result ==
              solved(c, ours));  // run again with the same capacities: nothing is left over
    }
}
