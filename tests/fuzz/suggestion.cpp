// A spreadsheet of suggestions: headers in anybody's words, rows in anybody's measurements.
#include "catalog/text/csv.hpp"
#include "catalog/typed/suggestion_sheet.hpp"
#include "engine/suggestion/understand.hpp"
#include "tests/fuzz/reader.hpp"

using namespace gristwright;
using namespace gristwright::fuzz;

namespace {

void read_row(const catalog::CsvRow& row, const std::vector<std::string>& keys) {
    catalog::SuggestionText text;
    for (std::size_t i = 0; i < keys.size(); ++i)
        if (!keys[i].empty()) text[keys[i]] = row.fields[i];
    const auto suggestion = catalog::read_suggestion(text, catalogue());
    promise(suggestion.colours >= 1, "at least one colour");
    static const Lexicon lexicon(catalogue().words.text(), catalogue().kinds);
    static Stemmer stemmer;
    understand(suggestion.idea, lexicon, stemmer);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    may_refuse([&] {
        const auto csv = catalog::read_csv(text_of(data, size), "f.csv");
        std::vector<std::string> keys;
        for (const auto& column : catalog::suggestion_columns(csv.headers, catalogue().spoken))
            keys.push_back(column.key);
        promise(keys.size() == csv.headers.size(), "a key for every header");
        for (const auto& row : csv.rows) may_refuse([&] { read_row(row, keys); });
    });
    return 0;
}
