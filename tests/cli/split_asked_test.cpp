#include "cli/split_asked.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "catalog/text/file.hpp"
#include "cli/other_cuts.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/split_picture.hpp"
#include "cli/output/split_text.hpp"
#include "cli/output/split_words.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/drawing.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::complaint;
using asked::holds;
using asked::Typed;

namespace {

// A question of Heron, what was asked of it and the split that answers it.
struct AnsweredSplit {
    Question q;
    SplitAsked asked;
    allocation::Split split;

    explicit AnsweredSplit(const Typed& typed)
        : q(cli::ask(asked::arguments("split", typed), asked::example("heron.toml"))),
          asked(asked_of(asked::arguments("split", typed), q)),
          split(allocation::split(q.yarn, asked.request)) {}
    AnsweredSplit(const AnsweredSplit&) = delete;
};

std::string split_refused(const Typed& typed) {
    const auto arguments = asked::arguments("split", typed);
    auto q = cli::ask(arguments, asked::example("heron.toml"));
    return complaint([&] { asked_of(arguments, q); });
}

const Typed several[] = {
    {"--sample", "knitted", "--sample", "woven", "--main", "triangle-shawl"},
    {"--sample", "knitted:cables", "--from", "D", "--main", "woven-cowl", "--reserve", "5m"},
    {"--main", "watch-cap", "--piece", "fingerless-mitts", "--piece", "wrist-cuffs", "--units",
     "both"},
    {"--main", "woven-headband", "--whole-warp", "--join-cost", "high", "--units", "imperial"},
    {"--sample", "woven:plain", "--loom-waste", "10cm"},
};

}  // namespace

TEST_CASE("what cannot be split says what is wrong and what would be right") {
    struct Case {
        Typed typed;
        const char *wrong, *right;
    };
    const Case cases[] = {
        {{},
         "split needs something to make",
         "--sample knitted, --main TEMPLATE, --piece TEMPLATE"},
        {{"--reserve", "5m"}, "split needs something to make", "--sample knitted"},
        {{"--sample", "kniten"}, "--sample is knitted or woven", "did you mean 'knitted'?"},
        {{"--sample", ""}, "not ''", "(knitted:cables)"},
        {{"--sample", "crochet"}, "not 'crochet'", "(knitted:cables)"},
        {{"--sample", "knitted:cabels"}, "there is no stitch 'cabels'", "did you mean 'cables'?"},
        {{"--sample", "knitted:plain"}, "there is no stitch 'plain'", ""},
        {{"--sample", "woven:plian"}, "there is no weave 'plian'", "did you mean 'plain'?"},
        {{"--main", "triangle-shwal"}, "no template 'triangle-shwal'", "mean 'triangle-shawl'?"},
        {{"--piece", "crr"}, "there is no template 'crr'", "see gristwright templates"},
        {{"--main", "twill-scarf"}, "twill-scarf: ", "shafts"},
        {{"--sample", "knitted", "--from", "E"}, "--from: there is no skein 'E'", "A, B, C, D"},
        {{"--sample", "knitted", "--reserve", "5"}, "--reserve: cannot read '5'", "171m"},
    };
    for (const auto& c : cases) {
        const auto said = split_refused(c.typed);
        INFO(said);
        CHECK(holds(said, c.wrong));
        CHECK(holds(said, c.right));
    }
    CHECK(holds(complaint([] {
                    asked::arguments("split", {"--join-cost", "hi"});
                }),
                "--join-cost is low, usual or high, not 'hi'"));
}

TEST_CASE("what is asked for is what was typed") {
    const auto arguments = asked::arguments(
        "split", {"--piece", "wrist-cuffs", "--sample", "knitted:cables", "--sample", "woven",
                  "--main", "triangle-shawl", "--from", "D", "--whole-warp", "--join-cost", "low",
                  "--reserve", "5m", "--certainty", "80"});
    auto q = cli::ask(arguments, asked::example("heron.toml"));
    const auto all = asked_of(arguments, q);
    const auto& request = all.request;
    REQUIRE(request.wishes.size() == 4);  // samples, what is kept, pieces
    REQUIRE(all.fabrics.size() == 4);
    CHECK(request.wishes[0].name == "knitted sample");
    CHECK(all.fabrics[0].name == "cables");
    CHECK(all.fabrics[1].name == "plain");
    CHECK((request.wishes[0].only_from == 3U && request.wishes[1].only_from == 3U));
    CHECK((request.wishes[2].main && !request.wishes[3].main));
    CHECK(request.wishes[2].plan->article->name == "triangle-shawl");
    CHECK(request.wishes[3].plan->article->name == "wrist-cuffs");
    CHECK_FALSE(request.wishes[3].only_from.has_value());
    CHECK(request.whole_warp);
    CHECK(request.join_cost == allocation::JoinCost::low);
    CHECK(in_metres(request.reserve) == near(5, 1e-12));
    CHECK(request.certainty == near(0.8, 1e-12));
    CHECK(asks_for_split(arguments));
    CHECK_FALSE(asks_for_split(asked::arguments("split", {"--from", "D"})));
    const auto larger = request.wishes[2].at_size(centimetres(140));
    CHECK(in_centimetres(larger.size) == near(140, 1e-9));
}

TEST_CASE("a sample without a fabric is in the one that the project needs") {
    const std::pair<Typed, const char*> cases[] = {
        {{"--sample", "knitted"}, "stocking stitch"},
        {{"--sample", "woven"}, "plain"},
        {{"--sample", "knitted", "--main", "garter-scarf"}, "garter"},
        {{"--sample", "knitted", "--main", "woven-scarf"}, "stocking stitch"},
        {{"--sample", "knitted:cables", "--main", "garter-scarf"}, "cables"}};
    for (const auto& [typed, fabric] : cases) {
        const auto arguments = asked::arguments("split", typed);
        auto q = cli::ask(arguments, asked::example("heron.toml"));
        CHECK(asked_of(arguments, q).fabrics[0].name == fabric);
    }
}

namespace {

// Three skeins of three grists, each a yarn numbered as it was given; this is about the third.
const std::vector<std::string> three_yarns{"--skein", "210m/50g", "--skein",    "120m/48g",
                                           "--skein", "300m/52g", "--measured", "washed"};

Arguments split_of_three(std::vector<std::string> typed) {
    typed.insert(typed.end(), three_yarns.begin(), three_yarns.end());
    return asked::arguments("split", typed);
}

}  // namespace

TEST_CASE("a split between two yarns of one batch: each in its part, at one size, to the metre") {
    struct Case {
        const char *main, *as, *with;
    };
    for (const auto& c :
         {Case{"woven-headband", "weft", "yarn 1"}, Case{"woven-headband", "warp", "yarn 1"},
          Case{"woven-cowl", "colour", "yarn 1"}}) {
        CAPTURE(c.as);
        const auto arguments = split_of_three({"--main", c.main, "--as", c.as, "--with", c.with});
        auto q = cli::ask(arguments, "");
        const auto asked = asked_of(arguments, q);
        const auto split = split_for(asked, q);
        const auto shared = shared_plan(split, asked);
        REQUIRE(shared);
        const auto other = other_cuts(arguments, *shared, asked, q);
        REQUIRE(other);
        REQUIRE(other->split.found());
        CHECK(q.yarn.skeins.front().name == "skein 3");
        for (const auto& cut : other->split.cuts)
            CHECK(other->question.yarn.skeins[cut.skein].name == "skein 1");
        CHECK(other->split.parts[0].size == shared->size);
        // What each needs at that size is what the plan says of it, by the first's own reckoning.
        const auto theirs = other->asked.request.wishes[0].at_size(shared->size);
        CHECK(theirs.need.mid.si() == near(shared->second_yarn.si(), 1e-9));
        CHECK(theirs.second_yarn.si() == near(shared->need.mid.si(), 1e-9));
    }
}

// Of several yarns a split is about one: nothing of another grist can come into a pair or a sample.
TEST_CASE("a pair, and a sample, are cut from the skeins of one yarn alone") {
    for (const char* yarn : {"1", "2", "3"}) {
        const auto arguments =
            split_of_three({"--main", "wrist-cuffs", "--sample", "knitted", "--yarn", yarn});
        auto q = cli::ask(arguments, "");
        const auto split = split_for(asked_of(arguments, q), q);
        REQUIRE(split.found());
        REQUIRE(q.yarn.skeins.size() == 1);
        for (const auto& cut : split.cuts) CHECK(cut.skein == 0);
        CHECK(split.cuts.size() >= 3);  // the sample and two cuffs
    }
    const auto arguments = split_of_three({"--main", "wrist-cuffs", "--yarn", "all"});
    CHECK(holds(complaint([&] { cli::ask(arguments, ""); }), "give the number of one"));
}

TEST_CASE("a part that cannot be had says why") {
    struct Case {
        std::vector<std::string> typed;
        const char* says;
    };
    const Case cases[] = {
        {{"--main", "woven-scarf", "--as", "weft", "--with", "yarn 3"}, "that is the yarn this"},
        {{"--main", "woven-scarf", "--as", "weft", "--with", "yarn 4"}, "there is yarn 1"},
        {{"--main", "woven-scarf", "--with", "yarn 2"}, "which part this batch has in it"},
        {{"--main", "woven-scarf", "--as", "double"}, "wind two strands together"},
        {{"--main", "woven-scarf", "--as", "weft", "--with", "yarn 2"},
         "does not hold the warp of Plain woven scarf"},
        {{"--main", "watch-cap", "--as", "weft"}, "neither warp nor weft"},
    };
    for (const auto& c : cases) {
        const auto arguments = split_of_three(c.typed);
        auto q = cli::ask(arguments, "");
        const auto said = complaint([&] { asked_of(arguments, q); });
        INFO(said);
        CHECK(holds(said, c.says));
    }
}

TEST_CASE("of every skein cuts, reserve and what is left sum to the whole") {
    for (const auto& typed : several) {
        const AnsweredSplit a(typed);
        REQUIRE(a.split.found());
        for (std::size_t s = 0; s < a.q.yarn.skeins.size(); ++s) {
            const auto& skein = a.q.yarn.skeins[s];
            auto sum = left_in(s, a.split, a.q);
            CHECK(in_metres(sum) >= -1e-9);
            for (const auto& cut : a.split.cuts)
                if (cut.skein == s) sum += cut.length;
            if (a.split.placed.list.reserve == s) sum += a.asked.request.reserve;
            INFO(skein.name);
            CHECK(in_metres(sum) == near(in_metres(skein.length), 0.011 / in_metres(skein.length)));
        }
    }
}

TEST_CASE(
    "the ball that is left after each cut is the one before less the cut, in metres and mass") {
    for (const auto& typed : several) {
        const AnsweredSplit a(typed);
        std::map<std::size_t, Length> ball;
        for (std::size_t s = 0; s < a.q.yarn.skeins.size(); ++s)
            ball[s] = a.q.yarn.skeins[s].length;
        for (const auto& cut : a.split.cuts) {
            const auto& skein = a.q.yarn.skeins[cut.skein];
            ball[cut.skein] -= cut.length;
            CHECK(std::abs(in_metres(cut.ball_length - ball[cut.skein])) < 0.011);
            CHECK(cut.mass / skein.mass == near(cut.length / skein.length, 0.01));
            const auto said = cut_words(cut, a.asked, a.q);
            INFO(said);
            CHECK(said.find("from " + skein.name + ": " + a.q.units.yarn(cut.length)) == 0);
            CHECK(holds(said, a.asked.request.wishes[cut.wish].name));
            CHECK(holds(said, "that is all of it") == (cut.ball_length < all_of_it));
            if (cut.ball_length >= all_of_it)
                CHECK(
                    holds(said, fmt::format("weighs {} ({} left)", a.q.units.weighed(cut.ball_mass),
                                            a.q.units.yarn(cut.ball_length))));
        }
    }
}

TEST_CASE("every part that is made is told with its size and its metres") {
    for (const auto& typed : several) {
        const AnsweredSplit a(typed);
        for (std::size_t w = 0; w < a.split.parts.size(); ++w) {
            const auto& part = a.split.parts[w];
            if (!part.made) continue;
            const auto said = part_words(a.split, a.asked, w, a.q);
            INFO(said);
            CHECK(holds(said, a.q.units.size(part.size)));
            CHECK(holds(said, a.q.units.yarn(part.metres)));
            CHECK(said.find(capital(a.asked.request.wishes[w].name)) == 0);
            CHECK(said.back() == '.');
            const bool sample = a.asked.request.wishes[w].sample.has_value();
            CHECK(holds(said, " square finished, ") == sample);
            CHECK(holds(said, " chance that they suffice") != sample);
            CHECK(holds(said, "Once a sample is washed") == (part.size_when_known > part.size));
        }
    }
}

TEST_CASE("a sample of cables has whole repeats") {
    const AnsweredSplit a({"--sample", "knitted:cables"});
    const auto& fabric = a.asked.fabrics[0];
    const auto said = part_words(a.split, a.asked, 0, a.q);
    const auto count_before = [&](const char* word) {
        const auto at = said.find(word);
        REQUIRE(at != std::string::npos);
        return std::stoi(said.substr(said.find_last_of(' ', at - 1) + 1));
    };
    CHECK((fabric.across > 1 && fabric.along > 1));
    CHECK(count_before(" stitches by") % fabric.across == 0);
    CHECK(count_before(" rows;") % fabric.along == 0);
}

TEST_CASE("a proof is called one only when it is, otherwise the gap is told") {
    allocation::Allocation found;
    found.outcome = allocation::Allocation::Outcome::proven_best;
    CHECK(proof(found) == "No better split exists (proven).");
    found.outcome = allocation::Allocation::Outcome::best_found;
    found.bound = 1'000'000, found.list.worth = 800'000;
    CHECK(holds(proof(found), "no other can be more than 25.0 % better"));
    const AnsweredSplit a({"--sample", "knitted"});
    CHECK(proof(a.split.allocation) == "No better split exists (proven).");
}

TEST_CASE("a woven sample's loom waste is told where it is a good part of its yarn") {
    const AnsweredSplit woven({"--sample", "woven"});
    const auto& part = woven.split.parts.front();
    const auto waste = woven.asked.request.wishes.front().sample->linear * part.size.si();
    const double share = waste / part.metres.si();
    REQUIRE(share > 0.5);  // a hand's width on a warp tied close
    REQUIRE(share < 0.7);
    const auto said = [](const AnsweredSplit& a) {
        return split_text(a.split, a.asked, a.q, asked::arguments("split", {}));
    };
    CHECK(holds(said(woven), "are loom waste"));
    CHECK_FALSE(holds(said(AnsweredSplit({"--sample", "knitted"})), "loom waste"));
}

TEST_CASE("letters count what is made, and go round after z") {
    allocation::Split split;
    split.parts.resize(30);
    for (auto& part : split.parts) part.made = true;
    CHECK(letter_of(split, 0) == 'a');
    CHECK(letter_of(split, 25) == 'z');
    CHECK(letter_of(split, 26) == 'a');
    split.parts[1].made = false;
    CHECK(letter_of(split, 0) == 'a');
    CHECK(letter_of(split, 2) == 'b');
}

TEST_CASE("a split is drawn inside its picture, a letter and a notch for each cut") {
    for (const auto& typed : several) {
        const AnsweredSplit a(typed);
        const auto drawn = drawing::read(split_picture(a.split, a.asked, a.q));
        const auto out = drawing::outside(drawing::read(split_chart(a.split, a.asked, a.q)));
        if (!out.empty()) INFO("outside: ", out.front());
        CHECK(out.empty());
        CHECK(drawing::outside(drawn).empty());
        CHECK(drawn.says("Heron: the split"));
        bool left = false;
        for (std::size_t i = 0; i < a.q.yarn.skeins.size(); ++i)
            left = left || left_in(i, a.split, a.q) > all_of_it;
        CHECK(drawn.says("left over") == left);
        std::size_t notches = 0;
        for (const auto& cut : a.split.cuts) {
            notches += cut.ball_length > all_of_it ? 1 : 0;
            CHECK(holds(drawn.description, cut_words(cut, a.asked, a.q).substr(5)));
        }
        CHECK(drawn.count("notch") == notches);
        CHECK(drawn.count("cut") == notches);
    }
}

TEST_CASE("split draws the skeins and cuts beside its words, as picture split draws them") {
    const asked::Folder folder;
    const auto file = folder.file("cuts.svg"), other = folder.file("other.svg");
    const Typed typed{asked::example("heron.toml"), "--main", "watch-cap", "--sample", "knitted"};
    const auto with = [&](Typed words, const std::string& out) {
        words.insert(words.end(), {"--out", out});
        return words;
    };
    const auto& command = command_named("split");
    const auto plain = command.run(parse(command, typed)).text;
    CHECK(holds(plain, "Cut list"));
    CHECK(command.run(parse(command, with(typed, file))).text == plain);
    const auto& picture = command_named("picture");
    auto words = with(typed, other);
    words.insert(words.begin(), "split");
    CHECK(picture.run(parse(picture, words)).exit_code == 0);
    CHECK(catalog::read_file(file) == catalog::read_file(other));
    CHECK_THROWS_AS(command.run(parse(command, with(typed, file))), catalog::StorageFailed);
}
