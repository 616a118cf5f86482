#include "catalog/text/encoding.hpp"

#include <cstdint>
#include <iterator>

namespace gristwright::catalog {
namespace {

enum class Encoding { utf8, little, big };

Encoding encoding_of(std::string_view text) {
    if (text.size() < 4) return Encoding::utf8;
    if (text.substr(0, 2) == "\xFF\xFE") return Encoding::little;
    if (text.substr(0, 2) == "\xFE\xFF") return Encoding::big;
    const auto zero = [&](std::size_t at) { return text[at] == '\0'; };
    if (zero(1) && zero(3) && !zero(0) && !zero(2)) return Encoding::little;
    if (zero(0) && zero(2) && !zero(1) && !zero(3)) return Encoding::big;
    return Encoding::utf8;
}

void append(std::string& out, std::uint32_t c) {
    const auto byte = [&](std::uint32_t value) { out += static_cast<char>(value); };
    if (c < 0x80) return byte(c);
    if (c < 0x800) return byte(0xC0 | c >> 6), byte(0x80 | (c & 0x3F));
    if (c < 0x10000)
        return byte(0xE0 | c >> 12), byte(0x80 | (c >> 6 & 0x3F)), byte(0x80 | (c & 0x3F));
    byte(0xF0 | c >> 18), byte(0x80 | (c >> 12 & 0x3F)), byte(0x80 | (c >> 6 & 0x3F)),
        byte(0x80 | (c & 0x3F));
}

std::string from_utf16(std::string_view text, bool big) {
    const auto unit = [&](std::size_t at) -> std::uint32_t {
        const auto a = static_cast<unsigned char>(text[at]);
        const auto b = static_cast<unsigned char>(text[at + 1]);
        return big ? static_cast<std::uint32_t>(a << 8 | b)
                   : static_cast<std::uint32_t>(b << 8 | a);
    };
    std::string out;
    for (std::size_t at = 0; at + 1 < text.size(); at += 2) {
        const auto c = unit(at);
        const bool high = c >= 0xD800 && c < 0xDC00, low = c >= 0xDC00 && c < 0xE000;
        const auto next = high && at + 3 < text.size() ? unit(at + 2) : 0;
        if (high && next >= 0xDC00 && next < 0xE000) {
            append(out, 0x10000 + ((c - 0xD800) << 10) + (next - 0xDC00));
            at += 2;
        } else if (c != 0xFEFF) {
            append(out, high || low ? '?' : c);
        }
    }
    return out;
}

std::string_view without_mark(std::string_view text) {
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    return text.substr(0, mark.size()) == mark ? text.substr(mark.size()) : text;
}

}  // namespace

std::string in_utf8(std::string_view text) {
    const auto encoding = encoding_of(text);
    if (encoding == Encoding::utf8) return std::string(without_mark(text));
    return from_utf16(text, encoding == Encoding::big);
}

void for_each_part(std::istream& file,
                   const std::function<void(std::string_view part, bool first)>& take) {
    std::string chunk(1 << 16, '\0'), text;
    bool first = true;
    while (file.read(chunk.data(), static_cast<std::streamsize>(chunk.size())), file.gcount() > 0) {
        text.append(chunk.data(), static_cast<std::size_t>(file.gcount()));
        if (first && encoding_of(text) != Encoding::utf8) {
            text.append(std::istreambuf_iterator<char>(file), {});
            return take(in_utf8(text), true);
        }
        const auto end = text.find_last_of('\n');
        if (end == std::string::npos) continue;  // also a lone CR, whose LF may follow
        take(first ? without_mark({text.data(), end + 1}) : std::string_view(text.data(), end + 1),
             first);
        text.erase(0, end + 1);
        first = false;
    }
    if (!text.empty()) take(first ? without_mark(text) : std::string_view(text), first);
}

}  // namespace gristwright::catalog
