// The notebook keeps what it was told, takes it back step by step, and refuses what cannot be.
#include "catalog/notebook/notebook.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include "notebook_help.hpp"

using namespace notebook_tests;

TEST_CASE("notebook: a batch comes back as it was written") {
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    const auto notebook = looking(scratch.file());
    CHECK(notebook.batch_names() == std::vector<std::string>{"heron"});
    CHECK(notebook.has_batch("heron"));
    CHECK_FALSE(notebook.has_batch("Heron"));
    CHECK(notebook.load_batch("heron") == heron());
    CHECK_FALSE(notebook.project("heron"));
    CHECK(notebook.weighings("heron").empty());
}

TEST_CASE("notebook: notes are about a file and are not kept") {
    Scratch scratch;
    auto text = heron();
    text.notes = {"column 'price' is not used"};
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", text);
    CHECK(notebook.load_batch("heron") == heron());
}

TEST_CASE("notebook: a change lies over what was there") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    BatchText overlay;
    overlay.fields["wraps"] = {{"15wpi", "--wraps"}};
    overlay.fields["fibre"] = {};  // nothing in its place: forgotten
    notebook.change_batch("heron", overlay);
    auto expected = heron();
    expected.overlay(overlay);
    expected.fields.erase("fibre");
    CHECK(notebook.load_batch("heron") == expected);
}

TEST_CASE("notebook: swatches, project and weighings in the order they were given") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    notebook.add_batch("wren", {});
    notebook.add_swatch("heron", knitted_swatch());
    notebook.add_swatch("heron", woven_swatch());
    const ProjectText cowl{"cowl", "60cm", "90", "2026-03-02"};
    const WeighingText first{"96", "", "31.5g", "2026-03-03"}, second{"101", "", "29g", ""};
    notebook.start_project("heron", cowl);
    notebook.add_weighing("heron", first);
    notebook.add_weighing("heron", second);
    CHECK(notebook.swatches("heron") == std::vector{knitted_swatch(), woven_swatch()});
    CHECK(notebook.swatches("wren").empty());
    CHECK(notebook.project("heron") == cowl);
    CHECK(notebook.weighings("heron") == std::vector{first, second});
    CHECK(notebook.weighings("wren").empty());

    const auto holds = notebook.describe();
    CHECK(holds.exists);
    CHECK(holds.layout == 3);
    CHECK(holds.batches == 2);
    CHECK(holds.swatches == 2);
    CHECK(holds.projects == 1);
    CHECK(holds.weighings == 2);
    CHECK(holds.changes == 7);
    CHECK(holds.last_change == "weighing of heron");

    notebook.start_project("heron", {"scarf", "", "", ""});
    CHECK(notebook.project("heron")->template_name == "scarf");
    CHECK(notebook.weighings("heron").empty());
}

TEST_CASE("notebook: undo takes back every kind of change, one after the other") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    std::vector<std::string> before;
    for (const auto& step : every_change()) {
        before.push_back(notebook.export_json());
        step.make(notebook);
        CHECK(notebook.export_json() != before.back());
        CHECK(notebook.describe().last_change == step.said);
    }
    auto steps = every_change();
    for (; !steps.empty(); steps.pop_back(), before.pop_back()) {
        CHECK(changing(scratch.file()).undo() == steps.back().said);  // also after reopening
        CHECK(notebook.export_json() == before.back());
    }
    CHECK_FALSE(notebook.undo());
}

TEST_CASE("notebook: undo, then another change, then undo") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    notebook.add_batch("wren", {});
    notebook.undo();
    notebook.add_swatch("heron", woven_swatch());
    CHECK(notebook.undo() == "swatch of heron");
    CHECK(notebook.undo() == "add batch heron");
    CHECK(notebook.undo() == std::nullopt);
    CHECK(notebook.batch_names().empty());
}

TEST_CASE("notebook: the last 1,000 changes can be taken back") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", {});
    SQLite::Database(scratch.file().string(), SQLite::OPEN_READWRITE)
        .exec(
            "WITH RECURSIVE n(i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n WHERE i < 1200) "
            "INSERT INTO change SELECT i, 'filler' FROM n");
    notebook.add_swatch("heron", woven_swatch());
    CHECK(notebook.describe().changes == 1000);
    CHECK(notebook.undo() == "swatch of heron");
    CHECK(notebook.undo() == "filler");
}

TEST_CASE("notebook: what cannot be is refused, and nothing is changed") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    const auto before = bytes_of(scratch.file());
    const auto refused = [&](auto change) {
        CHECK_THROWS_AS(change(), NotebookRefused);
        CHECK(bytes_of(scratch.file()) == before);
    };
    refused([&] { notebook.add_batch("heron", {}); });
    refused([&] { notebook.change_batch("hern", {}); });
    refused([&] { notebook.remove_batch("wren"); });
    refused([&] { notebook.add_swatch("wren", {}); });
    refused([&] { notebook.start_project("wren", {"cowl", "", "", ""}); });
    refused([&] { notebook.start_project("heron", {}); });
    refused([&] { notebook.add_weighing("heron", {"96", "", "31g", ""}); });  // no project
    refused([&] { notebook.add_swatch("heron", {{}, {{"", "28"}}, ""}); });
    refused([&] { notebook.add_suggestions("wren", {{{"idea", "hat"}}}); });
    refused([&] { notebook.add_suggestions("heron", {{{"idea", "hat"}}, {{"needs", "3m"}}}); });
    refused([&] { notebook.remove_suggestions("wren"); });
    refused([&] { notebook.suggestions("wren"); });
    refused([&] { notebook.load_batch("wren"); });
    refused([&] { notebook.swatches("wren"); });
    refused([&] { notebook.project("wren"); });
    refused([&] { notebook.weighings("wren"); });
    for (const std::string name : {"", "-x", " x", "x ", "a/b", "heron.toml", "x.csv", "a\nb",
                                   "\xff", "\x1b[31m", "\xc2\x9b", "\xed\xa0\x80", "\xc0\xaf"})
        refused([&] { notebook.add_batch(name, {}); });
    refused([&] { notebook.add_batch(std::string(81, 'x'), {}); });
    refused([&] { notebook.add_batch(std::string("a\0b", 3), {}); });
    BatchText long_one;
    long_one.fields["fibre"] = {{std::string(10001, 'x'), ""}};
    refused([&] { notebook.add_batch("wren", long_one); });
    CHECK_THROWS_WITH(notebook.load_batch("hern"),
                      "no batch 'hern' is remembered; did you mean 'heron'?");
}

TEST_CASE("notebook: a weighing says how far and how heavy") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    notebook.start_project("heron", {"cowl", "", "", ""});
    CHECK_THROWS_AS(notebook.add_weighing("heron", {"96", "41cm", "3g", ""}), NotebookRefused);
    CHECK_THROWS_AS(notebook.add_weighing("heron", {"", "", "3g", ""}), NotebookRefused);
    CHECK_THROWS_AS(notebook.add_weighing("heron", {"96", "", "", ""}), NotebookRefused);
    CHECK(notebook.weighings("heron").empty());
}

TEST_CASE("notebook: what people type cannot become SQL") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    const std::string nasty = "x'); DROP TABLE batch; --\"";
    BatchText text;
    text.fields[nasty] = {{nasty, nasty}};
    notebook.add_batch(nasty, text);
    CHECK(notebook.load_batch(nasty) == text);
    notebook.remove_batch(nasty);
    notebook.undo();
    CHECK(notebook.load_batch(nasty) == text);
}

TEST_CASE("notebook: suggestions come back as they were written, after those from before") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    notebook.add_batch("heron", heron());
    const KeptSuggestion hat{{"idea", "cabled hat"}, {"needs", "220yd"}};
    const KeptSuggestion sly{{"idea", "'); DROP TABLE suggestion; -- {\"a\": 1}"}, {"from", "\\"}};
    notebook.add_suggestions("heron", {hat});
    notebook.add_suggestions("heron", {sly, hat});
    CHECK(notebook.suggestions("heron") == std::vector{hat, sly, hat});
    CHECK(notebook.describe().suggestions == 3);
    notebook.remove_suggestions("heron");
    CHECK(notebook.suggestions("heron").empty());
    CHECK(notebook.undo() == "forget the suggestions to heron");
    CHECK(notebook.suggestions("heron") == std::vector{hat, sly, hat});
}

TEST_CASE("notebook: the batches swatched last, and only by one's own hands") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    for (const char* name : {"heron", "wren", "robin", "crow"}) notebook.add_batch(name, heron());
    notebook.add_swatch("wren", knitted_swatch());
    notebook.add_swatch("heron", knitted_swatch());
    notebook.add_swatch("robin", woven_swatch());
    notebook.add_swatch("heron", woven_swatch());
    auto by_another = knitted_swatch();
    by_another.own_hands = false;
    notebook.add_swatch("crow", by_another);
    notebook.add_swatch("heron", by_another);
    const auto names = [&](std::size_t most) {
        std::vector<std::string> out;
        for (const auto& batch : notebook.swatched_last(most)) out.push_back(batch.name);
        return out;
    };
    CHECK(names(10) == std::vector<std::string>{"heron", "robin", "wren"});
    CHECK(names(2) == std::vector<std::string>{"heron", "robin"});
    CHECK(notebook.swatched_last(1)[0].text == heron());
    CHECK(notebook.swatched_last(1)[0].swatches == std::vector{knitted_swatch(), woven_swatch()});
    CHECK(notebook.swatches("heron").size() == 3);

    notebook.forget_hands();
    CHECK(notebook.swatched_last(10).empty());
    CHECK(notebook.swatches("heron").size() == 3);  // each still tells about its batch
    notebook.add_swatch("crow", knitted_swatch());
    CHECK(names(10) == std::vector<std::string>{"crow"});
    notebook.undo();
    CHECK(notebook.undo() == "forget the hands");
    CHECK(names(10).size() == 3);
}

TEST_CASE("notebook: the batches added last, in the order of their names") {
    Scratch scratch;
    auto notebook = changing(scratch.file());
    CHECK(notebook.newest_batches(20).empty());
    for (const char* name : {"wren", "heron", "crow"}) notebook.add_batch(name, heron());
    const auto two = notebook.newest_batches(2);
    REQUIRE(two.size() == 2);
    CHECK(two[0].name == "crow");
    CHECK(two[1].name == "heron");
    CHECK(two[1].text == heron());
}
