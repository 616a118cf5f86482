#include <cstdio>

#include "engine/units/quantity.hpp"
#include "engine/units/reading.hpp"

int main() {
    const auto skein = gristwright::read_skein("139m/38.5g");
    std::printf("%.0f tex\n", gristwright::in_tex(skein.second.value / skein.first.value));
}
