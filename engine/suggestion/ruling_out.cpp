// What a negation rules out: "not socks", "leave socks out of it", "too itchy for a scarf".
#include <algorithm>

#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/suggestion/refusing.hpp"

namespace gristwright {
namespace {

using enum WordClass;

// Words that a negation reaches; a filler between is no end.
bool can_be_ruled_out(const Item& item) {
    return item.is(article) || item.is(part) || item.is(fabric) || item.is(technique) ||
           item.is(craft) || item.is(role);
}

bool ends_reach(const Item& item) {
    if (item.sign && item.text.find_first_of(".,;:!?()") == 0) return true;
    if (item.is(joiner)) {
        const auto& what = item.as(joiner);
        return what == "but" || what == "next";
    }
    return item.is(negation);
}

bool joins_on(const Item& item) {
    if (item.is(joiner)) return item.as(joiner) == "or" || item.as(joiner) == "and";
    return item.text == "nor";
}

// "it won't stretch to a jumper?": a doubt, no refusal.
bool is_a_doubt(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view suffices[] = {"stretch", "reach", "do",   "run", "be",
                                             "go",      "make",  "last", "get", "cover"};
    const auto negates = items[at].last_word();
    const bool may = negates.ends_with("n't") || negates == "not" || negates == "wont";
    const auto next = at + 1;
    return may && items[at].asks && next < items.size() && has(suffices, items[next].first_word());
}

// "socks but not wool socks": another of what was named is ruled out, not the thing.
bool is_of_another(const std::vector<Item>& items, std::size_t negation_at, std::size_t at) {
    const bool modified =
        at > negation_at + 1 &&
        (items[at - 1].is(material) || items[at - 1].is(colour) || items[at - 1].is(person));
    if (!modified) return false;
    return std::any_of(
        items.begin(), items.begin() + static_cast<std::ptrdiff_t>(negation_at),
        [&](const Item& i) { return i.live(article) && kind_of(i) == kind_of(items[at]); });
}

// "nothing lacy", "nothing cabled": with no word between.
bool is_nothing_of(const std::vector<Item>& items, std::size_t at) {
    const auto next = at + 1;
    return items[at].text == "nothing" && !items[at].idle && next < items.size() &&
           items[next].clause == items[at].clause && !items[next].is(article) &&
           (items[next].is(fabric) || items[next].is(technique) || items[next].is(craft));
}

// "She has no cowl": what she lacks.
bool is_lacked(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view has_got[] = {"has", "have", "got", "had", "owns", "own"};
    if (items[at].text != "no" || at == 0 || !same_clause(items, at - 1, at)) return false;
    if (!has(has_got, items[at - 1].last_word())) return false;
    constexpr std::string_view who[] = {"i",     "she",  "he",    "we",   "they",  "who",
                                        "still", "he's", "she's", "i've", "we've", "they've"};
    const auto& verb = items[at - 1];
    const auto subject = verb.text.find(' ') != std::string::npos ? verb.first_word()
                         : at > 1                                 ? items[at - 2].last_word()
                                                                  : std::string_view();
    if (!has(who, subject) && !(at > 1 && items[at - 2].is(person))) return false;
    auto next = at + 1;  // "no lace stole"
    while (next < at + 3 && same_clause(items, at, next) && !items[next].is(article) &&
           describes_too(items[next]))
        ++next;
    return same_clause(items, at, next) && items[next].is(article);
}

// A question whether it is too scratchy for a cowl rules out no cowl.
bool rules_out(const Item& item) {
    if (!item.is(negation) || item.idle) return false;
    return !(item.asks && item.text.substr(0, 4) == "too ");
}

// "no bobble", "a shawl that isn't a triangle": of a thing that was named before it.
bool is_a_form_here(const std::vector<Item>& items, std::size_t at) {
    const auto& item = items[at];
    if (is_trimming(item) || (item.is(form) && !item.is(article))) return true;
    if (!item.is(form)) return false;
    return std::any_of(
        items.begin(), items.begin() + static_cast<std::ptrdiff_t>(at),
        [&](const Item& i) { return i.live(article) && i.sentence == item.sentence; });
}

std::string form_of(const Item& item) {
    if (!item.is(form) || item.as(form) == "?") return item.text;
    return item.as(form);
}

// "it's too itchy for a scarf": up to its "for"; its own place: nothing is too much.
std::size_t too_much_for(const std::vector<Item>& items, std::size_t at) {
    if (items[at].first_word() != "too" || items[at].is(negation) || items[at].asks) return at;
    for (auto i = at; i < items.size() && i <= at + 2; ++i)
        if (items[i].clause == items[at].clause && items[i].last_word() == "for")
            return i > at ? i : at;
    return at;
}

// What is ruled out once is not wanted where it is named again: "Not a hat! You always do hats."
void rule_out_everywhere(std::vector<Item>& items, const Taken& out) {
    for (auto& item : items) {
        if (item.is(article))
            item.out = item.out ||
                       std::count(out.ruled_out.begin(), out.ruled_out.end(), kind_of(item)) > 0;
        if (!item.is(fabric) || item.is(article)) continue;
        item.out =
            item.out || std::count(out.fabrics_out.begin(), out.fabrics_out.end(), fabric_of(item));
    }
}

// "leave socks out of it", "a scarf it is not": ruled out from behind.
bool is_left_out(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view verbs[] = {"leave",  "leaving", "keep", "count", "rule",
                                          "strike", "cut",     "drop", "cross", "let"};
    constexpr std::string_view away[] = {"out", "off", "aside", "alone", "be"};
    constexpr std::string_view it_is[] = {"it is not", "it isn't", "is not", "are not",
                                          "isn't",     "aren't",   "is out", "are out",
                                          "it's not",  "won't do"};
    constexpr std::string_view goes_on[] = {"for", "what", "wanted",  "needed",
                                            "on",  "an",   "welcome", "allowed"};
    if (!items[at].is(article) && !items[at].is(fabric) && !items[at].is(weight)) return false;
    const auto in_clause = [&](std::size_t i) {
        return i < items.size() && items[i].clause == items[at].clause && !items[i].sign;
    };
    for (auto i = at; i-- > 0 && i + 3 > at && in_clause(i);)
        if (has(verbs, items[i].text) && in_clause(at + 1) && has(away, items[at + 1].first_word()))
            return true;
    auto not_at = at + 1;
    std::string said;
    while (in_clause(not_at) && not_at < at + 4 && !has(it_is, said))
        said += (said.empty() ? "" : " ") + items[not_at++].text;
    if (!has(it_is, said)) return false;
    return !in_clause(not_at) || has(goes_on, items[not_at].first_word());
}

void put_out(Item& item, Taken& out) {
    item.out = true;
    if (item.is(article) &&
        std::count(out.ruled_out.begin(), out.ruled_out.end(), kind_of(item)) == 0)
        out.ruled_out.push_back(kind_of(item));
    if (item.is(fabric)) out.fabrics_out.push_back(fabric_of(item));
}

// "would never put a two ply this soft in the reed for towels": however far off.
std::size_t never_for(const std::vector<Item>& items, std::size_t from) {
    constexpr std::string_view would[] = {"would", "should", "could", "wouldn't"};
    const auto& never = items[from];
    if (never.last_word() != "never" || never.idle) return from;
    const auto before = never.text.find(' ') != std::string::npos ? never.first_word()
                        : from > 0                                ? items[from - 1].last_word()
                                                                  : std::string_view();
    if (!has(would, before) && !before.ends_with("'d")) return from;
    for (auto i = from + 1; same_clause(items, from, i + 1) && i < from + 14; ++i) {
        if (items[i].first_word() == "enough" || items[i].is(article)) return from;
        if (items[i].last_word() == "for" && items[i + 1].is(article)) return i + 1;
    }
    return from;
}

// From a negation to what it rules out; further things only after "or", "nor", "and".
void rule_out_within_reach(std::vector<Item>& items, std::size_t from, Taken& out) {
    constexpr std::string_view undecided[] = {"choose", "decide", "pick"};
    constexpr std::string_view cannot[] = {"can't", "cant", "cannot", "couldn't", "couldnt"};
    if (from + 1 < items.size() && has(undecided, items[from + 1].first_word()) &&
        has(cannot, items[from].last_word()))
        return;
    if (from + 1 < items.size() && items[from + 1].first_word() == "stop") return;
    const bool compares = items[from].first_word() == "than";  // "than a 2 ply for mittens"
    bool hit = false;
    std::size_t skipped = 0;
    for (auto i = from + 1; i < items.size() && !ends_reach(items[i]); ++i) {
        auto& item = items[i];
        if (compares && item.text == "for") return;
        if (joins_on(item) || item.idle) continue;
        if (is_a_form_here(items, i)) {
            item.out = hit = true;
            out.forms_out.push_back(form_of(item));
        } else if (item.is(article) && is_of_another(items, from, i)) {
            out.left_out.push_back("not " + items[i - 1].said);
            item.idle = true;
            return;
        } else if (item.is(part) && !item.is(article)) {
            item.idle = hit = true;
            out.left_out.push_back(items[from].said + " " + item.said);
        } else if (can_be_ruled_out(item)) {
            if (hit && !joins_on(items[i - 1]) && !can_be_ruled_out(items[i - 1]) &&
                !is_own(items[i - 1]) && !items[i - 1].is(filler))
                return;
            hit = true;
            put_out(item, out);
            if (item.is(article) && !joins_on(items[std::min(i + 1, items.size() - 1)])) return;
        } else if (hit || ++skipped > 4) {
            return;
        }
    }
}

}  // namespace

void rule_out(std::vector<Item>& items, Taken& out) {
    for (std::size_t i = 0; i < items.size(); ++i) {
        if ((rules_out(items[i]) && !is_a_doubt(items, i) && !is_lacked(items, i)) ||
            is_nothing_of(items, i))
            rule_out_within_reach(items, i, out);
        if (const auto to = too_much_for(items, i); to > i) rule_out_within_reach(items, to, out);
        if (const auto to = never_for(items, i); to > i && !items[i].asks) {
            for (auto j = i; j < to; ++j) items[j].idle = true;
            put_out(items[to], out);
        }
        if (items[i].idle || items[i].out) continue;
        if (is_left_out(items, i) || is_refused(items, i)) put_out(items[i], out);
    }
    rule_out_everywhere(items, out);
}

}  // namespace gristwright
