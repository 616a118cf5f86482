#include "catalog/typed/suggestion_sheet.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/text/bad_text.hpp"
#include "catalog/typed/headings.hpp"
#include "catalog/typed/suggestion_headings.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::size_t most_titles = 10;
constexpr std::size_t longest_total = 24;  // "Sum of all the yards:"

bool is_of_the_yarn(std::string_view key) { return key == "needs"; }

bool is_of_a_size(std::string_view key) { return key == "size" || key == "sizes"; }

bool is_unit_of_mass(const std::string& unit) {
    return unit == "g" || unit == "kg" || unit.starts_with("gram") || unit.starts_with("oz") ||
           unit.starts_with("ounce") || unit.starts_with("lb");
}

bool is_short(const std::string& unit) {
    return unit.starts_with("cm") || unit.starts_with("in") || unit == "mm" ||
           unit.starts_with("ft") || unit.starts_with("feet") || unit.starts_with("centi");
}

SuggestionColumn column_of(const std::string& header, const SpokenWords& spoken) {
    const auto heading = heading_of(header);
    const auto said = heading_of_suggestion(header, spoken);
    SuggestionColumn out{header, said.key, heading.unit, "", said.weak, "", said.bare_who};
    const bool measured = out.key.empty() || out.key == "weight";
    if (measured && is_unit_of_mass(heading.unit)) out.key = "needs";
    const auto word = ascii::lowered_letters(header);
    if (out.key == "needs" && out.unit.empty()) {
        if (word.starts_with("yardage")) out.unit = "yd";
        if (word == "meterage" || word == "metreage") out.unit = "m";
        if (!out.unit.empty()) out.note = fmt::format("bare numbers are taken in {}", out.unit);
    }
    if (out.key == "sett" && out.unit.empty() && (word == "epi" || word == "endsperinch"))
        out.unit = "epi";
    if (out.key.empty() && (word.starts_with("width") || word.starts_with("wide")))
        out.why_not = "the article keeps its own width";
    return out;
}

bool is_a_bare_length(const SuggestionColumn& column) {
    return column.key.empty() && ascii::lowered_letters(column.header).starts_with("length");
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

// The column that says it outright, else the first.
const SuggestionColumn& holder(const std::string& key, const std::vector<SuggestionColumn>& all) {
    const auto of_key = [&](const auto& c) { return c.key == key; };
    const auto outright = [&](const auto& c) { return c.key == key && !c.weak; };
    const auto found = std::find_if(all.begin(), all.end(), outright);
    return found != all.end() ? *found : *std::find_if(all.begin(), all.end(), of_key);
}

// "Who" beside no sender is the sender, and the wearer where it names one.
void settle_who(SuggestionColumn& column, const std::vector<SuggestionColumn>& all) {
    if (!column.bare_who) return;
    if (std::any_of(all.begin(), all.end(), [](const auto& c) { return c.key == "from"; })) return;
    column.is_sender_too = true;
    column.note =
        "taken for who suggested it, and for whom it is where it names a baby, a child or a pet; "
        "call it 'from' or 'for whom' to be sure";
}

std::size_t count_filled(const std::vector<std::string>& fields) {
    return static_cast<std::size_t>(
        std::count_if(fields.begin(), fields.end(), [](const auto& f) { return !f.empty(); }));
}

// What the cell says, in its heading's unit where it has none.
std::string with_heading(const SuggestionColumn& column, const std::string& cell) {
    if (column.unit.empty()) return cell;
    if (is_of_a_size(column.key)) return with_unit(cell, column.unit);
    const bool bare = is_of_the_yarn(column.key) ? lacks_unit(cell) : bare_number(cell);
    return bare ? cell + " " + column.unit : cell;
}

}  // namespace

std::vector<SuggestionColumn> suggestion_columns(const std::vector<std::string>& headers,
                                                 const SpokenWords& spoken) {
    std::vector<SuggestionColumn> out;
    for (const auto& header : headers) out.push_back(column_of(header, spoken));
    const bool amounts =
        std::any_of(out.begin(), out.end(), [](const auto& c) { return is_of_the_yarn(c.key); });
    for (auto& column : out)
        if (is_a_bare_length(column)) settle_length(column, amounts);
    for (auto& column : out) settle_who(column, out);
    for (auto& column : out) {
        if (column.key.empty() || is_of_the_yarn(column.key) || &column == &holder(column.key, out))
            continue;
        column.key.clear();
        column.why_not = "another column holds that";
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
    columns_ = suggestion_columns(headers_, spoken_);
    notes_.clear();
    for (const auto& column : columns_)
        if (column.key.empty() && !column.header.empty())
            notes_.push_back(fmt::format("column '{}' is not used{}{}", column.header,
                                         column.why_not.empty() ? "" : ": ", column.why_not));
        else if (column.is_sender_too)
            notes_.push_back(fmt::format("column '{}' is {}", column.header, column.note));
}

bool SuggestionSheet::names_an_idea(const std::string& cell) const {
    return heading_of_suggestion(cell, spoken_).key == "idea";
}

bool SuggestionSheet::header(const std::vector<std::string>& fields) {
    const bool found =
        titles_ < most_titles &&
        std::any_of(fields.begin(), fields.end(), [&](const auto& f) { return names_an_idea(f); });
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

// "Suggestions" alone in the line above looked like a heading.
bool SuggestionSheet::is_header_below_title(const CsvRow& row) const {
    return rows_ == 0 && count_filled(headers_) == 1 && count_filled(row.fields) > 1 &&
           std::any_of(row.fields.begin(), row.fields.end(),
                       [&](const auto& f) { return names_an_idea(f); });
}

void SuggestionSheet::note_once(std::size_t column, const std::string& note) {
    if (noted_.insert(column).second) notes_.push_back(note);
}

void SuggestionSheet::take_cell(std::size_t c, const std::string& cell, SuggestionText& out) {
    if (c >= columns_.size()) return;  // said of its row
    const auto& column = columns_[c];
    if (column.key.empty()) {
        if (column.header.empty())
            note_once(c, fmt::format("column {} has no heading and is not used", c + 1));
        return;
    }
    if (column.key != "idea" && says_nothing(cell)) return;
    if (out.contains(column.key))
        return note_once(c, fmt::format("column '{}' is not used in rows where another column "
                                        "holds that",
                                        column.header));
    const auto said = with_heading(column, cell);
    if (said != cell && !column.note.empty())
        note_once(c, fmt::format("column '{}': {}", column.header, column.note));
    out[column.key] = said;
    if (column.is_sender_too) out["from"] = cell;
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
    if (is_header_below_title(row)) return take(row.fields), std::nullopt;
    ++rows_;
    SuggestionText out;
    above_.resize(std::max(above_.size(), row.fields.size()));
    for (std::size_t c = 0; c < row.fields.size(); ++c) {
        if (row.fields[c].empty()) continue;
        const bool again = is_ditto(row.fields[c]) && !above_[c].empty();
        if (!again) above_[c] = row.fields[c];
        take_cell(c, above_[c], out);
    }
    const auto idea = out.find("idea");
    if (idea == out.end() || idea->second.size() > longest_total || !names_a_total(idea->second))
        return out;
    notes_.push_back(
        fmt::format("line {}: '{}' is no suggestion and is left out", row.number, idea->second));
    return {};
}

}  // namespace gristwright::catalog
