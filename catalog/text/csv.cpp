#include "catalog/text/csv.hpp"

#include <csv.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <optional>
#include <system_error>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/encoding.hpp"
#include "catalog/text/file.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view separators = ",;\t|";

// The line in front of `text`, with its end.
std::string_view first_line(std::string_view text) {
    const auto end = text.find_first_of("\r\n");
    if (end == std::string_view::npos) return text;
    const bool two = text.substr(end, 2) == "\r\n";
    return text.substr(0, end + (two ? 2 : 1));
}

// "sep=;", as some spreadsheets begin: the separator, or 0.
char said_separator(std::string_view line) {
    while (!line.empty() && (line.back() == '\r' || line.back() == '\n')) line.remove_suffix(1);
    const bool said =
        line.size() == 5 && (line.substr(0, 4) == "sep=" || line.substr(0, 4) == "SEP=");
    return said ? line[4] : '\0';
}

// The separator that stands in most of the first lines (titles stand above a header, lists inside
// cells); of those alike the one the first line uses most; else a comma.
char separator_of(std::string_view text) {
    constexpr int lines = 10;
    const auto head = first_line(text);
    std::array<std::ptrdiff_t, separators.size()> in_lines{};
    for (int l = 0; l < lines && !text.empty(); ++l) {
        const auto line = first_line(text);
        text.remove_prefix(line.size());
        for (std::size_t s = 0; s < separators.size(); ++s)
            if (line.find(separators[s]) != std::string_view::npos) ++in_lines[s];
    }
    std::size_t best = 0;
    const auto in_head = [&](std::size_t s) {
        return std::count(head.begin(), head.end(), separators[s]);
    };
    for (std::size_t s = 1; s < separators.size(); ++s)
        if (std::pair(in_lines[s], in_head(s)) > std::pair(in_lines[best], in_head(best))) best = s;
    return separators[best];
}

// Records one after the other, each with the line it begins in. Fed line by line, since the parser
// itself does not say where it is.
class Records {
  public:
    explicit Records(std::function<void(CsvRow)> take) : take_(std::move(take)) {
        if (csv_init(&parser_, CSV_APPEND_NULL) != 0) throw std::bad_alloc();
    }
    ~Records() { csv_free(&parser_); }
    Records(const Records&) = delete;
    Records& operator=(const Records&) = delete;

    void separator(char c) { csv_set_delim(&parser_, static_cast<unsigned char>(c)); }
    void skip_line() { ++line_; }

    // `text` ends with a line, save at the end of the file.
    void feed(std::string_view text, const std::string& file) {
        while (!text.empty()) {
            const auto line = first_line(text);
            text.remove_prefix(line.size());
            if (!open_) now_.number = line_;
            open_ = true;
            if (csv_parse(&parser_, line.data(), line.size(), on_field, on_record, this) !=
                line.size())
                throw BadText(file, line_, csv_strerror(csv_error(&parser_)));
            ++line_;
        }
    }
    void finish(const std::string& file) {
        constexpr int in_a_field = 2;  // the parser's own state; only its strict mode would tell
        const bool unclosed = parser_.quoted != 0 && parser_.pstate == in_a_field;
        if (unclosed || csv_fini(&parser_, on_field, on_record, this) != 0)
            throw BadText(file, now_.number,
                          "a quote opened in the record that begins here is never closed");
    }

  private:
    static void on_field(void* text, std::size_t size, void* self) {
        static_cast<Records*>(self)->now_.fields.emplace_back(static_cast<const char*>(text), size);
    }
    static void on_record(int, void* self) { static_cast<Records*>(self)->end(); }
    void end() {
        open_ = false;
        auto& fields = now_.fields;
        if (std::any_of(fields.begin(), fields.end(), [](const auto& f) { return !f.empty(); }))
            take_(std::move(now_));
        now_ = CsvRow{line_ + 1, {}};
    }

    std::function<void(CsvRow)> take_;
    csv_parser parser_{};
    CsvRow now_{1, {}};
    std::size_t line_ = 1;
    bool open_ = false;  // a record has begun
};

void feed_start(std::string_view text, Records& into, const std::string& file) {
    const auto line = first_line(text);
    const char said = said_separator(line);
    into.separator(said ? said : separator_of(text));
    if (said) into.skip_line(), text.remove_prefix(line.size());
    into.feed(text, file);
}

void drop_empty_beyond(std::vector<std::string>& fields, std::size_t columns) {
    while (fields.size() > columns && fields.back().empty()) fields.pop_back();
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

std::vector<CsvRow> read_records(std::string_view text, const std::string& file) {
    const auto plain_text = in_utf8(text);
    std::vector<CsvRow> out;
    Records records([&](CsvRow row) { out.push_back(std::move(row)); });
    feed_start(plain_text, records, file);
    records.finish(file);
    return out;
}

Csv read_csv(std::string_view text, const std::string& file) {
    auto records = read_records(text, file);
    if (records.empty()) throw BadText(file, 0, "there is no header line");
    Csv out;
    out.headers = std::move(records[0].fields);
    for (std::size_t r = 1; r < records.size(); ++r) {
        auto& [number, fields] = records[r];
        drop_empty_beyond(fields, out.headers.size());
        if (fields.size() > out.headers.size())
            throw BadText(file, number,
                          fmt::format("{} fields, but the header names {}", fields.size(),
                                      out.headers.size()));
        fields.resize(out.headers.size());
        out.rows.push_back(std::move(records[r]));
    }
    return out;
}

void for_each_row(const std::string& path,
                  const std::function<bool(const std::vector<std::string>&)>& header,
                  const std::function<void(const CsvRow&)>& row) {
    std::ifstream file(path, std::ios::binary);
    std::error_code none;
    if (!file || std::filesystem::is_directory(path, none)) throw MissingFile(why_not_opened(path));
    std::optional<std::size_t> columns;
    bool empty = true;
    Records records([&](CsvRow now) {
        empty = false;
        if (!columns) {
            if (header(now.fields)) columns = now.fields.size();
            return;
        }
        drop_empty_beyond(now.fields, *columns);
        if (now.fields.size() < *columns) now.fields.resize(*columns);
        row(now);
    });
    for_each_part(file, [&](std::string_view part, bool first) {
        first ? feed_start(part, records, path) : records.feed(part, path);
    });
    records.finish(path);
    if (empty) throw BadText(path, 0, "there is no header line");
}

std::string csv_cell(std::string_view text) {
    std::string out = would_run(text) ? "\"'" : "\"";
    for (auto quote = text.find('"'); quote != std::string_view::npos; quote = text.find('"')) {
        out.append(text.substr(0, quote)).append("\"\"");
        text.remove_prefix(quote + 1);
    }
    return out.append(text) += '"';
}

}  // namespace gristwright::catalog
