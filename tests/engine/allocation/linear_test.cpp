#include "engine/allocation/linear.hpp"

#include <doctest/doctest.h>

#include <random>

#include "tests/near.hpp"

using namespace gristwright::allocation;

TEST_CASE("linear: the textbook's glass works (Hillier and Lieberman, Introduction to OR, 3.1)") {
    // Most of 3x + 5y with x <= 4, 2y <= 12, 3x + 2y <= 18 is 36, at x = 2, y = 6; shadow prices
    // 0, 1.5 and 1. Figures from memory, the answer worked by hand.
    Linear lp({4, 12, 18}, {0, 0, 0});
    const auto x = lp.add(3, {{0, 1}, {2, 3}});
    const auto y = lp.add(5, {{1, 2}, {2, 2}});
    REQUIRE(lp.solve(100));
    CHECK(lp.worth() == near(36, 1e-9));
    CHECK(lp.amounts()[x] == near(2, 1e-9));
    CHECK(lp.amounts()[y] == near(6, 1e-9));
    CHECK(std::abs(lp.price(0)) < 1e-9);
    CHECK(lp.price(1) == near(1.5, 1e-9));
    CHECK(lp.price(2) == near(1, 1e-9));
}

TEST_CASE("linear: at the best, prices times what there is equal the worth, and no column gains") {
    std::mt19937_64 random(7);
    const auto any = [&] { return static_cast<double>(random() % 1000) / 100 + 0.01; };
    for (int round = 0; round < 50; ++round) {
        CAPTURE(round);
        const std::size_t rows = 2 + random() % 6, columns = 1 + random() % 12;
        std::vector<double> b(rows);
        for (auto& x : b) x = any();
        Linear lp(b, std::vector<double>(rows, 0));
        std::vector<std::vector<double>> a(columns, std::vector<double>(rows));
        std::vector<double> worth(columns);
        for (std::size_t c = 0; c < columns; ++c) {
            std::vector<Linear::Entry> entries;
            for (std::size_t r = 0; r < rows; ++r) entries.push_back({r, a[c][r] = any()});
            lp.add(worth[c] = any(), entries);
            if (c % 3 == 0) REQUIRE(lp.solve(1000));  // columns may come later
        }
        REQUIRE(lp.solve(1000));
        double dual = 0;
        for (std::size_t r = 0; r < rows; ++r) {
            CHECK(lp.price(r) > -1e-7);
            dual += lp.price(r) * b[r];
        }
        CHECK(lp.worth() == near(dual, 1e-9));
        const auto amounts = lp.amounts();
        for (std::size_t r = 0; r < rows; ++r) {
            double used = 0;
            for (std::size_t c = 0; c < columns; ++c) used += a[c][r] * amounts[rows + c];
            CHECK(used <= b[r] + 1e-7);
        }
        for (std::size_t c = 0; c < columns; ++c) {
            double cost = 0;
            for (std::size_t r = 0; r < rows; ++r) cost += lp.price(r) * a[c][r];
            CHECK(cost >= worth[c] - 1e-6);
        }
    }
}

TEST_CASE("linear: no end to the worth is said, not hidden") {
    Linear lp({1}, {0});
    lp.add(1, {{0, -1}});
    CHECK(!lp.solve(100));
}
