#include "engine/suggestion/tails.hpp"

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::size_t longest_tail = 8;  // items

// Of what is done to a cloth; a regular one is told by its ending.
constexpr std::string_view done_to_it[] = {"sewn",  "cut",   "hung",  "bound", "torn",  "split",
                                           "drawn", "stuck", "wound", "shot",  "hewn",  "left",
                                           "spun",  "held",  "set",   "laid",  "strung"};
constexpr std::string_view nothing_done[] = {
    "called",   "named",   "needed",    "wanted", "loved",  "seen",    "mentioned", "inspired",
    "started",  "decided", "suggested", "agreed", "indeed", "asked",   "finished",  "seconded",
    "promised", "shared",  "requested", "need",   "shed",   "voted",   "tried",     "planned",
    "hundred",  "excited", "worried",   "bored",  "tired",  "freshed", "bed",       "feed"};
constexpr std::string_view actors[] = {
    "i",    "you",  "we",  "he",  "she",  "they", "it",    "has",  "was", "is",     "are",  "be",
    "been", "were", "got", "get", "have", "had",  "being", "gets", "who", "always", "never"};
constexpr std::string_view relatives[] = {"that", "which"};
constexpr std::string_view may_do[] = {"can",   "will",   "would", "could",   "should", "might",
                                       "won't", "really", "also",  "doesn't", "just",   "actually",
                                       "then",  "both",   "wont",  "doesnt"};
// What a thing does without being another one.
constexpr std::string_view does_nothing[] = {
    "keep",  "keeps", "match", "matches", "go",    "goes",   "suit",   "suits",   "last",
    "lasts", "feel",  "feels", "look",    "looks", "need",   "needs",  "use",     "uses",
    "show",  "shows", "make",  "makes",   "bring", "brings", "say",    "says",    "know",
    "help",  "helps", "want",  "wants",   "work",  "works",  "wear",   "wears",   "stand",
    "stays", "stay",  "serve", "serves",  "is",    "are",    "was",    "might",   "isn",
    "has",   "have",  "come",  "comes",   "gets",  "does",   "do",     "take",    "takes",
    "i",     "you",   "we",    "he",      "she",   "they",   "my",     "the",     "a",
    "will",  "would", "could", "can",     "one",   "yarn",   "colour", "color",   "way",
    "much",  "many",  "skein", "some",    "still", "sort",   "kind",   "survive", "survives",
    "hold",  "holds", "cost",  "costs",   "old",   "nice",   "very",   "little",  "please"};
constexpr std::string_view ends_it[] = {
    "for", "because", "so",  "if",   "when",   "while", "since",  "until",  "please", "i",
    "we",  "he",      "she", "they", "you",    "would", "could",  "thanks", "maybe",  "cos",
    "coz", "and",     "or",  "to",   "before", "after", "except", "but"};
constexpr std::string_view leads_a_noun[] = {"a",    "an",   "the",  "two",     "three",
                                             "my",   "tiny", "some", "lots of", "little",
                                             "many", "his",  "her"};
constexpr std::string_view sizes[] = {"long", "wide", "big",   "large", "tall",  "short",
                                      "deep", "high", "small", "broad", "narrow"};
constexpr std::string_view words_of_measure[] = {"size", "length", "width", "height"};

bool is_done_to_it(const Item& item) {
    if (!is_plain(item) && !is_of_making(item)) return false;
    if (has(nothing_done, item.text)) return false;
    return (item.text.size() > 4 && item.text.ends_with("ed")) || has(done_to_it, item.text);
}

class Tails {
  public:
    explicit Tails(const std::vector<Item>& items) : items_(items) {}

    std::vector<std::string> find() {
        std::vector<std::string> out;
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (is_thing(items_[i])) thing_ = i;
            if (thing_ == none || i == thing_ || items_[i].sentence != items_[thing_].sentence ||
                items_[i].idle || items_[i].out || items_[i].sign || !leads(i))
                continue;
            const auto end = end_of(i);
            if (!tells_more(i, end)) continue;
            out.push_back(said(i, end));
            i = end - 1;
        }
        return out;
    }

    // The verb of "that folds", "which will open"; its own place: it does nothing to the thing.
    std::size_t does(std::size_t at) const {
        if (at == 0 || !has(relatives, items_[at].text) || !same_clause(items_, at - 1, at))
            return at;
        auto verb = at + 1;
        while (same_clause(items_, at, verb) && has(may_do, items_[verb].text)) ++verb;
        if (!same_clause(items_, at, verb) || has(does_nothing, items_[verb].first_word()))
            return at;
        const auto& item = items_[verb];
        return is_plain(item) || is_of_making(item) || item.is(colour) ? verb : at;
    }

  private:
    static constexpr auto none = static_cast<std::size_t>(-1);

    bool leads(std::size_t at) const {
        return is_made_so(at) || does(at) != at || is_like(at) || is_as_large(at);
    }

    bool is_made_so(std::size_t at) const {
        if (!is_done_to_it(items_[at]) || before_article(items_, at)) return false;
        const auto& before = items_[at - 1];
        const bool acted = before.is(person) || has(actors, before.last_word());
        return !acted && !before.is(negation);
    }

    // "like a strawberry", "from odd bits", "in a spiral", right behind it.
    bool is_like(std::size_t at) const {
        const auto& text = items_[at].text;
        const bool near = at == thing_ + 1 && same_clause(items_, thing_, at);
        const bool like = text == "like" || text == "shaped like";
        if (!like && !(near && (text == "from" || text == "of" || text == "in"))) return false;
        if (like && !same_clause(items_, thing_, at)) return false;
        auto noun = at + 1;
        bool one = false;
        while (same_clause(items_, at, noun) && has(leads_a_noun, items_[noun].text))
            one = one || (items_[noun].text != "the" && items_[noun].text != "my"), ++noun;
        if (!same_clause(items_, at, noun) || !is_plain_noun(noun)) return false;
        return like || one || text == "of" || text == "from";
    }

    bool is_plain_noun(std::size_t at) const {
        const auto& item = items_[at];
        return is_plain(item) && !item.capital && !item.asks;
    }

    // "as long as", "twice as long", "big enough for two", "half the size of".
    bool is_as_large(std::size_t at) const {
        const auto& text = items_[at].text;
        const auto is = [&](std::size_t i, std::string_view what) {
            return same_clause(items_, at, i) && items_[i].text == what;
        };
        const auto a_size = [&](std::size_t i) {
            return same_clause(items_, at, i) && has(sizes, items_[i].text);
        };
        if (text == "as") return a_size(at + 1) && is(at + 2, "as");
        if (text == "twice" || text == "times") return is(at + 1, "as") && a_size(at + 2);
        if (has(sizes, text)) return is(at + 1, "enough") && !is(at - 1, "as");
        if (text != "the" && text != "same") return false;
        return same_clause(items_, at, at + 2) && has(words_of_measure, items_[at + 1].text) &&
               (items_[at + 2].text == "of" || items_[at + 2].text == "as");
    }

    std::size_t end_of(std::size_t at) const {
        const bool to_the_end = is_as_large(at);
        bool from = false;
        auto end = at + 1;
        for (; same_clause(items_, at, end) && end < at + longest_tail; ++end) {
            const auto& item = items_[end];
            if (item.is(remark) || item.idle || item.text == "please") break;
            from = from || item.last_word() == "from";
            const bool goes_on = to_the_end || end == at + 1 || (from && item.text == "to");
            if (!goes_on && has(ends_it, item.first_word())) break;
        }
        while (!to_the_end && end > at + 1 && is_empty(items_[end - 1])) --end;
        return end;
    }

    static bool is_empty(const Item& item) {
        constexpr std::string_view small[] = {"a",  "an",  "the", "of",   "in",    "on",   "to",
                                              "at", "by",  "for", "from", "my",    "your", "very",
                                              "it", "too", "all", "so",   "again", "as",   "this"};
        return item.sign || has(small, item.text) || (item.is(joiner) && !item.is(article));
    }

    // Something in it that no step of reading took, and nothing that one did.
    bool tells_more(std::size_t from, std::size_t end) const {
        if (is_as_large(from)) return end > from + 1;
        bool more = false;
        for (auto i = from; i < end; ++i) {
            const auto& item = items_[i];
            if (item.live(fabric) || item.live(role) || item.live(technique) || item.live(craft) ||
                (item.live(topic) && item.asks))
                return false;
            more = more || is_plain(item) || is_of_making(item) || item.is(part) || item.is(body) ||
                   item.is(colour);
        }
        return more;
    }

    std::string said(std::size_t from, std::size_t end) const {
        if (is_as_large(from) && same_clause(items_, from - 1, from) && items_[from - 1].amount)
            --from;
        auto out = items_[from].said;
        for (auto i = from + 1; i < end; ++i) out += " " + items_[i].said;
        return out;
    }

    const std::vector<Item>& items_;
    std::size_t thing_ = none;  // the last before
};

}  // namespace

std::vector<std::string> tails_of(const std::vector<Item>& items) { return Tails(items).find(); }

bool stands_in_a_tail(const std::vector<Item>& items, std::size_t thing, std::size_t at) {
    const Tails tails(items);
    for (auto i = thing + 1; i < at; ++i)
        if (same_clause(items, thing, i) && same_clause(items, thing, at) && tails.does(i) != i)
            return true;
    return false;
}

}  // namespace gristwright
