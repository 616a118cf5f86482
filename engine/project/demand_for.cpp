#include "engine/project/demand_for.hpp"

#include <algorithm>

namespace gristwright {
namespace {

template <class T>
bool same(const std::optional<T>& asked, const T& has) {
    return !asked || *asked == has;
}

}  // namespace

bool Listed::admits(const std::string& word) const {
    if (words.empty()) return true;
    return (std::find(words.begin(), words.end(), word) == words.end()) == none_of;
}

bool DemandFor::holds_for(const Template& t) const {
    const bool hard = t.craft == Craft::woven && t.finish == Finish::hard_fulled;
    return same(craft, t.craft) && same(touches, t.touches) && same(hard_fulled, hard) &&
           (!firmness || (t.craft == Craft::knitted && t.firmness == *firmness)) &&
           same(for_baby, t.for_baby) && article.admits(t.article) &&
           std::any_of(t.pieces.begin(), t.pieces.end(),
                       [&](const auto& piece) { return fabric.admits(piece.fabric); });
}

Calling calling_of(const Template& article, const std::vector<DemandFor>& needs,
                   const std::vector<SpunFor>& kinds) {
    Calling out;
    if (article.sample) return out;  // a yarn is learnt from whatever it is for
    for (const auto& row : needs)
        if (row.holds_for(article)) out.demands.push_back(row.demand);
    const auto kind = std::find_if(kinds.begin(), kinds.end(), [&](const SpunFor& row) {
        return row.article.admits(article.article) && same(row.touches, article.touches) &&
               same(row.for_baby, article.for_baby);
    });
    if (kind == kinds.end()) return out;
    out.place = kind->place;
    out.alike = kind->alike;
    return out;
}

}  // namespace gristwright
