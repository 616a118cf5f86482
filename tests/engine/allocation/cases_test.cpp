// Fifteen instances with proven optima: twelve checkable by hand, three random ones on which two
// general solvers (GLPK and HiGHS) and a separate search agree to the micro-point.
#include <doctest/doctest.h>

#include <fstream>
#include <nlohmann/json.hpp>

#include "engine/allocation/allocate.hpp"
#include "engine/allocation/checker.hpp"

using namespace gristwright::allocation;

namespace {

using nlohmann::json;

std::size_t index_of(const json& list, const std::string& id) {
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i]["id"] == id) return i;
    FAIL("no " << id);
    return 0;
}

Problem problem_of(const json& c) {
    Problem p;
    for (const auto& s : c["skeins"])
        p.skeins.push_back({s["id"], s["length_cm"], s["untouched_bonus_upt"]});
    for (const auto& s : c["pieces"]) {
        Piece piece{s["id"],        s["d_min_cm"], s["base_value_upt"], {}, s["join_cost_upt"],
                    s["max_joins"], s["required"]};
        for (const auto& k : s["stretch"])
            piece.stretch.push_back({k["len_cm"], k["slope_upt_per_cm"]});
        p.pieces.push_back(piece);
    }
    for (const auto& row : c["mismatch_upt_per_cm"]) {
        p.mismatch.emplace_back();
        for (const auto& cost : row)
            p.mismatch.back().push_back(cost.is_null() ? std::optional<Points>{}
                                                       : cost.get<Points>());
    }
    p.tail = c["tail_cm"];
    p.shortest = c["min_segment_cm"];
    p.reserve = c["reserve_cm"];
    for (const auto& [key, to] :
         {std::pair{"same_skein", &p.same}, {"different_skein", &p.different}})
        for (const auto& pair : c[key])
            to->push_back({index_of(c["pieces"], pair[0]), index_of(c["pieces"], pair[1])});
    return p;
}

}  // namespace

TEST_CASE("fifteen proven optima") {
    std::ifstream file(CASES_DIR "/allocation_cases.json");
    const auto all = json::parse(file);
    REQUIRE(all["cases"].size() == 15);
    for (const auto& c : all["cases"]) {
        CAPTURE(c["id"].get<std::string>());
        const auto problem = problem_of(c);
        const auto answer = allocate(problem, {60'000});
        if (c["status"] == "infeasible") {
            CHECK(answer.outcome == Allocation::Outcome::impossible);
            continue;
        }
        REQUIRE(answer.outcome == Allocation::Outcome::proven_best);
        CHECK(answer.list.worth == c["optimum_upt"].get<Points>());
        CHECK(broken_rule(problem, answer.list).empty());
    }
}
