// A figure of the trade with where it comes from, so that nobody has to believe it blindly.
#pragma once

#include <string_view>

namespace gristwright {

enum class Mark {
    read,             // read in the published source named
    cited,            // of a published source that others quote; the source itself was not opened
    derived,          // derived here from published figures
    common_practice,  // common practice, no source
    memory,           // from memory, to be confirmed; never a test oracle
    judgement,        // our own estimate
};

constexpr std::string_view words(Mark mark) {
    switch (mark) {
        case Mark::read:
            return "read";
        case Mark::cited:
            return "cited";
        case Mark::derived:
            return "derived";
        case Mark::common_practice:
            return "common practice, no source";
        case Mark::memory:
            return "from memory";
        case Mark::judgement:
            return "judgement";
    }
    return "";
}

// `low` and `high` bound the values met in practice; equal to `value` where it is exact.
struct Constant {
    std::string_view name;
    double value;
    double low;
    double high;
    std::string_view unit;
    Mark mark;
    std::string_view source;

    constexpr operator double() const { return value; }
};

}  // namespace gristwright
