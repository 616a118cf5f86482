// A colour of yarn, as a picture mixes it.
#pragma once

namespace gristwright {

struct Colour {  // 0..1; undyed wool, unless said otherwise
    double red = 0.86, green = 0.82, blue = 0.74;
};

}  // namespace gristwright
