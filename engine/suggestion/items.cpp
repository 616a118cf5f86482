#include "engine/suggestion/items.hpp"

#include <algorithm>
#include <charconv>

namespace gristwright {
namespace {

constexpr std::string_view question_words[] = {
    "how",  "is",     "are",   "does",    "do",     "did",    "would",    "could",    "can",
    "will", "what",   "which", "who",     "should", "have",   "has",      "any",      "where",
    "when", "what's", "how's", "where's", "isn't",  "aren't", "wouldn't", "couldn't", "won't",
};

bool is_word(const Token& token) { return token.kind == Token::Kind::word; }
bool is_plain_word(const Token& token) {
    return is_word(token) && token.text[0] >= 'a' && token.text[0] <= 'z';
}

// "ooooh", "sooo", "yesss": of a letter that goes on, as many as a word of the table has.
std::string drawn_in(const std::string& word, const Lexicon& lexicon, Stemmer& stemmer) {
    constexpr std::size_t drawn = 3;
    for (const std::size_t kept : {std::size_t{2}, std::size_t{1}}) {
        std::string out;
        std::size_t run = 0, longest = 0;
        for (const char c : word) {
            run = !out.empty() && out.back() == c ? run + 1 : 1;
            longest = std::max(longest, run);
            if (run <= kept) out += c;
        }
        if (longest < drawn) return {};
        if (lexicon.knows(out, stemmer)) return out;
    }
    return {};
}

// Words that are in no table and that are a slip of a trade word; a name inside a sentence is none.
void mend_slips(std::vector<Token>& tokens, const Lexicon& lexicon, Stemmer& stemmer,
                std::vector<std::string>& mended) {
    for (auto& token : tokens) {
        if (const auto* right = lexicon.spelt(token.text)) token.text = *right;
        if (!is_plain_word(token) || lexicon.knows(token.text, stemmer)) continue;
        if (const auto drawn = drawn_in(token.text, lexicon, stemmer); !drawn.empty()) {
            token.text = drawn;
            continue;
        }
        const bool name =
            token.capital && !token.new_clause && token.typed.size() > 1 && token.typed[1] >= 'a';
        if (name) continue;
        std::string bare(without_possessive(token.text));
        auto meant = lexicon.meant_by_slip(bare);
        if (meant.empty()) meant = lexicon.meant_by_slip(stemmer.stem(bare));
        if (meant.empty()) continue;
        mended.push_back(token.typed + " as " + meant);
        token.text = meant;
    }
}

// "cotton wrap, this as weft": beside a weft it is the warp, unless a warp is named too.
void read_wrap_as_warp(std::vector<Token>& tokens, const Lexicon& lexicon, Stemmer& stemmer,
                       std::vector<std::string>& mended) {
    const auto names = [&](std::string_view word) {
        return std::any_of(tokens.begin(), tokens.end(), [&](const Token& t) {
            return t.text == word || (t.text.size() == word.size() + 1 && t.text.ends_with('s') &&
                                      t.text.starts_with(word));
        });
    };
    if (!names("weft") || names("warp")) return;
    constexpr std::string_view leads[] = {"as", "for", "on", "the"};
    for (std::size_t i = 1; i < tokens.size(); ++i) {
        if (tokens[i].text != "wrap") continue;
        const auto* before = lexicon.longest(std::span(tokens).subspan(i - 1, 1), stemmer);
        const bool of_fibre = before && before->is(WordClass::material);
        if (!of_fibre && !has(leads, tokens[i - 1].text)) continue;
        mended.push_back(tokens[i].typed + " as warp");
        tokens[i].text = "warp";
    }
}

// "socks 4 my dad", "a hat 4 him": no count.
void read_four_as_for(std::vector<Token>& tokens) {
    constexpr std::string_view whose[] = {"my",  "me",  "him",     "her",     "his",  "our",
                                          "us",  "the", "a",       "an",      "your", "them",
                                          "mum", "dad", "grandpa", "grandma", "gran", "nan"};
    for (std::size_t i = 1; i + 1 < tokens.size(); ++i)
        if (tokens[i].text == "4" && is_word(tokens[i - 1]) &&
            has(whose, without_possessive(tokens[i + 1].text)))
            tokens[i].kind = Token::Kind::word, tokens[i].text = "for";
}

// "double knitting, with two layers", "so there is no wrong side": the fabric and not the weight.
void read_double_knitting(std::vector<Token>& tokens) {
    constexpr std::string_view two_faces[] = {"layers",   "layered", "layer", "reversible",
                                              "inverted", "faces",   "faced", "sided"};
    bool faces = false;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        const auto& word = tokens[i].text;
        const bool side = word.starts_with("side") && i > 0 &&
                          (tokens[i - 1].text == "both" || tokens[i - 1].text == "wrong");
        faces = faces || side || has(two_faces, word);
    }
    for (std::size_t i = 1; faces && i < tokens.size(); ++i)
        if (tokens[i].text == "knitting" && tokens[i - 1].text == "double")
            tokens[i].text = "knitted";
}

Item item_of(std::span<const Token> tokens, const Lexicon& lexicon, Stemmer& stemmer) {
    Item out;
    const auto& first = tokens[0];
    out.phrase = lexicon.longest(tokens, stemmer);
    const auto size = out.phrase ? out.phrase->size : 1;
    for (std::size_t i = 0; i < size; ++i) {
        out.said += (i ? " " : "") + tokens[i].typed;
        out.text += (i ? " " : "") + tokens[i].text;
    }
    out.capital = first.capital;
    if (out.phrase) return out;
    if (first.kind == Token::Kind::number) {
        out.amount.emplace();
        out.amount->number = figure_of(first.text).value_or(0);
    }
    out.sign = first.kind == Token::Kind::sign;
    const bool word = is_plain_word(first) && first.text.size() > 2;
    out.bent = word && lexicon.knows(first.text, stemmer);
    out.unknown = word && !out.bent;
    return out;
}

// "get a throw out of it": behind "a" no verb stands.
bool is_no_idiom(const Item& before, const Item& item) {
    constexpr std::string_view begins[] = {"throw ", "wrap ", "cover ", "cap "};
    const auto last = before.last_word();
    return (last == "a" || last == "another") && item.is(WordClass::idiom) &&
           std::any_of(std::begin(begins), std::end(begins),
                       [&](std::string_view verb) { return item.text.starts_with(verb); });
}

bool ends_sentence(const Item& item) { return item.sign && item.text.find_first_of(".!?") == 0; }

bool ends_clause(const Item& item) {
    if (item.sign && item.text.find_first_of(",;:()") == 0) return true;
    return item.is(WordClass::joiner) && item.as(WordClass::joiner) == "but";
}

// "would it", "does the", "how warm", "what needle": the beginning of a question, and not "what I
// like", "which is nice".
bool begins_a_question(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view turned[] = {"would", "wouldn't", "could", "can", "will",
                                           "won't", "does",     "do",    "did", "is",
                                           "isn't", "are",      "should"};
    constexpr std::string_view subjects[] = {"it",    "they",  "i",    "you", "we",  "he", "she",
                                             "that",  "this",  "the",  "a",   "an",  "my", "there",
                                             "these", "those", "your", "one", "them"};
    if (items[at].is(WordClass::topic) && items[at].text.find(' ') != std::string::npos)
        return items[at].first_word() == "how" || items[at].first_word() == "what" ||
               items[at].first_word() == "which" || has(turned, items[at].first_word());
    const auto first = items[at].first_word();
    const auto space = items[at].text.find(' ');
    auto second = space == std::string::npos ? std::string_view()
                                             : std::string_view(items[at].text).substr(space + 1);
    if (second.empty() && at + 1 < items.size()) second = items[at + 1].first_word();
    second = second.substr(0, second.find(' '));
    return has(turned, first) && has(subjects, second);
}

// "stocking stitch scarf, would it slant": what asks stands behind, and no mark follows.
void mark_asking_clause(std::vector<Item>& items, std::size_t from, std::size_t to) {
    for (auto i = from + 1; i < to; ++i) {
        const bool begins = items[i].clause != items[i - 1].clause || items[i - 1].sign ||
                            items[i - 1].is(WordClass::joiner);
        if (!begins || items[i].sign || !begins_a_question(items, i)) continue;
        for (; i < to; ++i) items[i].asks = true;
    }
}

// "I wonder whether", "not sure it is", "provided it", "might be too": what follows is asked,
// though no question is put.
bool asks_indirectly(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view leads[] = {"wonder",  "wondering", "unsure",   "worried",
                                          "depends", "provided",  "assuming", "whether",
                                          "curious", "doubt",     "depending"};
    constexpr std::string_view ifs[] = {"if", "as long as", "so long as", "only if", "as"};
    constexpr std::string_view it[] = {"it", "it's", "they", "they're", "it'd", "it'll"};
    const auto& item = items[at];
    if (has(leads, item.first_word()) || has(leads, item.last_word())) return true;
    if (item.text.find("not sure") != std::string::npos) return true;
    const auto next = at + 1;
    if (next >= items.size()) return false;
    const auto second = items[next].first_word();
    if (item.last_word() == "not" && second == "sure") return true;
    if ((item.text == "might" || item.text == "may") && second == "be") return true;
    return has(ifs, item.text) && has(it, second);
}

void mark_indirect(std::vector<Item>& items, std::size_t from, std::size_t to) {
    for (auto i = from; i < to; ++i) {
        if (items[i].sign || !asks_indirectly(items, i)) continue;
        const auto clause = items[i].clause;
        for (; i < to && items[i].clause == clause; ++i) items[i].asks = true;
    }
}

// A sentence asks when it ends with a question mark, or begins with a word that asks.
void mark_questions(std::vector<Item>& items) {
    for (std::size_t from = 0; from < items.size();) {
        auto to = from;
        while (to < items.size() && items[to].sentence == items[from].sentence) ++to;
        // "How about a hat" asks nothing; "how many" does.
        const auto& head = items[from];
        const bool open = !head.is(WordClass::filler) || head.text.find(' ') == std::string::npos;
        const auto first = open ? head.text.substr(0, head.text.find(' ')) : std::string();
        bool asks = std::find(std::begin(question_words), std::end(question_words), first) !=
                    std::end(question_words);
        // "Do the snap test first" orders.
        constexpr std::string_view whom[] = {"you", "they", "i", "we", "these", "those", "your"};
        if (first == "do" && from + 1 < to && open)
            asks =
                has(whom, items[from + 1].first_word()) || head.text.find(' ') != std::string::npos;
        // "Would never put it in a towel", "will last for years": told, its subject left out.
        constexpr std::string_view verbs[] = {"never",  "not",       "love",    "like",
                                              "rather", "be",        "suggest", "last",
                                              "say",    "recommend", "go"};
        const auto space = head.text.find(' ');
        const auto second = space != std::string::npos
                                ? std::string_view(head.text).substr(space + 1)
                            : from + 1 < to ? items[from + 1].first_word()
                                            : std::string_view();
        if ((first == "would" || first == "will" || first == "could") && has(verbs, second))
            asks = false;
        for (auto i = from; i < to; ++i) asks = asks || items[i].text == "?";
        for (auto i = from; i < to; ++i) items[i].asks = asks;
        if (!asks) {
            mark_asking_clause(items, from, to);
            mark_indirect(items, from, to);
        }
        from = to;
    }
}

}  // namespace

std::optional<double> figure_of(const std::string& text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool thousands = text[i] == ',' && i + 4 == text.size();
        if (!thousands) plain += text[i] == ',' ? '.' : text[i];
    }
    double value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc() || end != plain.data() + plain.size() || value > 1e6) return {};
    return value;
}

std::vector<Item> items_of(const std::string& idea, const Lexicon& lexicon, Stemmer& stemmer,
                           std::vector<std::string>& mended) {
    auto tokens = tokens_of(idea);
    mend_slips(tokens, lexicon, stemmer, mended);
    read_four_as_for(tokens);
    read_wrap_as_warp(tokens, lexicon, stemmer, mended);
    read_double_knitting(tokens);
    std::vector<Item> out;
    std::size_t clause = 0, sentence = 0;
    for (std::size_t i = 0; i < tokens.size();) {
        auto item = item_of(std::span(tokens).subspan(i), lexicon, stemmer);
        if (!out.empty() && is_no_idiom(out.back(), item))
            item = item_of(std::span(tokens).subspan(i, 1), lexicon, stemmer);
        if (i > 0 && tokens[i].new_clause) ++clause;
        if (ends_clause(item)) ++clause;
        item.clause = clause;
        item.sentence = sentence;
        i += item.phrase ? item.phrase->size : 1;
        if (ends_sentence(item)) ++sentence, ++clause;
        out.push_back(std::move(item));
    }
    mark_questions(out);
    return with_amounts(out);
}

constexpr std::string_view before_an_age[] = {"is",   "aged",    "age",   "turning", "turned",
                                              "he's", "she's",   "who's", "nearly",  "almost",
                                              "just", "they're", "be",    "turns"};

bool tells_a_side(const Item& item) {
    return item.is(WordClass::tool) &&
           (item.as(WordClass::tool) == "size" || item.as(WordClass::tool) == "width");
}

bool stands_after_for(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view leads[] = {"for", "on", "wants"};
    for (std::size_t back = 1; back <= 3 && back <= at; ++back)
        if (has(leads, items[at - back].last_word()) || has(leads, items[at - back].first_word()))
            return true;
    return false;
}

bool stands_before_an_age(std::string_view word) { return has(before_an_age, word); }

bool is_own(const Item& item) {
    constexpr std::string_view whose[] = {"my",  "your",  "her", "his",
                                          "our", "their", "the", "that"};
    return has(whose, item.text);
}

bool stands_after_age(const std::vector<Item>& items, std::size_t at) {
    if (at == 0) return false;
    const auto& before = items[at - 1].text;
    return before == "age" || before == "ages" || before == "aged" || is_own_age(items, at);
}

static bool is_bare(const std::vector<Item>& items, std::size_t at) {
    return at < items.size() && items[at].amount && !items[at].amount->times_next &&
           items[at].amount->of == Amount::Of::number;
}

bool is_own_age(const std::vector<Item>& items, std::size_t at) {
    if (at == 0 || !is_bare(items, at) || items[at].amount->number < 1) return false;
    const auto& before = items[at - 1];
    const bool am = before.text == "am" && at > 1 && items[at - 2].last_word() == "i";
    if (!am && before.last_word() != "i'm" && before.text != "i am") return false;
    const auto next = at + 1;
    return next == items.size() || items[next].sign || items[next].clause != items[at].clause ||
           items[next].is(WordClass::joiner);
}

bool is_of_ages(const std::vector<Item>& items, std::size_t at) {
    auto first = at, last = at;
    if (at > 0 && is_bare(items, at - 1))
        first = at - 1;
    else if (at > 1 && items[at - 1].text == "to" && is_bare(items, at - 2))
        first = at - 2;
    else if (is_bare(items, at + 1))
        last = at + 1;
    else if (at + 1 < items.size() && items[at + 1].text == "to" && is_bare(items, at + 2))
        last = at + 2;
    if (first == last || first == 0 || !is_bare(items, at)) return false;
    if (items[first].amount->number >= items[last].amount->number) return false;
    if (stands_after_age(items, first)) return true;
    const auto& who = items[first - 1];
    return who.is(WordClass::person) && (who.as(WordClass::person).starts_with("child") ||
                                         who.as(WordClass::person).starts_with("baby"));
}

}  // namespace gristwright
