// Seeded random problems against GLPK's command-line solver, through an LP file: a general
// branch and cut in floating point, which knows nothing of our search.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>

#include "engine/allocation/allocate.hpp"
#include "engine/allocation/checker.hpp"
#include "engine/allocation/split.hpp"
#include "engine/project/role.hpp"
#include "tests/engine/allocation/lp_text.hpp"
#include "tests/engine/allocation/random_problem.hpp"
#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright::allocation;

namespace {

struct Said {
    char status = 'u';  // o: optimal, n: no plan, f: found but not proven, u: nothing
    double worth = 0;
};

// The line "s mip rows columns status objective" of a GLPK solution file.
Said solution_in(const std::filesystem::path& file) {
    std::ifstream in(file);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::string s, mip;
        int rows = 0, columns = 0;
        Said said;
        if (line.starts_with("s mip")) {
            words >> s >> mip >> rows >> columns >> said.status >> said.worth;
            return said;
        }
    }
    return {};
}

Said glpsol(const Problem& problem) {
    std::string pattern = (std::filesystem::temp_directory_path() / "glpsol-XXXXXX").string();
    REQUIRE(mkdtemp(pattern.data()) != nullptr);
    const std::filesystem::path folder = pattern;
    std::ofstream(folder / "problem.lp") << lp_text(problem);
    const auto command =
        fmt::format("glpsol --lp '{0}/problem.lp' --cuts --tmlim 1 -w '{0}/answer' >'{0}/log' 2>&1",
                    folder.string());
    const int status = std::system(command.c_str());
    const auto said = status == 0 ? solution_in(folder / "answer") : Said{};
    std::filesystem::remove_all(folder);
    return said;
}

struct Tally {
    int proven = 0, impossible = 0, unsure = 0;
};

void compare(const Problem& problem, Tally& tally) {
    CAPTURE(problem.skeins.size());
    CAPTURE(problem.pieces.size());
    const auto answer = allocate(problem);
    const auto said = glpsol(problem);
    using Outcome = Allocation::Outcome;
    if (said.status == 'n' || said.status == 'u') {
        // Its presolver calls an impossible problem undefined.
        CHECK(answer.outcome == Outcome::impossible);
        ++tally.impossible;
        return;
    }
    REQUIRE(answer.found());
    CHECK(broken_rule(problem, answer.list) == "");
    const double theirs = said.worth + constant_of(problem);
    const double slack = 1e-6 * (1 + std::abs(theirs));
    CHECK(static_cast<double>(answer.bound) / 1e6 >= theirs - slack);
    if (said.status != 'o' || answer.outcome != Outcome::proven_best) {
        ++tally.unsure;
        return;
    }
    ++tally.proven;
    CHECK(static_cast<double>(answer.list.worth) / 1e6 == near(theirs, 1e-6));
}

}  // namespace

TEST_CASE("340 random problems up to 8 by 8 are worth what a general solver says") {
    Tally tally;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        CAPTURE(seed);
        compare(random_problem(1 + seed % 5, 1 + (seed / 5) % 6, seed), tally);
    }
    for (std::uint64_t seed = 1001; seed <= 1040; ++seed) {
        CAPTURE(seed);
        compare(random_problem(5 + seed % 4, 5 + seed / 4 % 4, seed), tally);
    }
    MESSAGE(tally.proven << " proven by both, " << tally.impossible << " impossible, "
                         << tally.unsure << " not settled");
    CHECK(tally.proven >= 300);
    CHECK(tally.impossible >= 3);
}

TEST_CASE("60 tight splits up to 8 by 6 are all proven, and worth what a general solver says") {
    Tally tally;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        const auto problem = tight_problem(3 + seed % 6, 2 + seed / 6 % 5, seed);
        CHECK(allocate(problem).outcome == Allocation::Outcome::proven_best);
        compare(problem, tally);
    }
    MESSAGE(tally.proven << " proven by both, " << tally.unsure << " not by the other in a second");
    CHECK(tally.proven >= 40);
}

// A scarf's weft, or its warp, out of skeins that another yarn completes, and a whole one beside
// it.
TEST_CASE("splits in which the batch is weft or warp are worth what a general solver says") {
    const auto fabrics = invented::fabrics();
    Tally tally;
    for (const auto role : {gristwright::Role::weft, gristwright::Role::warp})
        for (int seed = 0; seed < 10; ++seed) {
            auto yarn = invented::yarn(0, 150 + 20 * seed);
            for (int k = 0; k < 2 + seed % 3; ++k) {
                gristwright::SkeinGrist skein;
                skein.name = std::string(1, static_cast<char>('A' + k));
                skein.length = gristwright::metres(90 + 37 * ((seed + k) % 4));
                skein.linear_density = yarn.linear_density;
                yarn.length.mid += skein.length;
                yarn.skeins.push_back(skein);
            }
            SplitRequest request;
            for (const bool main : {true, false}) {
                const auto article = main ? gristwright::in_role(invented::woven_scarf(), role)
                                          : invented::knitted_scarf();
                gristwright::allocation::Wish wish;
                wish.name = main ? "woven" : "knitted";
                wish.main = main;
                wish.plan = gristwright::plan(article, yarn, fabrics, {}, {});
                request.wishes.push_back(wish);
            }
            CAPTURE(seed);
            const auto found = split(yarn, request);
            compare(found.problem, tally);
            if (found.found() && found.by_piece) compare(found.placing, tally);
        }
    CHECK(tally.proven >= 20);
}
