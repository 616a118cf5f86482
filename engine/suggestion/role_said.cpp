#include "engine/suggestion/role_said.hpp"

#include <algorithm>

#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

// "lace edge", but not "as a border", "just the edge".
bool names_an_edge(const Item& item) {
    constexpr std::string_view edges[] = {"edge",   "edges",   "edging", "edgings",
                                          "border", "borders", "trim",   "trimming"};
    constexpr std::string_view uses[] = {"as",  "just",  "only",   "for",
                                         "the", "round", "around", "contrast"};
    return has(edges, item.last_word()) && !has(uses, item.first_word());
}

// "will there be stripes?", "comes there stripes?": of what comes by itself.
bool is_asked_of_the_yarn(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view it[] = {"it", "there", "they", "get", "gives", "come", "comes"};
    for (auto i = at; i-- > 0 && items[i].sentence == items[at].sentence;) {
        if (items[i].first_word() == "you" || items[i].last_word() == "you") return false;
        if (has(it, items[i].first_word()) || has(it, items[i].last_word())) return true;
    }
    return false;
}

}  // namespace

bool is_of_the_piece(const std::vector<Item>& items, std::size_t at) {
    const auto& item = items[at];
    if (item.as(WordClass::role) != "border" || !names_an_edge(item)) return false;
    bool described = item.text.find(' ') != std::string::npos;
    for (auto i = at; i-- > 0 && i + 4 > at && items[i].sentence == item.sentence;) {
        if (items[i].sign)
            return described &&
                   std::any_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i),
                               [](const Item& x) { return is_thing(x); });
        if (items[i].is(joiner)) return items[i].as(joiner) == "with";
        if (items[i].last_word() == "with") return true;
        described = described || items[i].is(fabric);
    }
    return false;
}

bool is_done_to_a_part(const std::vector<Item>& items, std::size_t at) {
    if (at < 2 || items[at - 2].clause != items[at].clause) return false;
    const auto& what = items[at - 2];
    return !what.is(article) && (what.is(part) || what.is(form));
}

bool is_in_another(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view others[] = {"other", "contrast", "contrasting", "else"};
    for (auto i = at; i-- > 0 && i + 4 > at && items[i].clause == items[at].clause;)
        if (items[i].is(colour) || items[i].text.starts_with("another") ||
            has(others, items[i].last_word()))
            return true;
    return false;
}

bool asks_how_it_stripes(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view becomes[] = {"go",     "turn", "end",  "up",  "out",    "get",
                                            "come",   "look", "make", "be",  "its",    "own",
                                            "itself", "show", "give", "all", "colours"};
    if (!items[at].asks || at == 0) return false;
    if (items[at].first_word() != "in" && !items[at].text.starts_with("strip")) return false;
    const bool pools = std::any_of(items.begin(), items.end(), [&](const Item& i) {
        return i.sentence == items[at].sentence && i.asks && i.is(topic) &&
               i.as(topic).starts_with("pooling");
    });
    const auto next = at + 1;
    const bool of_a_thing =
        next < items.size() && (is_thing(items[next]) || items[next].last_word() == "with");
    return pools || has(becomes, items[at - 1].last_word()) ||
           (!of_a_thing && is_asked_of_the_yarn(items, at));
}

bool speaks_of_this(const Item& item) {
    for (const char* word : {"this ", "yours ", "your "})
        if (item.text.find(word) != std::string::npos) return true;
    return false;
}

}  // namespace gristwright
