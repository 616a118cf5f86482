// A notebook's export, read back: what is taken is written the same again.
#include "catalog/notebook/exchange.hpp"
#include "tests/fuzz/reader.hpp"

using namespace gristwright;
using namespace gristwright::fuzz;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    may_refuse([&] {
        const auto batches = catalog::from_json(text_of(data, size));
        const auto written = catalog::to_json(batches);
        promise(catalog::from_json(written) == batches, "written and read back is equal");
        catalog::to_csv(batches);
    });
    return 0;
}
