#include "catalog/text/parser_limits.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cstdint>
#include <utility>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/characters.hpp"

namespace gristwright::catalog {
namespace {

constexpr int most_dots = 8;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view blanks = " \t\r\n";

bool is_ascii(char c) { return static_cast<unsigned char>(c) < 0x80; }
bool is_one_of(char c, std::string_view list) { return list.find(c) != std::string_view::npos; }

// Walks over the text outside strings and comments.
class Walk {
  public:
    Walk(std::string_view text, const std::string& file) : text_(text), file_(file) {}

    std::string read() {
        if (text_.starts_with(byte_order_mark)) at_ = byte_order_mark.size();
        while (at_ < text_.size()) {
            const char c = text_[at_];
            if (c == '#')
                at_ = std::min(text_.find('\n', at_), text_.size());
            else if (c == '"' || c == '\'')
                over_string(c);
            else
                take(c);
        }
        read_ += text_.substr(copied_);
        return std::move(read_);
    }

  private:
    void take(char c) {
        if (!is_ascii(c))
            throw wrong("this is not TOML: " + shown() +
                        " stands outside quotes; text goes between straight ones: \"text\"");
        ++at_;
        if (c == '.' && ++dots_ > most_dots)
            throw wrong(fmt::format("a key has at most {} parts", most_dots + 1));
        if (is_one_of(c, "=\n,[]{}")) dots_ = 0;
        look_for_number(c);
    }
    // From a number the parser looks ahead to what can end it, over any quotes.
    void look_for_number(char c) {
        const bool ends = is_one_of(c, blanks) || is_one_of(c, ",]}");
        in_number_ = !ends && (in_number_ || (begins_ && is_one_of(c, "+-0123456789")));
        begins_ = ends || is_one_of(c, "=[{");
    }
    // To behind the string that begins here; to the end of the text when it has none.
    void over_string(char quote) {
        if (in_number_) throw wrong("quotes begin right behind a number; put a blank between them");
        const std::string three(3, quote);
        const bool three_of_them = text_.substr(at_, 3) == three;
        const auto end = three_of_them ? std::string_view(three) : text_.substr(at_, 1);
        for (at_ += end.size(); at_ < text_.size();) {
            if (quote == '"' && text_[at_] == '\\') {
                over_backslash(three_of_them);
                continue;
            }
            if (!three_of_them && text_[at_] == '\n') return;  // not TOML: the parser will say so
            if (text_.substr(at_, end.size()) != end) {
                ++at_;
                continue;
            }
            at_ += end.size();
            if (three_of_them)  // the last two may be the text's own
                at_ = std::min(text_.find_first_not_of(quote, at_), at_ + 2);
            return;
        }
    }
    // And over what it escapes; in a string of several lines, over blanks up to what it joins.
    void over_backslash(bool lines) {
        const auto next = std::min(text_.find_first_not_of(blanks, ++at_), text_.size());
        const bool joins = lines && next > at_;
        if (joins) at_ = next;
        if (lines && at_ < text_.size() && !is_ascii(text_[at_])) {
            if (!joins) throw wrong(shown() + " stands behind a backslash, which takes none such");
            escape();
        } else if (!joins) {
            ++at_;
        }
    }
    void escape() {
        const auto [code, bytes] = here();
        read_ += text_.substr(copied_, at_ - copied_);
        read_ += fmt::format("\\U{:08X}", static_cast<std::uint32_t>(code));
        at_ = copied_ = at_ + bytes.size();
    }

    struct Character {
        char32_t code;
        std::string_view bytes;
    };
    Character here() const {
        auto rest = text_.substr(at_);
        const auto code = take_character(rest);
        if (code == no_character) throw wrong("this is not UTF-8");
        return {code, text_.substr(at_, text_.size() - at_ - rest.size())};
    }
    std::string shown() const {
        const auto [code, bytes] = here();
        return fmt::format("'{}' (U+{:04X})", inert(bytes), static_cast<std::uint32_t>(code));
    }
    BadText wrong(const std::string& why) const {
        const auto before = text_.substr(0, at_);
        const auto line = 1 + std::count(before.begin(), before.end(), '\n');
        return {file_, static_cast<std::size_t>(line), why};
    }

    std::string_view text_;
    const std::string& file_;
    std::string read_;  // the text for the parser as far as `copied_`
    std::size_t at_ = 0, copied_ = 0;
    int dots_ = 0;
    bool begins_ = true;      // a key or a value can begin here
    bool in_number_ = false;  // no blank since one began
};

}  // namespace

std::string within_parser_limits(std::string_view text, const std::string& file) {
    return Walk(text, file).read();
}

}  // namespace gristwright::catalog
