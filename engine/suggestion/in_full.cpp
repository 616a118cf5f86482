#include "engine/suggestion/in_full.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::string_view reaches_to[] = {"to", "over", "below", "above", "under", "past"};
constexpr std::string_view whose_it_is[] = {"the", "my", "your", "his", "her", "their"};
constexpr std::string_view turns_into[] = {"to", "into", "through"};

// "up to the elbow".
std::string said_to_reach(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].is(body) || at == 0 || !same_clause(items, at - 1, at)) return {};
    const bool whose = at > 1 && has(whose_it_is, items[at - 1].text);
    const auto before = whose ? at - 2 : at - 1;
    if (!has(reaches_to, items[before].last_word())) return {};
    return items[before].said + " " + (whose ? items[at - 1].said + " " : "") + items[at].said;
}

// "a tea towel sized wrap".
std::string as_large_as(const std::vector<Item>& items, std::size_t at) {
    const auto& item = items[at];
    if ((item.text != "sized" && item.text != "size") || at == 0 || !same_clause(items, at - 1, at))
        return {};
    const auto& of = items[at - 1];
    if (!is_plain(of) && !of.is(article) && !of.is(part)) return {};
    return before_article(items, at) || (item.text == "sized" && !of.is(article))
               ? of.said + " " + item.said
               : "";
}

// "from brown to grey", however that is brought about.
std::string colour_change(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].is(colour) || at == 0 || items[at - 1].last_word() != "from") return {};
    for (auto i = at + 2; same_clause(items, at, i) && i <= at + 3; ++i)
        if (items[i].is(colour) && has(turns_into, items[i - 1].last_word()))
            return "from " + items[at].said + " to " + items[i].said;
    return {};
}

// "the yoke in yours and the body in white".
std::string part_in_ours(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view ours[] = {"yours", "this", "your", "it"};
    const auto& item = items[at];
    const bool piece = item.is(part) || item.is(form) || item.is(body);
    if (!piece || item.is(article) || !same_clause(items, at, at + 2)) return {};
    if (items[at + 1].text != "in" || !has(ours, items[at + 2].first_word())) return {};
    return item.said + " in " + items[at + 2].said;
}

// "Icelandic style", "1930s look".
std::string style(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view ways[] = {"style", "styled", "look", "fashion"};
    if (at == 0 || !has(ways, items[at].text) || !same_clause(items, at - 1, at)) return {};
    const auto& what = items[at - 1];
    const bool named = (what.is(material) && !what.is(article)) || what.bent ||
                       (what.is(everyday) && what.capital && is_plain(what));
    const bool behind =
        items[at].text == "look" && is_plain(what) && !what.asks &&
        (at + 1 == items.size() || items[at + 1].sign || items[at + 1].text == "please");
    return behind || (named && before_article(items, at)) ? what.said + " " + items[at].said : "";
}

// "gloves with no fingertips".
std::string lacking(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view without[] = {"no", "without", "minus", "sans", "with no"};
    const auto& item = items[at];
    if (at == 0 || !has(without, items[at - 1].text)) return {};
    const bool piece = item.is(body) || item.bent || item.unknown || item.is(part);
    return piece ? items[at - 1].said + " " + item.said : "";
}

// "only the first skein".
std::string skeins(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view which[] = {"first", "second", "third",   "last",
                                          "small", "single", "other",   "smallest",
                                          "big",   "large",  "biggest", "largest"};
    if (!items[at].is(unit) || items[at].as(unit) != "skein" || at == 0) return {};
    const auto& before = items[at - 1];
    return has(which, before.text) ? before.said + " " + items[at].said : "";
}

}  // namespace

bool is_of_making(const Item& i) { return i.is(everyday) && i.as(everyday) == "make"; }

bool is_trimming(const Item& i) { return i.is(material) && i.as(material) == "notions"; }

bool is_plain(const Item& i) {
    if (i.unknown || i.bent) return true;
    if (!i.is(everyday) || i.text.size() < 3) return false;
    for (const auto c : {article, form, fabric, technique, craft, role, person, colour, number,
                         unit, tool, joiner, negation, remark, idiom, filler})
        if (i.is(c)) return false;
    // "a strong bag" asks nothing: told like any other word.
    if (i.is(topic) && (i.asks || !i.as(topic).ends_with('?'))) return false;
    return true;
}

bool describes_too(const Item& i) {
    return i.is(fabric) || i.is(form) || i.is(technique) || i.is(craft) || i.is(colour) ||
           i.is(material) || i.is(person) || is_plain(i) ||
           (i.is(filler) && i.as(filler) == "size");
}

bool same_clause(const std::vector<Item>& items, std::size_t a, std::size_t b) {
    return b < items.size() && items[a].clause == items[b].clause && !items[b].sign;
}

bool before_article(const std::vector<Item>& items, std::size_t at) {
    for (auto i = at + 1; same_clause(items, at, i); ++i) {
        if (items[i].live(article) || items[i].stranger) return true;
        if (!describes_too(items[i]) || items[i].idle) return false;
    }
    return false;
}

std::string said_in_full(const std::vector<Item>& items, std::size_t at) {
    for (const auto tell :
         {said_to_reach, as_large_as, colour_change, part_in_ours, lacking, style, skeins})
        if (const auto said = tell(items, at); !said.empty()) return said;
    return {};
}

}  // namespace gristwright
