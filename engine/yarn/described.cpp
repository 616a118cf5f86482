#include "engine/yarn/described.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <stdexcept>
#include <string>

#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright {
namespace {

constexpr std::string_view right = "like 8/2 cotton, 2/20 Nm, 300 tex or 400m/100g";

// What a word after the count says of its system.
struct Sold {
    std::string_view word, system;
};
constexpr std::array<Sold, 10> sold_by{{
    {"cotton", "cotton count"},
    {"ne", "cotton count"},
    {"cottolin", "cotton count"},
    {"linen", "linen lea"},
    {"flax", "linen lea"},
    {"hemp", "linen lea"},
    {"lea", "linen lea"},
    {"nm", "metric count"},
    {"metric", "metric count"},
    {"worsted", "worsted count"},
}};

Refused not_read(std::string_view text, std::string_view why) {
    return Refused(fmt::format("'{}': {}; {}", text, why, right));
}

// Takes a number from the front; 0: there is none.
double take_number(std::string_view& rest) {
    double value = 0;
    const auto read = std::from_chars(rest.data(), rest.data() + rest.size(), value);
    if (read.ec != std::errc{} || !(value > 0 && value < 1e5)) return 0;
    rest.remove_prefix(static_cast<std::size_t>(read.ptr - rest.data()));
    return value;
}

// The first system that a word names; empty: none does.
std::string_view system_named(std::string_view words) {
    const auto text = " " + ascii::lowered(words) + " ";
    for (const auto& s : sold_by)
        if (text.find(" " + std::string(s.word) + " ") != std::string::npos) return s.system;
    return "";
}

bool names(std::string_view text, std::initializer_list<std::string_view> fibres) {
    const auto words = ascii::lowered(text);
    return std::any_of(fibres.begin(), fibres.end(),
                       [&](auto fibre) { return words.find(fibre) != std::string::npos; });
}

bool names_bast(std::string_view text) { return names(text, {"linen", "flax", "hemp", "ramie"}); }
bool names_cotton(std::string_view text) { return names(text, {"cotton", "cottolin"}); }

LinearDensity folded_count(std::string_view text, double one, std::string_view rest) {
    const double other = take_number(rest);
    if (other <= 0) throw not_read(text, "a number of strands is missing");
    const auto system = system_named(rest);
    if (system.empty())
        throw not_read(text,
                       "the count's system is not said: cotton, linen, Nm (metric) or worsted "
                       "(wool is sold by either of the last two, 13 % apart)");
    const double count = std::max(one, other), strands = std::min(one, other);
    return linear_density_of(count, count_system(system)) * strands;
}

}  // namespace

LinearDensity read_described_yarn(std::string_view text) {
    auto rest = text;
    const double first = take_number(rest);
    if (first <= 0) throw not_read(text, "it does not begin with a count");
    if (!rest.empty() && rest.front() == '/') return folded_count(text, first, rest.substr(1));
    const auto unit = ascii::lowered(rest);
    if (unit == "tex" || unit == " tex") return tex(first);
    if (unit == "yd/lb" || unit == " yd/lb" || unit == "ypp" || unit == " ypp")
        return linear_density_of(first, count_system("yards per pound"));
    if (unit == "m/g" || unit == " m/g")
        return linear_density_of(first, count_system("metres per gram"));
    const auto [length, mass] = read_skein(text);
    return mass.value / length.value;
}

std::optional<double> described_hair(std::string_view text) {
    const bool hair = names(text, {"wool", "worsted", "merino", "shetland", "alpaca", "mohair"});
    const bool still = names_bast(text) || names_cotton(text) ||
                       names(text, {"silk", "rayon", "viscose", "bamboo", "lyocell", "acrylic"});
    if (hair && still) return 0.5;
    if (hair || still) return hair ? 1.0 : 0.0;
    return {};
}

double described_close_packing(std::string_view text) {
    if (names_cotton(text)) return constants::cotton_spun.c;
    return names_bast(text) ? constants::bast_spun.c : constants::worsted_c;
}

}  // namespace gristwright
