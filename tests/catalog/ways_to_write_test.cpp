// Ways to write each kind of input (tests/cases/ways_to_write.csv): read rightly, asked or refused,
// never misread. Expected values stand in m, g, per inch (wraps, twist, setts), per 10 cm (gauges,
// heddles), mm, micron, per cent and m/g; empty: taken as not given.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <functional>
#include <sstream>

#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/headings.hpp"
#include "catalog/typed/skein_own.hpp"
#include "catalog/typed/suggestion_text.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/described.hpp"
#include "tests/cases.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

using Values = std::vector<double>;

// A batch with one skein and one more text.
MeasuredBatch batch(const char* key, const std::string& text) {
    BatchText out;
    out.skeins.push_back({{}, {"220m", ""}, {"100g", ""}, {}});
    if (std::string_view(key) != "wraps") out.fields["wraps"] = {{"16wpi", ""}};
    out.fields[key] = {{text, key}};
    if (std::string_view(key) == "fibre") {  // several options stand apart with a semicolon
        out.fields[key].clear();
        std::istringstream parts(text);
        for (std::string part; std::getline(parts, part, ';');)
            out.fields[key].push_back({part, key});
    }
    return interpret(out, carried());
}

std::string listed(const Values& values) {
    std::string out;
    for (const double value : values) out += fmt::format("{}{:.7g}", out.empty() ? "" : " ", value);
    return out;
}

std::string fibres(const std::string& text) {
    std::string out;
    for (const auto& part : batch("fibre", text).batch.fibre)
        out += fmt::format("{}{} {:.6g}", out.empty() ? "" : "; ", part.name, 100 * part.share);
    return out;
}

std::string word(const char* key, const std::string& text) {
    const auto read = batch(key, text).batch;
    const std::string_view which = key;
    if (which == "plies") return fmt::format("{}", read.plies);
    if (which == "preparation")
        return read.preparation == Preparation::unknown  ? ""
               : read.preparation == Preparation::carded ? "carded"
                                                         : "combed";
    if (which == "draw") return read.draw == Draw::long_draw ? "long" : "short";
    if (which == "wraps_how") return read.wraps->how == WrapsHow::packed ? "packed" : "laid";
    return read.skeins[0].state == LengthState::washed     ? "washed"
           : read.skeins[0].state == LengthState::off_reel ? "off the reel"
                                                           : "on the reel";
}

Values gauge(const std::string& text) {
    const auto read = read_gauge_and_rows(text);
    Values out{in_stitches_per_10cm(read.stitches)};
    if (read.rows) out.push_back(in_stitches_per_10cm(*read.rows));
    return out;
}

Values skein(const std::string& text) {
    const auto [length, mass] = split_skein(text);  // what is kept of it is read the same again
    const auto whole = read_skein(text), halves = read_skein(length, mass);
    CHECK(halves.first.value == whole.first.value);
    CHECK(halves.second.value == whole.second.value);
    CHECK(halves.second.step == whole.second.step);
    return {in_metres(whole.first.value), in_grams(whole.second.value)};
}

// How many, and the metres and grams of each.
std::string skeins(const std::string& text) {
    const auto said = read_skeins_said(text, "", carried().spoken);
    BatchText out;
    out.skeins = said;
    const auto read = interpret(out, carried()).batch.skeins;
    return fmt::format("{} x {}", read.size(),
                       listed({in_metres(read[0].length), in_grams(read[0].mass)}));
}

// What a heading of a sheet of skeins says, and its unit.
std::string heading_read(const std::string& text) {
    const auto read = heading_of(text);
    constexpr const char* names[] = {"nothing", "name",  "length", "mass",  "state",
                                     "wraps",   "fibre", "colour", "count", "preparation",
                                     "draw",    "plies", "other"};
    const auto unit = read.unit.empty() ? "" : " " + read.unit;
    return names[static_cast<int>(read.holds)] + unit + (read.of_each ? " each" : "");
}

Values heddles(const std::string& text) {
    Values out;
    for (const auto& heddle : batch("heddles", text).owned.heddles)
        out.push_back(in_ends_per_10cm(heddle.count));
    return out;
}

Values needles(const std::string& text) {
    Values out;
    for (const auto size : batch("needles", text).owned.needles)
        out.push_back(in_millimetres(size));
    return out;
}

Values staple(const std::string& text) {
    const auto part = batch("staple", text).batch.fibre.at(0);
    return {in_millimetres(*part.staple_low), in_millimetres(*part.staple_high)};
}

// "150 g" for a mass, metres for a length.
std::string amount(const std::string& text) {
    const auto read = read_suggestion({{"idea", "hat"}, {"needs", text}}, carried());
    return read.needs ? listed({in_metres(*read.needs)})
                      : listed({in_grams(*read.needs_mass)}) + " g";
}

// A length in cm, else the words that are read with the idea, or for whom it is.
std::string size(const std::string& text) {
    const auto read = read_suggestion({{"idea", "hat"}, {"size", text}}, carried());
    return read.size ? listed({in_centimetres(*read.size)}) : read.beside + read.who;
}

// A cell beside an idea, by its key.
std::string cell(const std::string& key, const std::string& text) {
    const auto read = read_suggestion({{"idea", "hat"}, {key, text}}, carried());
    if (key == "craft") return read.craft ? std::string(words(*read.craft)) : "";
    if (key == "colours") return fmt::format("{}", read.colours);
    for (const auto& c : carried().yarn.classes)
        if (c.number == read.weight_class) return c.name;
    return "";
}

std::string read(const std::string& kind, const std::string& text) {
    if (kind == "length") return listed({in_metres(read_length(text).value)});
    if (kind == "mass") return listed({in_grams(read_mass(text).value)});
    if (kind == "amount") return amount(text);
    if (kind == "size") return size(text);
    if (kind == "weight" || kind == "craft" || kind == "colours") return cell(kind, text);
    if (kind == "skein") return listed(skein(text));
    if (kind == "skeins") return skeins(text);
    if (kind == "heading") return heading_read(text);
    if (kind == "count") return listed({1e-3 / read_described_yarn(text).si()});
    if (kind == "grist") return listed({1e-3 / read_grist(text).si()});
    if (kind == "wraps")
        return listed({in_wraps_per_inch(batch("wraps", text).batch.wraps->count)});
    if (kind == "twist") return listed({in_turns_per_inch(read_twist(text))});
    if (kind == "twist_at_16wpi")
        return listed({in_turns_per_inch(*batch("twist", text).batch.ply_twist)});
    if (kind == "gauge") return listed(gauge(text));
    if (kind == "sett") return listed({in_ends_per_inch(read_sett(text))});
    if (kind == "heddle") return listed(heddles(text));
    if (kind == "needle") return listed(needles(text));
    if (kind == "micron") {
        const auto [low, high] = read_micron_range(text);
        return listed({in_microns(low), in_microns(high)});
    }
    if (kind == "staple") return listed(staple(text));
    if (kind == "share") return listed({100 * read_share(text)});
    if (kind == "fibre") return fibres(text);
    return word(kind.c_str(), text);
}

// Numbers as near as the table writes them, words exactly.
bool same(const std::string& got, const std::string& expected) {
    std::istringstream a(got), b(expected);
    for (std::string x, y;;) {
        const bool more = static_cast<bool>(a >> x);
        if (static_cast<bool>(b >> y) != more) return false;
        if (!more) return true;
        if (x == y) continue;
        char *end_x = nullptr, *end_y = nullptr;
        const double u = std::strtod(x.c_str(), &end_x), v = std::strtod(y.c_str(), &end_y);
        if (*end_x || *end_y || std::abs(u - v) > 1e-4 * std::abs(v)) return false;
    }
}

}  // namespace

TEST_CASE("promise: every way to write an input is read rightly, asked or refused") {
    std::size_t rows = 0;
    for (const auto& row : read_cases("ways_to_write.csv")) {
        ++rows;
        std::string got, said;
        try {
            got = read(row.at("kind"), row.at("text"));
        } catch (const std::invalid_argument& error) {
            said = error.what();
            got = said.find("which?") != std::string::npos ? "asked" : "refused";
        }
        INFO(row.at("kind") << " '" << row.at("text") << "': " << said);
        CHECK_MESSAGE(same(got, row.at("expected")),
                      "read '" << got << "', expected '" << row.at("expected") << "'");
    }
    CHECK(rows >= 300);
}
