#include <algorithm>

#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

bool in_clause(const std::vector<Item>& items, std::size_t clause, auto pred) {
    return std::any_of(items.begin(), items.end(),
                       [&](const Item& i) { return i.clause == clause && pred(i); });
}

bool is_own(const Item& item) {
    for (const char* word : {"my", "your", "her", "his", "our", "their", "the", "that"})
        if (item.text == word) return true;
    return false;
}

// "my jumper got moths": an article somebody has, and what became of it.
bool tells_a_tale(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].is(article) || at + 1 >= items.size()) return false;
    const auto& next = items[at + 1];
    if (!next.is(remark) || next.as(remark) != "tale" || next.clause != items[at].clause)
        return false;
    for (std::size_t back = 1; back <= 2 && back <= at; ++back)
        if (is_own(items[at - back])) return true;
    return false;
}

// "a shawl like my gran's": what follows is hers.
void set_aside_from(std::vector<Item>& items, std::size_t at) {
    for (auto i = at; i < items.size() && items[i].clause == items[at].clause; ++i) {
        if (items[i].first_word() == "so") return;  // "someone said hat, so I say bonnet"
        items[i].idle = true;
    }
}

constexpr std::string_view pronouns[] = {"i",      "he",      "she",      "we",  "they", "i've",
                                         "he's",   "she's",   "we've",    "who", "ive",  "just",
                                         "we'd",   "i'd",     "they've",  "has", "once", "never",
                                         "i have", "we have", "they have"};
constexpr std::string_view made_once[] = {"knitted", "wove",      "crocheted", "finished",
                                          "bought",  "wore",      "washed",    "sewed",
                                          "frogged", "unravelled"};

// "My granddaughter knitted her first scarf", "I've knitted nothing but hats": somebody's work
// that is done.
bool tells_of_making(const std::vector<Item>& items, std::size_t at) {
    if (at == 0 || items[at].asks || !has(made_once, items[at].text)) return false;
    const auto& before = items[at - 1];
    return before.clause == items[at].clause && (before.is(person) || has(pronouns, before.text));
}

// "The blanket on your sofa", "that hat on your head": a thing they see.
bool is_seen(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].is(article) || at == 0 || at + 2 >= items.size()) return false;
    const auto& before = items[at - 1].text;
    if (before != "the" && before != "that" && before != "your") return false;
    if (items[at + 2].clause != items[at].clause) return false;
    const auto& where = items[at + 1].text;
    const auto whose = items[at + 2].first_word();
    return (where == "on" || where == "behind" || where == "over" || where == "round") &&
           (whose == "your" || whose == "you" || whose == "the");
}

// "My hat's too small now": what somebody says of their own, unless it says how much it takes.
bool is_of_their_own(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].is(article) || at == 0 || items[at - 1].text != "my" || items[at].asks)
        return false;
    const bool begins = at == 1 || items[at - 2].sentence != items[at].sentence;
    if (!begins || at + 2 >= items.size() || items[at + 2].sentence != items[at].sentence)
        return false;
    return !in_clause(items, items[at].clause,
                      [](const Item& x) { return x.amount || x.is(tool); });
}

bool turns_away(const Item& item) {
    if (!item.is(remark)) return false;
    const auto& what = item.as(remark);
    return what == "past" || what == "offtopic" || what == "spam";
}

// "a bonnet to go with the shawl I already have": of the shawl alone.
bool is_told_of_another(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].is(remark) || items[at].as(remark) != "past" || at < 3) return false;
    if (!items[at - 1].is(article) || !is_own(items[at - 2])) return false;
    for (std::size_t i = 0; i + 2 < at; ++i)
        if (items[i].live(article) && items[i].clause == items[at].clause) return true;
    return false;
}

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

// What the past is told of goes on in a clause that "and" begins with another verb of the past:
// "I spun some last year, and turned it into a hat".
bool goes_on(const std::vector<Item>& items, std::size_t from) {
    const auto& first = items[from];
    if (!first.is(joiner) || first.as(joiner) != "and" || from + 1 >= items.size()) return false;
    const auto& next = items[from + 1].text;
    const auto verb = next.substr(0, next.find(' '));
    const bool past = verb.size() > 4 && verb.substr(verb.size() - 2) == "ed";
    return past || verb == "it" || verb == "made" || verb == "was" || verb == "knit";
}

// Clauses without a thing between are passed over: "..., 3 ply, and turned it into ...".
void set_aside_what_goes_on(std::vector<Item>& items, std::size_t from) {
    const auto told = items[from];
    for (auto i = from + 1; i < items.size() && items[i].sentence == told.sentence; ++i) {
        if (items[i].clause == items[i - 1].clause || items[i].clause == told.clause) continue;
        const auto clause = items[i].clause;
        const auto start = items[i].sign && i + 1 < items.size() ? i + 1 : i;
        if (goes_on(items, start)) {
            for (auto& item : items)
                if (item.clause == clause) item.idle = true;
        } else if (in_clause(items, clause, [](const Item& x) {
                       return x.is(article) || (x.is(joiner) && x.as(joiner) == "but");
                   })) {
            return;
        }
    }
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

// A question whether it is too scratchy for a cowl rules out no cowl.
bool rules_out(const Item& item) {
    if (!item.is(negation) || item.idle) return false;
    return !(item.asks && item.text.substr(0, 4) == "too ");
}

bool is_trimming(const Item& item) { return item.is(material) && item.as(material) == "notions"; }

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

// From a negation to what it rules out; further things only after "or", "nor", "and".
void reach(std::vector<Item>& items, std::size_t from, Taken& out) {
    bool hit = false;
    std::size_t skipped = 0;
    for (auto i = from + 1; i < items.size() && !ends_reach(items[i]); ++i) {
        auto& item = items[i];
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
            item.out = hit = true;
            if (item.is(article) &&
                std::count(out.ruled_out.begin(), out.ruled_out.end(), kind_of(item)) == 0)
                out.ruled_out.push_back(kind_of(item));
            if (item.is(fabric)) out.fabrics_out.push_back(fabric_of(item));
            if (item.is(article) && !joins_on(items[std::min(i + 1, items.size() - 1)])) return;
        } else if (hit || ++skipped > 4) {
            return;
        }
    }
}

}  // namespace

// "A skirt, no wait, a hat": what came before is taken back.
static void take_back(std::vector<Item>& items) {
    for (std::size_t i = 1; i < items.size(); ++i)
        if (items[i].is(remark) && items[i].as(remark) == "back") {
            const bool more = std::any_of(items.begin() + static_cast<std::ptrdiff_t>(i),
                                          items.end(), [](const Item& x) { return x.is(article); });
            for (std::size_t j = 0; more && j <= i; ++j) items[j].idle = true;
        }
}

void set_remarks_aside(std::vector<Item>& items) {
    take_back(items);
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto clause = items[i].clause;
        if (items[i].is(remark) && items[i].as(remark) == "aside") {
            set_aside_from(items, i);
        } else if (tells_a_tale(items, i) || tells_of_making(items, i) || is_seen(items, i) ||
                   is_of_their_own(items, i)) {
            for (auto& item : items)
                if (item.clause == clause) item.idle = true;
        } else if (is_told_of_another(items, i)) {
            for (auto j = i - 2; j <= i; ++j) items[j].idle = true;
        } else if (turns_away(items[i]) && items[i].as(remark) == "spam") {
            for (auto& item : items) item.idle = true;
        } else if (turns_away(items[i]) && !in_clause(items, clause, [](const Item& x) {
                       return x.amount && x.amount->of != Amount::Of::number &&
                              x.amount->of != Amount::Of::time;
                   })) {
            for (auto& item : items)
                if (item.clause == clause) item.idle = true;
            if (items[i].as(remark) == "past") set_aside_what_goes_on(items, i);
        }
    }
}

void rule_out(std::vector<Item>& items, Taken& out) {
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (rules_out(items[i]) && !is_a_doubt(items, i)) reach(items, i, out);
        if (const auto to = too_much_for(items, i); to > i) reach(items, to, out);
    }
    rule_out_everywhere(items, out);
}

}  // namespace gristwright
