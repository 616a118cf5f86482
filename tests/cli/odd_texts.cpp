#include "tests/cli/odd_texts.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <sstream>

namespace odd {
namespace {

constexpr std::array words{
    "yarn", "a", "Höhe", "羊毛",        "ÅÄÖ",   "12",     "38.5", "g,",
    "%",    "m", "€",    "half-circle", "naïve", "Шерсть", "🐑",   "unwiederbringlichkeitsgefühl",
    "x2",   "-", "(40",  "cm)",         "sts"};
constexpr std::array pieces{"<b>",
                            "&amp;",
                            "\"",
                            "'",
                            "</script>",
                            "]]>",
                            "\x1b[31m",
                            "\t",
                            "\n",
                            "\xE2\x80\xAE",
                            "\xD8\x9C",
                            "\xE2\x81\xA6",
                            "\xEF\xBB\xBF",
                            "\xC3",
                            "\x80",
                            "\xFF",
                            "\xED\xA0\x80",
                            "\xE0\x80\xAF",
                            "\xF4\x90\x80\x80",
                            "\xF0\x80\x80\xAF",
                            "\xC2\x85",
                            "\x7F",
                            "|",
                            "\\",
                            "=1+1",
                            ".Sh",
                            "{{x}}"};

template <class List>
std::string one_of(const List& list, std::mt19937& random) {
    return list[random() % list.size()];
}

struct Lead {
    unsigned char from, to;   // first byte
    unsigned char low, high;  // second byte
    std::size_t more;         // bytes after the first
};
constexpr Lead leads[] = {
    {0x00, 0x7F, 0, 0, 0},       {0xC2, 0xDF, 0x80, 0xBF, 1}, {0xE0, 0xE0, 0xA0, 0xBF, 2},
    {0xE1, 0xEC, 0x80, 0xBF, 2}, {0xED, 0xED, 0x80, 0x9F, 2}, {0xEE, 0xEF, 0x80, 0xBF, 2},
    {0xF0, 0xF0, 0x90, 0xBF, 3}, {0xF1, 0xF3, 0x80, 0xBF, 3}, {0xF4, 0xF4, 0x80, 0x8F, 3}};

}  // namespace

std::string prose(std::mt19937& random, int count) {
    std::string out;
    for (int i = 0; i < count; ++i) {
        if (random() % 12 == 0) out += std::string(1 + random() % 120, 'w');
        out += one_of(words, random);  // each draw by itself: their order is the same everywhere
        const std::size_t wide = random() % 9 == 0 ? 3 : 0;
        out += std::string(1 + (wide > 0 ? random() % wide : 0), ' ');
    }
    return out;
}

std::string anything(std::mt19937& random, int count) {
    std::string out;
    for (int i = 0; i < count; ++i)
        out += random() % 2 == 0 ? one_of(pieces, random) : prose(random, 1);
    return out;
}

std::vector<std::string> words_of(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    std::istringstream in(text);
    return {std::istream_iterator<std::string>(in), {}};
}

bool is_utf8(std::string_view text) {
    while (!text.empty()) {
        const auto at = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
        const auto* lead = std::find_if(std::begin(leads), std::end(leads), [&](const Lead& l) {
            return at(0) >= l.from && at(0) <= l.to;
        });
        if (lead == std::end(leads) || text.size() <= lead->more) return false;
        for (std::size_t i = 1; i <= lead->more; ++i) {
            const int low = i == 1 ? lead->low : 0x80, high = i == 1 ? lead->high : 0xBF;
            if (at(i) < low || at(i) > high) return false;
        }
        text.remove_prefix(lead->more + 1);
    }
    return true;
}

bool turns_writing(std::string_view text) {
    constexpr std::array<std::string_view, 12> marks{
        "\xD8\x9C",     "\xE2\x80\x8E", "\xE2\x80\x8F", "\xE2\x80\xAA",
        "\xE2\x80\xAB", "\xE2\x80\xAC", "\xE2\x80\xAD", "\xE2\x80\xAE",
        "\xE2\x81\xA6", "\xE2\x81\xA7", "\xE2\x81\xA8", "\xE2\x81\xA9"};
    return std::any_of(marks.begin(), marks.end(),
                       [&](auto mark) { return text.find(mark) != std::string_view::npos; });
}

}  // namespace odd
