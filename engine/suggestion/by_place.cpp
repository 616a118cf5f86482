#include "engine/suggestion/by_place.hpp"

namespace gristwright {

std::size_t place_of_a_thing(const std::vector<Item>& items) {
    constexpr std::string_view unnamed[] = {"thing", "things", "something", "anything", "summat"};
    constexpr std::string_view goes[] = {"round", "around", "over", "on",   "for",   "under",
                                         "about", "onto",   "keep", "warm", "cover", "keeps"};
    constexpr std::size_t reach = 9;
    const auto none = items.size();
    auto named = none, leads = none;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto& item = items[i];
        if (item.idle || item.out) continue;
        if (has(unnamed, item.last_word())) named = i, leads = none;
        if (named == none || i > named + reach || items[named].sentence != item.sentence) continue;
        if (has(goes, item.last_word()))
            leads = i;
        else if (leads != none && i <= leads + 4 && item.is(WordClass::place))
            return i;
    }
    return none;
}

std::vector<Wanted> things_for(const Item& place, const ArticleKinds& kinds) {
    std::vector<Wanted> out;
    std::string_view names = place.as(WordClass::place);
    while (!names.empty()) {
        Wanted wanted;
        wanted.kind = std::string(names.substr(0, names.find('|')));
        wanted.said = wanted.kind;
        wanted.known = kind_named(kinds, wanted.kind);
        names.remove_prefix(std::min(wanted.kind.size() + 1, names.size()));
        out.push_back(std::move(wanted));
    }
    return out;
}

}  // namespace gristwright
