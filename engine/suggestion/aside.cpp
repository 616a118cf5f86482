#include "engine/suggestion/aside.hpp"

#include <algorithm>

#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::size_t most_aside = 3;  // a longer list is no reading

bool is_a_measure(const Item& item) {
    return item.amount &&
           (item.amount->length || item.amount->mass || item.amount->gauge || item.amount->sett);
}

// The same thing is answered, or was said to be out.
bool is_dealt_with(const Item& item, const Taken& out) {
    if (!item.is(article)) return item.amount && item.amount->read;
    const auto kind = kind_of(item);
    if (item.out || std::count(out.ruled_out.begin(), out.ruled_out.end(), kind) > 0) return true;
    return std::any_of(out.wanted.begin(), out.wanted.end(),
                       [&](const Wanted& w) { return w.kind == kind || w.nearest == kind; });
}

}  // namespace

std::vector<std::size_t> set_aside(const std::vector<Item>& items) {
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < items.size(); ++i)
        if (items[i].idle && (items[i].is(article) || is_a_measure(items[i]))) out.push_back(i);
    return out;
}

void tell_aside(const std::vector<Item>& items, const std::vector<std::size_t>& places,
                Taken& out) {
    if (out.wanted.empty()) return;
    for (const auto at : places) {
        const auto& said = items[at].said;
        if (is_dealt_with(items[at], out) || out.aside.size() == most_aside ||
            std::count(out.aside.begin(), out.aside.end(), said) > 0)
            continue;
        out.aside.push_back(said);
    }
}

}  // namespace gristwright
