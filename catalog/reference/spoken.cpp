#include "catalog/reference/spoken.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <stdexcept>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/csv.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::catalog {
namespace {

const std::string& field(const Csv& csv, const CsvRow& row, std::string_view column,
                         const std::string& file) {
    const auto at = csv.column(column);
    if (at == Csv::npos) throw BadText(file, 1, fmt::format("there is no column '{}'", column));
    return row.fields[at];
}

void add_once(SpokenWords& out, std::string_view list, const std::string& word,
              const Spoken& spoken, const std::string& file, std::size_t line) {
    if (spoken.means.empty() && spoken.note.empty())
        throw BadText(file, line, "a word without a meaning needs the question in its note");
    if (!out.add(list, word, spoken))
        throw BadText(file, line, fmt::format("'{}' stands twice", word));
}

bool is_of_a_word(char c) {
    return ascii::is_letter(c) || ascii::is_digit(c) || static_cast<unsigned char>(c) >= 0x80;
}

// The text up to `end`, taken off it with the sign.
std::string_view take_up_to(char end, std::string_view& text) {
    const auto at = std::min(text.find(end), text.size());
    const auto out = text.substr(0, at);
    text.remove_prefix(std::min(at + 1, text.size()));
    return out;
}

// Where the line of that word begins among `lines`; npos: nowhere.
std::size_t line_of(const std::string& lines, const std::string& word) {
    const auto begins = word + "\t";
    if (lines.starts_with(begins)) return 0;
    const auto at = lines.find("\n" + begins);
    return at == std::string::npos ? at : at + 1;
}

}  // namespace

std::string as_spoken(std::string_view typed) {
    const auto typed_plainly = plain(typed);
    std::string out;
    for (std::size_t i = 0; i < typed_plainly.size(); ++i) {
        const bool tenths = i + 1 < typed_plainly.size() && typed_plainly[i + 1] >= '0' &&
                            typed_plainly[i + 1] <= '9';
        if (typed_plainly[i] != '.' || tenths) out += typed_plainly[i];  // "B.F.L.", but "10.5"
    }
    if (out.size() > 1) std::replace(out.begin() + 1, out.end(), '-', ' ');  // "-2" is no 2
    std::replace(out.begin(), out.end(), '_', ' ');
    return plain(out);
}

std::optional<Spoken> SpokenWords::find(std::string_view list, std::string_view typed) const {
    const auto lines = lists.find(list);
    if (lines == lists.end()) return {};
    const auto at = line_of(lines->second, as_spoken(typed));
    if (at == std::string::npos) return {};
    auto line = std::string_view(lines->second).substr(at);
    take_up_to('\t', line);
    const auto means = take_up_to('\t', line);
    return Spoken{std::string(means), std::string(take_up_to('\n', line))};
}

std::vector<std::string> SpokenWords::words(std::string_view list) const {
    std::vector<std::string> out;
    if (const auto found = lists.find(list); found != lists.end())
        for (std::string_view lines = found->second; !lines.empty(); take_up_to('\n', lines))
            out.emplace_back(take_up_to('\t', lines));
    std::sort(out.begin(), out.end());
    return out;
}

std::vector<std::string> SpokenWords::found_in(std::string_view list, std::string_view text) const {
    std::string left = " ";
    for (const char c : as_spoken(text)) left += is_of_a_word(c) ? c : ' ';
    left += ' ';
    for (const std::string_view no : {" not ", " no ", " never ", " non ", " without "})
        if (left.find(no) != std::string::npos) return {};
    auto known = words(list);
    std::stable_sort(known.begin(), known.end(),
                     [](const auto& a, const auto& b) { return a.size() > b.size(); });
    std::vector<std::string> out;
    for (const auto& word : known)
        if (const auto at = left.find(" " + word + " "); at != std::string::npos) {
            out.push_back(word);
            std::fill_n(left.begin() + static_cast<std::ptrdiff_t>(at) + 1, word.size(), '|');
        }
    return out;
}

bool SpokenWords::add(std::string_view list, std::string_view word, const Spoken& spoken) {
    auto& lines = lists[std::string(list)];
    const auto said = as_spoken(word);
    if (line_of(lines, said) != std::string::npos) return false;
    for (const auto& text : {said, spoken.means, spoken.note})
        if (text.find_first_of("\t\n") != std::string::npos)
            throw std::runtime_error(fmt::format("'{}': a tab or a new line in a word", word));
    lines += fmt::format("{}\t{}\t{}\n", said, spoken.means, spoken.note);
    return true;
}

void SpokenWords::ask(std::string_view list, std::string_view word, const std::string& question) {
    auto& lines = lists[std::string(list)];
    if (const auto at = line_of(lines, as_spoken(word)); at != std::string::npos)
        lines.erase(at, lines.find('\n', at) + 1 - at);
    add(list, word, {"", question});
}

void read_batch_words(const std::string& text, const std::string& file, SpokenWords& out) {
    const auto csv = read_csv(text, file);
    for (const auto& row : csv.rows)
        add_once(out, field(csv, row, "key", file), field(csv, row, "word", file),
                 {field(csv, row, "means", file), field(csv, row, "note", file)}, file, row.number);
}

void read_fibre_names(const std::string& text, const std::string& file,
                      const std::vector<std::string>& fibres, SpokenWords& out) {
    const auto csv = read_csv(text, file);
    for (const auto& row : csv.rows) {
        const auto& fibre = field(csv, row, "fibre", file);
        if (!fibre.empty() && std::find(fibres.begin(), fibres.end(), fibre) == fibres.end())
            throw BadText(file, row.number, fmt::format("there is no fibre '{}'", fibre));
        add_once(out, "fibre", field(csv, row, "typed", file),
                 {fibre, field(csv, row, "note", file)}, file, row.number);
    }
}

void read_needle_sizes(const std::string& text, const std::string& file, SpokenWords& out) {
    const auto csv = read_csv(text, file);
    for (const auto& row : csv.rows)
        for (const char* column : {"us", "uk", "jp"}) {
            const auto& mm = field(csv, row, "mm", file);
            std::string_view names = field(csv, row, column, file);
            while (!names.empty()) {
                const auto end = std::min(names.find(';'), names.size());
                const auto name = names.substr(0, end);
                names.remove_prefix(std::min(names.size(), end + 1));
                const auto list = fmt::format("needle {}", column);
                if (const auto other = out.find(list, name))  // tables differ: asked
                    out.ask(list, name,
                            fmt::format("{} mm or {} mm: tables differ", other->means, mm));
                else
                    out.add(list, name, {mm, ""});
            }
        }
}

}  // namespace gristwright::catalog
