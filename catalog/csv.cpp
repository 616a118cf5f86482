#include "catalog/csv.hpp"

#include <csv.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <memory>
#include <system_error>

#include "catalog/bad_text.hpp"
#include "catalog/source.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

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

bool would_run(std::string_view text) {
    const auto first = text.find_first_not_of(' ');
    if (first == text.npos || std::string_view("=+-@\t\r").find(text[first]) == text.npos)
        return false;
    const bool is_signed = text[first] == '+' || text[first] == '-';
    return !is_signed || text.find_first_not_of("0123456789.", first + 1) != text.npos;
}

}  // namespace

std::size_t Csv::column(std::string_view header) const {
    const auto found = std::find(headers.begin(), headers.end(), header);
    return found == headers.end() ? npos : static_cast<std::size_t>(found - headers.begin());
}

Csv read_csv(std::string_view text, const std::string& file) {
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

namespace {

// One record at a time, handed on when it ends.
struct Stream {
    const std::function<void(const std::vector<std::string>&)>& header;
    const std::function<void(const CsvRow&)>& row;
    CsvRow now{1, {}};
    std::size_t columns = 0;

    void end() {
        if (now.number == 1) {
            columns = now.fields.size();
            header(now.fields);
        } else if (std::any_of(now.fields.begin(), now.fields.end(),
                               [](const auto& f) { return !f.empty(); })) {
            if (now.fields.size() < columns) now.fields.resize(columns);
            row(now);
        }
        ++now.number;
        now.fields.clear();
    }
};

void stream_field(void* text, std::size_t size, void* stream) {
    static_cast<Stream*>(stream)->now.fields.emplace_back(static_cast<const char*>(text), size);
}
void stream_end(int, void* stream) { static_cast<Stream*>(stream)->end(); }

}  // namespace

void for_each_row(const std::string& path,
                  const std::function<void(const std::vector<std::string>&)>& header,
                  const std::function<void(const CsvRow&)>& row) {
    std::ifstream file(path, std::ios::binary);
    std::error_code none;
    if (!file || std::filesystem::is_directory(path, none))
        throw MissingFile("cannot open '" + path + "'");
    csv_parser parser;
    if (csv_init(&parser, CSV_APPEND_NULL) != 0) throw std::bad_alloc();
    const std::unique_ptr<csv_parser, void (*)(csv_parser*)> closing(&parser, csv_free);
    Stream stream{header, row};
    std::string chunk(1 << 16, '\0');
    bool first = true;
    while (file.read(chunk.data(), static_cast<std::streamsize>(chunk.size())), file.gcount() > 0) {
        std::string_view text(chunk.data(), static_cast<std::size_t>(file.gcount()));
        if (first) {
            if (text.substr(0, 3) == byte_order_mark) text.remove_prefix(3);
            csv_set_delim(&parser, static_cast<unsigned char>(separator_of(text)));
            first = false;
        }
        if (csv_parse(&parser, text.data(), text.size(), stream_field, stream_end, &stream) !=
            text.size())
            throw BadText(path, stream.now.number, csv_strerror(csv_error(&parser)));
    }
    csv_fini(&parser, stream_field, stream_end, &stream);
    if (stream.now.number == 1) throw BadText(path, 0, "there is no header line");
}

std::string csv_cell(std::string_view text) {
    std::string out = would_run(text) ? "\"'" : "\"";
    for (const char c : text) out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + '"';
}

}  // namespace gristwright::catalog
