#include <algorithm>

#include "engine/suggestion/at_hand.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/suggestion/telling.hpp"

namespace gristwright {
namespace {

using enum WordClass;

bool in_clause(const std::vector<Item>& items, std::size_t clause, auto pred) {
    return std::any_of(items.begin(), items.end(),
                       [&](const Item& i) { return i.clause == clause && pred(i); });
}

// "my jumper got moths": an article somebody has, and what became of it.
bool tells_a_tale(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view weak[] = {"is",  "was", "are",        "were", "has",
                                         "had", "got", "looks like", "went"};
    if (!items[at].is(article) || at + 1 >= items.size()) return false;
    // "the hat from the play shrank": strong words may stand further on.
    auto verb = at + 1;
    while (verb < items.size() && verb < at + 5 && items[verb].clause == items[at].clause &&
           !(items[verb].is(remark) && items[verb].as(remark) == "tale"))
        ++verb;
    if (verb >= items.size() || verb == at + 5 || items[verb].clause != items[at].clause ||
        (verb > at + 1 && has(weak, items[verb].text)))
        return false;
    for (std::size_t back = 1; back <= 2 && back <= at; ++back)
        if (is_own(items[at - back])) return true;
    return false;
}

// Up to an "and" behind which a wish begins: "I made socks of mine and I'd make socks of yours".
void set_clause_aside(std::vector<Item>& items, std::size_t at) {
    const auto clause = items[at].clause;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (items[i].clause != clause) continue;
        const bool joins = i > at && items[i].is(joiner) && i + 1 < items.size();
        if (joins && items[i + 1].clause == clause && items[i + 1].sounds("wish")) return;
        items[i].idle = true;
    }
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
    constexpr std::string_view by_another[] = {"made", "had",   "owned",  "wore",
                                               "knit", "makes", "used to"};
    if (at == 0 || items[at].asks) return false;
    const auto& before = items[at - 1];
    const bool anothers = before.is(person) && has(by_another, items[at].text);
    if (!anothers && !has(made_once, items[at].text)) return false;
    return before.clause == items[at].clause && (before.is(person) || has(pronouns, before.text));
}

// "a cape like my grandmother wore", "the kind of hat grandad had": an idea all the same, and only
// the likeness is hers. Where the tale begins; its own place: nothing is likened to it.
std::size_t tale_behind_a_likeness(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view likens[] = {"like", "as", "such", "similar"};
    constexpr std::string_view of_a_sort[] = {"sort", "kind", "type", "style"};
    auto likeness = at;
    bool of_its_sort = false;
    // "the hat your mother wore": a thing stands right before her.
    constexpr std::string_view adverbs[] = {"just", "once", "never"};
    const bool passes = at > 1 && (is_own(items[at - 2]) || has(adverbs, items[at - 1].text));
    const auto who = passes ? at - 2 : at - 1;
    const auto had = [&](WordClass of) { return items[who - 1].is(of); };
    if (who > 0 && items[who - 1].clause == items[at].clause &&
        (had(article) || had(material) || had(colour)))
        return who;
    for (auto i = at; i-- > 0 && items[i].clause == items[at].clause;) {
        const bool sort =
            has(of_a_sort, items[i].first_word()) || has(of_a_sort, items[i].last_word()) ||
            (items[i].first_word() == "of" && i > 0 && has(of_a_sort, items[i - 1].last_word()));
        if (items[i].is(article) && likeness < at) return likeness;
        if (items[i].is(article)) of_its_sort = true;
        if (sort && of_its_sort) return at > 0 ? at - 1 : at;
        if (has(likens, items[i].first_word()) || has(likens, items[i].last_word())) likeness = i;
    }
    return at;
}

// "The blanket on your sofa", "that hat on your head": a thing they see.
bool is_seen(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].is(article) || at == 0 || at + 2 >= items.size()) return false;
    const auto& before = items[at - 1].text;
    if (before != "the" && before != "that" && before != "your") return false;
    if (items[at + 2].clause != items[at].clause) return false;
    // "that jumper you've on", "the hat you are wearing".
    constexpr std::string_view wears[] = {"on", "wearing", "have on", "got on", "have"};
    if (items[at + 1].first_word().starts_with("you") && has(wears, items[at + 2].text))
        return true;
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

constexpr std::string_view says[] = {"say",     "says",      "said",   "think",    "thinks",
                                     "suggest", "suggests",  "reckon", "reckons",  "suggested",
                                     "vote",    "votes",     "voted",  "shouting", "call",
                                     "shouts",  "recommend", "calls",  "answer",   "go for"};
constexpr std::string_view own_say[] = {"i", "i'd", "i'll", "my", "me", "mine"};

// "Gran would say a shawl, I say a hat": what somebody else would like, where the writer says
// another thing after it.
bool is_anothers_say(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view others[] = {"she",       "he",       "they",   "everyone",
                                           "everybody", "people",   "others", "most",
                                           "someone",   "somebody", "folk",   "chat"};
    if (!items[at].is(article)) return false;
    bool said = false, by_another = false;
    for (auto i = at; i-- > 0 && items[i].clause == items[at].clause;) {
        if (items[i].first_word().starts_with("i") && has(own_say, items[i].first_word()))
            return false;
        said = said || has(says, items[i].last_word());
        by_another = by_another || (said && (items[i].is(person) || has(others, items[i].text)));
    }
    if (!by_another) return false;
    bool own = false;
    for (auto i = at + 1; i < items.size() && items[i].sentence <= items[at].sentence + 1; ++i) {
        if (items[i].clause == items[at].clause) continue;
        const bool begins =
            items[i - 1].clause != items[i].clause || items[i - 1].sign || items[i - 1].is(joiner);
        own = own || (begins && has(own_say, items[i].first_word()));
        if (own && items[i].is(article)) return true;
    }
    return false;
}

// "I wanted my blanket yarn to come out so": yarn that they have.
bool is_of_their_yarn(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view yarn[] = {"yarn", "wool"};
    constexpr std::string_view theirs[] = {"my", "his", "her", "our", "their"};
    return items[at].is(article) && at > 0 && has(theirs, items[at - 1].text) &&
           at + 1 < items.size() && has(yarn, items[at + 1].text);
}

// "I have three shawls on the needles": more than one, and nobody asked.
bool has_several(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view has_got[] = {"have", "has", "own", "owns", "got"};
    constexpr std::string_view somebody[] = {"i", "she", "he", "we", "they"};
    if (!items[at].is(article) || at < 2 || items[at].asks || !items[at - 1].amount ||
        is_only_planned(items, at))
        return false;
    const auto& many = *items[at - 1].amount;
    if (many.of != Amount::Of::number || many.number < 2 || many.times_next) return false;
    const auto& verb = items[at - 2];
    if (verb.text.ends_with("'ve") || verb.text == "i have" || verb.text == "i own") return true;
    return has(has_got, verb.last_word()) && at > 2 &&
           (has(somebody, items[at - 3].last_word()) || items[at - 3].is(person) ||
            items[at - 3].text.ends_with("'ve"));
}

// "The exact colour of the rug in my hall".
bool is_likened_in_colour(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view alike[] = {"colour", "color", "shade", "colour of", "color of"};
    constexpr std::string_view theirs[] = {"my", "his", "her", "our", "their", "your"};
    constexpr std::string_view lies[] = {"in", "on"};
    if (!items[at].is(article) || at < 2 || items[at].asks) return false;
    const bool there = items[at - 1].text == "the" && at + 1 < items.size() &&
                       has(lies, items[at + 1].text);  // "of the rug in her hall"
    if (!has(theirs, items[at - 1].text) && !there) return false;
    const auto of = items[at - 2].text == "of" && at > 2 ? at - 3 : at - 2;
    return has(alike, items[of].text) || has(alike, items[of].last_word());
}

// "a sheep called Blanket".
bool is_a_name(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view calls[] = {"called", "named", "nicknamed"};
    return at > 0 && items[at].is(article) && items[at].capital && has(calls, items[at - 1].text);
}

// "The lad who left last week needs a hat": only a time.
bool tells_only_when(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view times[] = {"last week", "yesterday", "years ago"};
    return has(times, items[at].text) &&
           in_clause(items, items[at].clause, [](const Item& i) { return i.sounds("wish"); });
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

}  // namespace

// "a hat, no, a cowl", "a hat - no, wait, a cowl": "no" alone.
static bool says_no_wait(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view waits[] = {"wait", "hang", "sorry", "rather", "make"};
    if (items[at].text != "no" || at + 1 >= items.size()) return false;
    const bool alone = items[at - 1].sign || items[at - 1].clause != items[at].clause;
    const bool ends = items[at + 1].text == "," || items[at + 1].text == ";" ||
                      has(waits, items[at + 1].first_word());
    return alone && ends && items[at - 1].sentence == items[at].sentence;
}

// "A skirt, no wait, a hat": what came before is taken back.
static void take_back(std::vector<Item>& items) {
    for (std::size_t i = 1; i < items.size(); ++i)
        if ((items[i].is(remark) && items[i].as(remark) == "back") || says_no_wait(items, i)) {
            const bool more = std::any_of(items.begin() + static_cast<std::ptrdiff_t>(i),
                                          items.end(), [](const Item& x) { return x.is(article); });
            for (std::size_t j = 0; more && j <= i; ++j) items[j].idle = true;
        }
}

// "You wore a lovely cowl last week, do another": what is told of is what is wanted.
static bool wants_it_again(const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.sounds("again"); });
}

void set_remarks_aside(std::vector<Item>& items) {
    take_back(items);
    const bool again = wants_it_again(items);
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto clause = items[i].clause;
        if (again && !(items[i].is(remark) && items[i].as(remark) == "spam")) continue;
        if (items[i].is(remark) && items[i].as(remark) == "aside") {
            set_aside_from(items, i);
        } else if (const auto tale =
                       tells_of_making(items, i) ? tale_behind_a_likeness(items, i) : i;
                   tale < i) {
            set_aside_from(items, tale);
        } else if (tells_a_tale(items, i) || tells_of_making(items, i) || is_seen(items, i) ||
                   is_of_their_own(items, i) || is_anothers_say(items, i)) {
            set_clause_aside(items, i);
        } else if (is_a_name(items, i) || is_of_their_yarn(items, i) ||
                   is_likened_in_colour(items, i)) {
            items[i].idle = true;
        } else if (has_several(items, i)) {
            items[i - 1].idle = items[i].idle = true;
        } else if (is_told_of_another(items, i)) {
            for (auto j = i - 2; j <= i; ++j) items[j].idle = true;
        } else if (turns_away(items[i]) && items[i].as(remark) == "spam") {
            for (auto& item : items) item.idle = true;
        } else if (turns_away(items[i]) && !tells_only_when(items, i) &&
                   !in_clause(items, clause, [](const Item& x) {
                       return x.amount && x.amount->of != Amount::Of::number &&
                              x.amount->of != Amount::Of::time;
                   })) {
            set_clause_aside(items, i);
            if (items[i].as(remark) == "past") set_aside_what_goes_on(items, i);
        }
    }
    if (!again) set_tales_aside(items);
}

}  // namespace gristwright
