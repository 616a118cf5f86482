#include "engine/suggestion/lexicon.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <stdexcept>
#include <utility>

#include "engine/units/failure.hpp"
#include "engine/units/has.hpp"

namespace gristwright {
namespace {

constexpr std::string_view class_names[] = {
    "article", "part",     "form",     "fabric",   "technique", "craft",  "role",
    "person",  "body",     "material", "colour",   "weight",    "number", "unit",
    "needle",  "tool",     "joiner",   "negation", "topic",     "remark", "idiom",
    "filler",  "everyday", "spelling", "place",    "tone",
};
static_assert(std::size(class_names) == word_class_count);

// How long a word is at least to be a slip, and to hold two slips; four letters with one letter
// changed make another word too often ("left", "weft").
constexpr std::size_t least_slip = 4, changed_from = 5, two_from = 8;

bool ends_with(std::string_view word, std::string_view end) {
    return word.size() > end.size() && word.substr(word.size() - end.size()) == end;
}

constexpr std::size_t longest_slip = 31;  // letters: longer words are taken as they are

// Edits between two words, a swap of neighbours counting once; more than `most` is `most` + 1.
std::size_t edits(std::string_view a, std::string_view b, std::size_t most) {
    if (a.size() > b.size() + most || b.size() > a.size() + most) return most + 1;
    if (a.size() > longest_slip || b.size() > longest_slip) return most + 1;
    std::array<std::array<std::size_t, longest_slip + 1>, 3> rows;
    auto *before = &rows[0], *last = &rows[1], *now = &rows[2];
    for (std::size_t j = 0; j <= b.size(); ++j) (*last)[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        auto &row = *last, &next = *now;
        next[0] = i;
        auto least = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            next[j] = std::min(
                {row[j] + 1, next[j - 1] + 1, row[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                next[j] = std::min(next[j], (*before)[j - 2] + 1);
            least = std::min(least, next[j]);
        }
        if (least > most + 1) return most + 1;  // a swap takes one of the row before
        now = std::exchange(before, std::exchange(last, now));
    }
    return std::min((*last)[b.size()], most + 1);
}

// "blnkt", "swetr": in haste the vowels go first, and of two alike one.
constexpr std::size_t least_consonants = 3;

bool is_vowel(char c) { return std::string_view("aeiou").find(c) != std::string_view::npos; }

std::string consonants(std::string_view word) {
    std::string out(1, word[0]);
    for (const char c : word.substr(1))
        if (!is_vowel(c) && c != out.back()) out += c;
    return out;
}

auto vowels(std::string_view word) { return std::count_if(word.begin(), word.end(), is_vowel); }

// "knitted bag" is no knitting bag, though their stems are alike.
bool bends_alike(std::string_view a, std::string_view b) {
    while (!a.empty() && !b.empty()) {
        const auto one = a.substr(0, a.find(' ')), other = b.substr(0, b.find(' '));
        for (const std::string_view end : {"ing", "ed"})
            if (one.ends_with(end) != other.ends_with(end)) return false;
        a.remove_prefix(std::min(one.size() + 1, a.size()));
        b.remove_prefix(std::min(other.size() + 1, b.size()));
    }
    return true;
}

// Nouns take an s, not -ing and -ed: "throwing" is no throw, "rugged" no rug.
bool only_a_noun(const Phrase& phrase) {
    using enum WordClass;
    for (const auto c : {fabric, technique, craft, role, topic, negation, remark})
        if (phrase.is(c)) return false;
    return phrase.is(article) || phrase.is(part) || phrase.is(person) || phrase.is(body) ||
           phrase.is(tool) || phrase.is(unit) || phrase.is(number) || phrase.is(form);
}

bool is_trade(WordClass c) {
    using enum WordClass;
    return c == article || c == fabric || c == technique || c == craft || c == form;
}

}  // namespace

bool is_tone(std::string_view means) {
    constexpr std::string_view tones[] = {"did",    "done",   "does", "wish", "again",
                                          "always", "handle", "no",   "grown"};
    return has(tones, means);
}

std::optional<WordClass> word_class_named(std::string_view name) {
    for (std::size_t c = 0; c < word_class_count; ++c)
        if (class_names[c] == name) return static_cast<WordClass>(c);
    return {};
}

Lexicon::Lexicon(std::string_view table, const ArticleKinds& kinds) : kinds_(kinds) {
    Stemmer stemmer;
    while (!table.empty()) {
        const auto end = std::min(table.find('\n'), table.size());
        const auto line = table.substr(0, end);
        table.remove_prefix(std::min(end + 1, table.size()));
        const auto first = line.find('\t'), second = line.find('\t', first + 1);
        if (second == std::string_view::npos) throw Refused("a line of words lacks a tab");
        const auto of = word_class_named(line.substr(first + 1, second - first - 1));
        if (!of) throw Refused("there is no such class of words");
        add(line.substr(0, first), *of, line.substr(second + 1), stemmer);
    }
    for (auto& words : trade_) {
        std::sort(words.begin(), words.end());
        words.erase(std::unique(words.begin(), words.end()), words.end());
    }
}

void Lexicon::add(std::string_view word, WordClass of, std::string_view means, Stemmer& stemmer) {
    auto tokens = tokens_of(word);
    if (tokens.empty()) return;
    if (of == WordClass::spelling) {
        const auto& typed = tokens[0].text;
        spellings_.emplace(typed, means);
        spelt_lengths_[static_cast<std::size_t>(typed[0] - 'a')] |= 1U << typed.size();
        return;
    }
    for (auto& token : tokens)
        if (const auto* right = spelt(token.text)) {
            if (tokens.size() == 1) return;
            token.text = *right;
        }
    // A word of another tongue: no English slip is mended towards it.
    const bool foreign = means.ends_with('&');
    if (foreign) means.remove_suffix(1);
    std::string surface, stems;
    for (const auto& token : tokens) {
        surface += (surface.empty() ? "" : " ") + token.text;
        const auto& stem = stemmer.stem(token.text);
        stems += (stems.empty() ? "" : " ") + stem;
        vocabulary_.insert(token.text);
        stems_.insert(stem);
        // Of "hat stand" or "blanket for the cat" no word is of the trade by itself.
        const bool alone = !foreign && (tokens.size() == 1 || of == WordClass::fabric ||
                                        of == WordClass::technique);
        if (is_trade(of) && alone && token.text.size() + 1 >= least_slip && token.text[0] >= 'a' &&
            token.text[0] <= 'z')
            add_trade(token.text);
    }
    auto& phrase = phrases_[surface];
    phrase.text = surface;
    phrase.size = tokens.size();
    phrase.means[static_cast<std::size_t>(of)] = &*meanings_.emplace(means).first;
    by_stems_.try_emplace(stems, &phrase);
    for (const auto& begin : {tokens[0].text, stemmer.stem(tokens[0].text)}) {
        auto& most = longest_[begin];
        most = std::max(most, tokens.size());
    }
}

void Lexicon::add_trade(const std::string& word) {
    trade_[static_cast<std::size_t>(word[0] - 'a')].push_back(word);
    const auto bare = consonants(word);
    if (bare.size() < least_consonants) return;
    auto& one = by_consonants_.try_emplace(bare, word).first->second;
    if (one != word) one.clear();
}

const std::string* Lexicon::spelt(const std::string& word) const {
    if (word[0] < 'a' || word[0] > 'z' || word.size() > 31) return nullptr;
    const auto lengths = spelt_lengths_[static_cast<std::size_t>(word[0] - 'a')];
    if (!(lengths >> word.size() & 1U)) return nullptr;
    const auto found = spellings_.find(word);
    return found == spellings_.end() ? nullptr : &found->second;
}

const Phrase* Lexicon::find(const std::string& surface, const std::string& stems,
                            std::string_view last) const {
    if (const auto found = phrases_.find(surface); found != phrases_.end()) return &found->second;
    const auto found = by_stems_.find(stems);
    if (found == by_stems_.end()) return nullptr;
    const auto& phrase = *found->second;
    // "you knitted" tells of the past, "could you knit" does not.
    if (phrase.size > 1 && phrase.is(WordClass::remark)) return nullptr;
    if (phrase.size > 1 && phrase.is(WordClass::article) && !bends_alike(phrase.text, surface))
        return nullptr;
    // "pieced" is no piece.
    if (phrase.size == 1 && phrase.is(WordClass::filler) && ends_with(last, "ed") &&
        !ends_with(phrase.text, "ed"))
        return nullptr;
    const bool verb = ends_with(last, "ing") || ends_with(last, "ed") || ends_with(last, "y");
    return verb && only_a_noun(phrase) ? nullptr : &phrase;
}

const Phrase* Lexicon::longest(std::span<const Token> tokens, Stemmer& stemmer) const {
    const auto most_of = [&](const std::string& word) {
        const auto found = longest_.find(word);
        return found == longest_.end() ? std::size_t{0} : found->second;
    };
    std::string first(without_possessive(tokens[0].text));
    const auto most =
        std::max({most_of(tokens[0].text), most_of(first), most_of(stemmer.stem(first))});
    std::vector<std::string> surface(1), stems(1);
    std::string plain, stem;
    for (std::size_t n = 0; n < std::min(most, tokens.size()); ++n) {
        if (n > 0) plain += ' ', stem += ' ';
        plain += tokens[n].text;
        stem += stemmer.stem(std::string(without_possessive(tokens[n].text)));
        surface.push_back(plain);
        stems.push_back(stem);
    }
    for (std::size_t n = surface.size() - 1; n > 0; --n)
        if (const auto* found = find(surface[n], stems[n], tokens[n - 1].text)) return found;
    return nullptr;
}

bool Lexicon::knows(const std::string& word, Stemmer& stemmer) const {
    const std::string bare(without_possessive(word));
    if (vocabulary_.count(bare) || stems_.count(stemmer.stem(bare))) return true;
    for (const std::string_view end : {"er", "est", "ier", "iest", "ish", "y", "r", "st"})
        if (ends_with(bare, end) && bare.size() >= end.size() + 3) {
            const auto base = bare.substr(0, bare.size() - end.size());
            // "runner" and not "runer" is one who runs.
            const bool doubles = base.size() == 3 && !is_vowel(base[0]) && is_vowel(base[1]) &&
                                 !is_vowel(base[2]) &&
                                 std::string_view("wxy").find(base[2]) == std::string_view::npos;
            if (doubles && is_vowel(end[0])) continue;
            if (vocabulary_.count(base) || vocabulary_.count(base + "y")) return true;
        }
    return false;
}

std::string Lexicon::meant_by_slip(const std::string& word) const {
    if (word.size() < least_slip || word[0] < 'a' || word[0] > 'z') return {};
    const std::size_t most = word.size() >= two_from ? 2 : 1;
    std::string best;
    auto least = most + 1;
    for (const auto& trade : trade_[static_cast<std::size_t>(word[0] - 'a')]) {
        const auto n = edits(word, trade, most);
        const bool changed = n > 0 && trade.size() == word.size() && word.size() < changed_from;
        const bool too_short = n > 1 && trade.size() + 1 < two_from;
        const bool short_one = trade.size() < least_slip &&
                               word != trade + trade.back();  // of three letters only "hatt"
        if (n >= least || changed || too_short || short_one) continue;
        least = n;
        best = trade;
    }
    if (!best.empty()) return best;
    const auto found = by_consonants_.find(consonants(word));
    if (found == by_consonants_.end() || vowels(found->second) <= vowels(word)) return {};
    return found->second;
}

}  // namespace gristwright
