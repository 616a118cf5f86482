#include "catalog/text/deep_keys.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/text/bad_text.hpp"

namespace gristwright::catalog {
namespace {

constexpr int most_dots = 8;

// Walks over the text outside strings and comments.
class DeepKeys {
  public:
    DeepKeys(std::string_view text, const std::string& file) : text_(text), file_(file) {}

    void refuse() {
        while (at_ < text_.size()) {
            const char c = text_[at_];
            if (c == '#')
                at_ = std::min(text_.find('\n', at_), text_.size());
            else if (c == '"' || c == '\'')
                over_string(c);
            else
                take(c);
        }
    }

  private:
    void take(char c) {
        ++at_;
        if (c == '.' && ++dots_ > most_dots)
            throw BadText(file_, line(), fmt::format("a key has at most {} parts", most_dots + 1));
        if (std::string_view("=\n,[]{}").find(c) != std::string_view::npos) dots_ = 0;
    }
    // To behind the string that begins here; to the end of the text when it has none.
    void over_string(char quote) {
        const std::string three(3, quote);
        const bool three_of_them = text_.substr(at_, 3) == three;
        const auto end = three_of_them ? std::string_view(three) : text_.substr(at_, 1);
        for (at_ += end.size(); at_ < text_.size(); ++at_) {
            if (quote == '"' && text_[at_] == '\\') {
                ++at_;
                continue;
            }
            if (!three_of_them && text_[at_] == '\n') return;  // not TOML: the parser will say so
            if (text_.substr(at_, end.size()) != end) continue;
            at_ += end.size();
            if (three_of_them)  // the last two may be the text's own
                at_ = std::min(text_.find_first_not_of(quote, at_), at_ + 2);
            return;
        }
    }
    std::size_t line() const {
        return 1 + static_cast<std::size_t>(std::count(
                       text_.begin(), text_.begin() + static_cast<std::ptrdiff_t>(at_), '\n'));
    }

    std::string_view text_;
    const std::string& file_;
    std::size_t at_ = 0;
    int dots_ = 0;
};

}  // namespace

void refuse_deep_keys(std::string_view text, const std::string& file) {
    DeepKeys(text, file).refuse();
}

}  // namespace gristwright::catalog
