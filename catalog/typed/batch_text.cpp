#include "catalog/typed/batch_text.hpp"

#include <algorithm>

#include "catalog/reference/source.hpp"
#include "catalog/text/file.hpp"
#include "catalog/text/toml_text.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {
namespace {

// A value that stands in TOML as text, number, flag or a list of texts.
std::vector<Written> written(const toml::node& node, const std::string& where) {
    std::vector<Written> out;
    if (const auto* list = node.as_array()) {
        for (const auto& item : *list)
            for (auto& one : written(item, where)) out.push_back(std::move(one));
    } else if (const auto* text = node.as_string()) {
        out.push_back({text->get(), where});
    } else if (const auto* whole = node.as_integer()) {
        out.push_back({fmt::format("{}", whole->get()), where});
    } else if (const auto* flag = node.as_boolean()) {
        out.push_back({flag->get() ? "yes" : "no", where});
    } else {
        throw BadText(where, 0, "must be text in quotes, a whole number, or a list of texts");
    }
    return out;
}

std::string place(const std::string& file, const toml::node& node, std::string_view key) {
    return fmt::format("{}:{}: {}", file, node.source().begin.line, key);
}

const std::vector<std::string> equipment_keys{"heddles", "loom_width", "loom_waste",
                                              "fringe",  "shafts",     "needles"};

bool holds(const std::vector<std::string>& keys, const std::string& key) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

// What would be right for a key that is not allowed where it stands.
std::string where_else(const std::string& key, const std::vector<std::string>& allowed) {
    if (holds(equipment_keys, key)) return "; it belongs under [equipment]";
    if (holds(batch_keys(), key)) return "; it belongs before the first [table]";
    return did_you_mean(key, allowed);
}

void read_keys(const toml::table& table, const std::string& file,
               const std::vector<std::string>& allowed, BatchText& out) {
    for (const auto& [key, node] : table) {
        const std::string name(key.str());
        if (name == "skein" || name == "equipment") continue;
        if (!holds(allowed, name))
            throw BadText(file, node.source().begin.line,
                          fmt::format("'{}' is not a key here{}", name, where_else(name, allowed)));
        out.fields[name] = written(node, place(file, node, name));
    }
}

SkeinText read_skein_table(TomlTable from, const toml::table& table, const std::string& file) {
    const auto one = [&](std::string_view key, bool needed) -> Written {
        if (!from.has(key)) {
            if (needed) throw from.wrong(key, "is missing");
            return {};
        }
        return {from.text(key), place(file, *table.get(key), key)};
    };
    SkeinText skein{
        one("name", false), one("length", true), one("mass", true), one("measured", false), {}};
    for (const auto& key : own_keys())
        if (from.has(key))
            skein.own[key] = written(*table.get(key), place(file, *table.get(key), key));
    from.nothing_else();
    return skein;
}

}  // namespace

const std::vector<std::string>& batch_keys() {
    static const std::vector<std::string> keys{
        "name",      "preparation", "draw",  "plies",      "fibre",  "micron", "staple",   "wraps",
        "wraps_how", "twist",       "gauge", "variegated", "colour", "scale",  "measured", "made"};
    return keys;
}

const std::vector<std::string>& own_keys() {
    static const std::vector<std::string> keys{"wraps", "fibre", "colour"};
    return keys;
}

void BatchText::overlay(const BatchText& other) {
    if (!other.skeins.empty()) skeins = other.skeins;
    for (const auto& [key, texts] : other.fields) fields[key] = texts;
    notes.insert(notes.end(), other.notes.begin(), other.notes.end());
}

BatchText read_batch_toml(std::string_view text, const std::string& file) {
    const auto parsed = parse_toml(text, file);
    BatchText out;
    auto top = batch_keys();
    top.insert(top.end(), {"skein", "equipment"});
    read_keys(parsed, file, top, out);
    if (const auto* equipment = parsed.get("equipment")) {
        const auto* table = equipment->as_table();
        if (!table)
            throw BadText(file, equipment->source().begin.line, "[equipment] must be a table");
        read_keys(*table, file, equipment_keys, out);
    }
    TomlTable reader(parsed, file, "");
    if (!reader.has("skein")) throw BadText(file, 0, "no [[skein]]: a batch has at least one");
    const auto tables = reader.tables("skein");
    for (std::size_t s = 0; s < tables.size(); ++s)
        out.skeins.push_back(read_skein_table(
            tables[s], *parsed.get("skein")->as_array()->get(s)->as_table(), file));
    return out;
}

BatchText read_batch_file(const std::string& path) {
    const auto ending = ascii::lowered(path.substr(std::min(path.rfind('.'), path.size())));
    const bool sheet = is_named_as_a_sheet(path);
    if (ending == ".xlsx" || ending == ".xls" || ending == ".ods")
        throw Refused(fmt::format(
            "'{}' is the spreadsheet program's own file: save the sheet there as CSV, and give the "
            ".csv file",
            path));
    if (!sheet && ending != ".toml")
        throw Refused(fmt::format(
            "'{}' is no batch file: its name must end in .toml or .csv (.tsv, .txt)", path));
    const auto text = read_file(path);
    return sheet ? read_batch_csv(text, path) : read_batch_toml(text, path);
}

}  // namespace gristwright::catalog
