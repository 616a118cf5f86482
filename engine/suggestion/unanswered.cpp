#include "engine/suggestion/unanswered.hpp"

#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::size_t longest_told = 16;  // items

constexpr std::string_view open_words[] = {"how", "what", "which", "where", "why", "when"};
constexpr std::string_view closed_words[] = {
    "would",    "will",     "could",   "can",   "does",  "do",     "is",    "are",   "should",
    "wouldn't", "couldn't", "doesn't", "won't", "isn't", "aren't", "can't", "don't", "did",
    "wouldnt",  "couldnt",  "doesnt",  "wont",  "isnt",  "arent",  "cant",  "dont"};
// Behind "what", "how", "why": a way to suggest.
constexpr std::string_view suggests_openly[] = {"about", "if", "not", "do", "else", "say"};
// What a yes-or-no question may ask to be done, which is to suggest it.
constexpr std::string_view suggests[] = {
    "make",    "made",    "knit",     "knitted",   "weave",    "woven",    "do",    "be",
    "become",  "try",     "tried",    "have",      "got",      "get",      "use",   "used",
    "turn",    "turned",  "go",       "want",      "like",     "love",     "fancy", "think",
    "see",     "imagine", "picture",  "say",       "consider", "suggest",  "vote",  "ask",
    "crying",  "calling", "begging",  "meant",     "work",     "perfect",  "nice",  "lovely",
    "good",    "great",   "possible", "done",      "start",    "begin",    "cast",  "warp",
    "give",    "put",     "need",     "call",      "please",   "just",     "suit",  "look",
    "looks",   "spin",    "spun",     "beautiful", "fun",      "gorgeous", "too",   "time",
    "allowed", "allow",   "interest", "tempted",   "tempt",    "persuade", "ready", "thought",
    "add",     "donate",  "send",     "share",     "show"};
constexpr std::string_view passed[] = {
    "it",    "that",  "this",     "i",      "you",     "we",      "they",     "he",    "she",
    "there", "one",   "a",        "an",     "the",     "my",      "your",     "his",   "her",
    "our",   "some",  "in",       "of",     "from",    "with",    "any",      "not",   "even",
    "ever",  "maybe", "really",   "these",  "those",   "for",     "to",       "by",    "on",
    "them",  "me",    "us",       "anyone", "anybody", "someone", "somebody", "yarn",  "wool",
    "batch", "lot",   "stuff",    "also",   "all",     "so",      "be",       "still", "going",
    "gonna", "want",  "yourself", "ya",     "y'all"};

bool is_said(const Item& item) { return !item.sign || item.text == "\"" || item.text == "/"; }

// What is asked there has an answer of its own.
bool is_a_topic(const std::vector<Item>& items, std::size_t at) {
    return items[at].is(topic) && items[at].asks && !counts_something_else(items, at);
}

// The word that the question turns on, behind its subject; its end: there is none.
std::size_t turns_on(const std::vector<Item>& items, std::size_t from, std::size_t to) {
    for (auto i = from; i < to; ++i) {
        const auto& item = items[i];
        const bool subject = item.sign || item.amount || is_thing(item) || item.is(person) ||
                             item.is(article) || item.is(colour) || item.is(fabric) ||
                             item.is(technique) || item.is(form) || item.is(material) ||
                             item.is(weight) || item.is(number) || item.is(part);
        if (item.is(craft)) return to;
        if (subject || has(passed, item.text)) continue;
        if (item.text.find(' ') != std::string::npos && (item.is(filler) || item.is(idiom)))
            continue;
        return i;
    }
    return to;
}

class Question {
  public:
    Question(const std::vector<Item>& items, std::size_t from, std::size_t to)
        : items_(items), from_(from), to_(to) {}

    bool is_open() const {
        for (auto i = from_; i < to_; ++i)
            if (is_a_topic(items_, i) || items_[i].idle || items_[i].is(remark)) return false;
        const auto& head = items_[from_];
        if (head.text.find(' ') != std::string::npos && (head.is(filler) || head.is(idiom)))
            return false;
        const auto first = head.first_word();
        const auto next = from_ + 1 < to_ ? items_[from_ + 1].first_word() : std::string_view();
        if (first == "how" && (next == "much" || head.text.starts_with("how much"))) return false;
        if (has(open_words, first)) return next.size() > 0 && !has(suggests_openly, next);
        if (!has(closed_words, first) || (!is_marked() && !is_subject(next))) return false;
        const auto verb = turns_on(items_, from_ + 1, to_);
        return verb < to_ && !has(suggests, items_[verb].first_word()) &&
               !has(suggests, items_[verb].last_word());
    }

    // "Will live longer than us all", "do it as a hat": told, and ordered.
    bool is_subject(std::string_view word) const {
        constexpr std::string_view subjects[] = {
            "it",    "that", "this", "i",     "you", "we",     "they",    "he",     "she",
            "there", "one",  "the",  "my",    "a",   "your",   "these",   "those",  "his",
            "her",   "our",  "an",   "yours", "any", "anyone", "anybody", "someone"};
        const auto verb = items_[from_].first_word();
        constexpr std::string_view orders[] = {"do", "will", "would", "could"};
        return !has(orders, verb) || (has(subjects, word) && !(verb == "do" && word == "it"));
    }
    bool is_marked() const {
        for (auto i = from_; i < items_.size() && items_[i].sentence == items_[from_].sentence; ++i)
            if (items_[i].text.starts_with("?")) return true;
        return false;
    }

    std::string said() const {
        std::string out;
        for (auto i = from_; i < to_ && i < from_ + longest_told; ++i)
            if (is_said(items_[i])) out += (out.empty() ? "" : " ") + items_[i].said;
        return out;
    }

  private:
    const std::vector<Item>& items_;
    std::size_t from_, to_;
};

// The first word of a question in its sentence, from `from` on: at `start`, where asking begins, or
// at the beginning of a later clause. "How heavy would it be" is one question.
std::size_t begins(const std::vector<Item>& items, std::size_t start, std::size_t from,
                   std::size_t to) {
    for (auto i = from; i < to; ++i) {
        const bool clause = i == start || items[i].clause != items[i - 1].clause ||
                            items[i - 1].is(joiner) || items[i - 1].sign;
        const auto first = items[i].first_word();
        if (clause && !items[i].sign && (has(open_words, first) || has(closed_words, first)))
            return i;
    }
    return to;
}

}  // namespace

bool counts_something_else(const std::vector<Item>& items, std::size_t at) {
    const auto next = at + 1;
    if (!items[at].text.starts_with("how many") || next >= items.size()) return false;
    const auto& what = items[next];
    if (items[at].last_word() != "many" || what.sign || is_thing(what) || what.amount) return false;
    return what.is(unit) || what.is(everyday) || what.is(part) || what.is(topic) || what.unknown;
}

std::string unanswered(const std::vector<Item>& items) {
    for (std::size_t from = 0; from < items.size();) {
        auto to = from;
        while (to < items.size() && items[to].sentence == items[from].sentence) ++to;
        auto start = from;
        while (start < to && !items[start].asks) ++start;
        for (auto at = begins(items, start, start, to); at < to;
             at = begins(items, start, at + 1, to)) {
            const Question question(items, at, to);
            if (question.is_open()) return question.said();
        }
        from = to;
    }
    return "";
}

}  // namespace gristwright
