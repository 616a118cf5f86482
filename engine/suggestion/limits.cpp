#include "engine/suggestion/limits.hpp"

namespace gristwright {
namespace {

constexpr std::string_view at_most_before[] = {
    "no more than", "not more than", "at most", "under",     "less than", "fewer than",
    "below",        "up to",         "within",  "max",       "maximum",   "maximum of",
    "not over",     "a maximum of",  "max of",  "not above", "only use",  "at the most"};
constexpr std::string_view at_least_before[] = {
    "at least",     "no less than", "not less than", "minimum",      "minimum of",
    "a minimum of", "min",          "more than",     "over",         "above",
    "not less",     "upwards of",   "not under",     "at the least", "no fewer than"};
constexpr std::string_view at_most_behind[] = {"or less", "or under", "max",         "maximum",
                                               "tops",    "at most",  "at the most", "or fewer"};
constexpr std::string_view at_least_behind[] = {"or more", "at least", "minimum",
                                                "or over", "min",      "at the least"};
constexpr std::string_view about[] = {"about", "around", "roughly", "some", "use", "a", "of"};

}  // namespace

Limit limit_of(const std::vector<Item>& items, std::size_t at) {
    for (auto i = at; i-- > 0 && i + 3 > at && items[i].sentence == items[at].sentence;) {
        if (has(at_most_before, items[i].text)) return Limit::most;
        if (has(at_least_before, items[i].text)) return Limit::least;
        if (!has(about, items[i].text)) break;
    }
    const auto next = at + 1;
    if (next >= items.size() || items[next].sentence != items[at].sentence) return Limit::none;
    if (has(at_most_behind, items[next].text)) return Limit::most;
    return has(at_least_behind, items[next].text) ? Limit::least : Limit::none;
}

std::string limited(const std::vector<Item>& items, std::size_t at) {
    const auto limit = limit_of(items, at);
    if (limit == Limit::none) return items[at].said;
    return (limit == Limit::most ? "at most " : "at least ") + items[at].said;
}

}  // namespace gristwright
