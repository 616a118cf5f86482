#include "catalog/typed/several_skeins.hpp"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <sstream>
#include <vector>

#include "engine/units/ascii.hpp"
#include "engine/units/has.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

constexpr int most = 100;
constexpr std::string_view right_skeins = "such as '4 skeins of 155 m, 97 g each'";
constexpr std::string_view round_a_word = "(),;.:";

constexpr std::array skein_words{"skein",         "skeins",         "hank",   "hanks",
                                 "ball",          "balls",          "cake",   "cakes",
                                 "mini",          "minis",          "bobbin", "bobbins",
                                 "\u00E9cheveau", "\u00E9cheveaux", "strang", "str\u00E4nge",
                                 "h\u00E4rva",    "h\u00E4rvor",    "docka",  "dockor"};
constexpr std::array each_words{"each", "ea", "apiece", "chacun", "chacune", "je"};
constexpr std::array total_words{"total", "totals", "altogether", "together", "all", "combined"};
constexpr std::array joiners{"of", "\u00E0", "de", "zu"};  // behind the word for a skein

std::string_view bare(std::string_view word) {
    const auto first = word.find_first_not_of(round_a_word);
    if (first == std::string_view::npos) return {};
    return word.substr(first, word.find_last_not_of(round_a_word) + 1 - first);
}

bool has_digit(std::string_view word) {
    return std::any_of(word.begin(), word.end(), ascii::is_digit);
}

// A whole number at the front, taken off; 0: none.
int take_number(std::string_view& text) {
    int value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc{}) return 0;
    text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()));
    return value;
}

void drop_spaces(std::string_view& text) {
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
}

// The words of a text, and what they say of the count.
class TypedWords {
  public:
    explicit TypedWords(const std::string& typed) : text_(plain(typed)) {
        std::string_view rest = text_;
        take_times(rest);
        take_times_behind(rest);
        std::istringstream parts{std::string(rest)};
        for (std::string word; parts >> word;) words_.push_back(word);
    }

    Several read(const std::string& typed) {
        take_name();
        take_number_of_skeins();
        take_what_says_each();
        drop_skein_words();
        if (!changed_) return {1, typed, ""};
        if (count_ > most)
            throw Unreadable(typed, fmt::format("skeins are counted from 1 to {}", most),
                             right_skeins);
        if (count_ > 1 && !of_each())
            throw Unclear(typed, "what each skein is, or all of them together", right_skeins);
        return {count_, fmt::format("{}", fmt::join(words_, " ")), name_};
    }

  private:
    // "3 x 110 yd": what follows is of each, where it is one thing.
    void take_times(std::string_view& rest) {
        auto ahead = rest;
        const int count = take_number(ahead);
        drop_spaces(ahead);
        if (count < 1 || !ahead.starts_with('x')) return;
        ahead.remove_prefix(1);
        drop_spaces(ahead);
        if (ahead.empty() || (ascii::is_letter(ahead[0]) && !starts_with_skein(ahead))) return;
        rest = ahead;
        count_ = count;
        times_ = changed_ = true;
    }

    // "110 yd/57 g x 3", "(x3)".
    void take_times_behind(std::string_view& rest) {
        const auto at = rest.rfind('x');
        if (times_ || at == std::string_view::npos || at == 0) return;
        if (rest[at - 1] != ' ' && rest[at - 1] != '(') return;
        auto behind = rest.substr(at + 1);
        drop_spaces(behind);
        const int count = take_number(behind);
        if (count < 1 || (!behind.empty() && behind != ")")) return;
        rest = rest.substr(0, rest.find_last_not_of(" (", at - 1) + 1);
        count_ = count;
        times_ = changed_ = true;
    }

    static bool starts_with_skein(std::string_view text) {
        return has(skein_words, bare(text.substr(0, text.find(' '))));
    }

    // "Skein 3: 166 m".
    void take_name() {
        if (words_.size() < 3 || !has(skein_words, words_[0])) return;
        std::string_view number = words_[1];
        if (take_number(number) < 1 || number != ":") return;
        name_ = words_[0] + " " + words_[1].substr(0, words_[1].size() - 1);
        words_.erase(words_.begin(), words_.begin() + 2);
        changed_ = true;
    }

    void take_number_of_skeins() {
        if (times_ || words_.size() < 2 || !has(skein_words, bare(words_[1]))) return;
        std::string_view number = words_[0];
        const int count = take_number(number);
        if (count < 1 || !number.empty()) return;
        count_ = count;
        words_.erase(words_.begin());
        changed_ = true;
    }

    std::string_view before(std::size_t w) const { return w ? bare(words_[w - 1]) : ""; }

    // Takes what says so off, and keeps where it stood: before the figures, behind them or between.
    void take_what_says_each() {
        for (std::size_t w = 0; w < words_.size();) {
            const auto word = bare(words_[w]);
            total_ = total_ || has(total_words, word);
            if (before(w) == "and" && has(std::array{"a", "some"}, word) && w + 1 <= words_.size())
                and_a_bit(w);
            if (!has(each_words, word)) {
                ++w;
                continue;
            }
            const auto figure = [](const std::string& text) { return has_digit(text); };
            const auto at = words_.begin() + static_cast<std::ptrdiff_t>(w);
            const bool first = std::none_of(words_.begin(), at, figure);
            const bool last = std::none_of(at, words_.end(), figure);
            ++each_, outside_ = outside_ || first || last;
            words_[w].erase(words_[w].find(word), word.size());
            if (words_[w].empty()) words_.erase(at);
            changed_ = true;
        }
    }

    void and_a_bit(std::size_t w) const {
        const auto what = w + 1 < words_.size() ? bare(words_[w + 1]) : "";
        if (has(std::array{"bit", "little", "few", "bits"}, what) || bare(words_[w]) == "some")
            throw Unclear(text_, "that figure, or somewhat more", "as it was measured");
    }

    void drop_skein_words() {
        for (std::size_t w = 0; w < words_.size();) {
            const auto word = bare(words_[w]);
            const bool joins = skein_before_ && has(joiners, word);
            skein_before_ = has(skein_words, word);
            if (!skein_before_ && !joins) {
                ++w;
                continue;
            }
            skein_before_ = true;
            words_[w].erase(words_[w].find(word), word.size());
            if (words_[w].find_first_not_of(",.:") == std::string::npos)
                words_.erase(words_.begin() + static_cast<std::ptrdiff_t>(w));
            else
                ++w;
            changed_ = true;
        }
    }

    // "3 x 110 yd, 171 g" may weigh that together; "3 x 110 yd @ 57 g" is one thing three times.
    bool of_each() const {
        if (total_) return false;
        if (each_ > 0) return outside_ || each_ > 1;
        const auto left = fmt::format("{}", fmt::join(words_, " "));
        return times_ && left.find_first_of("/@") != std::string::npos &&
               left.find_first_of(",;") == std::string::npos;
    }

    std::string text_, name_;
    std::vector<std::string> words_;
    int count_ = 1, each_ = 0;
    bool times_ = false, changed_ = false, total_ = false, outside_ = false, skein_before_ = false;
};

}  // namespace

Several several_skeins(const std::string& text) { return TypedWords(text).read(text); }

}  // namespace gristwright::catalog
