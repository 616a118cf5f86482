// Skeins from a spreadsheet as people keep them: a title above the header, headings in their own
// words, units in the headings or in the cells, a total below.
#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/csv.hpp"
#include "catalog/text/named_reading.hpp"
#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/headings.hpp"
#include "catalog/typed/several_skeins.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

using Row = CsvRow;

struct Column {
    std::string header;  // as it stands; empty: none
    Heading heading;
};

// Which column holds what. Throws BadText where two may.
class Columns {
  public:
    Columns(const Row& header, const std::string& file) : line_(header.number), file_(file) {
        for (const auto& text : header.fields) columns_.push_back({text, heading_of(text)});
        for (const auto what :
             {Holds::name, Holds::length, Holds::mass, Holds::state, Holds::wraps, Holds::fibre,
              Holds::colour, Holds::count, Holds::preparation, Holds::draw, Holds::plies})
            choose(what);
    }

    bool enough() const { return at(Holds::length) && at(Holds::mass); }
    std::optional<std::size_t> at(Holds what) const { return chosen_[static_cast<int>(what)]; }
    const Column& column(std::size_t c) const { return columns_[c]; }
    std::size_t size() const { return columns_.size(); }

    // What is not used is said once.
    std::vector<std::string> notes() const {
        std::vector<std::string> out;
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            const auto& [header, heading] = columns_[c];
            if (header.empty() || used(c)) continue;
            out.push_back(fmt::format("{}: column '{}' is not used{}{}", file_, header,
                                      heading.why_not.empty() ? "" : ": ", heading.why_not));
        }
        return out;
    }

  private:
    bool used(std::size_t c) const {
        return std::any_of(std::begin(chosen_), std::end(chosen_),
                           [&](const auto& chosen) { return chosen == c; });
    }

    // Of several the one of the finished yarn, before one in another unit; two alike are asked.
    void choose(Holds what) {
        auto& chosen = chosen_[static_cast<int>(what)];
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            const auto& now = columns_[c].heading;
            if (now.holds != what) continue;
            if (!chosen) {
                chosen = c;
                continue;
            }
            const auto& kept = columns_[*chosen].heading;
            const bool rank = now.finished && !now.before_washing;
            const bool kept_rank = kept.finished && !kept.before_washing;
            if (now.before_washing != kept.before_washing || rank != kept_rank) {
                if (kept.before_washing || (rank && !now.before_washing)) chosen = c;
                continue;
            }
            const bool measures = what == Holds::length || what == Holds::mass;
            if (measures && now.unit == kept.unit)
                throw BadText(file_, line_,
                              fmt::format("columns '{}' and '{}' both hold a {}: which? Rename the "
                                          "other",
                                          columns_[*chosen].header, columns_[c].header,
                                          what == Holds::length ? "length" : "mass"));
        }
    }

    std::vector<Column> columns_;
    std::optional<std::size_t> chosen_[static_cast<int>(Holds::other) + 1];
    std::size_t line_;
    const std::string& file_;
};

template <class Read>
bool can_be(const std::string& cell, Read read) {
    try {
        read(cell);
        return true;
    } catch (const Refused&) {
        return false;
    }
}

bool is_length(const std::string& cell) {
    return can_be(cell, [](const std::string& t) {
        return read_length(t, {Length{}, metres(1e5)});
    });
}
bool is_mass(const std::string& cell) {
    return can_be(cell, [](const std::string& t) {
        return read_mass(t, {Mass{}, kilograms(100)});
    });
}

// A sheet without a header whose cells say what they are: "A,171m,38.5g". Its headings are made up.
std::optional<Row> implied_header(const Row& first) {
    Row out{first.number, std::vector<std::string>(first.fields.size())};
    int lengths = 0, masses = 0, names = 0;
    for (std::size_t c = 0; c < first.fields.size(); ++c) {
        if (is_length(first.fields[c]))
            out.fields[c] = "length", ++lengths;
        else if (is_mass(first.fields[c]))
            out.fields[c] = "mass", ++masses;
        else if (!first.fields[c].empty() && ++names == 1)
            out.fields[c] = "name";
    }
    if (lengths != 1 || masses != 1) return {};
    return out;
}

Written cell(const Row& row, std::size_t c, const Column& column, const std::string& file) {
    auto text = row.fields[c];
    if (lacks_unit(text) && !column.heading.unit.empty()) text += " " + column.heading.unit;
    return {text, fmt::format("{}:{}: {}", file, row.number, column.header)};
}

SkeinText skein_of(const Row& row, const Columns& columns, const std::string& file) {
    const auto of = [&](Holds what) -> Written {
        const auto c = columns.at(what);
        if (!c) return {};
        return cell(row, *c, columns.column(*c), file);
    };
    SkeinText out{of(Holds::name), of(Holds::length), of(Holds::mass), of(Holds::state), {}};
    for (const auto& [key, what] :
         {std::pair{"wraps", Holds::wraps}, std::pair{"fibre", Holds::fibre},
          std::pair{"colour", Holds::colour}})
        if (auto said = of(what); !said.text.empty() && !says_nothing(said.text))
            out.own[key].push_back(std::move(said));
    const auto length = columns.at(Holds::length);
    if (out.state.text.empty() && columns.column(*length).heading.before_washing)
        out.state = {"before washing", out.length.where};
    return out;
}

// What is of the whole batch, though a sheet says it row by row: its key, and where it stands.
constexpr std::pair<const char*, Holds> of_all[] = {
    {"preparation", Holds::preparation}, {"draw", Holds::draw}, {"plies", Holds::plies}};

bool says_it(const Row& row, std::size_t c) {
    const auto& text = row.fields[c];
    return !text.empty() && !says_nothing(text) && !names_a_tool(text);
}

// Adds the row's own words, where no row above says the same.
void add_of_all(const Row& row, const Columns& columns, const std::string& file, BatchText& out) {
    for (const auto& [key, what] : of_all) {
        const auto c = columns.at(what);
        if (!c || !says_it(row, *c)) continue;
        auto& texts = out.fields[key];
        const auto now = cell(row, *c, columns.column(*c), file);
        if (std::none_of(texts.begin(), texts.end(), [&](const Written& above) {
                return plain(above.text) == plain(now.text);
            }))
            texts.push_back(now);
    }
}

// Rows that do not say what the others say of the batch.
void note_unsaid(const std::vector<Row>& skeins, const Columns& columns, const std::string& file,
                 BatchText& out) {
    for (const auto& [key, what] : of_all) {
        const auto c = columns.at(what);
        if (!c) continue;
        const auto& header = columns.column(*c).header;
        if (!out.fields.contains(key)) {
            out.notes.push_back(
                fmt::format("{}: column '{}' says nothing of the {}", file, header, key));
            continue;
        }
        const auto silent = std::count_if(skeins.begin(), skeins.end(),
                                          [&](const Row& row) { return !says_it(row, *c); });
        if (silent)
            out.notes.push_back(
                fmt::format("{}: {}: {} of {} rows do not say it and are taken as "
                            "the others",
                            file, header, silent, skeins.size()));
    }
}

// What stands above a `"`, a "ditto", is said again.
void repeat_above(Row& row, std::vector<std::string>& above) {
    above.resize(row.fields.size());
    for (std::size_t c = 0; c < row.fields.size(); ++c)
        if (is_ditto(row.fields[c]) && !above[c].empty())
            row.fields[c] = above[c];
        else if (!row.fields[c].empty())
            above[c] = row.fields[c];
}

// How many skeins the row stands for. Throws BadText where that is no number, or where it is not
// said whether its length and mass are of each.
int count_of(const Row& row, const Columns& columns, const std::string& file) {
    constexpr int most = 100;
    const auto at = columns.at(Holds::count);
    if (!at || row.fields[*at].empty()) return 1;
    const auto& text = row.fields[*at];
    int count = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), count);
    const auto& header = columns.column(*at).header;
    if (read.ec != std::errc{} || read.ptr != text.data() + text.size() || count < 1 ||
        count > most)
        throw BadText(
            file, row.number,
            fmt::format("{}: '{}' is no number of skeins from 1 to {}", header, text, most));
    const auto of_each = [&](Holds what) {
        return columns.column(*columns.at(what)).heading.of_each;
    };
    if (count > 1 && !(of_each(Holds::length) && of_each(Holds::mass)))
        throw BadText(
            file, row.number,
            fmt::format("{} {}: are the length and the mass those of each skein, or of all: "
                        "which? Head them such as 'yds each' and 'g each', or write a row "
                        "for each skein",
                        header, count));
    return count;
}

// The skein so many times, each by its own name.
void add_skeins(const SkeinText& skein, int count, std::vector<SkeinText>& out) {
    for (int n = 1; n <= count; ++n) {
        out.push_back(skein);
        if (count > 1 && !skein.name.text.empty()) out.back().name.text += fmt::format(" {}", n);
    }
}

// "3 x 110 yd @ 57 g" whole in one cell: how many there are; the skein is one of them.
int take_several(SkeinText& skein) {
    if (!skein.mass.text.empty()) return 1;
    const auto said = read_named(skein.length.where, skein.length.text,
                                 [](const std::string& text) { return several_skeins(text); });
    skein.length.text = said.one;
    return said.count;
}

using Sizes = std::optional<std::pair<double, double>>;

Sizes sizes_of(const SkeinText& skein) {
    try {
        const auto [length, mass] = read_skein(skein.length.text, skein.mass.text);
        return std::pair{length.value.si(), mass.value.si()};
    } catch (const Refused&) {
        return {};
    }
}

// A last row without a name that holds the sums of all the others.
bool sums_up(const std::vector<SkeinText>& skeins) {
    if (skeins.size() < 3 || !skeins.back().name.text.empty() || skeins[0].name.text.empty())
        return false;
    std::pair<double, double> sum{0, 0};
    for (std::size_t s = 0; s + 1 < skeins.size(); ++s) {
        const auto one = sizes_of(skeins[s]);
        if (!one) return false;
        sum.first += one->first, sum.second += one->second;
    }
    constexpr double rounding = 0.01;
    const auto last = sizes_of(skeins.back());
    return last && std::abs(last->first / sum.first - 1) < rounding &&
           std::abs(last->second / sum.second - 1) < rounding;
}

// Whether the row is no skein, and says so.
bool left_out(const Row& row, const SkeinText& skein, const std::string& file,
              std::vector<std::string>& notes) {
    for (const auto& text : row.fields)
        if (names_a_total(text)) {
            notes.push_back(
                fmt::format("{}:{}: '{}' is no skein and is left out", file, row.number, text));
            return true;
        }
    if (!skein.length.text.empty() || !skein.mass.text.empty()) return false;
    notes.push_back(fmt::format("{}:{}: neither length nor mass: left out", file, row.number));
    return true;
}

[[noreturn]] void refuse_header(const std::vector<Row>& rows, const std::string& file) {
    if (rows.empty()) throw BadText(file, 0, "there is no header line");
    const Columns columns(rows[0], file);
    std::string looked;  // what came near
    for (std::size_t c = 0; c < columns.size(); ++c)
        if (!columns.column(c).heading.why_not.empty())
            looked += fmt::format("; '{}' is none: {}", columns.column(c).header,
                                  columns.column(c).heading.why_not);
    throw BadText(file, rows[0].number,
                  fmt::format("the header needs a column of {}, such as 'Length (yd)' or 'grams'{}",
                              columns.at(Holds::length) ? "masses" : "lengths", looked));
}

// The header and the rows under it; titles above it are let go.
std::pair<Columns, std::vector<Row>> with_header(const std::string& file, std::vector<Row> rows) {
    constexpr std::size_t titles = 10;
    for (std::size_t r = 0; r < std::min(rows.size(), titles); ++r) {
        const auto implied = implied_header(rows[r]);
        Columns columns(implied ? *implied : rows[r], file);
        if (!columns.enough()) continue;
        rows.erase(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(r + (implied ? 0 : 1)));
        return {columns, std::move(rows)};
    }
    refuse_header(rows, file);
}

}  // namespace

BatchText read_batch_csv(std::string_view text, const std::string& file) {
    auto [columns, rows] = with_header(file, read_records(text, file));
    BatchText out;
    out.notes = columns.notes();
    std::vector<std::string> above;
    std::vector<Row> skeins;
    for (auto& row : rows) {
        while (row.fields.size() > columns.size() && row.fields.back().empty())
            row.fields.pop_back();
        if (row.fields.size() > columns.size())
            throw BadText(file, row.number,
                          fmt::format("{} fields, but the header names {}", row.fields.size(),
                                      columns.size()));
        row.fields.resize(columns.size());
        repeat_above(row, above);
        auto skein = skein_of(row, columns, file);
        if (left_out(row, skein, file, out.notes)) continue;
        const int alike = take_several(skein);
        add_skeins(skein, alike * count_of(row, columns, file), out.skeins);
        add_of_all(row, columns, file, out);
        skeins.push_back(row);
    }
    note_unsaid(skeins, columns, file, out);
    if (sums_up(out.skeins)) {
        out.notes.push_back(fmt::format("{} is the sum of the others and is left out",
                                        out.skeins.back().length.where));
        out.skeins.pop_back();
    }
    if (out.skeins.empty()) throw BadText(file, 0, "no skeins under the header");
    return out;
}

}  // namespace gristwright::catalog
