#include "engine/project/body.hpp"

#include <doctest/doctest.h>

using namespace gristwright;

TEST_CASE("bodies by the words people use") {
    CHECK(body_named("child 6") == "child 6");
    CHECK(body_named("age 6") == "child 6");
    CHECK(body_named("6-year-old") == "child 6");
    CHECK(body_named("6yo girl, 6 years") == "child 6");
    CHECK(body_named("10") == "child 10");
    CHECK(body_named("baby, 6 months") == "6 months");
    CHECK(body_named("3mo") == "3 months");
    CHECK(body_named("Newborn baby") == "newborn");
    CHECK(body_named("women's L") == "woman L");
    CHECK(body_named("man") == "man");
    CHECK(body_named("woman 2X") == "woman 2X");
    CHECK(body_named("men XL") == "man XL");
    CHECK(body_named("my cousin") == "my cousin");
}
