// What people write and how it is read: rows that anybody can add to and argue with
// (tests/cases/read_suggestions.csv). All that was read is compared, so a row also says what must
// not be read.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "catalog/reference/catalogue.hpp"
#include "engine/suggestion/understand.hpp"
#include "tests/cases.hpp"

using namespace gristwright;

namespace {

std::string tenth(double value) { return fmt::format("{:g}", std::round(value * 10) / 10); }

std::string name_of(const NamedFabric& fabric) {
    return fabric.knitted.empty() ? fabric.woven : fabric.knitted;
}

// Whose it is, where each of several people has one.
std::string whose(const Wanted& w) {
    if (w.wearer == Wearer::unsaid) return "";
    const auto age = w.years ? " " + tenth(*w.years) : w.body.empty() ? "" : " " + w.body;
    return fmt::format(" ({}{})", words(w.wearer), age);
}

std::string things_read(const Taken& t) {
    if (t.wanted.empty()) return "nothing";
    std::string out;
    for (const auto& w : t.wanted)
        out += (out.empty()      ? ""
                : t.alternatives ? " | "
                                 : " + ") +
               w.kind + (w.count > 1 ? fmt::format(" x{}", w.count) : "") + whose(w);
    return out;
}

std::string measures(const Taken& t) {
    std::string out;
    if (!t.wanted.empty()) {
        const auto& w = t.wanted.front();
        if (!w.sizes.empty()) out += w.only_width ? "; wide" : "; size";
        for (const auto size : w.sizes) out += " " + tenth(in_centimetres(size));
        if (w.needs) out += fmt::format("; needs {:.0f} m", in_metres(*w.needs));
        if (w.needs_mass) out += fmt::format("; needs {:.0f} g", in_grams(*w.needs_mass));
    }
    if (t.warp) out += "; warp " + tenth(in_centimetres(*t.warp));
    if (t.loom_waste) out += "; waste " + tenth(in_centimetres(*t.loom_waste));
    if (t.at_hand) out += fmt::format("; at hand {:.0f} m", in_metres(*t.at_hand));
    if (t.at_hand_mass) out += fmt::format("; at hand {:.0f} g", in_grams(*t.at_hand_mass));
    if (t.at_hand_skeins) out += fmt::format("; at hand {:g} skeins", *t.at_hand_skeins);
    if (t.share_of_thing) out += fmt::format("; {:g} of one", *t.share_of_thing);
    if (t.share_of_yarn) out += fmt::format("; {:g} of the yarn", *t.share_of_yarn);
    for (const auto& said : t.left_out) out += "; left out " + said;
    for (const auto& said : t.aside) out += "; aside " + said;
    if (!t.kin.empty()) out += "; kin " + t.kin;
    if (!t.how_big.empty()) out += "; no measure " + t.how_big;
    if (t.colours > 1) out += fmt::format("; colours {}", t.colours);
    if (!t.named.empty()) out += "; named " + t.named;
    if (!t.material.empty()) out += "; of " + t.material_said;
    if (!t.weight.empty()) out += "; weight " + t.weight;
    if (t.needle) out += fmt::format("; needle {:g}", in_millimetres(*t.needle));
    if (t.gauge) out += "; gauge " + tenth(in_stitches_per_10cm(*t.gauge));
    if (t.sett) out += "; sett " + tenth(in_ends_per_10cm(*t.sett));
    return out;
}

// In a fixed order, what is not said left out: "hat x2; fabric cables; for child".
std::string reading(const Taken& t) {
    if (t.not_an_idea) return "talk";
    auto out = things_read(t);
    if (!t.wanted.empty() && !t.wanted.front().form.empty())
        out += "; form " + t.wanted.front().form;
    if (t.craft) out += fmt::format("; craft {}", words(*t.craft));
    if (t.fabric.named()) out += "; fabric " + name_of(t.fabric);
    out += measures(t);
    if (t.role != YarnRole::unsaid) out += fmt::format("; role {}", words(t.role));
    if (t.wearer != Wearer::unsaid) out += fmt::format("; for {}", words(t.wearer));
    if (!t.body.empty()) out += "; body " + t.body;
    if (t.years) out += "; years " + tenth(*t.years);
    if (!t.shoe.empty()) out += "; shoe " + t.shoe;
    if (!t.letters.empty()) out += "; letters " + t.letters;
    if (!t.no_unit.empty()) out += "; no unit " + t.no_unit;
    if (!t.worn_by.empty()) out += "; worn by " + t.worn_by;
    for (const auto& kind : t.ruled_out) out += "; not " + kind;
    for (const auto& unmade : t.not_known) out += "; unknown " + unmade.said;
    for (const auto topic : t.topics) out += fmt::format("; about {}", words(topic));
    return out;
}

// The parts in one order.
std::string sorted(const std::string& text) {
    std::vector<std::string> parts;
    for (std::size_t from = 0; from <= text.size();) {
        const auto end = std::min(text.find("; ", from), text.size());
        parts.push_back(text.substr(from, end - from));
        from = end + 2;
    }
    std::sort(parts.begin() + 1, parts.end());
    std::string out;
    for (const auto& part : parts) out += (out.empty() ? "" : "; ") + part;
    return out;
}

}  // namespace

TEST_CASE("what people write is read as the table says, and nothing besides") {
    const auto catalogue = catalog::built_in();
    const Lexicon lexicon(catalogue.words.text(), catalogue.kinds);
    Stemmer stemmer;
    const auto rows = read_cases("read_suggestions.csv");
    REQUIRE(rows.size() >= 150);
    for (const auto& row : rows) {
        CAPTURE(row.at("text"));
        CHECK(sorted(reading(understand(row.at("text"), lexicon, stemmer))) ==
              sorted(row.at("reads")));
    }
}
