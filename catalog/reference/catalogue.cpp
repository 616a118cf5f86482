#include "catalog/reference/catalogue.hpp"

#include <algorithm>

namespace gristwright::catalog {
namespace {

// "Camel down", "Jacob (US)" without its bracket.
std::string base(const std::string& spoken) { return spoken.substr(0, spoken.find(" (")); }

// Whether each word of `typed` begins a word of `text`.
bool holds_words(const std::string& text, std::string_view typed) {
    while (!typed.empty()) {
        const auto word = typed.substr(0, typed.find(' '));
        typed.remove_prefix(std::min(typed.size(), word.size() + 1));
        if ((" " + text).find(" " + std::string(word)) == std::string::npos) return false;
    }
    return true;
}

template <class Row>
std::vector<std::string> names(const std::vector<Row>& rows) {
    std::vector<std::string> out;
    for (const auto& row : rows) out.push_back(row.name);
    return out;
}

}  // namespace

const Template* Catalogue::template_named(std::string_view name) const {
    for (const auto& t : templates)
        if (t.name == name) return &t;
    return nullptr;
}

std::vector<const Template*> Catalogue::templates_meant(std::string_view words) const {
    const auto typed = as_spoken(words);
    std::vector<const Template*> out;
    if (typed.empty()) return out;
    const auto take = [&](auto fits) {
        for (const auto& t : templates)
            if (fits(t, as_spoken(t.name), as_spoken(t.title))) out.push_back(&t);
        return !out.empty();
    };
    using Text = const std::string&;
    take([&](const Template&, Text name, Text title) { return name == typed || title == typed; }) ||
        take([&](const Template& t, Text, Text) { return as_spoken(t.article) == typed; }) ||
        take([&](const Template&, Text name, Text title) {
            return name.find(typed) == 0 || title.find(typed) == 0;
        }) ||
        take([&](const Template&, Text name, Text title) {
            return holds_words(name + " " + title, typed);
        });
    return out;
}

const FibrePart* Catalogue::fibre_called(std::string_view name) const {
    const auto typed = as_spoken(name);
    for (const auto& f : fibres)
        if (as_spoken(f.name) == typed) return &f;
    return nullptr;
}

const FibrePart* Catalogue::fibre_named(std::string_view name) const {
    if (const auto* whole = fibre_called(name)) return whole;
    const auto typed = as_spoken(name);
    const FibrePart* found = nullptr;
    for (const auto& f : fibres)
        if (base(as_spoken(f.name)) == typed) {
            if (found) return nullptr;  // Jacob (UK) or Jacob (US)
            found = &f;
        }
    return found;
}

std::vector<std::string> Catalogue::template_names() const { return names(templates.rows()); }
std::vector<std::string> Catalogue::fibre_names() const { return names(fibres); }

}  // namespace gristwright::catalog
