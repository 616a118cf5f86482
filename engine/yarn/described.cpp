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

constexpr std::string_view right = "like 8/2 cotton, Nm 20/2, 300 tex or 400m/100g";

// What a word after the count says of its system.
struct Sold {
    std::string_view word, system;
};
constexpr std::array<Sold, 13> sold_by{{
    {"cotton", "cotton count"},
    {"ne", "cotton count"},
    {"cottolin", "cotton count"},
    {"linen", "linen lea"},
    {"flax", "linen lea"},
    {"hemp", "linen lea"},
    {"lea", "linen lea"},
    {"nm", "metric count"},
    {"metric", "metric count"},
    {"nec", "cotton count"},
    {"nel", "linen lea"},
    {"nw", "worsted count"},
    {"worsted", "worsted count"},
}};

Refused not_read(std::string_view text, std::string_view why) {
    return Refused(fmt::format("'{}': {}; {}", text, why, right));
}

Refused asked(std::string_view text, std::string_view ways) {
    return Refused(fmt::format("'{}': {}: which? Write it {}", text, ways, right));
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

// "2/12s", as counts are spoken: twos of twelves.
void drop_plural(std::string_view& rest) {
    if (rest.starts_with("'s") || rest.starts_with("s ") || rest == "s")
        rest.remove_prefix(rest[0] == 's' ? 1 : 2);
}

LinearDensity folded_count(std::string_view text, double one, std::string_view rest,
                           std::string_view said = "") {
    const double other = take_number(rest);
    if (other <= 0) throw not_read(text, "a number of strands is missing");
    drop_plural(rest);
    const auto system = said.empty() ? system_named(rest) : said;
    if (system.empty())
        throw asked(text,
                    "the count's system is not said: cotton, linen, Nm (metric) or worsted "
                    "(wool is sold by either of the last two, 13 % apart)");
    const double count = std::max(one, other), strands = std::min(one, other);
    return linear_density_of(count, count_system(system)) * strands;
}

}  // namespace

namespace {

void drop_spaces(std::string_view& rest) {
    while (rest.starts_with(' ')) rest.remove_prefix(1);
}

// "Nm 6/1", "R 50 tex/2": the first word is taken off where a figure stands behind it.
bool take_before_figure(std::string_view& rest, std::string_view word) {
    if (!rest.starts_with(word)) return false;
    auto behind = rest.substr(word.size());
    drop_spaces(behind);
    if (behind.empty() || !ascii::is_digit(behind[0])) return false;
    rest = behind;
    return true;
}

std::string_view take_system(std::string_view& rest) {
    for (const auto& symbol : {"nm", "ne", "nec", "nel", "nw"})
        if (take_before_figure(rest, symbol)) return system_named(symbol);
    return "";
}

// A count that grows with the yarn: its word's system. Empty: none stands there.
std::string_view take_direct(std::string_view& rest) {
    drop_spaces(rest);
    for (const auto& [word, system] :
         {Sold{"tex", "tex"}, Sold{"denier", "denier"}, Sold{"den", "denier"}})
        if (rest.starts_with(word)) {
            rest.remove_prefix(word.size());
            drop_spaces(rest);
            return system;
        }
    return "";
}

// "50 tex" is of the yarn as it is, "50 tex x 2" two such strands. "50 tex/2" may be either; with
// an R in front it is the whole.
LinearDensity by_weight(std::string_view text, LinearDensity one, std::string_view rest,
                        bool resultant) {
    if (rest.empty()) return one;
    const bool times = rest.front() == 'x';
    if (!times && rest.front() != '/') throw not_read(text, "something stands behind the count");
    rest.remove_prefix(1);
    drop_spaces(rest);
    const double strands = take_number(rest);
    if (strands <= 0 || !rest.empty()) throw not_read(text, "a number of strands is missing");
    if (times) return one * strands;
    if (resultant) return one;
    throw asked(text, "of the whole yarn (R 50 tex/2) or of each strand (50 tex x 2)");
}

LinearDensity in_system(std::string_view text, double first, std::string_view rest,
                        std::string_view system) {
    if (rest.starts_with('/')) return folded_count(text, first, rest.substr(1), system);
    return linear_density_of(first, count_system(system));
}

}  // namespace

bool begins_as_a_count(std::string_view text) {
    const auto typed = ascii::lowered(text);
    std::string_view rest = typed;
    if (take_before_figure(rest, "r") || !take_system(rest).empty()) return true;
    return take_number(rest) > 0 && !take_direct(rest).empty();
}

LinearDensity read_described_yarn(std::string_view text) {
    const auto typed = ascii::lowered(text);
    std::string_view rest = typed;
    const bool resultant = take_before_figure(rest, "r");
    const auto system = take_system(rest);
    const double first = take_number(rest);
    if (first <= 0) throw not_read(text, "it does not begin with a count");
    if (!system.empty()) return in_system(text, first, rest, system);
    if (rest.starts_with('/') && !resultant) return folded_count(text, first, rest.substr(1));
    if (const auto direct = take_direct(rest); !direct.empty())
        return by_weight(text, linear_density_of(first, count_system(direct)), rest, resultant);
    if (resultant) throw not_read(text, "behind R stands the count of the whole, as R 50 tex/2");
    if (rest == "yd/lb" || rest == "ypp")
        return linear_density_of(first, count_system("yards per pound"));
    if (rest == "m/g") return linear_density_of(first, count_system("metres per gram"));
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
