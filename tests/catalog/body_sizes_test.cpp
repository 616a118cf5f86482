#include <doctest/doctest.h>

#include <map>
#include <set>

#include "catalog/reference/source.hpp"
#include "catalog/reference/tables.hpp"
#include "engine/project/body.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

const auto& source() {
    static const auto read = read_source(ROOT_DIR "/catalog");
    return read;
}

}  // namespace

TEST_CASE("bodies grow with age, and every measure is one that templates take") {
    std::set<std::string> measures;
    for (const auto& t : source().templates) measures.insert(t.measure);
    std::map<std::string, Length> last;
    for (const auto& row : source().bodies) {
        CAPTURE(row.who);
        CAPTURE(row.measure);
        CHECK(measures.count(row.measure) == 1);
        CHECK(row.low <= row.mid);
        CHECK(row.mid <= row.high);
        if (row.who.rfind("child ", 0) != 0) continue;
        auto& before = last[row.measure];
        CHECK(row.mid >= before - millimetres(2));
        before = row.mid;
    }
}

// WHO Child Growth Standards: the median head at six months 42.6 (girls 42.2, boys 43.3).
TEST_CASE("a baby's head and a woman's stand where the surveys have them") {
    const auto* baby = body_size(source().bodies, "6 months", "round the head");
    REQUIRE(baby);
    CHECK(in_centimetres(baby->mid) == doctest::Approx(42.8));
    const auto* woman = body_size(source().bodies, body_named("women"), "round the head");
    REQUIRE(woman);
    CHECK(in_centimetres(woman->mid) == doctest::Approx(56.0));
}

TEST_CASE("templates by body fit somebody at every size between their smallest and largest") {
    for (const auto& t : source().templates) {
        bool named = false, fits = false;
        for (const auto& row : source().bodies) {
            if (row.measure != t.measure) continue;
            named = true;
            fits = fits || (row.mid >= t.smallest && row.mid <= t.largest);
        }
        CAPTURE(t.name);
        CHECK((!named || fits));
    }
}

TEST_CASE("a row that stands twice in a table is told with its line") {
    const std::string head = "who,measure,low_cm,mid_cm,high_cm,mark,source\n";
    const std::string row = "woman,chest,80,90,100,judgement,ours\n";
    CHECK(read_body_sizes(head + row, "sizes.csv").size() == 1);
    CHECK_THROWS_WITH(read_body_sizes(head + row + row, "sizes.csv"),
                      "sizes.csv:3: 'woman, chest' stands twice");
}
