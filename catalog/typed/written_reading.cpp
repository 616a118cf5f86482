#include "catalog/typed/written_reading.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>

#include "engine/units/reading.hpp"
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

std::string trimmed(std::string_view text, std::string_view besides) {
    const auto first = text.find_first_not_of(besides);
    if (first == std::string_view::npos) return "";
    return std::string(text.substr(first, text.find_last_not_of(besides) + 1 - first));
}

void note_once(const std::string& said, MeasuredBatch& out) {
    if (std::find(out.notes.begin(), out.notes.end(), said) == out.notes.end())
        out.notes.push_back(said);
}

WrapsReading read_wraps_said(const Written& at, MeasuredBatch& out) {
    const auto counted = measured(at, [](const std::string& t) { return read_wraps_count(t); });
    if (counted.bare) note_once(fmt::format("wraps {}: taken as wraps per inch", at.text), out);
    return {counted.count, counted.over};
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
