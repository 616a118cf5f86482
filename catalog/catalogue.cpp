#include "catalog/catalogue.hpp"

#include <algorithm>

namespace gristwright::catalog {
namespace {

// "Camel down", "Jacob (US)" without its bracket.
std::string base(const std::string& spoken) { return spoken.substr(0, spoken.find(" (")); }

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

std::vector<std::string> Catalogue::template_names() const { return names(templates); }
std::vector<std::string> Catalogue::fibre_names() const { return names(fibres); }

}  // namespace gristwright::catalog
