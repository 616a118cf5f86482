// The short way to the cautions on an article against the long one.
#include <doctest/doctest.h>

#include "catalog/text/csv.hpp"
#include "engine/caution/caution.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using catalog::carried;

TEST_CASE("looking only for the words that are asked for finds the cautions that all words do") {
    const auto& table = carried().cautions;
    WordsAsked asked(table);
    std::size_t found = 0;
    for (const auto& article : carried().templates)
        for (const char* said : {"", "With PINS, wires and hot irons; a baby's cord", "no-one"}) {
            Facts all, few;
            add_facts(article, carried().fabrics, all);
            add_words(said, all);
            asked.add_facts(article, carried().fabrics, few);
            asked.add_words(said, few);
            std::vector<std::string> by_all, by_few;
            for (const auto& caution : holding(table, all)) by_all.push_back(caution.text);
            for (const auto& caution : holding(table, few)) by_few.push_back(caution.text);
            CAPTURE(article.name);
            CHECK(by_all == by_few);
            found += by_few.size();
        }
    CHECK(found > carried().templates.size());
}

TEST_CASE("a cell is written so that a spreadsheet reads the same text, quotes and all") {
    CHECK(catalog::csv_cell("") == "\"\"");
    CHECK(catalog::csv_cell("22\" wide, \"lacy\"") == "\"22\"\" wide, \"\"lacy\"\"\"");
    CHECK(catalog::csv_cell("\"\"") == "\"\"\"\"\"\"");
    CHECK(catalog::csv_cell("=1+1") == "\"'=1+1\"");
}
