#include "engine/suggestion/tokens.hpp"

#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || is_capital(c); }
bool is_ascii(char c) { return static_cast<unsigned char>(c) < 0x80; }
bool is_space(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

// What a Latin letter, quote, dash or fraction outside ASCII is read as; empty: it stays.
struct Folded {
    std::string_view typed, read;
};
constexpr Folded folded[] = {
    {"à", "a"},    {"á", "a"},    {"â", "a"},    {"ä", "a"},   {"å", "a"},    {"æ", "ae"},
    {"ç", "c"},    {"è", "e"},    {"é", "e"},    {"ê", "e"},   {"ë", "e"},    {"í", "i"},
    {"ï", "i"},    {"ñ", "n"},    {"ò", "o"},    {"ó", "o"},   {"ô", "o"},    {"ö", "o"},
    {"ø", "o"},    {"ú", "u"},    {"ü", "u"},    {"Å", "A"},   {"É", "E"},    {"Ö", "O"},
    {"‘", "'"},    {"’", "'"},    {"“", "\""},   {"”", "\""},  {"″", "\""},   {"′", "'"},
    {"–", ";"},    {"—", ";"},    {"…", "."},    {"×", " x "}, {"½", " 1/2"}, {"¼", " 1/4"},
    {"¾", " 3/4"}, {"⅓", " 1/3"}, {"⅔", " 2/3"}, {" ", " "},   {"‑", "-"},
};

std::size_t bytes_of(char first) {
    const auto c = static_cast<unsigned char>(first);
    return c < 0x80 ? 1 : c >= 0xF0 ? 4 : c >= 0xE0 ? 3 : 2;
}

// "#8 needles".
bool is_a_number_sign(std::string_view idea, std::size_t at) {
    return idea[at] == '#' && at + 1 < idea.size() && is_digit(idea[at + 1]) &&
           (at == 0 || is_space(idea[at - 1]));
}

// "w/ pockets", "w/o a brim"; empty: it is not that.
std::string_view with_for_short(std::string_view idea, std::size_t at) {
    if (idea.substr(at, 2) != "w/" || (at > 0 && !is_space(idea[at - 1]))) return {};
    const auto next = at + 2 < idea.size() ? idea[at + 2] : ' ';
    const auto after = at + 3 < idea.size() ? idea[at + 3] : ' ';
    return next == 'o' && !is_letter(after) ? " without " : " with ";
}

// "5'4\"", "6' long": feet, behind a number and before no letter ("6's", "the '80s").
std::string_view foot_mark(std::string_view idea, std::size_t at, std::string_view one) {
    if (one != "'" || at == 0 || !is_digit(idea[at - 1])) return {};
    const auto next = at + 1 < idea.size() ? idea[at + 1] : ' ';
    if (next == '\'') return "\"";
    return is_letter(next) ? std::string_view() : " ft ";
}

std::string fold(std::string_view idea) {
    std::string out;
    for (std::size_t i = 0; i < idea.size() && out.size() < most_tokens * most_bytes;) {
        const auto size = std::min(bytes_of(idea[i]), idea.size() - i);
        auto one = idea.substr(i, size);
        if (size > 1)
            for (const auto& f : folded)
                if (f.typed == one) one = f.read;
        if (is_a_number_sign(idea, i)) one = " number ";
        if (const auto mark = foot_mark(idea, i, one); !mark.empty()) {
            out += mark;
            i += size + (mark == "\"" ? 1 : 0);
            continue;
        }
        if (one == "*" && i > 0 && is_digit(idea[i - 1])) one = " x ";
        const auto with = with_for_short(idea, i);
        out += with.empty() ? one : with;
        i += with.empty() ? size : with == " with " ? 2 : 3;
    }
    return out;
}

class Cutter {
  public:
    explicit Cutter(std::string text) : text_(std::move(text)) {}

    std::vector<Token> cut() {
        while (at_ < text_.size() && out_.size() < most_tokens) one();
        return std::move(out_);
    }

  private:
    bool is(std::size_t i, bool (*kind)(char)) const { return i < text_.size() && kind(text_[i]); }

    void one() {
        const char c = text_[at_];
        if (is_digit(c)) return take(Token::Kind::number, number_end());
        if (is_letter(c)) return take(Token::Kind::word, word_end());
        if (!is_ascii(c)) return take(Token::Kind::word, at_ + bytes_of(c));
        if (!is_space(c) && !is_hyphen() && c >= ' ') return take(Token::Kind::sign, at_ + 1);
        if (c == '-' && !is(at_ + 1, is_letter)) clause_ = true;  // a dash
        ++at_;
    }

    bool is_hyphen() const { return text_[at_] == '-' || text_[at_] == '\''; }

    // Digits with one point or comma between digits: "1.7", "0,5", "1,200".
    std::size_t number_end() const {
        auto end = at_;
        while (is(end, is_digit) ||
               (end < text_.size() && (text_[end] == '.' || text_[end] == ',') && end > at_ &&
                is(end + 1, is_digit)))
            ++end;
        return end;
    }

    std::size_t word_end() const {
        auto end = at_;
        while (is(end, is_letter) || is(end, is_digit) ||
               (end < text_.size() && text_[end] == '\'' && is(end + 1, is_letter)))
            ++end;
        // "x45", "1m20": a sign between two measures, a unit inside one; no names.
        const bool inside = at_ > 0 && is_digit(text_[at_ - 1]) && text_[at_] == 'm';
        if ((text_[at_] == 'x' || inside) && is(at_ + 1, is_digit)) return at_ + 1;
        return end;
    }

    void take(Token::Kind kind, std::size_t end) {
        end = std::min(end, text_.size());
        Token token;
        token.kind = kind;
        token.typed = text_.substr(at_, std::min(end - at_, most_bytes));
        token.text = ascii::lowered(token.typed);
        if (token.text == "&") token.kind = Token::Kind::word, token.text = "and";
        token.capital = is_capital(token.typed[0]);
        token.new_clause = clause_;
        clause_ = kind == Token::Kind::sign && token.text.find_first_of(",;:.!?()") == 0;
        out_.push_back(std::move(token));
        at_ = end;
    }

    std::string text_;
    std::size_t at_ = 0;
    bool clause_ = true;
    std::vector<Token> out_;
};

}  // namespace

std::vector<Token> tokens_of(std::string_view idea) { return Cutter(fold(idea)).cut(); }

std::string_view without_possessive(std::string_view word) {
    if (word.size() > 2 && word.substr(word.size() - 2) == "'s") word.remove_suffix(2);
    return word;
}

}  // namespace gristwright
