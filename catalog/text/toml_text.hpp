// Reads one table of a TOML text key by key, so that every complaint names file, line, key and what
// would be right, and a key that nobody asked for is an error with a suggestion.
//
// An implementation header of the readers in this folder: it is the one that shows toml++.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <fmt/ranges.h>
#include <toml++/toml.h>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/nearest.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {

toml::table parse_toml(std::string_view text, const std::string& file);
// The same, and every text in it is plain: line ends and tabs are spaces, and a control character
// or a mark that turns the direction of writing is refused. It may go to a terminal as it is.
toml::table parse_plain_toml(std::string_view text, const std::string& file);

class TomlTable {
  public:
    // `where` names the table in complaints: "[size]", "[[piece]] 2"; empty for the top.
    TomlTable(const toml::table& table, std::string file, std::string where);

    bool has(std::string_view key) { return get(key) != nullptr; }
    std::string text(std::string_view key);
    std::string text_or(std::string_view key, std::string_view otherwise);
    bool flag(std::string_view key);  // false when absent
    int whole_or(std::string_view key, int otherwise, int low, int high);
    std::vector<double> numbers(std::string_view key, std::size_t how_many);
    std::vector<std::string> texts(std::string_view key);  // empty when absent
    TomlTable table(std::string_view key);                 // must be there
    std::vector<TomlTable> tables(std::string_view key);   // [[key]], at least one

    // A measurement through one of our readers.
    template <class Read>
    auto measure(std::string_view key, Read read) {
        const auto written = text(key);
        try {
            return read(written);
        } catch (const Refused& error) {
            throw wrong(key, error.what());
        }
    }
    // One word of a list.
    template <class Enum>
    Enum word(std::string_view key, const std::vector<std::pair<std::string, Enum>>& list) {
        const auto written = text(key);
        std::vector<std::string> words;
        for (const auto& [name, value] : list) {
            if (name == written) return value;
            words.push_back(name);
        }
        throw wrong(key, not_one_of(written, words));
    }

    std::vector<std::string> keys() const;
    BadText wrong(std::string_view key, const std::string& why);
    // Throws for the first key that was never read.
    void nothing_else();

  private:
    const toml::node* get(std::string_view key);
    const toml::node& need(std::string_view key);

    const toml::table* table_;
    std::string file_, where_;
    std::vector<std::string> asked_;
};

}  // namespace gristwright::catalog
