#include "catalog/typed/suggestion_text.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "catalog/text/named_reading.hpp"
#include "catalog/typed/amount_reading.hpp"
#include "catalog/typed/needle_reading.hpp"
#include "catalog/typed/weight_reading.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

const std::string* given(const SuggestionText& text, std::string_view key) {
    const auto found = text.find(key);
    return found == text.end() || found->second.empty() ? nullptr : &found->second;
}

bool begins_with_any(const std::string& word, std::initializer_list<std::string_view> these) {
    return std::any_of(these.begin(), these.end(),
                       [&](auto begin) { return word.starts_with(begin); });
}

// Nothing where either will do.
std::optional<Craft> read_craft(const std::string& written) {
    const auto word = ascii::lowered_letters(written);
    const bool knitted = begins_with_any(word, {"knit"}) || word == "k";
    const bool woven = begins_with_any(word, {"wov", "weav", "loom"}) || word == "w";
    const bool both = word.find("weav", 1) != std::string::npos ||
                      word.find("wov", 1) != std::string::npos ||
                      word.find("knit", 1) != std::string::npos;
    if (both || begins_with_any(word, {"either", "any", "both"})) return {};
    if (!knitted && !woven)
        throw Refused(fmt::format("knitted or woven, not '{}'", shown(written.substr(0, 40))));
    return knitted ? Craft::knitted : Craft::woven;
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

// "2", "two", "2 colours".
int read_colours(const std::string& written) {
    constexpr std::array names{"one", "two",   "three", "four", "five",
                               "six", "seven", "eight", "nine"};
    auto text = plain(written);
    for (const std::string_view end : {" colours", " colors", " colour", " color"})
        if (text.ends_with(end)) text.resize(text.size() - end.size());
    if (text.size() == 1 && text[0] >= '1' && text[0] <= '9') return text[0] - '0';
    const auto name = std::find(names.begin(), names.end(), text);
    if (name != names.end()) return static_cast<int>(name - names.begin()) + 1;
    throw Refused(fmt::format("'{}' is not a number from 1 to 9", shown(written)));
}

// Reads cell by cell; where they are kept apart a cell that cannot be read leaves the others.
class Cells {
  public:
    Cells(const SuggestionText& text, std::vector<LeftOutCell>* left_out)
        : text_(text), left_out_(left_out) {}

    template <class Out, class Read>
    void read(std::string_view key, Out& to, const Read& read) {
        const auto* written = given(text_, key);
        if (!written) return;
        try {
            to = read_named(key, *written, read);
        } catch (const Refused& error) {
            if (!left_out_) throw;
            left_out_->push_back({std::string(key), *written, error.what()});
        }
    }

    void keep(std::string_view key, std::string& to) {
        if (const auto* written = given(text_, key)) to = *written;
    }

  private:
    const SuggestionText& text_;
    std::vector<LeftOutCell>* left_out_;
};

Suggestion read_cells(Cells cells, const Catalogue& catalogue) {
    Suggestion out;
    cells.keep("idea", out.idea);
    cells.keep("who", out.who);
    cells.keep("from", out.from);
    cells.keep("when", out.when);
    cells.read("craft", out.craft, read_craft);
    AmountOfYarn amount;
    cells.read("needs", amount, read_amount);
    out.needs = amount.length;
    out.needs_mass = amount.mass;
    cells.read("weight", out.weight_class, [&](const std::string& t) {
        return read_weight(t, catalogue.yarn.classes, catalogue.spoken);
    });
    cells.read("grist", out.grist, [](const std::string& t) { return read_grist(t); });
    cells.read("gauge", out.gauge, [](const std::string& t) { return read_gauge(t); });
    cells.read("sett", out.sett, [](const std::string& t) { return read_sett(t); });
    const auto length = [](const std::string& t) { return read_length(t).value; };
    cells.read("needle", out.needle,
               [&](const std::string& t) { return read_needle(t, catalogue.spoken); });
    cells.read("size", out.size, length);
    cells.read("sizes", out.sizes, read_sizes);
    cells.read("colours", out.colours, read_colours);
    return out;
}

// "crochet" in the column of crafts says what is wanted, and is read with the idea.
bool is_another_craft(const LeftOutCell& cell) {
    return cell.key == "craft" && std::all_of(cell.text.begin(), cell.text.end(), [](char c) {
               return ascii::is_letter(c) || c == '-';
           });
}

}  // namespace

Suggestion read_suggestion(const SuggestionText& text, const Catalogue& catalogue) {
    return read_cells({text, nullptr}, catalogue);
}

ReadRow read_row(const SuggestionText& text, const Catalogue& catalogue) {
    ReadRow out;
    out.suggestion = read_cells({text, &out.left_out}, catalogue);
    const auto craft = std::find_if(out.left_out.begin(), out.left_out.end(), is_another_craft);
    if (craft == out.left_out.end()) return out;
    out.suggestion.idea = craft->text + " " + out.suggestion.idea;
    out.left_out.erase(craft);
    return out;
}

}  // namespace gristwright::catalog
