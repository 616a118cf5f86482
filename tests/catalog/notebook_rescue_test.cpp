// What of a damaged notebook can still be read comes out, and can be imported.
#include "catalog/notebook/rescue.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <fstream>
#include <random>

#include "tests/catalog/notebook_help.hpp"

using namespace notebook_tests;

namespace {

constexpr int batches = 60;

std::string name_of(int i) { return fmt::format("batch {:02}", i); }

// Sixty batches, each with a skein, a swatch, a project and a weighing.
void fill(const fs::path& path) {
    auto book = changing(path);
    book.at_once([&] {
        for (int i = 0; i < batches; ++i) {
            BatchText text;
            text.skeins.push_back(
                {{"A", "here"}, {fmt::format("{}m", 100 + i), "here"}, {"50g", "here"}, {}});
            text.fields["wraps"] = {{"14wpi", "here"}};
            book.add_batch(name_of(i), text);
            book.add_swatch(name_of(i), {SwatchText::Kind::knitted, {{"stitches", "28/10cm"}}, ""});
            book.start_project(name_of(i), {"garter-scarf", "100cm", "", ""});
            book.add_weighing(name_of(i), {"10", "", "40g", ""});
            book.add_suggestions(name_of(i), {{{"idea", "a scarf"}}});
        }
    });
}

void put(const fs::path& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

}  // namespace

TEST_CASE("notebook rescue: a sound notebook comes out as its export") {
    const Scratch scratch;
    const auto path = scratch.file();
    fill(path);
    const auto out = rescue(path);
    CHECK(out.damaged.empty());
    CHECK(out.batches == batches);
    CHECK(out.skeins == batches);
    CHECK(out.json == looking(path).export_json());
}

TEST_CASE("notebook rescue: pages overwritten at random cost what was on them, and no more") {
    const Scratch scratch;
    const auto path = scratch.file();
    fill(path);
    const auto sound = bytes_of(path);
    constexpr std::size_t page = 4096;
    std::size_t refused = 0, partly = 0;
    for (unsigned seed = 0; seed < 60; ++seed) {
        std::mt19937 random{seed};
        auto bytes = sound;
        const auto at = page * (1 + random() % (bytes.size() / page - 1));  // not the first
        for (std::size_t i = 0; i < page; ++i) bytes[at + i] = static_cast<char>(random());
        put(path, bytes);
        INFO("seed ", seed, ", page ", at / page);
        try {
            const auto out = rescue(path);
            partly += out.damaged.empty() ? 0 : 1;
            auto fresh = changing(scratch.folder / fmt::format("fresh-{}", seed));
            fresh.import_json(out.json);
            for (const auto& name : fresh.batch_names())
                CHECK((name.starts_with("batch ") || name.starts_with("rescued-")));
        } catch (const NotebookRefused&) {
            ++refused;
        }
        CHECK(bytes_of(path) == bytes);  // the damaged one is as it was
    }
    CHECK(partly > 0);
    CHECK(refused < 20);
}

TEST_CASE("notebook rescue: what is no notebook is refused") {
    const Scratch scratch;
    CHECK_THROWS_AS(rescue((scratch.folder / "none")), NotebookRefused);
    put((scratch.folder / "text"), std::string(5000, 'x'));
    CHECK_THROWS_AS(rescue((scratch.folder / "text")), NotebookRefused);
}
