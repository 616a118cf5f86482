#include "catalog/typed/ply_reading.hpp"

#include <array>
#include <cmath>

#include "engine/units/scanner.hpp"

namespace gristwright::catalog {

int count_of_plies(const std::string& typed, const SpokenWords& spoken) {
    const auto text = as_spoken(typed);
    Scanner from(text);
    const auto count = [&]() -> double {
        if (const auto number = from.number(Fractions::none)) return number->value;
        const auto said = spoken.find("plies", from.next_word());
        if (!said || said->means.empty()) return 0;
        from.word();
        return said->means[0] - '0';
    };
    double out = count();
    if (from.take("x")) out *= count();
    from.any(std::array{"ply", "plies", "plied", "strands", "strand", "singles"});
    from.any(std::array{"cabled", "cable", "chain", "chained", "yarn"});
    return from.done() && out >= 1 && out <= 12 && out == std::floor(out) ? static_cast<int>(out)
                                                                          : 0;
}

}  // namespace gristwright::catalog
