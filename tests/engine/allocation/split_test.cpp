// A split's cut list adds up to the skeins, and its promises hold.
#include "engine/allocation/split.hpp"

#include <doctest/doctest.h>

#include "engine/allocation/checker.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::allocation;

namespace {

YarnProfile heron() {
    Batch batch;
    for (const auto& [name, m, g] :
         {std::tuple{"A", 171.0, 38.5}, {"B", 204.0, 45.0}, {"C", 188.0, 43.0}, {"D", 96.0, 21.6}})
        batch.skeins.push_back({name, metres(m), grams(g), LengthState::washed});
    batch.wraps = WrapsReading{wraps_per_inch(16)};
    return profile(batch, {});
}

Template shawl() {
    Template t;
    t.name = "square";
    t.article = "shawl";
    t.measure = "side";
    t.smallest = centimetres(50);
    t.ideal = centimetres(100);
    t.largest = centimetres(150);
    t.firmness = Firmness::drapey;
    t.pieces.push_back({"body", "plain", {Shape::square_from_corner, centimetres(100), {}, {}}});
    return t;
}

const Fabrics& fabrics() {
    static const Fabrics all{{[] {
                                 KnitFabric plain;
                                 plain.name = "plain";
                                 return plain;
                             }()},
                             {}};
    return all;
}

SplitRequest request(const Plan& plan) {
    SplitRequest out;
    out.wishes.push_back({"swatch", knitted_sample(*plan.pieces[0].knit), {}, false, 1, {}, 0});
    out.wishes.push_back({"shawl", {}, plan, true, 1, {}, 4});
    return out;
}

}  // namespace

TEST_CASE("what is wound off and what is left add up to the skeins") {
    const auto yarn = heron();
    const auto article = shawl();
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    auto asked = request(planned);
    asked.reserve = metres(5);
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    CHECK(broken_rule(s.problem, s.allocation.list).empty());
    for (std::size_t i = 0; i < yarn.skeins.size(); ++i) {
        Length off;
        Mass mass;
        for (const auto& cut : s.cuts) {
            if (cut.skein != i) continue;
            off += cut.length;
            mass += cut.mass;
            CHECK(in_metres(off + cut.ball_length) == near(in_metres(yarn.skeins[i].length), 1e-9));
            CHECK(in_grams(mass + cut.ball_mass) == near(in_grams(yarn.skeins[i].mass), 1e-9));
        }
    }
}

TEST_CASE("a sample comes whole from one skein, from the one asked for, and first") {
    const auto yarn = heron();
    const auto article = shawl();
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    auto asked = request(planned);
    asked.wishes[0].only_from = 3;
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    int cuts = 0;
    for (const auto& cut : s.cuts) cuts += cut.wish == 0 ? 1 : 0;
    CHECK(cuts == 1);
    for (const auto& cut : s.cuts)
        if (cut.skein == 3) {
            CHECK(cut.wish == 0);
            break;
        }
    CHECK(s.parts[0].error < 0.03);
}

TEST_CASE("a knitted project learns from a knitted sample, and from no woven one") {
    const auto yarn = heron();
    const auto planned = plan(shawl(), yarn, fabrics(), {}, {});
    auto asked = request(planned);
    const auto taught = split(yarn, asked);
    REQUIRE(taught.found());
    CHECK(taught.parts[1].size_when_known > taught.parts[1].size);
    asked.wishes[0].sample =
        woven_sample(weave_cloth(yarn, {}, {Spacing::scarf, Finish::light}, {}), centimetres(35));
    const auto untaught = split(yarn, asked);
    REQUIRE(untaught.found());
    REQUIRE(untaught.parts[0].made);
    CHECK(untaught.parts[1].size_when_known == untaught.parts[1].size);
}

TEST_CASE("a woven project learns nothing from a knitted sample, as its plan does") {
    const auto yarn = heron();
    const auto knitted = plan(shawl(), yarn, fabrics(), {}, {});
    auto article = shawl();
    article.craft = Craft::woven;
    article.pieces = {
        {"panel", "tabby", {Shape::rectangle, centimetres(20), centimetres(100), {}}}};
    auto cloths = fabrics();
    cloths.weaves.emplace_back();
    cloths.weaves.back().name = "tabby";
    const auto woven = plan(article, yarn, cloths, {}, {});
    REQUIRE(woven.pieces[0].woven);
    auto asked = request(knitted);
    asked.wishes[1].plan = woven;
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    REQUIRE(s.parts[0].made);
    CHECK(s.parts[1].size.si() > 0);
    CHECK(s.parts[1].size_when_known == s.parts[1].size);
}

TEST_CASE("the main project's metres hold the certainty asked, and a weighed sample lets it grow") {
    const auto yarn = heron();
    const auto article = shawl();
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    const auto s = split(yarn, request(planned));
    const auto& main = s.parts[1];
    const double need = planned.by_size.at(main.size / article.ideal);
    const double spread = together(planned.need.spread, planned.have.spread);
    CHECK(chance_of_enough(need, spread, main.metres.si(), 0) >= 0.899);
    CHECK(main.size_when_known > main.size);
    CHECK(main.size < planned.size);  // the swatch's metres are gone
}

TEST_CASE("what cannot be says by how much, and nothing half done looks whole") {
    const auto yarn = heron();
    auto article = shawl();
    article.smallest = centimetres(70);
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    const auto s = split(yarn, request(planned));
    REQUIRE(!s.found());
    CHECK(s.cuts.empty());
    REQUIRE(s.lacking);
    auto longer = yarn;
    longer.skeins[s.lacking->skein].length += centimetres(static_cast<double>(s.lacking->length));
    CHECK(split(longer, request(planned)).found());
    longer.skeins[s.lacking->skein].length -= centimetres(1.5);
    CHECK(!split(longer, request(planned)).found());
    CHECK_THROWS_AS(split(yarn, {}), std::invalid_argument);
}

namespace {

Template scarf() {
    Template t;
    t.name = t.title = "scarf";
    t.article = "scarf";
    t.craft = Craft::woven;
    t.measure = "length";
    t.smallest = centimetres(60);
    t.ideal = centimetres(150);
    t.largest = centimetres(200);
    t.loom_waste = centimetres(40);
    t.pieces.push_back(
        {"panel", "weave", {Shape::rectangle, centimetres(20), centimetres(150), {}}});
    t.pieces.back().grows = Grows::length;
    return t;
}

const Fabrics& woven_fabrics() {
    static const Fabrics all{{}, {[] {
                                 Weave weave;
                                 weave.name = "weave";
                                 weave.interlacing = {2, 2};
                                 weave.shafts = 2;
                                 return weave;
                             }()}};
    return all;
}

Cm length_of(const Split& s, std::size_t wish, const std::string& ending) {
    Cm sum = 0;
    for (const auto& piece : s.pieces)
        if (piece.wish == wish && piece.name.ends_with(ending)) sum += piece.length;
    return sum;
}

}  // namespace

TEST_CASE("warp and weft are cut apart, in the plan's shares, the weft from the finer skeins") {
    const auto yarn = heron();
    const auto article = scarf();
    const auto planned = plan(article, yarn, woven_fabrics(), {}, {});
    SplitRequest asked;
    asked.wishes.push_back({"scarf", {}, planned, true, 1, {}, 4});
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    REQUIRE(s.by_piece);
    CHECK(broken_rule(s.placing, s.placed.list).empty());
    const double warp = planned.pieces[0].warp.si(), weft = planned.pieces[0].weft.si();
    const auto drawn = static_cast<double>(length_of(s, 0, "warp"));
    const auto shot = static_cast<double>(length_of(s, 0, "weft"));
    CHECK(drawn / (drawn + shot) == near(warp / (warp + weft), 0.01));
    double grist[2] = {0, 0}, metres_of[2] = {0, 0};
    for (const auto& cut : s.cuts) {
        const int at = cut.piece.ends_with("weft") ? 1 : 0;
        grist[at] += in_grams(cut.mass);
        metres_of[at] += in_metres(cut.length);
    }
    CHECK(grist[1] / metres_of[1] <= grist[0] / metres_of[0]);
}

TEST_CASE("a whole warp comes from one skein, and the article stays as small as that asks") {
    auto yarn = heron();
    const auto article = scarf();
    const auto planned = plan(article, yarn, woven_fabrics(), {}, {});
    SplitRequest asked;
    asked.wishes.push_back({"scarf", {}, planned, true, 1, {}, 4});
    const auto free = split(yarn, asked);
    asked.whole_warp = true;
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    REQUIRE(s.by_piece);
    int warps = 0;
    for (const auto& cut : s.cuts) warps += cut.piece.ends_with("warp") ? 1 : 0;
    CHECK(warps == 1);
    CHECK(s.parts[0].size < free.parts[0].size);
    for (auto& skein : yarn.skeins) skein.length = metres(20);
    CHECK_THROWS_WITH_AS(split(yarn, asked), doctest::Contains("longest skein, 20 m"),
                         std::invalid_argument);
}

TEST_CASE("a pair is cut one by one, what is knitted in one go stays together") {
    const auto yarn = heron();
    auto mitts = shawl();
    mitts.smallest = centimetres(20);
    mitts.ideal = centimetres(30);
    mitts.largest = centimetres(40);
    mitts.pieces[0].outline.width = centimetres(30);
    mitts.pieces[0].count = 2;
    auto two_parts = mitts;
    two_parts.pieces.push_back(mitts.pieces[0]);
    two_parts.pieces[1].name = "edge";
    two_parts.pieces[1].count = 1;
    const auto pair = plan(mitts, yarn, fabrics(), {}, {});
    const auto whole = plan(two_parts, yarn, fabrics(), {}, {});
    CHECK(count_of_pieces(pair) == 2);
    CHECK(count_of_pieces(whole) == 1);
    SplitRequest asked;
    asked.wishes.push_back({"mitts", {}, pair, true, 1, {}, 4});
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    CHECK(std::abs(length_of(s, 0, "1 of 2") - length_of(s, 0, "2 of 2")) <= 1);  // cm
}

// Found a bug: plans and splits pointed at what the caller had thrown away.
TEST_CASE("what is asked with temporaries is answered as with what stays") {
    const auto stays = shawl();
    const auto yarn = heron();
    const auto rows = fabrics();
    const auto kept = plan(stays, yarn, rows, {}, {});
    const auto planned = plan(shawl(), heron(), fabrics(), {}, {});
    CHECK(planned.article->title == stays.title);
    CHECK(planned.pieces[0].piece->fabric == stays.pieces[0].fabric);
    CHECK(planned.pieces[0].knit->fabric->name == rows.knitted[0].name);
    CHECK(planned.size == kept.size);
    const auto weave = plan(scarf(), heron(), woven_fabrics(), {}, {});
    CHECK(weave.pieces[0].woven->weave->name == "weave");
    const auto asked = request(plan(shawl(), heron(), fabrics(), {}, {}));
    CHECK(split(heron(), asked).allocation.list.worth ==
          split(yarn, request(kept)).allocation.list.worth);
    const auto copy = [&] {  // of a plan that is gone
        const auto here = plan(shawl(), heron(), fabrics(), {}, {});
        return here;
    }();
    CHECK(copy.certainty_at(stays.ideal) == kept.certainty_at(stays.ideal));
}
