#include "catalog/reference/ordinary.hpp"

#include <fmt/core.h>

#include <memory>
#include <stdexcept>

#include "catalog/reference/piece_range_text.hpp"
#include "engine/suitability/standing.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

constexpr double ample = 20000;  // metres: every article reaches

FibrePart part_of(std::string_view text, const Catalogue& catalogue) {
    double share = 1;
    if (text.ends_with('%')) {
        const auto space = text.rfind(' ');
        if (space == std::string_view::npos)
            throw std::runtime_error(fmt::format("ordinary yarn: '{}' names no fibre", text));
        share = read_share(std::string(text.substr(space + 1)));
        text = text.substr(0, space);
    }
    const auto* known = catalogue.fibre_named(text);
    if (!known) throw std::runtime_error(fmt::format("ordinary yarn: no fibre '{}'", text));
    auto out = *known;
    out.share = share;
    return out;
}

std::vector<FibrePart> blend_of(std::string_view text, const Catalogue& catalogue) {
    std::vector<FibrePart> out;
    while (!text.empty()) {
        const auto plus = text.find(" + ");
        out.push_back(part_of(text.substr(0, plus), catalogue));
        text = plus == std::string_view::npos ? std::string_view{} : text.substr(plus + 3);
    }
    return out;
}

Batch batch_of(const OrdinaryYarn& yarn, const Catalogue& catalogue) {
    Batch out;
    out.skeins.push_back(
        {"skein", metres(ample), grams(ample / yarn.metres_per_gram), LengthState::washed});
    out.fibre = blend_of(yarn.fibre, catalogue);
    out.preparation = yarn.preparation;
    out.draw = yarn.draw;
    out.plies = yarn.plies;
    return out;
}

}  // namespace

std::vector<YarnProfile> ordinary_yarns(const Catalogue& catalogue) {
    std::vector<YarnProfile> out;
    for (const auto& yarn : catalogue.ordinary)
        out.push_back(profile(batch_of(yarn, catalogue), catalogue.yarn, true));
    return out;
}

void make_ready(Template& article, const Catalogue& catalogue,
                const std::vector<YarnProfile>& ordinary) {
    article.kind = kind_named(catalogue.kinds, article.article);
    article.apart = range_of(article, catalogue.piece_ranges);
    auto calling = calling_of(article, catalogue.needs, catalogue.spun_for);
    article.calling = std::make_shared<const Calling>(calling);
    calling.levels = standing_levels(article, ordinary, catalogue.fabrics);
    article.calling = std::make_shared<const Calling>(std::move(calling));
}

}  // namespace gristwright::catalog
