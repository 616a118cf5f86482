// The image gives back what was put in, column by column.
#include "catalog/reference/image.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "catalog/reference/source.hpp"
#include "engine/caution/cautions.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

Catalogue catalogue_in(const std::string& image) {
    return read_image({reinterpret_cast<const unsigned char*>(image.data()), image.size()});
}

}  // namespace

TEST_CASE("tables come back as they went in") {
    const auto source = read_source(ROOT_DIR "/catalog");
    const auto back = catalogue_in(image_of(source));
    REQUIRE(back.fabrics.weaves.size() == source.fabrics.weaves.size());
    for (std::size_t i = 0; i < source.fabrics.weaves.size(); ++i) {
        // A column once read one place off turned a pick repeat of 8 into a wish of 8.
        const auto &a = source.fabrics.weaves[i], &b = back.fabrics.weaves[i];
        CHECK(a.name == b.name);
        CHECK(a.interlacing.threads == b.interlacing.threads);
        CHECK(a.interlacing.intersections == b.interlacing.intersections);
        CHECK(a.shafts == b.shafts);
        CHECK(a.take_up == b.take_up);
        CHECK(a.gathers.high == b.gathers.high);
        CHECK(a.gathers_source == b.gathers_source);
        CHECK(a.most_in_hole == b.most_in_hole);
        CHECK(a.end_repeat == b.end_repeat);
        CHECK(a.pick_repeat == b.pick_repeat);
        CHECK(a.definition == b.definition);
        CHECK(a.loose_loops == b.loose_loops);
        CHECK(a.mark == b.mark);
        CHECK(a.source == b.source);
        CHECK(a.chart == b.chart);
        CHECK(a.colours == b.colours);
        CHECK(a.areas == b.areas);
        CHECK(a.built == b.built);
    }
    REQUIRE(back.fabrics.knitted.size() == source.fabrics.knitted.size());
    for (std::size_t i = 0; i < source.fabrics.knitted.size(); ++i) {
        const auto &a = source.fabrics.knitted[i], &b = back.fabrics.knitted[i];
        CHECK(a.name == b.name);
        CHECK(a.metres == b.metres);
        CHECK(a.rows == b.rows);
        CHECK(a.growth_high == b.growth_high);
        CHECK(a.row_repeat == b.row_repeat);
        CHECK(a.definition == b.definition);
        CHECK(a.openness == b.openness);
        CHECK(a.chart == b.chart);
        CHECK(a.colours == b.colours);
        CHECK(a.areas == b.areas);
        CHECK(a.built == b.built);
        CHECK(a.source == b.source);
    }
    REQUIRE(back.yarn.traits.size() == source.yarn.traits.size());
    for (std::size_t i = 0; i < source.yarn.traits.size(); ++i) {
        CHECK(source.yarn.traits[i].driver == back.yarn.traits[i].driver);
        CHECK(source.yarn.traits[i].adds == back.yarn.traits[i].adds);
        CHECK(source.yarn.traits[i].less == back.yarn.traits[i].less);
    }
    REQUIRE(back.fibres.size() == source.fibres.size());
    CHECK(back.fibres[0].micron_high == source.fibres[0].micron_high);
    for (std::size_t i = 0; i < source.fibres.size(); ++i) {
        const auto &a = source.fibres[i], &b = back.fibres[i];
        CHECK(a.staple_low.has_value() == b.staple_low.has_value());  // not known: stays not known
        for (std::size_t w = 0; w < behaviour_count; ++w) {
            REQUIRE(a.behaviour.levels[w].has_value() == b.behaviour.levels[w].has_value());
            if (!a.behaviour.levels[w]) continue;
            CHECK(a.behaviour.levels[w]->low == b.behaviour.levels[w]->low);
            CHECK(a.behaviour.levels[w]->high == b.behaviour.levels[w]->high);
            CHECK(a.behaviour.levels[w]->mark == b.behaviour.levels[w]->mark);
        }
    }
    CHECK(back.yarn.grades.size() == source.yarn.grades.size());
    REQUIRE(back.bodies.size() == source.bodies.size());
    for (std::size_t i = 0; i < source.bodies.size(); ++i)
        CHECK(body_size(back.bodies, source.bodies[i].who, source.bodies[i].measure) != nullptr);
    CHECK(back.yarn.classes[7].yd_per_lb_low == source.yarn.classes[7].yd_per_lb_low);
}

TEST_CASE("templates come back as they went in") {
    const auto source = read_source(ROOT_DIR "/catalog");
    const auto back = catalogue_in(image_of(source));
    REQUIRE(back.templates.size() == source.templates.size());
    for (std::size_t i = 0; i < source.templates.size(); ++i) {
        const auto &a = source.templates[i], &b = back.templates[i];
        CAPTURE(a.name);
        CHECK(a.name == b.name);
        CHECK(a.craft == b.craft);
        CHECK(a.ideal == b.ideal);
        CHECK(a.fitted == b.fitted);
        CHECK(a.sample == b.sample);
        CHECK(a.finest == b.finest);
        CHECK(a.thickest == b.thickest);
        CHECK(a.firmness == b.firmness);
        CHECK(a.spacing == b.spacing);
        CHECK(a.finish == b.finish);
        CHECK(a.fringe == b.fringe);
        CHECK(a.loom_waste == b.loom_waste);
        CHECK(a.steps == b.steps);
        CHECK(a.worked == b.worked);
        CHECK(a.role == b.role);
        CHECK(a.cautions == b.cautions);
        REQUIRE(a.pieces.size() == b.pieces.size());
        for (std::size_t p = 0; p < a.pieces.size(); ++p) {
            CHECK(a.pieces[p].name == b.pieces[p].name);
            CHECK(a.pieces[p].fabric == b.pieces[p].fabric);
            CHECK(a.pieces[p].outline.shape == b.pieces[p].outline.shape);
            CHECK(a.pieces[p].outline.narrow == b.pieces[p].outline.narrow);
            CHECK(a.pieces[p].grows == b.pieces[p].grows);
            CHECK(a.pieces[p].count == b.pieces[p].count);
            CHECK(a.pieces[p].narrow_first == b.pieces[p].narrow_first);
            CHECK(a.pieces[p].follows.length == b.pieces[p].follows.length);
            CHECK(a.pieces[p].counting.stitches_of == b.pieces[p].counting.stitches_of);
            CHECK(a.pieces[p].counting.by == b.pieces[p].counting.by);
            CHECK(a.pieces[p].counting.underarm == b.pieces[p].counting.underarm);
            CHECK(a.pieces[p].yarn == b.pieces[p].yarn);
            CHECK(a.pieces[p].of_warp == b.pieces[p].of_warp);
            CHECK(a.pieces[p].of_weft == b.pieces[p].of_weft);
        }
        for (std::size_t w = 0; w < asked_count; ++w) {
            CHECK(a.wishes[w].weight == b.wishes[w].weight);
            if (a.wishes[w].weight > 0) CHECK(a.wishes[w].at_least == b.wishes[w].at_least);
        }
    }
}

TEST_CASE("a damaged or foreign image is refused") {
    CHECK_THROWS_WITH(catalogue_in(std::string(4096, 'x')),
                      "the built-in catalogue has another layout");
    CHECK_THROWS(catalogue_in(""));
    const auto whole = image_of(built_in());
    for (std::size_t left = 0; left < whole.size(); left += 9973)
        CHECK_THROWS(catalogue_in(whole.substr(0, left)));
    CHECK_THROWS(catalogue_in(whole + "x"));
    // A length that says more than there is takes no memory for it.
    auto greedy = whole;
    for (std::size_t at = 24; at < greedy.size() && at < 28; ++at) greedy[at] = '\x7f';
    CHECK_THROWS(catalogue_in(greedy));
}

TEST_CASE("the image has the same bytes whenever the same tables are packed") {
    const auto packed = image_of(read_source(ROOT_DIR "/catalog"));
    CHECK(packed == image_of(read_source(ROOT_DIR "/catalog")));
    CHECK(packed == image_of(catalogue_in(packed)));
    CHECK(packed == image_of(built_in()));
}

TEST_CASE("the catalogue in the program is the reviewed text") {
    const auto source = read_source(ROOT_DIR "/catalog");
    const auto carried = built_in();
    CHECK(carried.template_names() == source.template_names());
    CHECK(carried.fibre_names() == source.fibre_names());
}

TEST_CASE("every built-in thing for a baby is closed and has no cords") {
    const auto carried = built_in();
    Cautions cautions(std::make_shared<const std::vector<Caution>>(carried.cautions));
    std::size_t babies = 0;
    for (const auto& t : carried.templates) {
        if (!t.for_baby) continue;
        ++babies;
        CAPTURE(t.name);
        const auto facts = facts_of(t, carried.fabrics);
        for (const char* bad : {"loops", "says:fringe", "says:cord", "says:tassel", "says:ribbon"})
            CHECK_FALSE(facts.contains(bad));
        Cautions::Known known;
        cautions.add_facts(t, carried.fabrics, known);
        const auto said = cautions.holding({known});
        CHECK(std::any_of(said.begin(), said.end(), [](const Caution& c) {
            return c.text.find("For a baby: no cords") != std::string::npos;
        }));
    }
    CHECK(babies > 0);
}

TEST_CASE("the catalogue holds enough, of both crafts, and nothing twice") {
    const auto carried = built_in();
    CHECK(carried.templates.size() >= 110);
    std::size_t woven = 0;
    for (const auto& t : carried.templates) {
        CAPTURE(t.name);
        woven += t.craft == Craft::woven ? 1 : 0;
        CHECK(t.steps.size() >= 3);
        CHECK(t.smallest < t.largest);
    }
    CHECK(woven * 5 >= carried.templates.size() * 2);
}
