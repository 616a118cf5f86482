// The cautions on an article by their bits against a plain reading of the table.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/text/csv.hpp"
#include "engine/caution/cautions.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using catalog::carried;

namespace {

std::vector<std::string> parts_of(const std::string& text, char at) {
    std::vector<std::string> out{""};
    for (const char c : text)
        if (c == at)
            out.emplace_back();
        else
            out.back() += c;
    return out;
}

bool holds_plainly(const std::string& when, const Facts& facts) {
    const auto is_so = [&](const std::string& word) {
        return word.starts_with('!') ? !facts.contains(word.substr(1)) : facts.contains(word);
    };
    const auto clauses = parts_of(when, ' ');
    return std::all_of(clauses.begin(), clauses.end(), [&](const std::string& clause) {
        const auto words = parts_of(clause, '|');
        return clause.empty() || std::any_of(words.begin(), words.end(), is_so);
    });
}

}  // namespace

TEST_CASE("the cautions on every article are those that its facts call for") {
    const auto& table = carried().cautions;
    Cautions cautions(std::make_shared<const std::vector<Caution>>(table));
    std::size_t found = 0;
    for (const auto& article : carried().templates)
        for (const char* said : {"", "With PINS, wires and hot irons; a baby's cord", "no-one"}) {
            auto facts = facts_of(article, carried().fabrics);
            take_words(
                said, [&](std::string_view word) { facts.insert(std::string(says).append(word)); });
            Cautions::Known known;
            cautions.add_facts(article, carried().fabrics, known);
            cautions.add_words(said, known);
            std::vector<std::string> plainly, by_bits;
            for (const auto& caution : table)
                if (holds_plainly(caution.when, facts)) plainly.push_back(caution.text);
            for (const auto& caution : cautions.holding({known})) by_bits.push_back(caution.text);
            CAPTURE(article.name);
            CHECK(plainly == by_bits);
            found += by_bits.size();
        }
    CHECK(found > carried().templates.size());
}

TEST_CASE("a cell is written so that a spreadsheet reads the same text, quotes and all") {
    CHECK(catalog::csv_cell("") == "\"\"");
    CHECK(catalog::csv_cell("22\" wide, \"lacy\"") == "\"22\"\" wide, \"\"lacy\"\"\"");
    CHECK(catalog::csv_cell("\"\"") == "\"\"\"\"\"\"");
    CHECK(catalog::csv_cell("=1+1") == "\"'=1+1\"");
}
