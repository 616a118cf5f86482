// What is typed about a swatch and a weighing, read or refused by its key.
#include "catalog/typed/swatch_text.hpp"

#include <doctest/doctest.h>

#include "catalog/reference/catalogue.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

std::string complaint(SwatchText::Kind kind, const std::string& key, const std::string& value) {
    SwatchText text;
    text.kind = kind;
    text.measured = kind == SwatchText::Kind::knitted
                        ? decltype(text.measured){{"stitches", "28/10cm"}}
                        : decltype(text.measured){{"finished", "17x21cm"}, {"reed", "20cm"}};
    text.measured[key] = value;
    try {
        if (kind == SwatchText::Kind::knitted)
            read_knitted(text);
        else
            read_woven(text);
    } catch (const std::invalid_argument& error) {
        return error.what();
    }
    return "";
}

}  // namespace

TEST_CASE("counts, sides and looks are read as people write them") {
    const auto counted = read_counted("28/10.3cm");
    CHECK(counted.threads == 28);
    CHECK(in_centimetres(counted.over) == doctest::Approx(10.3));
    CHECK(in_inches(read_counted("18/4in").over) == doctest::Approx(4));
    CHECK_THROWS_AS(read_counted("220/4in"), Refused);  // a nought too many
    for (const char* text : {"15.2x14.8cm", "15.2cm x 14.8cm", "152mm x 14.8 cm"}) {
        const auto [width, length] = read_sides(text);
        CHECK(in_centimetres(width) == doctest::Approx(15.2));
        CHECK(in_centimetres(length) == doctest::Approx(14.8));
    }
    CHECK(read_look("4/5") == doctest::Approx(0.8));
}

TEST_CASE("what is unclear is refused by its key") {
    using Kind = SwatchText::Kind;
    for (const char* bad : {"", "28", "28/", "0/10cm", "-3/10cm", "nan/10cm", "28/10g", "/10cm"})
        CHECK(complaint(Kind::knitted, "stitches", bad) != "");
    CHECK(complaint(Kind::knitted, "sides", "15cm").find("sides: ") == 0);
    CHECK(complaint(Kind::knitted, "mass", "4m").find("mass: ") == 0);
    CHECK(complaint(Kind::knitted, "look", "6/5").find("look: ") == 0);
    CHECK(complaint(Kind::knitted, "washed", "perhaps").find("washed: ") == 0);
    CHECK(complaint(Kind::knitted, "firmness", "hard").find("firmness: ") == 0);
    CHECK(complaint(Kind::knitted, "needle", "4m").find("needle: ") == 0);
    CHECK(complaint(Kind::knitted, "needle", "4mm") == "");
    CHECK(complaint(Kind::woven, "reed", "20").find("reed: ") == 0);
    CHECK(complaint(Kind::woven, "finished", "17cm").find("finished: ") == 0);
    CHECK_THROWS_AS(read_weighing({"-1", "", "31g", ""}), std::invalid_argument);
    CHECK_THROWS_AS(read_weighing({"12", "", "31m", ""}), std::invalid_argument);
}

TEST_CASE("swatches are taken in order, and a stitch nobody knows is refused") {
    const auto fabrics = built_in().fabrics;
    Batch batch;
    batch.skeins.push_back({"A", metres(171), grams(38.5), LengthState::washed});
    const auto yarn = profile(batch, {});
    SwatchText garter;
    garter.measured = {{"stitches", "24/10cm"}, {"fabric", "garter"}};
    const auto known = evidence_of({garter, garter}, yarn, fabrics);
    CHECK(known.stands_on.size() == 2);
    CHECK(known.gauge->spread < evidence_of({garter}, yarn, fabrics).gauge->spread);
    garter.measured["fabric"] = "gartre";
    CHECK_THROWS_AS(evidence_of({garter}, yarn, fabrics), std::invalid_argument);
}
