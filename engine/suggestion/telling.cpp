// A thing is wished for, or it is there already. It is there where somebody did something with it
// ("she lost her hat"), where it lies about ("there's a mitten on the radiator"), or where somebody
// is asked to handle what is theirs ("mind your bag"). A wish in the sentence ends the tale.
#include "engine/suggestion/telling.hpp"

#include <utility>

#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::string_view people[] = {
    "i",       "he",     "she",    "we",      "they",     "you",      "who",
    "whoever", "i've",   "he's",   "she's",   "we've",    "they've",  "you've",
    "i'd",     "we'd",   "who's",  "who has", "someone",  "somebody", "anyone",
    "anybody", "nobody", "no one", "noone",   "everyone", "everybody"};
constexpr std::string_view strangers[] = {"who",     "who's",    "who has", "whoever",
                                          "someone", "somebody", "anyone",  "anybody"};
constexpr std::string_view adverbs[] = {
    "just", "once",    "never",  "always", "only",      "ever",    "still", "even",
    "all",  "both",    "nearly", "really", "also",      "then",    "had",   "has",
    "have", "already", "almost", "simply", "only ever", "finally", "got"};
constexpr std::string_view determiners[] = {"the", "my",    "our",  "his",  "her", "a",
                                            "an",  "their", "your", "that", "one", "some"};
constexpr std::string_view governs[] = {"for", "of",   "to",   "with", "by",   "like", "than",
                                        "in",  "from", "into", "as",   "over", "at",   "on"};
constexpr std::string_view theirs[] = {"your",       "her",        "his",       "their",
                                       "somebody's", "someone's",  "anybody's", "anyone's",
                                       "whoever's",  "everyone's", "my",        "our"};
constexpr std::string_view of_nobody[] = {"somebody's",     "someone's",      "anybody's",
                                          "anyone's",       "whose",          "who's",
                                          "someone else's", "somebody else's"};
constexpr std::string_view objects[] = {"the", "a",  "an",  "my",  "us",   "me",    "her",
                                        "him", "it", "his", "our", "them", "their", "that"};
constexpr std::string_view particles[] = {"back", "out", "up", "off", "down", "away", "through"};
constexpr std::string_view there_is[] = {"there's",   "there is", "there are",
                                         "there was", "theres",   "there"};
constexpr std::string_view lies[] = {"on", "under", "in", "by", "behind", "beside", "at"};
constexpr std::string_view of_the_yarn[] = {"making", "skein", "skeins", "wool", "yarn", "batch",
                                            "lot",    "pile",  "fleece", "ball", "mind"};

class Tales {
  public:
    explicit Tales(std::vector<Item>& items) : items_(items) {}

    void set_aside() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (items_[i].idle) {
                // What other steps set aside begins a story too.
                told_ = told_ || items_[i].is(remark);
                const bool past = items_[i].is(remark) && items_[i].as(remark) == "past";
                if (past || is_past(items_[i])) go_on(i, std::exchange(told_, true));
                continue;
            }
            if (is_about_theirs(i) || lies_about(i) || (tells(i) && is_a_notice(i)))
                put_aside_sentence(i);
            else if (tells(i))
                put_aside_from(i);
        }
    }

  private:
    bool same(std::size_t a, std::size_t b) const { return same_clause(items_, a, b); }
    bool begins(std::size_t at) const {
        return at == 0 || items_[at - 1].sentence != items_[at].sentence;
    }
    // What is said to take so much yarn is a wish, unless a tale has begun.
    bool wishes(std::size_t clause) const {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (items_[i].clause != clause) continue;
            if ((items_[i].sounds("wish") && !is_had_done(i)) || names_what_it_is(i)) return true;
            const auto& amount = items_[i].amount;
            if (!told_ && amount && amount->of != Amount::Of::number &&
                amount->of != Amount::Of::time && amount->of != Amount::Of::age)
                return true;
        }
        return false;
    }
    // "it's a hat", "as a hat", "of this", "out of that".
    bool names_what_it_is(std::size_t at) const {
        constexpr std::string_view is[] = {"it's", "that's", "its", "as", "into"};
        constexpr std::string_view it[] = {"this", "that", "it", "yours"};
        constexpr std::string_view of[] = {"of", "from", "in", "with"};
        const bool ends = at + 1 == items_.size() || !same(at, at + 1);
        if (has(is, items_[at].text) && !ends)
            return items_[at + 1].text == "a" || items_[at + 1].text == "an";
        return ends && at > 0 && has(it, items_[at].last_word()) &&
               (has(of, items_[at - 1].last_word()) || has(of, items_[at].first_word()));
    }
    // "I'd knitted him three jumpers".
    bool is_had_done(std::size_t at) const {
        return items_[at].text.ends_with("'d") && same(at, at + 1) && is_past(items_[at + 1]) &&
               !items_[at + 1].sounds("does");
    }
    bool sentence_wishes(std::size_t at) const {
        for (const auto& item : items_)
            if (item.sentence == items_[at].sentence && wishes(item.clause)) return true;
        return false;
    }
    template <class Is>
    bool any(std::size_t clause, Is is) const {
        for (const auto& item : items_)
            if (item.clause == clause && is(item)) return true;
        return false;
    }
    static bool is_thing_named(const Item& i) { return i.is(article) || i.is(part); }

    // "ended", "barfed": no participle, which a thing before it would have.
    bool is_past(const Item& i) const {
        constexpr std::string_view names[] = {"called", "named", "nicknamed"};
        if (has(names, i.text)) return false;
        if (i.sounds("did") || i.sounds("done") || i.sounds("does")) return true;
        return is_plain(i) && i.text.size() > 4 && i.text.ends_with("ed") && !i.sounds("wish");
    }

    bool is_somebody(std::size_t at) const {
        return has(people, items_[at].text) || has(people, items_[at].last_word());
    }

    bool is_made_for(std::size_t who) const {
        for (auto i = who; i-- > 0 && i + 5 > who && same(i, who);)
            if (items_[i].last_word() == "for") return true;
        return false;
    }

    // "someone who lost" is one; for whoever it is made ("for whoever drew the short straw") does
    // nothing here.
    std::size_t whole_subject(std::size_t at, std::size_t verb) const {
        auto from = at;
        while (from > 0 && same(from - 1, at) && is_somebody(from - 1)) --from;
        // "for the lady who lost hers".
        if (items_[from].text == "who" && from > 0 && same(from - 1, at) &&
            !has(governs, items_[from - 1].last_word()))
            return is_made_for(from) ? verb : from;
        const bool led = from > 0 && same(from - 1, at) &&
                         has(strangers, items_[from].last_word()) &&
                         has(governs, items_[from - 1].last_word());
        return led ? verb : from;
    }

    // The subject before a verb; the verb's place: there is none.
    std::size_t subject(std::size_t verb) const {
        auto i = verb;
        while (i > 0 && same(i - 1, verb) && has(adverbs, items_[i - 1].text)) --i;
        if (i == 0 || !same(i - 1, verb)) return verb;
        const auto at = i - 1;
        if (is_somebody(at)) return whole_subject(at, verb);
        // "Someone at work brought ...".
        if (at > 1 && same(at - 2, at) && has(governs, items_[at - 1].text) && is_somebody(at - 2))
            return at - 2;
        return noun_before(at, verb);
    }

    std::size_t noun_before(std::size_t at, std::size_t verb) const {
        const auto& item = items_[at];
        const bool name = item.capital && !begins(at) && !is_thing_named(item);
        const bool noun = item.is(person) || name || is_plain(item) || item.is(everyday) ||
                          (begins(at) && item.capital);
        if (!noun || item.sign || item.amount || has(determiners, item.text)) return verb;
        auto from = at;
        for (; from > 0 && from + 3 > at && same(from - 1, at); --from) {
            const auto& before = items_[from - 1];
            if (has(governs, before.last_word())) return verb;
            if (!has(determiners, before.text)) {
                if (is_thing_named(before)) return verb;
                continue;
            }
            // "for a terrier called Bert".
            const bool led =
                from > 1 && same(from - 2, at) && has(governs, items_[from - 2].last_word());
            return led ? verb : from - 1;
        }
        return item.is(person) || name || begins(from) ? at : verb;
    }

    bool takes_object(std::size_t verb) const {
        return same(verb, verb + 1) && has(objects, items_[verb + 1].text);
    }

    // "My sweater took four years": a thing that is theirs.
    bool is_of_a_thing(std::size_t verb) const {
        if (!items_[verb].sounds("did")) return false;
        std::size_t at = verb;
        while (at > 0 && same(at - 1, verb) && has(adverbs, items_[at - 1].text)) --at;
        if (at == 0 || !same(at - 1, verb) || !items_[at - 1].is(article)) return false;
        for (auto i = at - 1; i-- > 0 && i + 5 > at && same(i, verb);)
            if (is_own(items_[i]) || items_[i].text.ends_with("'s")) return true;
        return false;
    }

    // "Would it felt if I washed a hat?"
    bool is_supposed(std::size_t at) const {
        for (auto i = at; i-- > 0 && same(i, at);)
            if (items_[i].first_word() == "if" || items_[i].last_word() == "if") return true;
        return false;
    }

    // "Found: one glove".
    bool is_a_notice(std::size_t at) const {
        if (!begins(at) || at + 1 >= items_.size()) return false;
        if (items_[at + 1].sign) return true;
        // "Found after the fair: one hat".
        constexpr std::string_view places[] = {"at", "by", "near", "after", "under", "outside"};
        if ((items_[at].text != "found" && items_[at].text != "lost") ||
            !has(places, items_[at + 1].first_word()) || sentence_wishes(at))
            return false;
        for (auto i = at + 1; i < items_.size() && i < at + 8; ++i) {
            if (items_[i].text == ":") return true;
            if (items_[i].sentence != items_[at].sentence || is_thing_named(items_[i])) break;
        }
        return false;
    }

    bool tells(std::size_t at) const {
        const auto& item = items_[at];
        if (!is_past(item) || is_supposed(at) || wishes(item.clause)) return false;
        // "Took me nine years", "Found: one glove".
        const bool moved = same(at, at + 1) && has(particles, items_[at + 1].text);
        constexpr std::string_view own[] = {"my", "his", "her", "their"};
        if (begins(at) && !item.asks && moved)  // "ripped back my sweater"
            return same(at, at + 2) && has(own, items_[at + 2].text);
        if (begins(at) && !item.asks && (item.sounds("did") || item.sounds("done")))
            return takes_object(at) || is_a_notice(at);
        const auto who = subject(at);
        if (who == at) return is_of_a_thing(at) && !item.asks;
        const auto& s = items_[who];
        if (item.asks) return has(strangers, s.text) || has(strangers, s.last_word());
        const bool sure =
            is_somebody(who) || s.is(person) || items_[at - 1].is(person) || items_[at - 1].capital;
        return sure || item.sounds("did") || item.sounds("does") || takes_object(at);
    }

    // "You've dropped your scarf" tells by itself; "mind your bag", "please move her afghan" ask.
    bool is_about_theirs(std::size_t at) const {
        if (has(of_nobody, items_[at].text) && same(at, at + 1))
            return thing_within(at, items_[at].text == "whose" ? 5 : 3) && !sentence_wishes(at);
        if (!items_[at].sounds("handle") || sentence_wishes(at)) return false;
        for (auto i = at; i-- > 0 && items_[i].sentence == items_[at].sentence;)
            if (is_thing_named(items_[i])) return false;
        constexpr std::string_view one[] = {"a", "an", "some"};
        if (items_[at].text == "bring" && same(at, at + 1) && has(one, items_[at + 1].text))
            return thing_within(at + 1, 3);
        for (auto i = at + 1; i <= at + 2 && same(at, i); ++i)
            if (has(theirs, items_[i].text)) return thing_within(i, 3);
        return false;
    }
    bool thing_within(std::size_t at, std::size_t reach) const {
        for (auto i = at + 1; i <= at + reach && same(at, i); ++i)
            if (is_thing_named(items_[i])) return true;
        return false;
    }

    // "There's a brown mitten on the radiator", but not "there's a scarf in that".
    bool lies_about(std::size_t at) const {
        if (!has(there_is, items_[at].text) || !begins(at) || items_[at].asks) return false;
        if (sentence_wishes(at)) return false;
        bool thing = false;
        for (auto i = at + 1; same(at, i); ++i) {
            if (is_thing_named(items_[i])) thing = true;
            if (!thing || !has(lies, items_[i].text) || !same(at, i + 2)) continue;
            const bool owned = has(determiners, items_[i + 1].text) && items_[i + 1].text != "that";
            if (!owned) continue;
            for (auto j = i + 2; same(at, j) && j < i + 5; ++j)
                if (has(of_the_yarn, items_[j].text)) return false;
            return true;
        }
        return false;
    }

    void put_aside(std::size_t from, std::size_t clause) {
        for (auto i = from; i < items_.size(); ++i)
            if (items_[i].clause == clause) items_[i].idle = true;
        told_ = true;
    }
    void put_aside_sentence(std::size_t at) {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (items_[i].sentence == items_[at].sentence) items_[i].idle = true;
        told_ = true;
    }

    // "A blanket for the bed my grandfather built", not "I took the bag and she laughed".
    bool is_behind_a_thing(std::size_t who) const {
        if (who == 0 || items_[who - 1].is(joiner)) return false;
        for (auto i = who; i-- > 0 && same(i, who);)
            if (is_thing_named(items_[i])) return true;
        const auto& before = items_[who - 1];
        return who > 1 && same(who - 2, who) && has(determiners, items_[who - 2].last_word()) &&
               (before.is(colour) || before.is(material) || has(of_the_yarn, before.text));
    }

    // "A shawl like my nan's, she used silk": what heads the sentence is wanted all the same.
    bool is_headed_by_a_thing(std::size_t verb) const {
        auto at = verb;
        while (at > 0 && items_[at - 1].sentence == items_[verb].sentence) --at;
        const auto first = items_[at].clause;
        if (first == items_[verb].clause) return false;
        for (auto i = at; i < verb && i < at + 4 && items_[i].clause == first; ++i)
            if (is_thing_named(items_[i])) return !items_[i].idle && likens(i, first);
        return false;
    }
    bool likens(std::size_t at, std::size_t clause) const {
        constexpr std::string_view alike[] = {"like", "as", "similar"};
        for (auto i = at + 1; i < items_.size() && items_[i].clause == clause; ++i)
            if (has(alike, items_[i].first_word())) return true;
        return false;
    }

    // Of "the hat your mother wore" what she did is told, and the hat is still wanted.
    void put_aside_from(std::size_t verb) {
        const auto who = subject(verb);
        // "mittens on a string like when we were kids": of that time alone.
        constexpr std::string_view times[] = {"when", "while", "since", "before", "after"};
        const bool of_a_time =
            who != verb && who > 0 && same(who - 1, who) && has(times, items_[who - 1].last_word());
        const bool relative =
            who != verb && (!told_ || of_a_time) && is_behind_a_thing(of_a_time ? who - 1 : who);
        if (told_ && !relative && !sentence_wishes(verb) && !is_headed_by_a_thing(verb))
            return put_aside_sentence(verb);
        if (relative) return put_aside_relative(who, verb);
        const bool told_before = told_;
        put_aside(0, items_[verb].clause);
        go_on(verb, told_before);
    }
    // "that grey you spun at Easter and do a cowl": up to an "and" with another thing behind it.
    void put_aside_relative(std::size_t who, std::size_t verb) {
        auto to = verb;
        while (to < items_.size() && items_[to].clause == items_[verb].clause &&
               !(to > verb && items_[to].is(joiner) && items_[to].as(joiner) == "and" &&
                 thing_within(to, 5)))
            ++to;
        for (auto i = who; i < to; ++i) items_[i].idle = true;
        told_ = true;
    }

    // "..., then the cuffs, then the neck": up to a wish, or to what follows from it ("so
    // mittens").
    void go_on(std::size_t verb, bool told_before) {
        const bool of_things = told_before || any(items_[verb].clause, [](const Item& i) {
                                   return is_thing_named(i) || i.is(body);
                               });
        for (auto i = verb + 1; i < items_.size() && items_[i].sentence == items_[verb].sentence;
             ++i) {
            const auto clause = items_[i].clause;
            if (clause == items_[verb].clause || clause == items_[i - 1].clause) continue;
            const auto start = items_[i].sign && i + 1 < items_.size() ? i + 1 : i;
            const bool listed = items_[start].is(joiner) && (items_[start].as(joiner) == "next" ||
                                                             items_[start].as(joiner) == "and");
            const bool thing = any(clause, is_thing_named);
            if (thing && items_[start].is(joiner) && items_[start].as(joiner) == "but") return;
            // "you've earned it, then a purse" begins no tale of a purse.
            if (wishes(clause) || (thing && !(listed && of_things) && !tells_in(clause))) return;
            put_aside(0, clause);
        }
    }
    bool tells_in(std::size_t clause) const {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (items_[i].clause == clause && tells(i)) return true;
        return false;
    }

    std::vector<Item>& items_;
    bool told_ = false;  // a tale has begun
};

}  // namespace

void set_tales_aside(std::vector<Item>& items) { Tales(items).set_aside(); }

}  // namespace gristwright
