// A spreadsheet as text, and as the skeins of a batch.
#include "catalog/text/csv.hpp"
#include "catalog/typed/batch_text.hpp"
#include "tests/fuzz/reader.hpp"

using namespace gristwright;
using namespace gristwright::fuzz;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto text = text_of(data, size);
    may_refuse([&] {
        const auto csv = catalog::read_csv(text, "f.csv");
        promise(!csv.headers.empty(), "there is a header");
        for (const auto& row : csv.rows)
            promise(row.fields.size() == csv.headers.size(), "as many fields as headers");
    });
    may_refuse([&] { catalog::interpret(catalog::read_batch_csv(text, "f.csv"), catalogue()); });
    return 0;
}
