// Measurements as typed: the first byte chooses the reader, the rest is the text.
#include <cmath>

#include "engine/units/reading.hpp"
#include "tests/fuzz/reader.hpp"

using namespace gristwright;
using namespace gristwright::fuzz;

namespace {

void above_zero(double si) { promise(std::isfinite(si) && si > 0, "above zero and finite"); }

template <class Q>
void above_zero(const Reading<Q>& read) {
    above_zero(read.value.si());
    above_zero(read.step.si());
}

void read_with(unsigned which, std::string_view text) {
    switch (which % 9) {
        case 0:
            return above_zero(read_length(text));
        case 1:
            return above_zero(read_mass(text));
        case 2:
            return above_zero(read_wraps(text).si());
        case 3:
            return above_zero(read_twist(text).si());
        case 4:
            return above_zero(read_gauge(text).si());
        case 5:
            return above_zero(read_sett(text).si());
        case 6: {
            const double share = read_share(text);
            return promise(share >= 0 && share <= 1, "a share lies between 0 and 1");
        }
        case 7: {
            const auto [length, mass] = read_skein(text);
            above_zero(length);
            return above_zero(mass);
        }
        default: {
            const auto [low, high] = read_micron_range(text);
            above_zero(low.si());
            return promise(low <= high && std::isfinite(high.si()), "low first");
        }
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) return 0;
    may_refuse([&] { read_with(data[0], text_of(data + 1, size - 1)); });
    return 0;
}
