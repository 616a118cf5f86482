// "Why not X?": the one or two needs that decide, in words.
#include "cli/output/why_not.hpp"
#include "cli/article_asked.hpp"

#include <doctest/doctest.h>

#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;

namespace {

std::string asked_of(const std::string& article, const asked::Typed& batch) {
    const auto q = asked::of_options(batch);
    return why_not(judged_plan(find_template(*q.catalogue, article), q), q);
}

}  // namespace

TEST_CASE("why not socks: soft carded singles wear through, and plies would serve") {
    const auto said = asked_of("plain-socks", {"--skein", "400m/150g", "--prep", "carded", "--draw",
                                               "long", "--ply", "1", "--fibre", "Merino"});
    INFO(said);
    CHECK(asked::holds(said, "wears through at heel and toe"));
    CHECK(asked::holds(said, "would serve:"));
    CHECK(asked::times(said, "\n  - ") + asked::times(said, "\n- ") <= 4);
}

TEST_CASE("why not a pullover: the metres are said with the needs") {
    const auto said = asked_of("raglan-pullover", {"--skein", "200m/80g", "--ply", "2", "--fibre",
                                                   "Corriedale", "--prep", "carded"});
    INFO(said);
    CHECK(asked::holds(said, "the yarn:"));
}

TEST_CASE("why not what serves well: nothing stands against it") {
    const auto said = asked_of("leg-warmers", {"--skein", "500m/200g", "--ply", "2", "--fibre",
                                               "Corriedale", "--prep", "carded", "--draw", "long"});
    INFO(said);
    CHECK(asked::holds(said, "Nothing stands against it"));
}
