#include "engine/suggestion/asking.hpp"

#include <algorithm>

namespace gristwright {

std::string what_to_ask(const Taken& taken) {
    if (taken.not_an_idea || !taken.wanted.empty()) return "";
    if (!taken.topics.empty() && taken.asks) return "";
    std::string unknown;
    std::size_t named = 0;
    for (const auto& word : taken.not_known)
        if (!word.craft && !word.other_craft && named++ < 3)
            unknown += (unknown.empty() ? "" : ", ") + word.said;
    if (unknown.empty()) unknown = taken.named;
    if (unknown.empty())
        return taken.wearer == Wearer::animal ? "what is it to be: a blanket to lie on?"
                                              : "what is it to be?";
    return "which article is meant by '" + unknown + "'?";
}

std::string none_such(const SuggestionAnswer& a, std::optional<Craft> craft, const Ground& ground) {
    const auto& wanted = a.things.front().wanted;
    const auto said = wanted.said == wanted.kind + "s" ? wanted.kind : wanted.said;
    const auto& all = ground.templates;
    const bool made = std::any_of(all.begin(), all.end(),
                                  [&](const Template& t) { return t.article == wanted.kind; });
    if (!made) {
        const bool many = said.back() == 's' && !said.ends_with("ss");
        return (many ? "there are no " : "there is no ") + said +
               " in the catalogue: what else could it be?";
    }
    auto what = craft ? std::string(words(*craft)) + " " + said : said;
    const auto& fabric = a.taken.fabric;
    if (fabric.named()) what += " in " + (fabric.knitted.empty() ? fabric.woven : fabric.knitted);
    return "there is no " + what + " in the catalogue: which craft and fabric would do?";
}

}  // namespace gristwright
