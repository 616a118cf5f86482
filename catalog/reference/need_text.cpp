#include "catalog/reference/need_text.hpp"

#include <array>

#include "catalog/reference/choices.hpp"
#include "catalog/reference/tables.hpp"
#include "catalog/text/table_row.hpp"

namespace gristwright::catalog {
namespace {

std::vector<std::string> parts_of(std::string_view text) {
    std::vector<std::string> out;
    while (!text.empty()) {
        const auto bar = text.find('|');
        out.emplace_back(text.substr(0, bar));
        text = bar == std::string_view::npos ? std::string_view{} : text.substr(bar + 1);
    }
    return out;
}

Listed listed(const Row& row, std::string_view column) {
    std::string_view text = row.text(column);
    Listed out;
    out.none_of = text.starts_with('!');
    out.words = parts_of(text.substr(out.none_of ? 1 : 0));
    return out;
}

// One of the choices, or nothing where the field is empty.
template <class T>
std::optional<T> chosen(const Row& row, std::string_view column, const Choices<T>& choices) {
    const auto& text = row.text(column);
    if (text.empty()) return {};
    if (const auto* found = meant(choices, text)) return *found;
    throw row.wrong(fmt::format("{}: '{}' is not known", column, text));
}

const Choices<bool> hard{{"hard fulled", true}, {"!hard fulled", false}};
const Choices<bool> babies{{"yes", true}, {"no", false}};

Demand demand(const Row& row) {
    Demand out;
    const auto& what = row.text("needs");
    out.trait = trait_named(what);
    if (!out.trait && what != "plies")
        throw row.wrong(fmt::format("needs: '{}' is no trait, nor plies", what));
    out.enough = row.number("enough");
    out.lacking = row.number("lacking");
    if (out.enough == out.lacking) throw row.wrong("enough and lacking must differ");
    out.left = row.number("left");
    if (!(out.left > 0 && out.left < 1)) throw row.wrong("left: more than 0 and less than 1");
    out.reason = row.text("reason");
    out.remedy = row.text("remedy");
    if (out.reason.empty()) throw row.wrong("a need says why");
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    return out;
}

DemandFor demand_for(const Row& row) {
    DemandFor out;
    out.article = listed(row, "article");
    out.fabric = listed(row, "fabric");
    out.craft = chosen(row, "craft", crafts);
    out.touches = chosen(row, "touches", touching);
    out.hard_fulled = chosen(row, "finish", hard);
    out.firmness = chosen(row, "firmness", firmnesses);
    out.for_baby = chosen(row, "baby", babies);
    out.demand = std::make_shared<const Demand>(demand(row));
    return out;
}

SpunFor spun_for(const Row& row) {
    SpunFor out;
    out.article = listed(row, "article");
    out.touches = chosen(row, "touches", touching);
    out.for_baby = chosen(row, "baby", babies);
    out.place = row.number("place");
    if (!(out.place > 0 && out.place <= 1)) throw row.wrong("place: more than 0 and at most 1");
    out.alike = row.whole("alike");
    if (out.alike < 1) throw row.wrong("alike: at least 1");
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    return out;
}

double amount(const Row& row, std::string_view text) {
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc{} || read.ptr != text.data() + text.size() || !(value > 0))
        throw row.wrong(fmt::format("'{}' is not a number above 0", text));
    return value;
}

const Choices<Preparation> preparations{{"carded", Preparation::carded},
                                        {"combed", Preparation::combed}};
const Choices<Draw> draws{{"long", Draw::long_draw}, {"short", Draw::short_draw}};

}  // namespace

std::vector<DemandFor> read_needs(const std::string& text, const std::string& file) {
    return read_rows(text, file, demand_for);
}

std::vector<SpunFor> read_spun_for(const std::string& text, const std::string& file) {
    return read_rows(text, file, spun_for);
}

std::vector<OrdinaryYarn> read_ordinary_yarns(const std::string& text, const std::string& file) {
    const auto csv = read_csv(text, file);
    std::vector<OrdinaryYarn> out;
    for (const auto& line : csv.rows) {
        const Row row(csv, line, file);
        OrdinaryYarn yarn;
        yarn.fibre = row.text("fibre");
        yarn.preparation = chosen(row, "preparation", preparations).value_or(Preparation::unknown);
        yarn.draw = chosen(row, "draw", draws).value_or(Draw::unknown);
        for (const auto& plies : parts_of(row.text("plies")))
            for (const auto& grist : parts_of(row.text("metres_per_gram"))) {
                yarn.plies = static_cast<int>(amount(row, plies));
                yarn.metres_per_gram = amount(row, grist);
                out.push_back(yarn);
            }
    }
    if (out.empty()) throw BadText(file, 0, "the table is empty");
    return out;
}

}  // namespace gristwright::catalog
