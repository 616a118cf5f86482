#include "catalog/typed/suggestion_text.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <stdexcept>

#include "catalog/text/named_reading.hpp"
#include "catalog/text/nearest.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

const std::string* given(const SuggestionText& text, std::string_view key) {
    const auto found = text.find(key);
    return found == text.end() || found->second.empty() ? nullptr : &found->second;
}

std::string lower_letters(const std::string& text) {
    std::string out;
    for (const char c : text)
        if (ascii::is_letter(c)) out += ascii::lower(c);
    return out;
}

// "440yd" or "150g".
void read_needs(const std::string& written, Suggestion& out) {
    try {
        out.needs = read_length(written).value;
    } catch (const Unreadable&) {
        if (written.find_first_not_of("0123456789.,/ ") == std::string::npos)
            throw Refused(
                fmt::format("needs: cannot read '{0}': it lacks its unit; write {0}yd, {0}m or, "
                            "as a mass, {0}g",
                            written));
        try {
            out.needs_mass = read_mass(written).value;
        } catch (const Unreadable&) {
            throw Refused(
                fmt::format("needs: '{}' is neither a length nor a mass; write it such "
                            "as 440yd, 400m or 150g",
                            written));
        }
    }
}

// How the trade names the numbered classes (common practice, no source).
struct TradeName {
    std::string_view name, of;
};
constexpr TradeName trade_names[] = {
    {"fingering", "super fine"}, {"sock", "super fine"},
    {"sport", "fine"},           {"dk", "light"},
    {"doubleknitting", "light"}, {"lightworsted", "light"},
    {"worsted", "medium"},       {"aran", "medium"},
    {"afghan", "medium"},        {"chunky", "bulky"},
    {"craft", "bulky"},          {"superchunky", "super bulky"},
    {"laceweight", "lace"},
};

// "DK", "fingering weight", "Sport".
std::string_view class_of(std::string name) {
    for (const std::string_view end : {"yarn", "weight"})
        if (name.size() > end.size() && name.ends_with(end)) name.resize(name.size() - end.size());
    for (const auto& trade : trade_names)
        if (trade.name == name) return trade.of;
    return {};
}

int read_class(const std::string& written, const std::vector<WeightClass>& classes) {
    const auto meant = class_of(lower_letters(written));
    for (const auto& c : classes)
        if (c.name == written || c.name == meant || ascii::lowered(written) == c.name ||
            fmt::format("{}", c.number) == written)
            return c.number;
    throw Refused(fmt::format("weight: there is no weight class '{}'{}", written,
                              did_you_mean_or_all(written, names_of(classes))));
}

// "100cm, 130cm, 160cm"; the unit may stand once, at the end.
std::vector<Length> read_sizes(const std::string& written) {
    const auto last = written.find_last_of("0123456789.");
    const auto unit = last == std::string::npos ? "" : written.substr(last + 1);
    std::vector<Length> out;
    std::size_t from = 0;
    while (from <= written.size()) {
        const auto end = std::min(written.find_first_of(",;", from), written.size());
        auto one = written.substr(from, end - from);
        if (one.find_first_not_of("0123456789. ") == std::string::npos) one += unit;
        out.push_back(read_length(one).value);
        from = end + 1;
    }
    return out;
}

int read_colours(const std::string& written) {
    if (written.size() == 1 && written[0] >= '1' && written[0] <= '9') return written[0] - '0';
    throw Refused(fmt::format("colours: '{}' is not a number from 1 to 9", written));
}

}  // namespace

Suggestion read_suggestion(const SuggestionText& text, const std::vector<WeightClass>& classes) {
    Suggestion out;
    const auto keep = [&](std::string_view key, std::string& to) {
        if (const auto* written = given(text, key)) to = *written;
    };
    keep("idea", out.idea);
    keep("who", out.who);
    keep("from", out.from);
    keep("when", out.when);
    if (const auto* craft = given(text, "craft")) {
        const auto word = lower_letters(*craft);
        if (word.substr(0, 4) != "knit" && word.substr(0, 3) != "wov" &&
            word.substr(0, 5) != "weave")
            throw Refused(fmt::format("craft: knitted or woven, not '{}'", craft->substr(0, 40)));
        out.craft = word[0] == 'k' ? Craft::knitted : Craft::woven;
    }
    if (const auto* needs = given(text, "needs")) read_needs(*needs, out);
    if (const auto* weight = given(text, "weight")) out.weight_class = read_class(*weight, classes);
    if (const auto* grist = given(text, "grist"))
        out.grist = read_named("grist", *grist, [](const std::string& t) { return read_grist(t); });
    if (const auto* gauge = given(text, "gauge"))
        out.gauge = read_named("gauge", *gauge, read_gauge);
    if (const auto* sett = given(text, "sett")) out.sett = read_named("sett", *sett, read_sett);
    const auto length = [](const std::string& t) { return read_length(t).value; };
    if (const auto* needle = given(text, "needle"))
        out.needle = read_named("needle", *needle, length);
    if (const auto* size = given(text, "size")) out.size = read_named("size", *size, length);
    if (const auto* sizes = given(text, "sizes"))
        out.sizes = read_named("sizes", *sizes, read_sizes);
    if (const auto* colours = given(text, "colours")) out.colours = read_colours(*colours);
    return out;
}

}  // namespace gristwright::catalog
