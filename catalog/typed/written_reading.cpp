#include "catalog/typed/written_reading.hpp"

#include <fmt/core.h>

#include <charconv>

#include "engine/units/scanner.hpp"

namespace gristwright::catalog {

Refused wrong(const Written& at, const std::string& why) {
    return Refused(fmt::format("{}: {}", at.where, why));
}

Refused out_of_range(const Written& at, std::string_view what, const Constant& least,
                     const Constant& most) {
    return wrong(at, fmt::format("'{}': {} {} to {} {}", at.text, what, plainly(least),
                                 plainly(most), most.unit));
}

const Written* one_text(const BatchText& text, std::string_view key) {
    const auto found = text.fields.find(key);
    if (found == text.fields.end() || found->second.empty()) return nullptr;
    const auto& last = found->second.back();
    return last.text.empty() ? nullptr : &last;
}

int whole_number(const Written& at, int low, int high) {
    int value = 0;
    const auto end = at.text.data() + at.text.size();
    const auto read = std::from_chars(at.text.data(), end, value);
    if (read.ec != std::errc{} || read.ptr != end || value < low || value > high ||
        (at.text.size() > 1 && at.text[0] == '0'))
        throw wrong(at,
                    fmt::format("'{}' is not a whole number from {} to {}", at.text, low, high));
    return value;
}

}  // namespace gristwright::catalog
