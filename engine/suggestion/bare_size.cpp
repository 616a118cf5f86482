// A size of which nobody said in what it is.
#include <algorithm>

#include "engine/suggestion/answer.hpp"
#include "engine/suggestion/constants.hpp"

namespace gristwright {

using namespace constants;

// "45 x 45": in the unit in which the article is made in that size, where it is so in one only.
ThingAnswer Answerer::with_its_unit(ThingAnswer thing, Taken& taken, std::optional<Craft> craft,
                                    Best*& found) {
    if (taken.bare.empty() || !thing.article || !thing.wanted.sizes.empty()) return thing;
    const auto& t = *thing.article;
    const auto fits = [&](Length unit) {
        const auto size = unit * *std::max_element(taken.bare.begin(), taken.bare.end());
        return size >= t.smallest / unit_told_by && size <= t.largest * unit_told_by;
    };
    const bool cm = fits(centimetres(1)) && !taken.imperial.value_or(false);
    const bool in = fits(inches(1)) && taken.imperial.value_or(true);
    if (cm == in) return thing;
    auto wanted = thing.wanted;
    for (const auto number : taken.bare)
        wanted.sizes.push_back(cm ? centimetres(number) : inches(number));
    std::sort(wanted.sizes.rbegin(), wanted.sizes.rend());
    auto out = look_at(wanted, taken, craft, found);
    (cm ? out.in_cm : out.in_inches) = out.unfit <= Length{};
    if (!out.in_cm && !out.in_inches) return out;
    taken.wanted.front().sizes = wanted.sizes;
    taken.imperial = out.in_inches;
    return out;
}

}  // namespace gristwright
