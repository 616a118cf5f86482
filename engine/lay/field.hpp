// A field of numbers over a picture's pixels, and its blur.
#pragma once

#include <cstddef>
#include <vector>

namespace gristwright::lay {

struct Field {
    int width = 0, height = 0;
    std::vector<float> at;

    Field() = default;
    Field(int w, int h, float value)
        : width(w),
          height(h),
          at(static_cast<std::size_t>(w) * static_cast<std::size_t>(h), value) {}

    std::size_t index(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
               static_cast<std::size_t>(x);
    }
};

// Three running means along and across: near enough to a normal curve of `sigma` pixels.
Field blurred(Field field, double sigma);

}  // namespace gristwright::lay
