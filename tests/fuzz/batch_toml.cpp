// A batch as written down, read and understood.
#include "catalog/typed/batch_text.hpp"
#include "tests/fuzz/reader.hpp"

using namespace gristwright;
using namespace gristwright::fuzz;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    may_refuse([&] {
        const auto text = catalog::read_batch_toml(text_of(data, size), "f.toml");
        profile(catalog::interpret(text, catalogue()).batch, catalogue().yarn);
    });
    return 0;
}
