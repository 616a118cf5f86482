#include "catalog/reference/caution_table.hpp"

#include "catalog/reference/tables.hpp"
#include "catalog/text/bad_text.hpp"
#include "catalog/text/csv.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::size_t longest_brief = 76;  // it stands in lists of several

std::size_t need(const Csv& csv, std::string_view header, const std::string& file) {
    const auto at = csv.column(header);
    if (at == Csv::npos) throw BadText(file, 1, fmt::format("there is no column '{}'", header));
    return at;
}

}  // namespace

std::vector<Caution> read_cautions(const std::string& text, const std::string& file) {
    const auto csv = read_csv(text, file);
    const auto when = need(csv, "when", file), said = need(csv, "text", file),
               brief = need(csv, "brief", file), harm = need(csv, "harm", file),
               mark = need(csv, "mark", file), source = need(csv, "source", file);
    std::vector<Caution> out;
    for (const auto& row : csv.rows) {
        const auto& f = row.fields;
        const auto marked = mark_named(f[mark]);
        if (!marked) throw BadText(file, row.number, fmt::format("'{}' is no mark", f[mark]));
        if (f[harm] != "yes" && f[harm] != "no") throw BadText(file, row.number, "harm: yes or no");
        if (f[said].empty()) throw BadText(file, row.number, "text: it says nothing");
        if (f[brief].size() > longest_brief)
            throw BadText(file, row.number,
                          fmt::format("brief: at most {} letters", longest_brief));
        out.push_back({f[when], f[said], f[brief], f[harm] == "yes", *marked, f[source]});
    }
    if (out.empty()) throw BadText(file, 0, "the table is empty");
    return out;
}

}  // namespace gristwright::catalog
