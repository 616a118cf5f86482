// A template of one's own.
#include "catalog/reference/template_text.hpp"
#include "tests/fuzz/reader.hpp"

using namespace gristwright;
using namespace gristwright::fuzz;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    may_refuse([&] {
        const auto read =
            catalog::read_template(text_of(data, size), "f", "f.toml", catalogue().fabrics);
        promise(!read.pieces.empty(), "a template has a piece");
    });
    return 0;
}
