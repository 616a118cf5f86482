#include "catalog/reference/heading_words.hpp"

#include <fmt/core.h>

#include "catalog/reference/tables.hpp"
#include "catalog/text/csv.hpp"
#include "catalog/text/table_row.hpp"
#include "catalog/text/words_of.hpp"

namespace gristwright::catalog {

void read_suggestion_headings(const std::string& text, const std::string& file, SpokenWords& out) {
    const auto csv = read_csv(text, file);
    for (const auto& line : csv.rows) {
        const Row row(csv, line, file);
        const auto &heading = row.text("heading"), &means = row.text("means");
        row.word("mark", mark_named);
        const auto* list = means == "besides"     ? "heading besides"
                           : row.yes("gives_way") ? "heading that gives way"
                                                  : "heading";
        if (!out.add(list, joined_words(heading), {means, ""}))
            throw row.wrong(fmt::format("'{}' stands twice", heading));
    }
}

}  // namespace gristwright::catalog
