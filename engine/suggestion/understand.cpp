#include "engine/suggestion/understand.hpp"

#include <algorithm>

#include "engine/suggestion/aside.hpp"
#include "engine/suggestion/at_hand.hpp"
#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/leftovers.hpp"
#include "engine/suggestion/particulars.hpp"
#include "engine/suggestion/people.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/suggestion/unanswered.hpp"
#include "engine/suggestion/wearers.hpp"

namespace gristwright {
namespace {

using enum WordClass;

bool chats(const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is(remark); });
}

constexpr std::string_view of_talk[] = {
    "i",     "you",   "we",     "they", "he",   "she",   "it",     "is",     "was",   "are",
    "were",  "do",    "did",    "does", "has",  "have",  "had",    "your",   "that",  "this",
    "when",  "where", "what",   "why",  "who",  "see",   "saw",    "so",     "very",  "too",
    "there", "here",  "am",     "im",   "i'm",  "it's",  "that's", "you're", "yes",   "no",
    "not",   "never", "always", "just", "now",  "all",   "look",   "looks",  "stop",  "go",
    "going", "come",  "first",  "day",  "back", "sound", "still",  "again",  "today", "from",
    "good",  "great", "same",   "yet",  "ok",   "okay"};

// "A peplum", "tie for my dad's birthday": a few words that are no talk name what somebody would
// like, though no table has it.
bool names_in_short(const std::vector<Item>& items) {
    constexpr std::size_t most = 8;
    if (items.size() > most || items.empty()) return false;
    const auto& begins = items[0].text;
    if (begins == "the" || begins == "my" || begins == "put") return false;
    const auto names = [](const Item& i) {
        return i.is(part) || (i.is(everyday) && !i.is(filler) && !i.is(idiom));
    };
    return std::any_of(items.begin(), items.end(), names) &&
           std::none_of(items.begin(), items.end(), [](const Item& i) {
               return i.idle || i.asks || i.is(remark) || i.is(idiom) ||
                      has(of_talk, i.first_word());
           });
}

// "tie for my boss", "a lead for the dog": the word that names it, though we know none such.
std::string what_is_named(const std::vector<Item>& items) {
    constexpr std::string_view leads[] = {"a", "an", "some", "make", "knit", "weave", "new"};
    constexpr std::string_view of_use[] = {"for", "of", "in", "on", "like", "to", "with"};
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto& item = items[i];
        if (item.idle || item.out || item.asks || item.is(filler) || item.is(person) ||
            item.is(remark) || item.is(idiom) || !(item.is(part) || item.is(everyday)))
            continue;
        const bool led = i == 0 || items[i - 1].sign || has(leads, items[i - 1].last_word());
        const bool ends =
            i + 1 == items.size() || items[i + 1].sign || has(of_use, items[i + 1].first_word());
        if (led && ends && !has(of_talk, item.text)) return item.said;
    }
    return "";
}

// "Something small", "a gift for my mother": an idea, though it names nothing.
bool speaks_of_something(const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) {
        if (i.idle || i.asks) return false;
        for (const std::string_view word : {"something", "anything", "gift", "present"})
            if (i.text.starts_with(word)) return true;
        return false;
    });
}

// "A cover for my old hymn book, the spine is gone".
bool names_a_part_for(const std::vector<Item>& items) {
    constexpr std::string_view leads[] = {"a", "an", "some", "new", "two", "little", "make"};
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!items[i].live(part) || items[i].asks || items[i + 1].text != "for") continue;
        if (i == 0 || has(leads, items[i - 1].last_word())) return true;
    }
    return false;
}

// "Do that!", "would you weave another?"
bool tells_to_do_so(const std::vector<Item>& items) {
    constexpr std::string_view do_so[] = {
        "do that",          "make that",     "weave that",   "knit that",       "do one",
        "make one",         "weave one",     "knit one",     "weaving another", "making another",
        "knitting another", "weave another", "make another", "knit another"};
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const bool ends = i + 2 == items.size() || items[i + 2].sign;
        if (ends && !items[i].idle && has(do_so, items[i].text + " " + items[i + 1].text))
            return true;
        if ((i + 1 == items.size() || items[i + 1].sign) && has(do_so, items[i].text)) return true;
    }
    return false;
}

// "Cap sleeve shell, 36 bust": a form that some article has.
bool names_a_form(const std::vector<Item>& items) {
    constexpr std::size_t most = 12;
    return items.size() <= most && std::any_of(items.begin(), items.end(), [](const Item& i) {
               return i.live(form) && !i.asks && !i.is(filler) && !i.is(everyday);
           });
}

// "Following!", "drooling": what somebody does, and all that is said.
bool only_does_something(const std::vector<Item>& items) {
    constexpr std::size_t least = 7;  // "string" is a thing
    return !items.empty() && items[0].text.size() >= least && items[0].text.ends_with("ing") &&
           is_plain(items[0]) && std::none_of(items.begin() + 1, items.end(), [](const Item& i) {
               return !i.sign && i.text[0] >= 'a' && i.text[0] <= 'z';
           });
}

// Something to make is spoken of, or something that can be asked.
bool is_an_idea(const std::vector<Item>& items, const Taken& taken) {
    if (taken.wanted.empty() && only_does_something(items)) return false;
    if (!taken.wanted.empty() || taken.fabric.named() || !taken.not_known.empty()) return true;
    if (!taken.topics.empty() || !taken.ruled_out.empty() || !taken.fabrics_out.empty())
        return true;
    if (taken.role != YarnRole::unsaid && taken.role != YarnRole::all) return true;
    if (names_a_part_for(items) || tells_to_do_so(items)) return true;
    if (chats(items)) return false;
    if (speaks_of_something(items) || names_in_short(items) || names_a_form(items)) return true;
    if (!taken.weight.empty() || taken.needle || taken.gauge || taken.sett) return true;
    if (taken.craft || (taken.wearer != Wearer::unsaid && taken.asks)) return true;
    return items.empty();
}

// What may name a thing that no table has stands behind "a", "some", a number or a craft, or says
// all there is to say; any other word that is not known is talk.
bool may_name_a_thing(const std::vector<Item>& items, std::size_t at) {
    if (at == 0 || items[at - 1].sign || items[at - 1].unknown) return items.size() - at < 5;
    const auto& before = items[at - 1];
    const auto last = before.text.substr(before.text.find_last_of(' ') + 1);
    for (const char* word : {"a", "an", "some", "of", "make", "more"})
        if (last == word) return true;
    return before.amount || before.is(craft) || before.is(number) || before.is(technique) ||
           before.is(fabric) || before.is(colour) || before.is(material) || before.is(body) ||
           items.size() < 4;
}

void forget_talk(const std::vector<Item>& items, Taken& out) {
    if (!out.wanted.empty()) return;
    for (std::size_t i = 0; i < items.size(); ++i)
        if (items[i].unknown && !may_name_a_thing(items, i))
            std::erase_if(out.not_known, [&](const Unmade& u) {
                return !u.craft && !u.other_craft && u.said == items[i].said;
            });
}

// "Hats till it runs out": of one, and how many there would be.
void ask_how_many(Taken& out) {
    if (out.role != YarnRole::all || out.wanted.size() != 1 || out.about(Topic::count)) return;
    const auto& wanted = out.wanted.front();
    if (wanted.plural && wanted.count < 2 && !wanted.known.in_pairs)
        out.topics.push_back(Topic::count);
}

}  // namespace

Taken understand(const std::string& idea, const Lexicon& lexicon, Stemmer& stemmer) {
    Taken out;
    auto items = items_of(idea, lexicon, stemmer, out.taken_as);
    set_remarks_aside(items);
    auto aside = set_aside(items);
    rule_out(items, out);
    for (const auto had : set_things_at_hand_aside(items)) aside.push_back(had);
    std::sort(aside.begin(), aside.end());
    settle_people(items);
    take_loom_lengths(items, out);
    find_strangers(items, lexicon.kinds(), out);
    const auto places = take_things(items, lexicon.kinds(), out);
    for (auto& wanted : out.wanted)
        if (std::count(out.forms_out.begin(), out.forms_out.end(), wanted.form) > 0)
            wanted.form.clear();
    take_words(items, out);
    take_measures(items, out);
    take_shares(items, out);
    ask_how_many(out);
    part_by_thing(items, places, out);
    part_by_wearer(items, out);
    part_by_craft(items, out);
    take_one_alone(items, out);
    take_colours(items, out);
    forget_talk(items, out);
    find_leftovers(items, out);
    tell_aside(items, aside, out);
    out.unanswered = unanswered(items);
    // A long text without a trade word is talk, whatever words in it are not known.
    const auto words =
        std::count_if(items.begin(), items.end(), [](const Item& i) { return !i.sign; });
    if (out.wanted.empty() && !out.fabric.named() && (words > 6 || chats(items)))
        std::erase_if(out.not_known, [](const Unmade& u) { return !u.craft && !u.other_craft; });
    out.not_an_idea = !is_an_idea(items, out);
    if (out.wanted.empty() && !out.not_an_idea) out.named = what_is_named(items);
    return out;
}

}  // namespace gristwright
