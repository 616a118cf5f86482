#include "catalog/csv.hpp"

#include <csv.h>

#include <algorithm>
#include <memory>

#include "catalog/bad_text.hpp"

namespace gristwright::catalog {
namespace {

using Records = std::vector<std::vector<std::string>>;

// libcsv calls these for each field and at the end of each record.
void on_field(void* text, std::size_t size, void* records) {
    static_cast<Records*>(records)->back().emplace_back(static_cast<const char*>(text), size);
}
void on_record(int, void* records) { static_cast<Records*>(records)->emplace_back(); }

// The separator that the header uses most; a comma when it uses none.
char separator_of(std::string_view text) {
    const auto header = text.substr(0, text.find('\n'));
    char best = ',';
    for (const char c : {';', '\t'})
        if (std::count(header.begin(), header.end(), c) >
            std::count(header.begin(), header.end(), best))
            best = c;
    return best;
}

Records split(std::string_view text, const std::string& file) {
    Records records(1);
    csv_parser parser;
    if (csv_init(&parser, CSV_APPEND_NULL) != 0) throw std::bad_alloc();
    const std::unique_ptr<csv_parser, void (*)(csv_parser*)> closing(&parser, csv_free);
    csv_set_delim(&parser, static_cast<unsigned char>(separator_of(text)));
    const auto read = csv_parse(&parser, text.data(), text.size(), on_field, on_record, &records);
    if (read != text.size() || csv_fini(&parser, on_field, on_record, &records) != 0)
        throw BadText(file, records.size(), csv_strerror(csv_error(&parser)));
    if (records.back().empty()) records.pop_back();
    return records;
}

}  // namespace

std::size_t Csv::column(std::string_view header) const {
    const auto found = std::find(headers.begin(), headers.end(), header);
    return found == headers.end() ? npos : static_cast<std::size_t>(found - headers.begin());
}

Csv read_csv(std::string_view text, const std::string& file) {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.substr(0, 3) == byte_order_mark) text.remove_prefix(3);
    auto records = split(text, file);
    if (records.empty()) throw BadText(file, 0, "there is no header line");
    Csv out;
    out.headers = std::move(records[0]);
    for (std::size_t r = 1; r < records.size(); ++r) {
        auto& fields = records[r];
        if (std::all_of(fields.begin(), fields.end(), [](const auto& f) { return f.empty(); }))
            continue;
        if (fields.size() > out.headers.size())
            throw BadText(file, r + 1,
                          fmt::format("{} fields, but the header names {}", fields.size(),
                                      out.headers.size()));
        fields.resize(out.headers.size());
        out.rows.push_back({r + 1, std::move(fields)});
    }
    return out;
}

}  // namespace gristwright::catalog
