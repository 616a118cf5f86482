#include "engine/units/scanner.hpp"

#include <fmt/core.h>

#include <array>
#include <charconv>
#include <cmath>

namespace gristwright {
namespace {

constexpr std::string_view digits = "0123456789";
constexpr std::size_t most_digits = 12;

bool is_digit(std::string_view text, std::size_t at) {
    return at < text.size() && digits.find(text[at]) != std::string_view::npos;
}

std::string_view leading_digits(std::string_view text) {
    return text.substr(0, std::min(text.size(), text.find_first_not_of(digits)));
}

double whole(std::string_view text) {
    double value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

// How many groups of exactly three digits, each behind `mark`, stand in front.
std::size_t groups(std::string_view text, char mark) {
    std::size_t count = 0;
    while (!text.empty() && text[0] == mark && leading_digits(text.substr(1)).size() == 3) {
        text.remove_prefix(4);
        ++count;
    }
    const bool fraction = count > 0 && mark == ' ' && !text.empty() && text[0] == '/';
    return fraction ? count - 1 : count;
}

struct Whole {
    double value = 0;
    std::size_t size = 0;  // of its text
    char mark = 0;         // between its thousands, if any
    bool sure = true;      // else one mark, which may be the decimal one
};

// "1200", "1,200", "1.200.000", "1 200", "1'200".
std::optional<Whole> leading_whole(std::string_view text) {
    const auto head = leading_digits(text);
    if (head.size() > most_digits || (head.size() > 1 && head[0] == '0')) return {};
    Whole out{whole(head), head.size(), 0, true};
    if (head.empty() || head.size() > 3 || head[0] == '0') return out;
    for (const char mark : {',', '.', '\'', ' '}) {
        const auto count = std::min<std::size_t>(groups(text.substr(head.size()), mark), 3);
        if (count == 0) continue;
        for (std::size_t g = 0; g < count; ++g, out.size += 4)
            out.value = out.value * 1000 + whole(text.substr(out.size + 1, 3));
        out.mark = mark;
        const bool either = count == 1 && (mark == ',' || mark == '.');
        const auto rest = text.substr(out.size);
        const bool decimals = !rest.empty() && (rest[0] == '.' || rest[0] == ',') &&
                              rest[0] != mark && is_digit(rest, 1);
        out.sure = !either || decimals;
        return out;
    }
    return out;
}

// The digits behind a decimal mark other than `not_this`, or nothing.
std::string_view decimals(std::string_view text, char not_this) {
    if (text.empty() || (text[0] != '.' && text[0] != ',') || text[0] == not_this) return {};
    return leading_digits(text.substr(1));
}

// Takes a number without a fraction; nothing for no digits or 010.
std::optional<Number> take_decimal(std::string_view& text) {
    const auto front = leading_whole(text);
    if (!front) return {};
    const auto tail = decimals(text.substr(front->size), front->mark);
    if (tail.size() > most_digits || (front->size == 0 && tail.empty())) return {};
    text.remove_prefix(front->size + (tail.empty() ? 0 : tail.size() + 1));
    if (front->sure) {
        const double step = std::pow(10.0, -static_cast<double>(tail.size()));
        return Number{front->value + whole(tail) * step, step, {}, 0};
    }
    return Number{front->value / 1000, 0.001, front->value, front->mark};
}

// "3/4" in front of `text`, a proper fraction or nothing; its size in `size`.
std::optional<Number> fraction(std::string_view text, std::size_t& size) {
    const auto over = leading_digits(text);
    if (over.empty() || over.size() >= text.size() || text[over.size()] != '/') return {};
    const auto under = leading_digits(text.substr(over.size() + 1));
    if (under.empty() || over.size() > 2 || under.size() > 2) return {};
    if (!(whole(over) > 0) || whole(over) >= whole(under)) return {};
    size = over.size() + 1 + under.size();
    return Number{whole(over) / whole(under), 1 / whole(under), {}, 0};
}

bool is_letter(char c) { return c >= 'a' && c <= 'z'; }

}  // namespace

void Scanner::drop(std::size_t size) {
    rest_.remove_prefix(size);
    while (!rest_.empty() && rest_[0] == ' ') rest_.remove_prefix(1);
}

std::optional<Number> Scanner::number(Fractions fractions) {
    std::size_t size = 0;
    if (const auto part = fractions == Fractions::any ? fraction(rest_, size) : std::nullopt) {
        drop(size);
        return part;
    }
    auto after = rest_;
    auto out = take_decimal(after);
    if (!out) return {};
    const bool mixed = fractions != Fractions::none && out->step == 1 && !after.empty() &&
                       (after[0] == ' ' || after[0] == '-');
    if (const auto part = mixed ? fraction(after.substr(1), size) : std::nullopt) {
        out = Number{out->value + part->value, part->step, {}, 0};
        after.remove_prefix(1 + size);
    }
    drop(rest_.size() - after.size());
    return out;
}

std::string_view Scanner::next_word() const {
    if (!rest_.empty() && (rest_[0] == '"' || rest_[0] == '\'')) return rest_.substr(0, 1);
    std::size_t size = 0;
    while (size < rest_.size() && is_letter(rest_[size])) ++size;
    return rest_.substr(0, size);
}

std::string_view Scanner::word() {
    const auto out = next_word();
    drop(out.size());
    return out;
}

bool Scanner::take(std::string_view word) {
    if (rest_.substr(0, word.size()) != word) return false;
    if (rest_.size() > word.size() && is_letter(word.back()) && is_letter(rest_[word.size()]))
        return false;
    drop(word.size());
    return true;
}

bool Scanner::sign(char sign) {
    if (rest_.empty() || rest_[0] != sign) return false;
    drop(1);
    return true;
}

bool take_about(Scanner& from) {
    constexpr std::array words{"~",
                               "about",
                               "approximately",
                               "approx.",
                               "approx",
                               "around",
                               "roughly",
                               "circa",
                               "ca.",
                               "ca",
                               "nearly",
                               "almost",
                               "c.",
                               "abt.",
                               "abt",
                               "ab.",
                               "appr.",
                               "appr",
                               "say",
                               "a scant",
                               "scant",
                               "env.",
                               "just over",
                               "just under",
                               "a little over",
                               "a little under",
                               "a bit over",
                               "a bit under",
                               "a good",
                               "a generous",
                               "just shy of",
                               "shy of",
                               "a touch over",
                               "a touch under",
                               "barely"};
    return from.any(words);
}

Number rounded(Number number) {
    for (double place = number.step * 10; place <= number.value; place *= 10) {
        const double times = number.value / place;
        if (std::abs(times - std::round(times)) > 1e-9) break;
        number.step = place;
    }
    return number;
}

std::string plainly(double value) { return fmt::format("{:.12g}", value); }

}  // namespace gristwright
