#include "catalog/reference/spoken.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/csv.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::catalog {
namespace {

const std::string& field(const Csv& csv, const CsvRow& row, std::string_view column,
                         const std::string& file) {
    const auto at = csv.column(column);
    if (at == Csv::npos) throw BadText(file, 1, fmt::format("there is no column '{}'", column));
    return row.fields[at];
}

void add_once(SpokenWords& out, std::string_view list, const std::string& word, Spoken spoken,
              const std::string& file, std::size_t line) {
    if (spoken.means.empty() && spoken.note.empty())
        throw BadText(file, line, "a word without a meaning needs the question in its note");
    if (!out.add(list, word, std::move(spoken)))
        throw BadText(file, line, fmt::format("'{}' stands twice", word));
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

const Spoken* SpokenWords::find(std::string_view list, std::string_view typed) const {
    const auto words = lists.find(list);
    if (words == lists.end()) return nullptr;
    const auto found = words->second.find(as_spoken(typed));
    return found == words->second.end() ? nullptr : &found->second;
}

std::vector<std::string> SpokenWords::words(std::string_view list) const {
    std::vector<std::string> out;
    if (const auto found = lists.find(list); found != lists.end())
        for (const auto& [word, spoken] : found->second) out.push_back(word);
    return out;
}

bool SpokenWords::add(std::string_view list, std::string_view word, Spoken spoken) {
    return lists[std::string(list)].emplace(as_spoken(word), std::move(spoken)).second;
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
                if (const auto* other = out.find(list, name))  // tables differ: asked
                    out.lists[list][as_spoken(name)] = {
                        "", fmt::format("{} mm or {} mm: tables differ", other->means, mm)};
                else
                    out.add(list, name, {mm, ""});
            }
        }
}

}  // namespace gristwright::catalog
