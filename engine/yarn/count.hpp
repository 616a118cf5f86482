// Yarn count systems: the many names of one thing, mass for length.
//
// Direct systems grow with the yarn (tex, denier: mass per length); indirect ones fall with it
// (worsted, cotton, run: hanks per pound). ISO 1144 makes tex the standard.
#pragma once

#include <span>
#include <string_view>

#include "engine/units/quantity.hpp"

namespace gristwright {

struct CountSystem {
    std::string_view name;    // "worsted count"
    std::string_view symbol;  // "Nw"
    bool direct;              // true: count = factor * tex; false: count = factor / tex
    double factor;
    std::string_view source;
};

// All systems known, in the order they are usually printed.
std::span<const CountSystem> count_systems();

// The system of that name, or throws std::out_of_range.
const CountSystem& count_system(std::string_view name);

// Both need a positive argument; zero gives infinity in an indirect system.
double count_of(LinearDensity d, const CountSystem& system);
LinearDensity linear_density_of(double count, const CountSystem& system);

// A folded yarn of two strands, neither taking up: their masses per length add.
constexpr LinearDensity folded(LinearDensity a, LinearDensity b) { return a + b; }

}  // namespace gristwright
