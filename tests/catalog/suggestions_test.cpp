// Suggestions for the demo batch as plain rows that craft people can read and add to
// (tests/cases/suggestions.csv), and what must hold of every answer.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "catalog/reference/ground.hpp"
#include "catalog/reference/tables.hpp"
#include "catalog/text/bad_text.hpp"
#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/suggestion_text.hpp"
#include "engine/suggestion/answer.hpp"
#include "tests/cases.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

struct Demo {
    Catalogue catalogue = built_in();
    MeasuredBatch measured =
        interpret(read_batch_file(ROOT_DIR "/tests/cases/curlew.toml"), catalogue);
    YarnProfile yarn = profile(measured.batch, catalogue.yarn);
    Answerer answerer{ground(catalogue, yarn, measured.owned)};

    SuggestionAnswer answer(const SuggestionText& text) {
        return answerer.answer(read_suggestion(text, catalogue));
    }
};

std::string reach_of(const SuggestionAnswer& a) {
    return a.answered ? std::string(words(a.reach)) : "asked back";
}

}  // namespace

TEST_CASE("suggestions are answered as the table says") {
    Demo demo;
    const auto rows = read_cases("suggestions.csv");
    REQUIRE(rows.size() >= 40);
    for (const auto& row : rows) {
        CAPTURE(row.at("idea"));
        CAPTURE(row.at("source"));
        SuggestionText text;
        for (const char* key : {"idea", "craft", "needs", "weight", "gauge", "size", "grist"})
            text[key] = row.at(key);
        const auto a = demo.answer(text);
        if (!row.at("expect_reach").empty()) CHECK(reach_of(a) == row.at("expect_reach"));
        if (!row.at("expect_serves").empty())
            CHECK(words(serves(a.judgement.score)) == row.at("expect_serves"));
        if (!row.at("expect_need_m").empty())
            CHECK(std::abs(in_metres(a.need.mid) - std::stod(row.at("expect_need_m"))) <=
                  std::stod(row.at("tolerance_m")));
    }
}

TEST_CASE("the words taken are shown, and the words not known are asked about") {
    Demo demo;
    const auto a = demo.answer({{"idea", "Knit a lovely beanie with cables!"}});
    REQUIRE(a.taken.wanted.size() == 1);
    CHECK(a.taken.wanted[0].kind == "hat");
    CHECK(a.taken.craft == Craft::knitted);
    CHECK(a.taken.fabric.knitted == "cables");
    CHECK(a.taken.not_known.empty());
    const auto b = demo.answer({{"idea", "xyzzy"}});
    CHECK(!b.answered);
    CHECK(b.ask == "which article is meant by 'xyzzy'?");
}

TEST_CASE("a fabric's name means what its craft makes of it") {
    Demo demo;
    const auto woven = demo.answer({{"idea", "plain woven scarf"}});
    REQUIRE(woven.answered);
    CHECK(woven.article->craft == Craft::woven);
    CHECK(woven.put_into.empty());
    const auto knitted = demo.answer({{"idea", "bag in stocking stitch"}});
    REQUIRE(knitted.answered);
    CHECK(knitted.article->article == "bag");  // "stocking" by itself would be a sock
    CHECK(knitted.put_into == "stocking stitch");
    const auto neither = demo.answer({{"idea", "woven lace shawl"}});
    CHECK(neither.ask ==
          "there is no woven shawl in eyelet lace in the catalogue: which craft and fabric would "
          "do?");
}

TEST_CASE("a word for a fabric that no table holds is refused with its line") {
    const std::string header = "word,class,means\n";
    const auto fabrics = built_in().fabrics;
    SpokenWords spoken;
    CHECK(read_words(header + "tabby,fabric,/plain\n", "words.csv", fabrics, spoken) ==
          "tabby\tfabric\t/plain\n");
    for (const char* row :
         {"tabby,fabric,/plane", "lacy,fabric,lase/", "odd,fabric,/", "hat,article,",
          "weft,role,weft alone", "baby,person,infant", "itch,topic,scratch", "hat,headgear,hat"})
        CHECK_THROWS_WITH_AS(read_words(header + row, "words.csv", fabrics, spoken),
                             doctest::Contains("words.csv:2"), BadText);
}

TEST_CASE("a cable asks for definition, and a plain hat does not") {
    Demo demo;
    const auto cabled = demo.answer({{"idea", "cabled hat"}});
    const auto plain = demo.answer({{"idea", "hat"}});
    CHECK(cabled.judgement.factor(FactorName::definition).cost >
          plain.judgement.factor(FactorName::definition).cost + 3);
}

TEST_CASE(
    "who names no cloth is answered with a usual one, even where a fancier one reaches further") {
    Demo demo;
    for (const char* idea : {"woven scarf", "scarf", "plain scarf", "shawl", "a plain shawl"}) {
        CAPTURE(idea);
        const auto a = demo.answer({{"idea", idea}});
        REQUIRE(a.article);
        const auto& fabric = a.article->pieces.front().fabric;
        CAPTURE(fabric);
        CHECK((fabric == "plain" || fabric == "stocking stitch" || fabric == "garter" ||
               fabric == "1x1 rib" || fabric == "2x2 rib"));
    }
}

// It was answered with nine squares of 170 cm, 34 km of yarn.
TEST_CASE("the size of a throw is no size of a square of it") {
    Demo demo;
    const auto a = demo.answer({{"idea", "throw for the end of the bed 130 x 170 cm"}});
    REQUIRE(a.article);
    CHECK(a.size <= a.article->largest * 2);
    CHECK(in_metres(a.need.mid) < 6000);
}

TEST_CASE("a shortfall, spun, closes it") {
    Demo demo;
    const auto a = demo.answer({{"idea", "pullover"}, {"needs", "1200m"}});
    CHECK(a.reach == Reach::short_of);
    auto more = demo.measured.batch;
    more.skeins.push_back({"new", a.short_by * 1.005,
                           a.short_by * 1.005 * demo.yarn.linear_density.mid, LengthState::washed});
    const auto yarn = profile(more, demo.catalogue.yarn);
    Answerer again(ground(demo.catalogue, yarn, demo.measured.owned));
    CHECK(again.answer(read_suggestion({{"idea", "pullover"}, {"needs", "1200m"}}, demo.catalogue))
              .certainty >= 0.899);
    CHECK(in_grams(a.spin_more) ==
          doctest::Approx(in_grams(a.short_by * demo.yarn.linear_density.mid) / 0.9));
}

TEST_CASE("hostile and endless words are only words") {
    Demo demo;
    for (const std::string& idea : {std::string(1 << 20, 'x'), std::string("<script>hat</script>"),
                                    std::string("\x1b[31m hat"), std::string("hat\0sock", 8),
                                    std::string("\xff\xfe hat"), std::string(5000, ' ') + "hat"})
        CHECK_NOTHROW(demo.answer({{"idea", idea}}));
    CHECK(demo.answer({{"idea", "<b>hat</b>"}}).taken.wanted.at(0).kind == "hat");
}

TEST_CASE("yarn is known by the trade's names for its weight") {
    const auto carried = built_in();
    for (const auto& [said, of] : {std::pair{"DK", "light"},
                                   {"fingering", "super fine"},
                                   {"Sock yarn", "super fine"},
                                   {"sport weight", "fine"},
                                   {"Worsted", "medium"},
                                   {"aran", "medium"},
                                   {"chunky", "bulky"},
                                   {"Lace", "lace"},
                                   {"super bulky", "super bulky"}}) {
        CAPTURE(said);
        const auto read = read_suggestion({{"idea", "hat"}, {"weight", said}}, carried);
        const auto found = std::find_if(carried.yarn.classes.begin(), carried.yarn.classes.end(),
                                        [&](const auto& c) { return c.name == of; });
        REQUIRE(found != carried.yarn.classes.end());
        CHECK(read.weight_class == found->number);
    }
}

TEST_CASE("what cannot be read is refused by its key") {
    const auto carried = built_in();
    for (const auto& [key, value, said] :
         {std::tuple{"needs", "440", "needs: cannot read '440'"},
          {"gauge", "24", "gauge: '24' can mean stitches to 10 cm (4 in) or to the inch: which?"},
          {"weight", "fien", "weight: there is no weight class 'fien'; did you mean 'fine'?"},
          {"craft", "crochet", "craft: knitted or woven, not 'crochet'"},
          {"colours", "many", "colours: 'many' is not a number from 1 to 9"},
          {"grist", "400m", "grist: cannot read '400m'"},
          {"size", "-3cm", "size: cannot read '-3cm'"}}) {
        CAPTURE(key);
        std::string heard;
        try {
            read_suggestion({{key, value}}, carried);
        } catch (const std::invalid_argument& error) {
            heard = error.what();
        }
        CHECK(heard.find(said) == 0);
    }
}

TEST_CASE("of the sizes it comes in the largest that fits is named, and fewer repeats counted") {
    Demo demo;
    // 579 m suffice with 9 chances in 10; a shawl's yarn goes about as the square of its span.
    const auto a = demo.answer({{"idea", "triangle shawl"},
                                {"craft", "knitted"},
                                {"needs", "800m"},
                                {"size", "150cm"},
                                {"sizes", "100, 120, 150cm"}});
    CHECK(in_centimetres(a.largest_offered) == doctest::Approx(120));
    const auto b = demo.answer({{"idea", "mesh stole"}, {"craft", "knitted"}, {"needs", "700m"}});
    CHECK(b.reach == Reach::enough_if_smaller);
    CHECK(b.fewer_repeats > 0);
    CHECK(demo.answer({{"idea", "hat"}, {"needs", "180m"}}).largest_offered == Length{});
}
