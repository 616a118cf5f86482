// A small generator of our own: the same numbers on every machine.
#pragma once

#include <cstdint>

namespace gristwright::lay {

class Seeded {
  public:
    explicit Seeded(std::uint64_t seed = 20011) : state_(seed) {}
    double next() {  // 0..1; Lehmer 1951 with the multiplier of Park and Miller (from memory)
        state_ = state_ * 48271 % 2147483647;
        return double(state_) / 2147483647.0;
    }
    double between(double low, double high) { return low + (high - low) * next(); }

  private:
    std::uint64_t state_;
};

}  // namespace gristwright::lay
