#include "engine/suggestion/measure_said.hpp"

#include <algorithm>

#include "engine/units/has.hpp"

namespace gristwright {

using enum WordClass;

std::string tool_beside(const std::vector<Item>& items, std::size_t at, std::size_t reach) {
    for (std::size_t n = 1; n <= reach && at + n < items.size(); ++n) {
        if (items[at + n].sign || items[at + n].is(joiner)) break;
        if (items[at + n].is(tool)) return items[at + n].as(tool);
        if (items[at + n].amount) break;
    }
    for (std::size_t n = 1; n <= reach && n <= at; ++n) {
        if (items[at - n].sign || items[at - n].amount || items[at - n].text == "and") break;
        if (items[at - n].is(tool)) return items[at - n].as(tool);
    }
    return {};
}

bool sentence_has(const std::vector<Item>& items, std::size_t at, std::string_view what) {
    return std::any_of(items.begin(), items.end(), [&](const Item& i) {
        return i.sentence == items[at].sentence && i.is(tool) && i.as(tool) == what;
    });
}

bool says_own_yarn(const std::vector<Item>& items, std::size_t at) {
    for (std::size_t i = 0; i < at; ++i)
        if ((items[i].text == "own" || items[i].text.find(" own") != std::string::npos) &&
            items[i].sentence == items[at].sentence && !items[i].is(article))
            return true;
    return false;
}

bool is_of_each(const std::vector<Item>& items, std::size_t at) {
    for (std::size_t n = 1; n <= 4 && at + n < items.size(); ++n) {
        if (items[at + n].text == "each" || items[at + n].text == "apiece") return true;
        if (items[at + n].sign) return false;
    }
    return false;
}

bool is_said_long(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view lengths[] = {"long", "in length", "tall", "length"};
    return at + 1 < items.size() && has(lengths, items[at + 1].text);
}

bool is_said_tall(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view heights[] = {"tall", "high", "in height", "deep"};
    return at + 1 < items.size() && has(heights, items[at + 1].text);
}

}  // namespace gristwright
