// What is kept with a notebook: batches, swatches, a project, weighings, and the way back.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <random>

#include "cli/output/json.hpp"
#include "tests/cli/asked.hpp"
#include "tests/near.hpp"

using namespace gristwright::cli;
using asked::complaint;
using asked::holds;
using asked::Typed;

namespace {

// A notebook of its own, gone with the test.
class Book {
  public:
    // What the command says, "split NAME" and the rest apart.
    std::string say(const std::string& command, Typed typed) const {
        typed.insert(typed.end(), {"--notebook", file("notebook.sqlite")});
        const auto& c = command_named(command);
        return c.run(parse(c, typed)).text;
    }
    Json json(const std::string& command, Typed typed) const {
        typed.push_back("--json");
        return Json::parse(say(command, typed));
    }
    std::string refused(const std::string& command, const Typed& typed) const {
        return complaint([&] { say(command, typed); });
    }
    std::string everything() const { return say("export", {}); }
    std::string file(const std::string& name) const { return folder_.file(name); }

    // Heron remembered, so that there is something to begin with.
    void add_heron() const { say("batch", {"add", "heron", asked::example("heron.toml")}); }

  private:
    asked::Folder folder_;
};

// One thing or another that changes a notebook; what cannot be is refused and changes nothing.
void change(const Book& book, std::mt19937& random) {
    constexpr const char* names[] = {"heron", "rook", "wren"};
    const std::string name = names[random() % 3];
    const auto number = std::to_string(1 + random() % 60);
    const std::pair<const char*, Typed> ways[] = {
        {"batch", {"add", name, asked::example("hearth.toml")}},
        {"batch", {"add", name, "--skein", number + "0m/" + number + "g"}},
        {"batch", {"change", name, "--wraps", "1" + number.substr(0, 1) + "wpi"}},
        {"batch", {"remove", name}},
        {"swatch", {name, "--stitches", "2" + number.substr(0, 1) + "/10cm"}},
        {"swatch", {name, "--finished", "17x21cm", "--reed", "20cm"}},
        {"start", {"garter-scarf", name}},
        {"start", {"woven-scarf", name}},
        {"weigh", {name, "--row", number, "--ball", "20g"}},
        {"answer", {name, "--idea", "lace shawl", "--remember"}},
        {"answer", {name, "--forget"}},
        {"hands", {"--forget"}}};
    const auto& [command, typed] = ways[random() % std::size(ways)];
    book.refused(command, typed);
}

}  // namespace

TEST_CASE("undo goes back step by step through whatever was done") {
    for (unsigned seed = 0; seed < 8; ++seed) {
        std::mt19937 random{seed};
        const Book book;
        book.add_heron();
        std::vector<std::string> states{book.everything()};
        for (int i = 0; i < 25; ++i) {
            change(book, random);
            if (const auto now = book.everything(); now != states.back()) states.push_back(now);
        }
        INFO("seed ", seed);
        CHECK(states.size() > 4);
        while (states.size() > 1) {
            states.pop_back();
            // Taking back may pass a change that changed nothing.
            for (int i = 0; i < 3 && book.everything() != states.back(); ++i) book.say("undo", {});
            REQUIRE(book.everything() == states.back());
        }
    }
}

TEST_CASE("what is exported and taken into another notebook is the same, and answers the same") {
    for (unsigned seed = 20; seed < 24; ++seed) {
        std::mt19937 random{seed};
        std::string kept, hands;
        const asked::Folder folder;
        const auto file = folder.file("kept.json");
        {
            const Book book;
            book.add_heron();
            for (int i = 0; i < 20; ++i) change(book, random);
            book.refused("batch", {"add", "heron", asked::example("heron.toml")});  // if it went
            kept = book.everything(), hands = book.say("hands", {});
            book.say("export", {"--out", file});
        }
        const Book other;
        other.say("import", {file});
        CHECK(other.everything() == kept);
        CHECK(other.say("hands", {}) == hands);
        CHECK(holds(other.refused("import", {file}), "heron"));  // in use
        CHECK(other.everything() == kept);
    }
}

TEST_CASE("what cannot be kept says why, and nothing is kept of it") {
    struct Case {
        const char* command;
        Typed typed;
        const char *wrong, *right;
    };
    const Case cases[] = {
        {"batch", {"add", "heron", "--skein", "1m/1g"}, "heron", "already"},
        {"batch", {"add", "a.b", "--skein", "10m/2g"}, "no dot and no '/'", "taken for a file"},
        {"batch", {"add", "x", "--skein", "10m"}, "a skein is a length and a mass", "171m/38.5g"},
        {"batch", {"add", "x"}, "a batch has at least one skein", "or a file"},
        {"batch", {"add"}, "batch add needs the batch's name", ""},
        {"batch", {"ad", "x"}, "batch takes add, list, show, change or remove", "mean 'add'?"},
        {"batch", {"show", "herno"}, "herno", "did you mean 'heron'?"},
        {"batch", {"remove", "hero"}, "hero", "did you mean 'heron'?"},
        {"batch", {"change", "heron", "--wraps", "90wpi"}, "90 wraps per inch", "check the wraps"},
        {"batch", {"change", "heron", "--ply", "99"}, "--ply: '99'", "from 1 to 12"},
        {"swatch", {"heron"}, "swatch is knitted (--stitches 28/10.3cm)", "woven (--finished"},
        {"swatch",
         {"heron", "--stitches", "28/10cm", "--finished", "1x1cm"},
         "swatch is knitted",
         ""},
        {"swatch", {"heron", "--stitches", "28"}, "stitches: cannot read '28'", "28/10.3cm"},
        {"swatch", {"heron", "--stitches", "0/10cm"}, "no number from 1 to 10000", "stitches"},
        {"swatch", {"heron", "--stitches", "nan/10cm"}, "no number from 1 to 10000", "stitches"},
        {"swatch", {"heron", "--stitches", "28/10"}, "a length needs a unit", "stitches"},
        {"swatch", {"heron", "--stitches", "28/0cm"}, "must be more than zero", "stitches"},
        {"swatch", {"heron", "--stitches", "28/10cm", "--rows", "x/1cm"}, "rows: cannot read", ""},
        {"swatch",
         {"heron", "--stitches", "28/10cm", "--sides", "15cm"},
         "no two sides",
         "15.2x14.8cm"},
        {"swatch",
         {"heron", "--stitches", "28/10cm", "--mass", "4"},
         "a mass needs a unit",
         "mass"},
        {"swatch",
         {"heron", "--stitches", "28/10cm", "--look", "4"},
         "this is no look",
         "such as 4/5"},
        {"swatch",
         {"heron", "--stitches", "28/10cm", "--look", "6/5"},
         "no number from 0 to 5",
         "look"},
        {"swatch",
         {"heron", "--stitches", "28/10cm", "--fabric", "gartr"},
         "no stitch 'gartr'",
         "mean 'garter'?"},
        {"swatch",
         {"heron", "--stitches", "28/10cm", "--firmness", "hard"},
         "--firmness is",
         "firm or sock"},
        {"swatch",
         {"heron", "--finished", "17x21cm"},
         "needs its width in the heddle",
         "--reed 20cm"},
        {"swatch", {"heron", "--finished", "17cm", "--reed", "20cm"}, "no two sides", "finished"},
        {"swatch",
         {"heron", "--finished", "17x21cm", "--reed", "20"},
         "reed: cannot read '20'",
         ""},
        {"swatch", {"rook", "--stitches", "28/10cm"}, "rook", ""},
        {"start", {"garter-scraf", "heron"}, "garter-scraf", "did you mean 'garter-scarf'?"},
        {"start", {"garter-scarf", "rook"}, "rook", ""},
        {"start", {"garter-scarf", "heron", "--certainty", "30"}, "--certainty", "50 to 99.9 %"},
        {"weigh", {"heron"}, "weigh needs --ball 31.5g", "all yarn still to be used"},
        {"weigh",
         {"heron", "--ball", "30g", "--row", "3"},
         "nothing is begun with heron",
         "gristwright start TEMPLATE heron"},
        {"answer", {"heron"}, "no suggestions are remembered with heron", "--remember"},
        {"answer",
         {"rook.toml", "--idea", "hat", "--remember"},
         "--remember is for a remembered batch",
         "gristwright batch add NAME"},
    };
    const Book book;
    book.add_heron();
    const auto before = book.everything();
    for (const auto& c : cases) {
        const auto said = book.refused(c.command, c.typed);
        INFO(said);
        CHECK(holds(said, c.wrong));
        CHECK(holds(said, c.right));
        CHECK(book.everything() == before);
    }
}

TEST_CASE("a weighing is questioned before it is kept") {
    const Book book;
    book.add_heron();
    book.say("start", {"garter-scarf", "heron"});
    book.say("weigh", {"heron", "--row", "0", "--ball", "148g"});
    book.say("weigh", {"heron", "--row", "20", "--ball", "140g"});
    const auto before = book.everything();
    const std::pair<Typed, const char*> cases[] = {
        {{"--row", "20", "--ball", "130g"},
         "row 20 comes after row 20: was some of it ripped back?"},
        {{"--row", "10", "--ball", "130g"}, "row 10 comes after row 20"},
        {{"--row", "40", "--ball", "141g"}, "the ball weighs 141.0 g and weighed 140.0 g before"},
        {{"--row", "40", "--ball", "130"}, "ball: cannot read '130': a mass needs a unit"},
        {{"--row", "-4", "--ball", "130g"}, "row: cannot read '-4'"},
        {{"--row", "forty", "--ball", "130g"}, "row: cannot read 'forty'"},
        {{"--woven", "4cm", "--ball", "130g"}, "weigh needs --row 96"}};
    for (const auto& [typed, said] : cases) {
        auto all = typed;
        all.insert(all.begin(), "heron");
        INFO(std::string(said));
        CHECK(holds(book.refused("weigh", all), said));
        CHECK(book.everything() == before);
    }
    book.say("start", {"woven-scarf", "heron", "--instead"});
    CHECK(holds(book.refused("weigh", {"heron", "--row", "4", "--ball", "130g"}), "--woven 41cm"));
}

TEST_CASE("cloth from nothing is questioned: the wrong ball is on the scale") {
    // It was kept, with "about inf cm more on the loom" and a chance over 99.9 %.
    const Book book;
    book.add_heron();
    book.say("start", {"woven-cowl", "heron"});
    CHECK(holds(book.refused("weigh", {"heron", "--woven", "cm", "--ball", "80g"}), "woven"));
    book.say("weigh", {"heron", "--woven", "0cm", "--ball", "80g"});
    const auto before = book.everything();
    CHECK(holds(book.refused("weigh", {"heron", "--woven", "41cm", "--ball", "80g"}),
                "is it the ball in work?"));
    CHECK(book.everything() == before);
}

TEST_CASE("start never replaces a running project, and takes no size that plan refuses") {
    const Book book;
    book.add_heron();
    for (const char* size : {"1mm", "10m"})
        CHECK(holds(book.refused("start", {"garter-scarf", "heron", "--size", size}),
                    std::string("--size ") + size + ": a scarf has a"));
    CHECK_FALSE(holds(book.say("start", {"garter-scarf", "heron"}), "does not reach"));
    book.say("weigh", {"heron", "--row", "0", "--ball", "140g"});
    const auto before = book.everything();
    CHECK(holds(book.refused("start", {"woven-scarf", "heron"}),
                "into garter-scarf already, with 1 weighing; --instead ends that"));
    CHECK(book.everything() == before);
    const auto said = book.say("start", {"yoke-pullover", "heron", "--instead"});
    CHECK(holds(said, "Mind: the yarn does not reach"));
    CHECK(holds(said, "--ball 148g"));  // all there is, not the 354 g that it would take
}

TEST_CASE("a project can be begun at the size of somebody") {
    const Book book;
    book.add_heron();
    CHECK(holds(book.say("start", {"watch-cap", "heron", "--for", "child 6"}),
                "Begun: Watch cap with heron, round the head 51 cm"));
    CHECK(holds(book.refused("start", {"woven-scarf", "heron", "--for", "child 6", "--instead"}),
                "which no body decides"));
}

TEST_CASE("a project begun with one of several yarns says with which") {
    const Book book;
    book.say("batch", {"add", "both", "--skein", "400m/100g fibre BFL colour teal", "--skein",
                       "100m/50g fibre Romney colour grey"});
    CHECK(holds(book.say("start", {"watch-cap", "both"}), "The skeins are 2 yarns; this is about"));
}

TEST_CASE("a change of a batch says what it put in the place of what") {
    const Book book;
    book.say("batch",
             {"add", "wren", "--skein", "100m/50g", "--skein", "90m/45g", "--wraps", "12wpi"});
    const auto said = book.say(
        "batch", {"change", "wren", "--skein", "80m/40g", "--wraps", "11wpi", "--ply", "2"});
    CHECK(holds(said, "1 skein (80m/40g) in place of 2 skeins (100m/50g, 90m/45g)"));
    CHECK(holds(said, "wraps: 11wpi in place of 12wpi"));
    CHECK(holds(said, "plies: 2, where nothing was"));
}

TEST_CASE("a batch goes by one name, and each word after batch takes no more than it uses") {
    // "batch add 'Bracken fell' --name Brackenfell" was headed Brackenfell, which was not
    // remembered.
    const Book book;
    book.say("batch", {"add", "Bracken fell", "--name", "Brackenfell", "--skein", "100m/50g"});
    CHECK(holds(book.say("yarn", {"Bracken fell"}), "Bracken fell: "));
    book.say("batch", {"change", "Bracken fell", "--name", "Other"});
    CHECK(holds(book.say("yarn", {"Bracken fell"}), "Bracken fell: "));
    book.add_heron();
    CHECK(holds(book.say("yarn", {"heron"}), "Heron: "));  // but for capitals the same
    const auto before = book.everything();
    CHECK(holds(book.refused("batch", {"remove", "heron", "Bracken fell"}), "one too many"));
    CHECK(holds(book.refused("batch", {"list", "heron"}), "one too many"));
    CHECK(book.everything() == before);
}

TEST_CASE("import checks what it takes, unless told to take it as it is") {
    const Book book;
    book.add_heron();
    book.say("start", {"garter-scarf", "heron"});
    const auto good = book.everything();
    book.say("batch", {"remove", "heron"});
    const auto import = [&](const std::string& text, const Typed& more) {
        std::ofstream(book.file("in.json")) << text;
        Typed typed{book.file("in.json")};
        typed.insert(typed.end(), more.begin(), more.end());
        return complaint([&] { book.say("import", typed); });
    };
    const auto with = [&](const std::string& from, const std::string& to) {
        auto text = good;
        const auto at = text.find(from);
        REQUIRE(at != std::string::npos);
        return text.replace(at, from.size(), to);
    };
    const auto before = book.everything();
    for (const auto& [text, wrong] : std::vector<std::pair<std::string, std::string>>{
             {with("139m", "banana"), "banana"},
             {R"({"notebook": 2, "batches": [{"name": "wren", "skeins": [], "fields": {},
                 "swatches": []}]})",
              "wren"},
             {with("\"size\": \"", "\"size\": \"x"), "size: cannot read 'x"}}) {
        const auto said = import(text, {});
        INFO(said);
        CHECK(holds(said, wrong));
        CHECK(holds(said, "--unchecked"));
        CHECK_FALSE(holds(said, ": :"));
        CHECK(book.everything() == before);
    }
    const auto said = import(with("\"heron\"", "\"her\\u0000on\""), {});
    CHECK(holds(said, "'her?on' cannot be kept"));
    CHECK(import(with("139m", "banana"), {"--unchecked"}) == "nothing was wrong");
    book.say("undo", {});
    CHECK(import(good, {}) == "nothing was wrong");
    CHECK(book.everything() == good);
}

TEST_CASE("work that goes as planned is told so, in text and in JSON alike") {
    const Book book;
    book.add_heron();
    const auto plan = book.json("start", {"garter-scarf", "heron"})["plan"];
    const double all = plan["metres_needed"]["mid"], rows = plan["pieces"][0]["rows"];
    const double grams = plan["grams"];
    book.say("weigh", {"heron", "--row", "0", "--ball", "148g"});
    const auto at = [&](double share) {
        return Typed{"heron", "--row", fmt::format("{:.0f}", share * rows), "--ball",
                     fmt::format("{:.2f}g", 148 - grams * share)};
    };
    const auto half = book.json("weigh", at(0.5));
    CHECK(half["used_of_planned"]["mid"].get<double>() == near(1, 0.02));
    CHECK(half["metres_used"].get<double>() == near(all / 2, 0.02));
    CHECK(half["chance"].get<double>() > 0.9);
    const auto text = book.say("weigh", at(0.75));
    CHECK(holds(text, "the work takes 100 % of what was planned"));
    CHECK(holds(text, fmt::format("has {:.0f} rows", rows)));
}

TEST_CASE("a swatch is told of in every later answer, until it is taken back") {
    const Book book;
    book.add_heron();
    const auto before = book.say("yarn", {"heron"});
    CHECK_FALSE(holds(before, "Stands on:"));
    const auto told = book.json("swatch", {"heron", "--stitches", "28/10cm"});
    CHECK(told["swatches"] == 1);
    CHECK(told["questions"].empty());
    CHECK(holds(book.say("yarn", {"heron"}), "Stands on: a washed swatch in stocking stitch"));
    CHECK(holds(book.say("plan", {"garter-scarf", "heron"}), "Stands on: a washed swatch"));
    const auto twice = book.json("swatch", {"heron", "--stitches", "28/10cm"});
    const auto& a = told["stocking_stitches_per_10cm"];
    const auto& b = twice["stocking_stitches_per_10cm"];
    CHECK(b["high"].get<double>() - b["low"].get<double>() <
          a["high"].get<double>() - a["low"].get<double>());
    book.say("undo", {}), book.say("undo", {});
    CHECK(book.say("yarn", {"heron"}) == before);
}

TEST_CASE("what is typed with a remembered batch is for this once, change keeps it") {
    const Book book;
    book.add_heron();
    const auto wraps = [&](const Typed& more) {
        Typed all{"heron"};
        all.insert(all.end(), more.begin(), more.end());
        return book.json("yarn", all)["batch"]["wraps_per_inch"].get<double>();
    };
    CHECK(wraps({}) == near(13, 1e-6));
    CHECK(wraps({"--wraps", "18wpi"}) == near(18, 1e-6));
    CHECK(wraps({}) == near(13, 1e-6));
    book.say("batch", {"change", "heron", "--wraps", "18wpi"});
    CHECK(wraps({}) == near(18, 1e-6));
}

TEST_CASE("a batch remembered under a name answers as its file does") {
    const Book book;
    for (const char* file : {"heron.toml", "hearth.toml", "sedge.toml", "skeins.csv"}) {
        const auto path = asked::example(file);
        book.say("batch", {"add", "kept", path});
        for (const char* command : {"makes", "yarn"}) {
            auto a = book.json(command, {path}), b = book.json(command, {"kept"});
            a["batch"].erase("name"),
                b["batch"].erase("name");  // the notebook's, where it has none
            INFO(file, " ", command);
            CHECK(a == b);
        }
        book.say("batch", {"remove", "kept"});
    }
}

TEST_CASE("a copy of the notebook holds the same, and no other file is overwritten") {
    const Book book;
    book.add_heron();
    const auto copy = book.file("copy.sqlite");
    book.say("backup", {copy});
    const auto& c = command_named("export");
    CHECK(c.run(parse(c, {"--notebook", copy})).text == book.everything());
    CHECK(holds(book.refused("backup", {copy}), "copy.sqlite"));
}
