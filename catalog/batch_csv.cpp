// Skeins from a spreadsheet: headers in a person's own words, units in the header or in the cells.
#include <algorithm>

#include "catalog/bad_text.hpp"
#include "catalog/batch_text.hpp"
#include "catalog/csv.hpp"

#include "engine/units/ascii.hpp"

namespace gristwright::catalog {
namespace {

enum class Role { none, name, length, mass, state };

struct Heading {
    Role role = Role::none;
    std::string unit;  // from the header: "Length (yd)"
};

std::vector<std::string> words_of(const std::string& header) {
    std::vector<std::string> words(1);
    for (const char c : header) {
        if (ascii::is_letter(c))
            words.back() += ascii::lower(c);
        else if (!words.back().empty())
            words.emplace_back();
    }
    return words;
}

struct Synonym {
    const char* word;
    Role role;
    const char* unit;  // that the word itself names
};

constexpr Synonym synonyms[] = {
    {"name", Role::name, ""},        {"skein", Role::name, ""},     {"hank", Role::name, ""},
    {"ball", Role::name, ""},        {"label", Role::name, ""},     {"id", Role::name, ""},
    {"length", Role::length, ""},    {"metres", Role::length, "m"}, {"meters", Role::length, "m"},
    {"metre", Role::length, "m"},    {"m", Role::length, "m"},      {"yards", Role::length, "yd"},
    {"yardage", Role::length, "yd"}, {"yd", Role::length, "yd"},    {"yds", Role::length, "yd"},
    {"mass", Role::mass, ""},        {"weight", Role::mass, ""},    {"grams", Role::mass, "g"},
    {"gram", Role::mass, "g"},       {"g", Role::mass, "g"},        {"ounces", Role::mass, "oz"},
    {"oz", Role::mass, "oz"},        {"kg", Role::mass, "kg"},      {"state", Role::state, ""},
    {"measured", Role::state, ""},
};

// A unit decides over a general word: "skein length (yd)" is a length in yards.
Heading heading_of(const std::string& header) {
    Heading out;
    for (const auto& word : words_of(header))
        for (const auto& s : synonyms) {
            if (word != s.word) continue;
            if (out.role == Role::none || (out.role == Role::name && s.role != Role::name))
                out.role = s.role;
            if (s.role == out.role && *s.unit) out.unit = s.unit;
        }
    return out;
}

bool bare_number(const std::string& cell) { return !cell.empty() && ascii::is_digit(cell.back()); }

Written cell(const CsvRow& row, std::size_t column, const Heading& heading,
             const std::string& header, const std::string& file) {
    auto text = row.fields[column];
    if (bare_number(text) && !heading.unit.empty()) text += " " + heading.unit;
    return {text, fmt::format("{}:{}: {}", file, row.number, header)};
}

}  // namespace

BatchText read_batch_csv(std::string_view text, const std::string& file) {
    const auto csv = read_csv(text, file);
    std::vector<Heading> headings;
    BatchText out;
    const auto has = [&](Role role) {
        return std::any_of(headings.begin(), headings.end(),
                           [&](const Heading& h) { return h.role == role; });
    };
    for (const auto& header : csv.headers) {
        auto heading = heading_of(header);
        if (heading.role != Role::none && has(heading.role)) heading.role = Role::none;
        if (heading.role == Role::none && !header.empty())
            out.notes.push_back(fmt::format("{}: column '{}' is not used", file, header));
        headings.push_back(heading);
    }
    if (!has(Role::length) || !has(Role::mass))
        throw BadText(file, 1,
                      fmt::format("the header needs a column of {}, such as 'Length (yd)' or "
                                  "'grams'",
                                  has(Role::length) ? "masses" : "lengths"));
    for (const auto& row : csv.rows) {
        SkeinText skein;
        for (std::size_t c = 0; c < headings.size(); ++c) {
            const auto read = [&] { return cell(row, c, headings[c], csv.headers[c], file); };
            if (headings[c].role == Role::name) skein.name = {row.fields[c], read().where};
            if (headings[c].role == Role::length) skein.length = read();
            if (headings[c].role == Role::mass) skein.mass = read();
            if (headings[c].role == Role::state) skein.state = {row.fields[c], read().where};
        }
        out.skeins.push_back(std::move(skein));
    }
    if (out.skeins.empty()) throw BadText(file, 0, "no skeins under the header");
    return out;
}

}  // namespace gristwright::catalog
