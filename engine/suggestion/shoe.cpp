#include "engine/suggestion/shoe.hpp"

#include <charconv>

#include "engine/suggestion/constants.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

using namespace constants;

double number_in(std::string_view said) {
    const auto from = said.find_first_of("0123456789");
    if (from == std::string_view::npos) return 0;
    int whole = 0;
    const auto* end = said.data() + said.size();
    const auto [at, error] = std::from_chars(said.data() + from, end, whole);
    if (error != std::errc()) return 0;
    const bool half = at + 1 < end && *at == '.' && at[1] == '5';
    return whole + (half ? 0.5 : 0.0);
}

}  // namespace

std::optional<Length> foot_of_shoe(std::string_view said, bool of_a_child) {
    const auto text = ascii::lowered(said);
    const auto says = [&](std::string_view word) { return text.find(word) != std::string::npos; };
    const double n = number_in(text);
    if (n <= 0) return {};
    const auto spare = centimetres(shoe_spare);
    const bool european = says("eu") || (n >= shoe_eu_least && !says("uk") && !says("us"));
    if (european && n >= shoe_eu_least && n <= shoe_eu_most)
        return centimetres(n * shoe_paris_point) - spare;
    if (of_a_child || european || n > shoe_adult_most) return {};
    const auto last = [&](double zero) { return inches((n + zero) / 3) - spare; };
    if (says("uk")) return last(shoe_uk_zero);
    if (says("us") && says("women")) return last(shoe_us_zero - shoe_women_later);
    if (says("us") && says("men")) return last(shoe_us_zero);
    return {};
}

}  // namespace gristwright
