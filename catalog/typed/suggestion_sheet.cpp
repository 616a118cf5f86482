#include "catalog/typed/suggestion_sheet.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "catalog/text/bad_text.hpp"
#include "catalog/typed/headings.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::size_t most_titles = 10;
constexpr std::size_t longest_total = 24;  // "Sum of all the yards:"

std::string lower_letters(std::string_view text) {
    std::string out;
    for (const char c : text)
        if (ascii::is_letter(c)) out += ascii::lower(c);
    return out;
}

struct Synonym {
    std::string_view word, key;
};
constexpr Synonym synonyms[] = {
    {"idea", "idea"},
    {"ideas", "idea"},
    {"suggestion", "idea"},
    {"suggestions", "idea"},
    {"article", "idea"},
    {"project", "idea"},
    {"what", "idea"},
    {"comment", "idea"},
    {"craft", "craft"},
    {"needs", "needs"},
    {"yardage", "needs"},
    {"meterage", "needs"},
    {"metreage", "needs"},
    {"amount", "needs"},
    {"yarn", "needs"},
    {"yarnneeded", "needs"},
    {"yarnneeds", "needs"},
    {"yarnrequired", "needs"},
    {"yarnamount", "needs"},
    {"amountofyarn", "needs"},
    {"howmuchyarn", "needs"},
    {"howmuchyarnneeded", "needs"},
    {"howmuch", "needs"},
    {"yardsneeded", "needs"},
    {"metresneeded", "needs"},
    {"metersneeded", "needs"},
    {"yards", "needs"},
    {"yds", "needs"},
    {"yd", "needs"},
    {"metres", "needs"},
    {"meters", "needs"},
    {"m", "needs"},
    {"grams", "needs"},
    {"g", "needs"},
    {"ounces", "needs"},
    {"oz", "needs"},
    {"weight", "weight"},
    {"weightclass", "weight"},
    {"yarnweight", "weight"},
    {"class", "weight"},
    {"grist", "grist"},
    {"gauge", "gauge"},
    {"tension", "gauge"},
    {"sett", "sett"},
    {"epi", "sett"},
    {"needle", "needle"},
    {"needles", "needle"},
    {"needlesize", "needle"},
    {"size", "size"},
    {"finishedsize", "size"},
    {"finishedlength", "size"},
    {"span", "size"},
    {"height", "size"},
    {"around", "size"},
    {"circumference", "size"},
    {"sizes", "sizes"},
    {"comesin", "sizes"},
    {"colours", "colours"},
    {"colors", "colours"},
    {"who", "who"},
    {"forwhom", "who"},
    {"for", "who"},
    {"wearer", "who"},
    {"from", "from"},
    {"by", "from"},
    {"name", "from"},
    {"sender", "from"},
    {"when", "when"},
    {"date", "when"},
};

bool is_of_the_yarn(std::string_view key) { return key == "needs"; }

// The heading without what stands in brackets, and without a unit behind it.
std::string_view key_of(const std::string& header) {
    const auto whole = lower_letters(header);
    const auto bare = lower_letters(std::string_view(header).substr(0, header.find('(')));
    const auto before_unit = header.find_last_of(" ,");
    const auto without_unit = lower_letters(
        std::string_view(header).substr(0, before_unit == std::string::npos ? 0 : before_unit + 1));
    for (const auto& word : {whole, bare, without_unit})
        for (const auto& s : synonyms)
            if (word == s.word) return s.key;
    return "";
}

bool is_mass(const std::string& unit) {
    return unit == "g" || unit == "kg" || unit.starts_with("gram") || unit.starts_with("oz") ||
           unit.starts_with("ounce") || unit.starts_with("lb");
}

bool is_short(const std::string& unit) {
    return unit.starts_with("cm") || unit.starts_with("in") || unit == "mm" ||
           unit.starts_with("ft") || unit.starts_with("feet") || unit.starts_with("centi");
}

SuggestionColumn column_of(const std::string& header) {
    const auto heading = heading_of(header);
    SuggestionColumn out{header, std::string(key_of(header)), heading.unit, ""};
    const bool measured = out.key.empty() || out.key == "weight";
    if (measured && is_mass(heading.unit)) out.key = "needs";
    const auto word = lower_letters(header);
    if (out.key.empty() && (word.starts_with("width") || word.starts_with("wide")))
        out.why_not = "the article keeps its own width";
    return out;
}

bool is_a_bare_length(const SuggestionColumn& column) {
    return column.key.empty() && lower_letters(column.header).starts_with("length");
}

// "Length" beside a column of amounts is the article's; alone it may be the yarn's as well.
void settle_length(SuggestionColumn& length, bool amounts_stand_beside) {
    if (amounts_stand_beside || is_short(length.unit)) {
        length.key = "size";
        return;
    }
    throw Refused(
        fmt::format("column '{}': of the yarn, or of the article? Name it 'needs' or "
                    "'size'",
                    length.header));
}

}  // namespace

std::vector<SuggestionColumn> suggestion_columns(const std::vector<std::string>& headers) {
    std::vector<SuggestionColumn> out;
    for (const auto& header : headers) out.push_back(column_of(header));
    const bool amounts =
        std::any_of(out.begin(), out.end(), [](const auto& c) { return is_of_the_yarn(c.key); });
    for (auto& column : out)
        if (is_a_bare_length(column)) settle_length(column, amounts);
    for (auto c = out.begin(); c != out.end(); ++c) {
        const bool before =
            std::any_of(out.begin(), c, [&](const auto& other) { return other.key == c->key; });
        if (!before || c->key.empty() || is_of_the_yarn(c->key)) continue;
        c->key.clear();
        c->why_not = "another column holds that";
    }
    return out;
}

std::size_t SuggestionSheet::column(std::string_view key) const {
    const auto found =
        std::find_if(columns_.begin(), columns_.end(), [&](const auto& c) { return c.key == key; });
    return static_cast<std::size_t>(found - columns_.begin());
}

void SuggestionSheet::take(std::vector<std::string> headers) {
    headers_ = std::move(headers);
    columns_ = suggestion_columns(headers_);
    notes_.clear();
    for (const auto& column : columns_)
        if (column.key.empty() && !column.header.empty())
            notes_.push_back(fmt::format("column '{}' is not used{}{}", column.header,
                                         column.why_not.empty() ? "" : ": ", column.why_not));
}

bool SuggestionSheet::header(const std::vector<std::string>& fields) {
    const bool found =
        titles_ < most_titles && std::any_of(fields.begin(), fields.end(),
                                             [](const auto& f) { return key_of(f) == "idea"; });
    if (found) try {
            return take(fields), true;
        } catch (const Refused& error) {
            throw BadText(file_, titles_ + 1, error.what());
        }
    ++titles_;
    return false;
}

// Headings that were joined over several columns have their own words in the line below.
bool SuggestionSheet::is_second_header(const CsvRow& row) const {
    const auto idea = column("idea");
    if (rows_ > 0 || idea >= row.fields.size() || !row.fields[idea].empty()) return false;
    bool words = false;
    for (const auto& field : row.fields) {
        if (field.find_first_of("0123456789") != std::string::npos) return false;
        words = words || !field.empty();
    }
    return words;
}

std::optional<SuggestionText> SuggestionSheet::row(const CsvRow& row) {
    if (is_second_header(row)) {
        auto joined = headers_;
        for (std::size_t c = 0; c < joined.size() && c < row.fields.size(); ++c)
            if (!row.fields[c].empty()) joined[c] = row.fields[c];
        take(joined);
        ++rows_;
        return {};
    }
    ++rows_;
    SuggestionText out;
    for (std::size_t c = 0; c < std::min(row.fields.size(), columns_.size()); ++c) {
        const auto& [header, key, unit, why_not] = columns_[c];
        auto text = row.fields[c];
        if (key.empty() || text.empty() || out.contains(key)) continue;
        if (!unit.empty() && bare_number(text)) text += " " + unit;
        out[key] = text;
    }
    const auto idea = out.find("idea");
    if (idea == out.end() || idea->second.size() > longest_total || !names_a_total(idea->second))
        return out;
    notes_.push_back(
        fmt::format("line {}: '{}' is no suggestion and is left out", row.number, idea->second));
    return {};
}

}  // namespace gristwright::catalog
