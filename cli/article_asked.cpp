#include "cli/article_asked.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/reference/ordinary.hpp"
#include "catalog/reference/own_templates.hpp"
#include "catalog/text/nearest.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

bool typed_in_inches(const std::string& size) {
    return size.find_first_of("\"'") != std::string::npos || size.find("in") != std::string::npos ||
           size.find("yd") != std::string::npos || size.find("f") != std::string::npos;
}

// "'scarf' can mean fulled-scarf, garter-scarf or woven-scarf: which?"
std::string which_of(const std::string& name, const std::vector<const Template*>& meant) {
    constexpr std::size_t most = 8;
    std::string list;
    for (std::size_t m = 0; m < std::min(meant.size(), most); ++m) {
        const bool last = m + 1 == meant.size();
        list += fmt::format("{}{}", m == 0 ? "" : last ? " or " : ", ", meant[m]->name);
    }
    if (meant.size() > most) list += fmt::format(" or {} more", meant.size() - most);
    return fmt::format("'{}' can mean {}: which? The titles do as well, in quotes", name, list);
}

}  // namespace

void check_size(const Arguments& arguments, const Question& q, const Template& article) {
    check_size(arguments, q.request.size, article);
}

void check_size(const Arguments& arguments, const std::optional<Length>& size,
                const Template& article) {
    if (!size || (*size >= article.smallest * 0.2 && *size <= article.largest * 5)) return;
    const Units units(typed_in_inches(arguments.text("size")) ? UnitChoice::imperial
                                                              : UnitChoice::metric);
    throw Refused(fmt::format("--size {}: a {} has a {} from {} to {}", arguments.text("size"),
                              article.article, article.measure, units.size(article.smallest),
                              units.size(article.largest)));
}

Template find_template(const catalog::Catalogue& catalogue, const std::string& name) {
    if (const auto* found = catalogue.template_named(name)) return *found;
    for (const auto& bad : catalogue.left_out)
        if (!name.empty() && bad.name == name) throw Refused(bad.why);
    if (name.find('/') != std::string::npos || name.find(".toml") != std::string::npos) {
        auto own = catalog::read_template_file(name, catalogue.fabrics);
        catalog::check_new_template(catalogue, own);
        catalog::make_ready(own, catalogue, catalog::ordinary_yarns(catalogue));
        return own;
    }
    const auto meant = catalogue.templates_meant(name);
    if (meant.size() == 1) return *meant[0];
    if (!meant.empty()) throw Refused(which_of(name, meant));
    auto known = catalogue.template_names();
    for (const auto& t : catalogue.templates) known.push_back(t.title);
    throw Refused(fmt::format("there is no template '{}'{}; see gristwright templates", name,
                              catalog::did_you_mean(name, known)));
}

}  // namespace gristwright::cli
