#include "cli/question.hpp"
#include "cli/article_asked.hpp"

#include <doctest/doctest.h>

#include <set>

#include "cli/output/yarn_words.hpp"
#include "engine/units/quantity.hpp"
#include "tests/cli/asked.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::complaint;
using asked::holds;
using asked::of_options;
using asked::Typed;

namespace {

// A good batch with this typed besides.
Typed skein_and(Typed more) {
    more.insert(more.begin(), {"--skein", "171m/38.5g"});
    return more;
}

struct Complained {
    Typed typed;                // besides a skein of 171m/38.5g
    const char *wrong, *right;  // parts of the complaint
};

}  // namespace

TEST_CASE("every option's bad values: the complaint says what is wrong and what would be right") {
    const Complained cases[] = {
        // skeins: a length and a mass, each with its unit, more than zero
        {{"--skein", "171m"}, "'171m': a skein is a length and a mass", "such as 171m/38.5g"},
        {{"--skein", "171/38.5g"}, "a length or a mass needs a unit", "171m/38.5g"},
        {{"--skein", "171m/"}, "a skein is a length and a mass", "such as 171m/38.5g"},
        {{"--skein", "/38.5g"}, "the number is missing or unclear", "such as 171m"},
        {{"--skein", "171m/38.5"}, "a mass needs a unit", "units: g, kg, oz, lb"},
        {{"--skein", "171 furlongs/38.5g"}, "'furlongs' is no unit for a length", "m, cm, mm, yd"},
        {{"--skein", "171m/0g"}, "it must be more than zero", "38.5g"},
        {{"--skein", "0m/38.5g"}, "it must be more than zero", "such as 171m"},
        {{"--skein", "-171m/38.5g"}, "the number is missing or unclear", "such as 171m"},
        {{"--skein", "220m per 100g"}, "can mean a grist or a skein: which?", "220m/100g"},
        {{"--skein", "010m/38.5g"}, "the number is missing or unclear", "such as 171m"},
        {{"--skein", "nanm/38.5g"}, "the number is missing or unclear", "such as 171m"},
        {{"--skein", "1e9m/38.5g"}, "'e' is no unit for a length", "such as 171m"},
        {{"--skein", "38m/171g"}, "swapped", "--insist"},
        {{"--skein", "9000000m/1g"}, "skein 2: 9000000 m weighing 1.0 g", "--insist"},
        // wraps
        {{"--wraps", "wpi"}, "--wraps: cannot read 'wpi': the number is missing", "16wpi"},
        {{"--wraps", "16cm"}, "this is a length, and a wraps count is wanted", "6.3 wraps/cm"},
        {{"--wraps", "0wpi"}, "must be more than zero", "16wpi"},
        {{"--wraps", "90wpi"}, "90 wraps per inch", "check the wraps"},
        {{"--wraps-how", "packed"}, "--wraps-how: says how wraps were counted", "there are none"},
        {{"--wraps", "16wpi", "--wraps-how", "tight"},
         "--wraps-how: 'tight' is not one of",
         "laid, packed"},
        // make-up
        {{"--prep", "cardd"},
         "--prep: 'cardd' is not one of: carded, combed",
         "did you mean 'carded'?"},
        {{"--prep", "sliver"}, "sliver comes from the card as well as from the comb", "which?"},
        {{"--draw", "lang"}, "--draw: 'lang' is not one of: long, short", "did you mean 'long'?"},
        {{"--ply", "0"}, "--ply: '0' is no number of plies", "from 1 to 12"},
        {{"--ply", "13"}, "--ply: '13' is no number of plies", "from 1 to 12"},
        {{"--ply", "2.5"}, "--ply: '2.5' is no number of plies", "from 1 to 12"},
        {{"--ply", "02"}, "--ply: '02' is no number of plies", "from 1 to 12"},
        {{"--ply", "-1"}, "--ply: '-1' is no number of plies", "from 1 to 12"},
        {{"--twist", "5"}, "--twist: '5' can mean turns per inch", "5tpi"},
        {{"--twist", "5wpi"}, "--twist: cannot read '5wpi'", "such as 5tpi or 200 turns/m"},
        {{"--twist", "0tpi"}, "--twist: cannot read '0tpi': it must be more", "5tpi"},
        // fibre
        {{"--fibre", "Coriedale"},
         "--fibre: there is no fibre 'Coriedale'",
         "did you mean 'Corriedale'?"},
        {{"--fibre", "unobtainium"},
         "--fibre: there is no fibre 'unobtainium'",
         "give your own by micron and staple"},
        {{"--fibre", "Corriedale 70%"},
         "--fibre: the shares of the blend sum to 70 %, not 100",
         "write 'Corriedale 70%' and the rest"},
        {{"--fibre", "Corriedale 70%", "--fibre", "Merino 40%"}, "sum to 110 %, not 100", "rest"},
        {{"--fibre", "Corriedale 700%"},
         "--fibre: cannot read '700%': this is no share",
         "0 to 100"},
        {{"--fibre", "Corriedale x%"}, "--fibre: there is no fibre 'Corriedale x%'", "by micron"},
        {{"--fibre", " 100%"}, "--fibre: there is no fibre ' 100%'", "micron"},
        {{"--fibre", "Corriedale 50%", "--fibre", "Merino 50%", "--micron", "24"},
         "--micron: give micron and staple, or a blend",
         "not both"},
        {{"--micron", "abc"}, "--micron: cannot read 'abc': this is no fibre diameter", "24-27"},
        {{"--micron", "27-24"}, "--micron: cannot read '27-24'", "micron, 5 to 100"},
        {{"--micron", "2"}, "no spinning fibre has this diameter", "5 to 100"},
        {{"--micron", "24-270"}, "no spinning fibre has this diameter", "5 to 100"},
        {{"--micron", "24mm"}, "--micron: cannot read '24mm'", "24-27"},
        {{"--staple", "75"}, "--staple: cannot read '75': a range of lengths needs a unit", "75mm"},
        {{"--staple", "100-75mm"},
         "--staple: cannot read '100-75mm': the range runs backwards",
         "75-100mm"},
        {{"--staple", "75-mm"}, "--staple: cannot read '75-mm'", "75-100mm"},
        {{"--staple", "long"}, "--staple: cannot read 'long'", "number is missing"},
        // measuring
        {{"--gauge", "27"}, "--gauge: '27' can mean stitches to 10 cm", "22st/10cm"},
        {{"--gauge", "27st/10"}, "--gauge: cannot read '27st/10'", "7 st/in"},
        {{"--gauge", "0st/10cm"}, "--gauge: cannot read '0st/10cm'", "28st/10cm"},
        {{"--gauge", "27st/0cm"}, "the length it is counted over is unclear", "28st/10cm"},
        {{"--gauge", "27epi"}, "--gauge: cannot read '27epi': this is a sett", "28st/10cm"},
        {{"--scale", "0.1"}, "--scale: cannot read '0.1': a mass needs a unit", "38.5g"},
        {{"--scale", "1cm"}, "this is a length, and a mass is wanted here", "38.5g"},
        {{"--measured", "wet"},
         "--measured: 'wet' is not one of: washed, off the reel, on the reel",
         ""},
        // equipment
        {{"--heddles", "30"}, "--heddles: '30' can mean to the inch or to 10 cm", "40/10cm"},
        {{"--heddles", "30/10cm,x"}, "--heddles: cannot read 'x'", "10 epi"},
        {{"--loom-width", "60"}, "--loom-width: cannot read '60': a length needs a unit", "171m"},
        {{"--loom-waste", "35"}, "--loom-waste: cannot read '35': a length needs a unit", "171m"},
        {{"--loom-waste", "4m"}, "loom waste is", "300"},
        {{"--fringe", "90cm"}, "fringes are", "60"},
        {{"--heddles", "10epi hole 20mm"}, "holes of heddles are", "10"},
        {{"--heddles", "10epi hole thin"}, "cannot read 'thin'", "171m"},
        {{"--loom-width", "60g"}, "this is a mass, and a length is wanted here", "171m"},
        {{"--shafts", "1"}, "--shafts: '1' is not a whole number", "from 2 to 32"},
        {{"--shafts", "33"}, "--shafts: '33' is not a whole number", "from 2 to 32"},
        {{"--shafts", "four"}, "--shafts: 'four' is not a whole number", "from 2 to 32"},
        {{"--needles", "3"}, "--needles: '3' can mean US 3 (3.25 mm)", "such as 4mm, US 6 or UK 8"},
        {{"--needles", "-3mm"}, "--needles: cannot read '-3mm': the number is missing", "mm"},
        // the plan and the answer
        {{"--certainty", "49.9"}, "--certainty is from 50 to 99.9 %", ""},
        {{"--certainty", "100"}, "--certainty is from 50 to 99.9 %", ""},
        {{"--certainty", "0"}, "--certainty is from 50 to 99.9 %", ""},
        {{"--certainty", "101"}, "cannot read '101': this is no share", "such as 90 or 90%"},
        {{"--certainty", "sure"}, "cannot read 'sure': this is no share", "such as 90 or 90%"},
        {{"--spare", "10"}, "--spare: cannot read '10': a length needs a unit", "171m"},
        {{"--spare", "-10m"}, "--spare: cannot read '-10m': the number is missing", "171m"},
        {{"--spare", "10g"}, "--spare: cannot read '10g': this is a mass", "171m"},
        {{"--units", "imperal"},
         "--units is metric, imperial or both, not 'imperal'",
         "did you mean 'imperial'?"},
    };
    static_assert(std::size(cases) >= 60);
    for (const auto& c : cases) {
        const auto said = complaint([&] { of_options(skein_and(c.typed)); });
        INFO(said);
        CHECK(holds(said, c.wrong));
        CHECK(holds(said, c.right));
        CHECK(said.find('\n') == std::string::npos);
    }
}

TEST_CASE("a batch that is not there says where one comes from") {
    CHECK(holds(complaint([] { of_options({}); }), "--skein 171m/38.5g, or a file"));
    const auto ask_for = [](const std::string& batch) {
        return complaint([&] { ask(asked::arguments("makes", {}), batch); });
    };
    CHECK(holds(ask_for("yarn.doc"), "its name must end in .toml or .csv"));
    CHECK(holds(ask_for("triangle-shawl"), "is a template, not a batch"));
    CHECK(holds(ask_for("nobody"), "nobody"));
    CHECK_THROWS_AS(ask(asked::arguments("makes", {}), "no-such.toml"), std::runtime_error);
}

TEST_CASE("every option's good values mean what they say") {
    const auto q = of_options({"--skein",      "100yd/50g",
                               "--skein",      "50m/25 g",
                               "--name",       "Rook",
                               "--wraps",      "6.3 wraps/cm",
                               "--wraps-how",  "packed",
                               "--prep",       "combed",
                               "--draw",       "short",
                               "--ply",        "12",
                               "--twist",      "200 turns/m",
                               "--micron",     "24-27",
                               "--staple",     "70-90mm",
                               "--gauge",      "7 st/in",
                               "--scale",      "1/2oz",
                               "--measured",   "off the reel",
                               "--heddles",    "10epi,40/10cm",
                               "--loom-width", "2ft",
                               "--shafts",     "8",
                               "--needles",    "3mm",
                               "--needles",    "3.5mm,4mm",
                               "--variegated", "--certainty",
                               "99.9%",        "--spare",
                               "10yd",         "--units",
                               "both",         "--json",
                               "--working"});
    const auto& batch = q.measured.batch;
    CHECK(batch.name == "Rook");
    REQUIRE(batch.skeins.size() == 2);
    CHECK(in_metres(batch.skeins[0].length) == near(91.44, 1e-12));  // a yard is 0.9144 m: 1959
    CHECK(in_grams(batch.skeins[1].mass) == near(25, 1e-12));
    CHECK(batch.skeins[1].state == LengthState::off_reel);
    CHECK(in_wraps_per_inch(batch.wraps->count) == near(16.002, 1e-12));
    CHECK(batch.wraps->how == WrapsHow::packed);
    CHECK(batch.preparation == Preparation::combed);
    CHECK(batch.draw == Draw::short_draw);
    CHECK(batch.plies == 12);
    CHECK(batch.ply_twist->si() == near(200, 1e-12));
    REQUIRE(batch.fibre.size() == 1);
    CHECK(in_microns(*batch.fibre[0].micron_low) == near(24, 1e-12));
    CHECK(in_millimetres(*batch.fibre[0].staple_low) == near(70, 1e-12));
    CHECK(in_millimetres(*batch.fibre[0].staple_high) == near(90, 1e-12));
    CHECK(in_stitches_per_inch(*batch.washed_gauge) == near(7, 1e-12));
    CHECK(in_ounces(batch.measuring.scale_step) == near(0.5, 1e-12));
    CHECK(batch.variegated);
    const auto& owned = q.measured.owned;
    REQUIRE(owned.heddles.size() == 2);
    CHECK(in_ends_per_inch(owned.heddles[0].count) == near(10, 1e-12));
    CHECK(in_centimetres(owned.loom_width) == near(60.96, 1e-12));
    CHECK(owned.shafts == 8);
    CHECK(owned.needles.size() == 3);
    CHECK(q.request.certainty == near(0.999, 1e-12));
    CHECK(in_yards(q.request.keep) == near(10, 1e-12));
    CHECK((q.json && q.working));
    CHECK(q.units.yarn(metres(100)) == "100 m (109 yd)");
}

TEST_CASE("both ends of a range may be said") {
    const std::pair<Typed, Typed> ends[] = {
        {{"--certainty", "50"}, {"--certainty", "99.9"}}, {{"--ply", "1"}, {"--ply", "12"}},
        {{"--shafts", "2"}, {"--shafts", "32"}},          {{"--micron", "5"}, {"--micron", "100"}},
        {{"--staple", "75mm"}, {"--staple", "75-75mm"}},
    };
    for (const auto& [low, high] : ends) {
        CHECK_NOTHROW(of_options(skein_and(low)));
        CHECK_NOTHROW(of_options(skein_and(high)));
    }
}

TEST_CASE("units are those asked for, else those the lengths were typed in") {
    const std::pair<Typed, const char*> cases[] = {
        {{"--skein", "100m/50g"}, "100 m"},
        {{"--skein", "100yd/50g"}, "109 yd"},
        {{"--skein", "100ft/20g"}, "109 yd"},
        {{"--skein", "100m/50g", "--skein", "3937in/50g"}, "109 yd"},
        {{"--skein", "100yd/50g", "--units", "metric"}, "100 m"},
        {{"--skein", "100m/50g", "--units", "imperial"}, "109 yd"},
        {{"--skein", "100m/50g", "--units", "both"}, "100 m (109 yd)"}};
    for (const auto& [typed, said] : cases) {
        INFO(typed[1]);
        CHECK(of_options(typed).units.yarn(metres(100)) == said);
    }
}

TEST_CASE("what is typed stands over what the file says, skeins take the place of skeins") {
    const auto more = asked::of_heron({"--wraps", "18wpi", "--needles", "7mm"});
    CHECK(in_wraps_per_inch(more.measured.batch.wraps->count) == near(18, 1e-12));
    CHECK(more.measured.owned.needles.size() == 1);
    CHECK(more.measured.batch.skeins.size() == 4);
    CHECK(more.measured.batch.name == "Heron");
    CHECK(asked::of_heron({"--skein", "50m/11g"}).measured.batch.skeins.size() == 1);
}

TEST_CASE("an unlikely yarn is taken when one insists, and says so") {
    const Typed swapped{"--skein", "38m/171g"};
    CHECK(holds(complaint([&] { of_options(swapped); }), "--insist takes it as it is"));
    const auto q = of_options({"--skein", "38m/171g", "--insist"});
    REQUIRE_FALSE(q.yarn.cautions.empty());
    CHECK(holds(yarn_cautions(q.yarn, q.units)[0], "you insisted: skein 1: 38 m weighing 171.0 g"));
    const auto yards = of_options({"--skein", "51yd/8.75oz", "--insist"});
    CHECK(holds(yarn_cautions(yards.yarn, yards.units)[0], "51 yd weighing 8.75 oz"));
    CHECK(holds(complaint([&] {
                    of_options({"--skein", "300yd/3oz", "--gauge", "20st/in"});
                }),
                "20.0 st/in is far tighter"));
}

TEST_CASE("a batch is remembered by a name, in a file by a dot or a folder") {
    const std::pair<const char*, bool> cases[] = {
        {"heron", true},    {"my heron", true}, {"", false},           {"heron.toml", false},
        {"./heron", false}, {"a/b", false},     {"skeins.csv", false}, {"羊", true}};
    for (const auto& [word, remembered] : cases) CHECK(is_remembered(word) == remembered);
}

TEST_CASE("a template is found by its name, else by its file, else the nearest is named") {
    auto catalogue = whole_catalogue();
    for (const auto& name : catalogue.template_names())
        CHECK(find_template(catalogue, name).name == name);
    for (const auto& t : catalogue.templates)
        CHECK(find_template(catalogue, t.title).name == t.name);
    CHECK(find_template(catalogue, "FULLED  Scarf").name == "fulled-scarf");
    CHECK(find_template(catalogue, "watch").name == "watch-cap");
    const auto missing = [&](const char* name) {
        return complaint([&] { find_template(catalogue, name); });
    };
    CHECK(holds(missing("scarf"), "'scarf' can mean "));
    CHECK(holds(missing("scarf"), "fulled-scarf"));
    CHECK(holds(missing("triangle-shwal"), "did you mean 'triangle-shawl'?"));
    CHECK(
        holds(missing("spaceship"), "there is no template 'spaceship'; see gristwright templates"));
    CHECK_THROWS_AS(find_template(catalogue, "no-such.toml"), std::runtime_error);
    const auto before = catalogue.templates.size();
    const std::string built_in = ROOT_DIR "/catalog/templates/triangle-shawl.toml";
    CHECK(holds(missing(built_in.c_str()), "there is already a template called 'triangle-shawl'"));
    CHECK(catalogue.templates.size() == before);
}

TEST_CASE("a size is refused only when no such article could have it") {
    auto q = asked::of_heron();
    for (const auto& article : q.catalogue->templates)
        for (const double share : {0.1, 0.21, 1.0, 4.9, 5.1}) {
            const auto size = (share < 1 ? article.smallest : article.largest) * share;
            q.request.size = size;
            Arguments typed;
            typed.options["size"] = {"so much"};
            const auto said = complaint([&] { check_size(typed, q, article); });
            INFO(article.name, " ", share, " ", said);
            if (share == 0.1 || share == 5.1)
                CHECK(holds(said, "--size so much: a " + article.article + " has a"));
            else
                CHECK(said == "nothing was wrong");
        }
}

TEST_CASE("groups of options go together, and no command has one of them twice") {
    const auto all = together({batch_options(), plan_options(), answer_options()});
    CHECK(all.size() == batch_options().size() + plan_options().size() + answer_options().size());
    std::set<std::string_view> names;
    for (const auto& option : all) CHECK(names.insert(option.name).second);
}
