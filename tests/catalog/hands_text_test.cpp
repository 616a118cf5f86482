// What remembered batches tell about the hands, read from their texts.
#include "catalog/typed/hands_text.hpp"

#include <doctest/doctest.h>

#include "catalog/typed/swatch_text.hpp"
#include "notebook_help.hpp"
#include "tests/near.hpp"

using namespace notebook_tests;
using gristwright::HandsSeen;

namespace {

BatchText made_up(const std::string& draw) {
    auto text = BatchText{};
    text.skeins = {{{}, {"171m", ""}, {"38.5g", ""}, {}}};
    text.fields["preparation"] = {{"carded", ""}};
    text.fields["draw"] = {{draw, ""}};
    text.fields["plies"] = {{"2", ""}};
    return text;
}

SwatchText counted(const std::string& stitches) {
    return {SwatchText::Kind::knitted, {{"stitches", stitches}, {"washed", "yes"}}, ""};
}

SwatchText with(SwatchText swatch, const std::string& key, const std::string& value) {
    swatch.measured[key] = value;
    return swatch;
}

}  // namespace

TEST_CASE("hands: a batch's washed swatches tell one ratio to the table") {
    const auto seen =
        hands_seen({{"heron", made_up("long"), {counted("28/10cm")}},
                    {"wren", made_up("long"), {counted("28/10cm"), counted("30/10cm")}}},
                   built_in());
    REQUIRE(seen.size() == 2);
    REQUIRE(seen[0].gauge);
    REQUIRE(seen[1].gauge);
    CHECK(seen[1].gauge->mid > seen[0].gauge->mid);
    CHECK(seen[1].gauge->mid / seen[0].gauge->mid == near(29.0 / 28, 0.01));
    CHECK(seen[1].gauge->spread < seen[0].gauge->spread);
    CHECK(!seen[0].look);
}

TEST_CASE("hands: unwashed, questioned and unreadable swatches tell nothing") {
    auto garbled = made_up("long");
    garbled.skeins[0].mass.text = "heavy";
    const auto seen =
        hands_seen({{"unwashed", made_up("long"), {with(counted("28/10cm"), "washed", "no")}},
                    {"far off", made_up("long"), {counted("60/10cm")}},
                    {"no fabric", made_up("long"), {with(counted("28/10cm"), "fabric", "gartre")}},
                    {"garbled", garbled, {counted("28/10cm")}}},
                   built_in());
    CHECK(seen.empty());
}

TEST_CASE("hands: a look is told against the table, knitted or woven alike") {
    SwatchText woven{
        SwatchText::Kind::woven, {{"finished", "17x21cm"}, {"reed", "20cm"}, {"look", "5/5"}}, ""};
    const auto seen =
        hands_seen({{"heron", made_up("long"), {with(counted("28/10cm"), "look", "4/5"), woven}},
                    {"wren", made_up("short"), {with(counted("28/10cm"), "look", "4/5")}}},
                   built_in());
    REQUIRE(seen.size() == 2);
    REQUIRE(seen[0].look);
    CHECK(*seen[0].look > *seen[1].look);  // 0.9 of a yarn of which less is expected
    CHECK(!(seen[0].made == seen[1].made));
    CHECK(words(seen[0].made) == "carded, long draw, 2-ply");
    CHECK(without(seen, "heron").size() == 1);
    CHECK(without(seen, "heron")[0].batch == "wren");
}
