#include "catalog/catalogue.hpp"

#include <algorithm>

#include "engine/units/ascii.hpp"

namespace gristwright::catalog {
namespace {

std::string folded(std::string_view name) {
    return ascii::lowered(name.substr(0, name.find(" (")));
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

const FibrePart* Catalogue::fibre_named(std::string_view name) const {
    for (const auto& f : fibres)
        if (folded(f.name) == folded(name)) return &f;
    return nullptr;
}

std::vector<std::string> Catalogue::template_names() const { return names(templates); }
std::vector<std::string> Catalogue::fibre_names() const { return names(fibres); }

}  // namespace gristwright::catalog
