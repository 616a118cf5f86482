#include "catalog/reference/weight_names.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/reference/tables.hpp"
#include "catalog/text/csv.hpp"
#include "catalog/text/table_row.hpp"

namespace gristwright::catalog {

void read_weight_names(const std::string& text, const std::string& file,
                       const std::vector<WeightClass>& classes, SpokenWords& out,
                       std::string& words) {
    const auto csv = read_csv(text, file);
    for (const auto& line : csv.rows) {
        const Row row(csv, line, file);
        const auto &name = row.text("name"), &means = row.text("means");
        if (std::none_of(classes.begin(), classes.end(),
                         [&](const WeightClass& c) { return c.name == means; }))
            throw row.wrong(fmt::format("there is no weight class '{}'", means));
        row.word("mark", mark_named);
        const auto& question = row.text("question");
        if (!out.add("weight", name, {question.empty() ? means : "", question}))
            throw row.wrong(fmt::format("'{}' stands twice", name));
        if (row.yes("in_ideas")) words += fmt::format("{}\tweight\t{}\n", name, means);
    }
}

}  // namespace gristwright::catalog
