#include "engine/units/plain.hpp"

#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

struct Sign {
    std::string_view typed, plain;
};

constexpr Sign signs[] = {
    {"\u00A0", " "},     // no-break space
    {"\u202F", " "},     // narrow no-break space
    {"\u2009", " "},     // thin space
    {"\u2007", " "},     // figure space
    {"\u00BC", " 1/4"},  // vulgar fractions
    {"\u00BD", " 1/2"}, {"\u00BE", " 3/4"}, {"\u2153", " 1/3"}, {"\u2154", " 2/3"},
    {"\u215B", " 1/8"}, {"\u215C", " 3/8"}, {"\u215D", " 5/8"}, {"\u215E", " 7/8"},
    {"\u2044", "/"},  // fraction slash
    {"\u00D7", "x"},  // multiplication sign
    {"\u2010", "-"},  // hyphens, dashes, minus
    {"\u2011", "-"},    {"\u2012", "-"},    {"\u2013", "-"},    {"\u2014", "-"},
    {"\u2212", "-"},    {"\u00B5", "u"},  // micro sign, Greek mu
    {"\u03BC", "u"},    {"\u2018", "'"},  // quotes and primes
    {"\u2019", "'"},    {"\u2032", "'"},    {"\u201C", "\""},   {"\u201D", "\""},
    {"\u2033", "\""},   {"''", "\""},       {"\u2248", "~"},  // nearly
    {"\u223C", "~"},    {"\u2243", "~"},    {"\u00B0", " deg"}, {"\u2300", ""},
    {"\uFF0C", ","},    {"\u00B7", "."},
};

const Sign* sign_at(std::string_view text) {
    const char first = text.front();
    if (static_cast<unsigned char>(first) < 0x80 && first != '\'')
        return nullptr;  // all but two primes are no ASCII
    for (const auto& sign : signs)
        if (text.substr(0, sign.typed.size()) == sign.typed) return &sign;
    return nullptr;
}

// Adds `c`; of spaces in a row only the first, none in front.
void add(std::string& out, char c) {
    if (c == '\t') c = ' ';
    if (c == ' ' && (out.empty() || out.back() == ' ')) return;
    out += ascii::lower(c);
}

}  // namespace

std::string plain(std::string_view typed) {
    std::string out;
    while (!typed.empty()) {
        const auto* sign = sign_at(typed);
        for (const char c : sign ? sign->plain : typed.substr(0, 1)) add(out, c);
        typed.remove_prefix(sign ? sign->typed.size() : 1);
    }
    if (!out.empty() && out.back() == ' ') out.pop_back();
    return out;
}

}  // namespace gristwright
