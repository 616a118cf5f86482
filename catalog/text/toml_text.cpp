#include "catalog/text/toml_text.hpp"

#include <algorithm>
#include <cmath>

#include "catalog/text/characters.hpp"
#include "catalog/text/parser_limits.hpp"

namespace gristwright::catalog {
namespace {

std::size_t line_of(const toml::node& node) { return node.source().begin.line; }

}  // namespace

toml::table parse_toml(std::string_view text, const std::string& file) {
    const auto read = within_parser_limits(text, file);
    try {
        return toml::parse(read);
    } catch (const toml::parse_error& error) {
        throw BadText(file, error.source().begin.line,
                      fmt::format("this is not TOML: {}", error.description()));
    }
}

namespace {

// Line ends and tabs become spaces; what else would not stay text is refused.
void make_plain(toml::value<std::string>& value, const std::string& file) {
    std::replace_if(
        value->begin(), value->end(), [](char c) { return c == '\n' || c == '\r' || c == '\t'; },
        ' ');
    for (std::string_view rest = *value; !rest.empty();)
        if (const auto c = take_character(rest);
            c == no_character || is_control(c) || is_direction_mark(c))
            throw BadText(file, line_of(value),
                          fmt::format("a text holds U+{:04X}, which is not to be read but to drive "
                                      "the terminal; leave it out",
                                      static_cast<std::uint32_t>(c)));
}

void make_plain(toml::node& node, const std::string& file) {
    if (auto* text = node.as_string()) make_plain(*text, file);
    if (auto* table = node.as_table())
        for (auto&& [key, value] : *table) make_plain(value, file);
    if (auto* list = node.as_array())
        for (auto& value : *list) make_plain(value, file);
}

}  // namespace

toml::table parse_plain_toml(std::string_view text, const std::string& file) {
    auto out = parse_toml(text, file);
    make_plain(static_cast<toml::node&>(out), file);
    return out;
}

TomlTable::TomlTable(const toml::table& table, std::string file, std::string where)
    : table_(&table), file_(std::move(file)), where_(std::move(where)) {}

const toml::node* TomlTable::get(std::string_view key) {
    asked_.emplace_back(key);
    return table_->get(key);
}

BadText TomlTable::wrong(std::string_view key, const std::string& why) {
    const auto* node = table_->get(key);
    const auto line = node ? line_of(*node) : line_of(*table_);
    return {file_, line, fmt::format("{}{}{}: {}", where_, where_.empty() ? "" : " ", key, why)};
}

const toml::node& TomlTable::need(std::string_view key) {
    const auto* node = get(key);
    if (!node) throw wrong(key, "is missing");
    return *node;
}

std::string TomlTable::text(std::string_view key) {
    const auto& node = need(key);
    if (const auto* text = node.as_string()) return text->get();
    throw wrong(key, "must be text in quotes");
}

std::string TomlTable::text_or(std::string_view key, std::string_view otherwise) {
    return has(key) ? text(key) : std::string(otherwise);
}

bool TomlTable::flag(std::string_view key) {
    const auto* node = get(key);
    if (!node) return false;
    if (const auto* value = node->as_boolean()) return value->get();
    throw wrong(key, "must be true or false");
}

int TomlTable::whole_or(std::string_view key, int otherwise, int low, int high) {
    const auto* node = get(key);
    if (!node) return otherwise;
    const auto* value = node->as_integer();
    if (!value || value->get() < low || value->get() > high)
        throw wrong(key, fmt::format("must be a whole number from {} to {}", low, high));
    return static_cast<int>(value->get());
}

std::vector<double> TomlTable::numbers(std::string_view key, std::size_t how_many) {
    const auto* list = need(key).as_array();
    std::vector<double> out;
    if (list)
        for (const auto& item : *list)
            if (const auto value = item.value<double>(); value && std::isfinite(*value))
                out.push_back(*value);
    if (!list || out.size() != how_many || list->size() != how_many)
        throw wrong(key, fmt::format("must be {} numbers in brackets", how_many));
    return out;
}

std::vector<std::string> TomlTable::texts(std::string_view key) {
    const auto* node = get(key);
    if (!node) return {};
    const auto* list = node->as_array();
    std::vector<std::string> out;
    if (list)
        for (const auto& item : *list)
            if (const auto* text = item.as_string()) out.push_back(text->get());
    if (!list || out.size() != list->size()) throw wrong(key, "must be texts in brackets");
    return out;
}

TomlTable TomlTable::table(std::string_view key) {
    const auto* inner = need(key).as_table();
    if (!inner) throw wrong(key, fmt::format("must be a table: [{}]", key));
    return {*inner, file_, fmt::format("[{}]", key)};
}

std::vector<TomlTable> TomlTable::tables(std::string_view key) {
    const auto* list = need(key).as_array();
    std::vector<TomlTable> out;
    if (list)
        for (const auto& item : *list)
            if (const auto* inner = item.as_table())
                out.emplace_back(*inner, file_, fmt::format("[[{}]] {}", key, out.size() + 1));
    if (!list || out.empty() || out.size() != list->size())
        throw wrong(key, fmt::format("must be tables: [[{}]]", key));
    return out;
}

std::vector<std::string> TomlTable::keys() const {
    std::vector<std::string> out;
    for (const auto& [key, value] : *table_) out.emplace_back(key.str());
    return out;
}

void TomlTable::nothing_else() {
    for (const auto& [key, value] : *table_)
        if (std::find(asked_.begin(), asked_.end(), key.str()) == asked_.end())
            throw wrong(key.str(), "is not a key here" + did_you_mean(key.str(), asked_));
}

}  // namespace gristwright::catalog
