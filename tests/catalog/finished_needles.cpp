// Needles: what the plans of the finished pieces want beside what the pieces name, and whether a
// rule fitted to the shawls would do better on those that it has not seen.
#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "tests/catalog/finished_pieces.hpp"

namespace finished {
namespace {

std::vector<Piece> naming_a_needle(const std::string& kind) {
    auto out = of_kind(pieces(Known::yarn), kind);
    std::erase_if(out, [](const Piece& p) { return p.needle_named <= 0; });
    return out;
}

double root_mean_square(const std::vector<double>& of) {
    double squares = 0;
    for (const double x : of) squares += x * x;
    return std::sqrt(squares / double(of.size()));
}

// ln needle = at + power x ln(grist / 4 m/g), by least squares.
struct Rule {
    double at = 0, power = 0;
    double of(const Piece& p) const { return at + power * std::log(p.grist / 4); }
};

Rule fitted(const std::vector<Piece>& to, const std::string& without) {
    double n = 0, x = 0, y = 0, xx = 0, xy = 0;
    for (const auto& p : to) {
        if (p.series == without) continue;
        const double g = std::log(p.grist / 4), size = std::log(p.needle_named);
        n += 1, x += g, y += size, xx += g * g, xy += g * size;
    }
    const double power = (n * xy - x * y) / (n * xx - x * x);
    return {(y - power * x) / n, power};
}

std::string by_kind() {
    std::string out =
        "\n| kind | n | wanted to named, median | root mean square (ln) |\n| --- | --- | --- | --- "
        "|\n";
    for (const auto& kind : kinds()) {
        std::vector<double> ratios, apart;
        for (const auto& p : naming_a_needle(kind)) {
            ratios.push_back(p.needle_wanted / p.needle_named);
            apart.push_back(std::log(ratios.back()));
        }
        if (ratios.empty()) continue;
        out += fmt::format("| {} | {} | {:.2f} | {:.2f} |\n", kind, ratios.size(), median(ratios),
                           root_mean_square(apart));
    }
    return out;
}

std::string left_out_by_turns() {
    const auto shawls = naming_a_needle("shawls");
    std::vector<double> table, rule;
    std::vector<double> sizes, powers;
    for (const auto& p : shawls) {
        const auto others = fitted(shawls, p.series);
        sizes.push_back(std::exp(others.at)), powers.push_back(others.power);
        rule.push_back(others.of(p) - std::log(p.needle_named));
        table.push_back(std::log(p.needle_wanted / p.needle_named));
    }
    const auto [small, large] = std::minmax_element(sizes.begin(), sizes.end());
    const auto [least, most] = std::minmax_element(powers.begin(), powers.end());
    return fmt::format(
        "\nShawls, leaving one series out at a time: a needle of a x (grist / 4 m/g)^b fitted to "
        "the\n"
        "others has a from {:.1f} to {:.1f} mm and b from {:+.2f} to {:+.2f}, and misses the one "
        "left\n"
        "out by {:.2f} (root mean square, ln). The table of purposes, set by hand beside the same\n"
        "pieces, misses by {:.2f}.\n",
        *small, *large, *least, *most, root_mean_square(rule), root_mean_square(table));
}

}  // namespace

std::string needle_section() {
    return "\n### Needles\n\nWhat the plan wants, before it is rounded to a size that is sold, "
           "beside "
           "what the piece names.\n" +
           by_kind() + left_out_by_turns();
}

}  // namespace finished
