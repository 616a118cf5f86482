// The way back: a batch's texts as the TOML that reads as the same texts.
#include <algorithm>
#include <sstream>

#include "catalog/text/toml_text.hpp"
#include "catalog/typed/batch_text.hpp"

namespace gristwright::catalog {
namespace {

void put(toml::table& to, const std::string& key, const std::vector<Written>& texts) {
    if (texts.size() == 1) {
        to.insert(key, texts.front().text);
        return;
    }
    toml::array list;
    for (const auto& one : texts) list.push_back(one.text);
    to.insert(key, std::move(list));
}

void put(toml::table& to, const std::string& key, const Written& text) {
    if (!text.text.empty()) to.insert(key, text.text);
}

// Every text in double quotes, so that all of them know the same escapes.
std::string lines_of(const toml::table& table) {
    std::ostringstream out;
    out << toml::toml_formatter(table, toml::format_flags::allow_unicode_strings);
    return out.str() + "\n";
}

toml::table table_of(const SkeinText& skein) {
    toml::table out;
    put(out, "name", skein.name);
    put(out, "length", skein.length);
    put(out, "mass", skein.mass);
    put(out, "measured", skein.state);
    for (const auto& [key, texts] : skein.own)
        if (!texts.empty()) put(out, key, texts);
    return out;
}

}  // namespace

std::string toml_of(const BatchText& text) {
    const auto& keys = batch_keys();
    toml::table top, equipment;
    for (const auto& [key, texts] : text.fields) {
        if (texts.empty()) continue;
        const bool of_yarn = std::find(keys.begin(), keys.end(), key) != keys.end();
        put(of_yarn ? top : equipment, key, texts);
    }
    std::string out = top.empty() ? "" : lines_of(top);
    if (!equipment.empty()) out += "\n[equipment]\n" + lines_of(equipment);
    for (const auto& skein : text.skeins) out += "\n[[skein]]\n" + lines_of(table_of(skein));
    return out;
}

}  // namespace gristwright::catalog
