#include "catalog/typed/ply_reading.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/units/scanner.hpp"

namespace gristwright::catalog {

int count_of_plies(const std::string& typed, const SpokenWords& spoken) {
    auto text = as_spoken(typed);
    for (const char sign : {'(', ')'}) std::replace(text.begin(), text.end(), sign, ' ');
    text = as_spoken(text);
    Scanner from(text);
    constexpr std::array ways{"cabled", "cable", "chain", "chained"};
    if (from.any(ways)) from.any(std::array{"plied", "ply"});  // "chain plied (3)"
    const auto count = [&]() -> double {
        if (const auto number = from.number(Fractions::none)) return number->value;
        const auto said = spoken.find("plies", from.next_word());
        if (!said || said->means.empty()) return 0;
        from.word();
        return said->means[0] - '0';
    };
    double out = count();
    if (from.take("x")) out *= count();
    from.any(std::array{"ply", "plies", "plied", "strands", "strand", "singles", "fach",
                        "f\u00E4dig", "tr\u00E5dig", "tr\u00E5digt", "tr\u00E5dar", "fils",
                        "brins"});
    from.any(std::array{"plied together", "plied", "together", "verzwirnt", "retors"});
    if (from.any(ways)) from.any(std::array{"plied", "ply"});
    from.take("yarn");
    return from.done() && out >= 1 && out <= 12 && out == std::floor(out) ? static_cast<int>(out)
                                                                          : 0;
}

}  // namespace gristwright::catalog
