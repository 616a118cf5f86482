#include "catalog/typed/needle_reading.hpp"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/units/ascii.hpp"
#include "engine/units/constants.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"
#include "engine/units/scanner.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view right_needle = "such as 4mm, US 6 or UK 8";
constexpr std::array systems{"us", "uk", "jp"};

struct SystemWord {
    std::string_view word, system;
};
constexpr SystemWord system_words[] = {
    {"us", "us"},       {"usa", "us"},     {"american", "us"}, {"uk", "uk"},
    {"old uk", "uk"},   {"british", "uk"}, {"canadian", "uk"}, {"english", "uk"},
    {"imperial", "uk"}, {"jp", "jp"},      {"japanese", "jp"}, {"japan", "jp"},
};

std::string capitals(std::string_view system) {
    std::string out(system);
    for (char& c : out) c = ascii::upper(c);
    return out;
}

std::string_view take_system(Scanner& from) {
    for (const auto& [word, system] : system_words)
        if (from.take(word)) return system;
    return {};
}

void take_size(Scanner& from) { from.any(std::array{"size", "no.", "no", "number", "#"}); }

std::string_view until_bracket(std::string_view text) {
    auto out = text.substr(0, std::min(text.find('('), text.size()));
    while (!out.empty() && (out.back() == ' ')) out.remove_suffix(1);
    return out;
}

// The size of that name in that system, in mm.
double in_system(std::string_view system, std::string_view name, std::string_view text,
                 const SpokenWords& spoken) {
    const auto found = spoken.find(fmt::format("needle {}", system), name);
    if (!found)
        throw Unreadable(text, fmt::format("there is no such {} size", capitals(system)),
                         right_needle);
    if (found->means.empty()) throw Unclear(text, found->note, "in mm");
    return in_millimetres(read_length(found->means + "mm").value);
}

// The sizes a bare number may be, in words, and each in mm.
struct Ways {
    std::vector<std::string> words;
    std::vector<double> millimetres;

    void add(const std::string& word, double mm) {
        words.push_back(word);
        if (std::none_of(millimetres.begin(), millimetres.end(),
                         [&](double other) { return std::abs(other - mm) < 1e-9; }))
            millimetres.push_back(mm);
    }
};

double bare(std::string_view name, std::string_view text, bool named_size,
            const SpokenWords& spoken) {
    Ways ways;
    for (const auto* system : systems)
        if (const auto found = spoken.find(fmt::format("needle {}", system), name);
            found && !found->means.empty())
            ways.add(fmt::format("{} {} ({} mm)", capitals(system), name, found->means),
                     in_millimetres(read_length(found->means + "mm").value));
    Scanner from(name);
    const auto number = from.number(Fractions::none);
    if (!named_size && number && from.done() && number->value >= constants::finest_needle &&
        number->value <= constants::thickest_needle)
        ways.add(fmt::format("{} mm", name), number->value);
    if (ways.words.empty()) throw Unreadable(text, "this is no needle", right_needle);
    if (ways.millimetres.size() > 1)
        throw Unclear(text, fmt::format("{}", fmt::join(ways.words, " or ")), right_needle);
    return ways.millimetres[0];
}

double in_one_way(std::string_view typed, std::string_view text, const SpokenWords& spoken) {
    Scanner from(typed);
    const auto system = take_system(from);
    const auto before = from.rest().size();
    take_size(from);
    const bool named_size = from.rest().size() < before;
    auto name = from.rest();
    if (!system.empty()) return in_system(system, name, text, spoken);
    for (const auto& [word, known] : system_words)  // "6 US"
        if (name.size() > word.size() && name.substr(name.size() - word.size()) == word)
            return in_system(known, until_bracket(name.substr(0, name.size() - word.size())), text,
                             spoken);
    const bool unit = name.find_first_not_of("0123456789./, ") != std::string_view::npos;
    if (!unit) return bare(name, text, named_size, spoken);
    return in_millimetres(read_length(name, {millimetres(constants::finest_needle),
                                             millimetres(constants::thickest_needle)})
                              .value);
}

}  // namespace

namespace {

// "4mm circular", "4 mm DPNs": what kind of needle it is does not matter here.
std::string without_kind(std::string typed) {
    for (const std::string_view kind :
         {" needles", " needle", " circulars", " circular", " circ", " dpns", " dpn", " straights",
          " straight", " double pointed"})
        if (typed.size() > kind.size() && typed.ends_with(kind))
            typed.resize(typed.size() - kind.size());
    return typed;
}

// "8 (UK)" is "8 UK", and "4 mm / US 6" the same size twice, as "4 mm (US 6)".
std::string with_brackets(std::string typed) {
    for (const auto& [word, system] : system_words)
        if (const auto end = fmt::format("({})", word); typed.ends_with(end))
            typed.replace(typed.size() - end.size(), end.size(), word);
    const auto stroke = typed.find('/');
    const bool fraction = stroke == std::string::npos || stroke == 0 ||
                          (stroke + 1 < typed.size() && ascii::is_digit(typed[stroke - 1]) &&
                           ascii::is_digit(typed[stroke + 1]));
    if (!fraction) typed = typed.substr(0, stroke) + " (" + typed.substr(stroke + 1) + ")";
    return plain(typed);
}

}  // namespace

Length read_needle(const std::string& text, const SpokenWords& spoken) {
    const auto typed = with_brackets(without_kind(as_spoken(text)));
    const auto open = typed.find('(');
    const double mm = in_one_way(until_bracket(typed), text, spoken);
    if (open != std::string::npos) {
        auto second = typed.substr(open + 1);
        if (!second.empty() && second.back() == ')') second.pop_back();
        second = plain(second);
        const double other = in_one_way(second, text, spoken);
        if (std::abs(other - mm) > 1e-9)
            throw Unclear(text, fmt::format("{} mm or {} mm", plainly(mm), plainly(other)),
                          right_needle);
    }
    if (mm < constants::finest_needle || mm > constants::thickest_needle)
        throw Unreadable(
            text,
            fmt::format("needles are {} to {} mm thick", plainly(constants::finest_needle),
                        plainly(constants::thickest_needle)),
            right_needle);
    return millimetres(mm);
}

namespace {

// Where the list is parted: at a comma or semicolon that is no decimal comma, at "and" and "or".
std::vector<std::string> parts_of(std::string text) {
    for (const std::string_view word : {" and ", " or ", ";", " & "})
        for (auto at = text.find(word); at != std::string::npos; at = text.find(word))
            text.replace(at, word.size(), ",");
    std::vector<std::string> out;
    std::size_t from = 0;
    for (auto at = text.find(','); from <= text.size(); at = text.find(',', from)) {
        const auto end = std::min(at, text.size());
        if (const auto part = plain(text.substr(from, end - from)); !part.empty())
            out.push_back(part);
        from = end + 1;
    }
    return out;
}

}  // namespace

std::vector<std::string> apart(const std::string& text) {
    const auto typed = plain(text);
    const auto comma = typed.find(',');
    const bool decimal = comma != std::string::npos && comma > 0 && comma + 1 < typed.size() &&
                         typed.find(',', comma + 1) == std::string::npos &&
                         ascii::is_digit(typed[comma - 1]) && ascii::is_digit(typed[comma + 1]);
    if (decimal && !ascii::is_digit(typed[comma + 2 < typed.size() ? comma + 2 : comma]))
        throw Unclear(text, "one size with a decimal comma, or two sizes",
                      "such as 3.5mm, or 3mm, 5mm");
    if (decimal) return {typed};  // "3,25mm"
    auto parts = parts_of(typed);
    if (parts.empty()) return parts;
    const auto unit = parts.back().find_first_not_of("0123456789./ ");
    const auto digit = parts.front().find_first_of("0123456789");
    const bool behind = unit != std::string::npos && unit > 0;
    for (auto& part : parts) {
        const bool only_number = part.find_first_not_of("0123456789./ ") == std::string::npos;
        if (!only_number) continue;
        if (behind)
            part += " " + parts.back().substr(unit);
        else if (digit != std::string::npos && digit > 0)
            part = parts.front().substr(0, digit) + part;
    }
    return parts;
}

}  // namespace gristwright::catalog
