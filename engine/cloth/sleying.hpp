// How the ends of a warp are shared among the dents of its reed.
#pragma once

#include <algorithm>
#include <array>
#include <string_view>

#include "engine/estimate/constant.hpp"

namespace gristwright {

// Ends in one dent after another, over and over: "1-2" is one, then two, then one again. No dent
// holds more than nine.
struct Sleying {
    std::string_view order = "1";

    constexpr int dents() const { return static_cast<int>(order.size() + 1) / 2; }
    constexpr int in_dent(int which) const {
        return order[static_cast<std::size_t>(2 * (which % dents()))] - '0';
    }
    constexpr int ends() const {
        int sum = 0;
        for (int i = 0; i < dents(); ++i) sum += in_dent(i);
        return sum;
    }
    constexpr int most() const {
        int out = 0;
        for (int i = 0; i < dents(); ++i) out = std::max(out, in_dent(i));
        return out;
    }
    constexpr double to_a_dent() const { return static_cast<double>(ends()) / dents(); }
    constexpr bool even() const { return dents() == 1; }
};

struct SleyingRow {
    Sleying sleying;
    Mark mark;
    std::string_view source;
};

inline constexpr std::string_view substitution_chart =
    "a reed substitution chart, 1 to 3; a weaver's page calls two the ideal";

// The orders that weavers use, even ones first.
inline constexpr std::array sleyings{
    SleyingRow{{"1"}, Mark::read, substitution_chart},
    SleyingRow{{"2"}, Mark::read, substitution_chart},
    SleyingRow{{"3"}, Mark::read, substitution_chart},
    SleyingRow{{"1-2"}, Mark::common_practice, ""},
    SleyingRow{{"1-1-2"}, Mark::common_practice, ""},
    SleyingRow{{"1-2-2"}, Mark::common_practice, ""},
    SleyingRow{{"2-3"}, Mark::common_practice, ""},
    SleyingRow{{"0-1"}, Mark::common_practice, ""},
};

}  // namespace gristwright
