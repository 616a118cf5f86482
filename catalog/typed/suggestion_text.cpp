#include "catalog/typed/suggestion_text.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "catalog/text/named_reading.hpp"
#include "catalog/typed/age_reading.hpp"
#include "catalog/typed/amount_reading.hpp"
#include "catalog/typed/needle_reading.hpp"
#include "catalog/typed/number_words.hpp"
#include "catalog/typed/size_reading.hpp"
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
int count_colours(const std::string& written, const SpokenWords& spoken) {
    auto text = plain(in_figures(written, spoken));
    for (const std::string_view end : {" colours", " colors", " colour", " color"})
        if (text.ends_with(end)) text.resize(text.size() - end.size());
    if (text.size() == 1 && text[0] >= '1' && text[0] <= '9') return text[0] - '0';
    throw Refused(fmt::format("'{}' is not a number from 1 to 9", shown(written)));
}

// "850 yards of DK", "1/2 lb fingering": an amount, and the weight of its yarn.
struct AmountSaid {
    AmountOfYarn amount{};
    std::string weight{};
};
AmountSaid read_amount_said(const std::string& written, const SpokenWords& spoken) {
    const auto typed = in_figures(written, spoken);
    for (auto at = typed.find(' '); at != std::string::npos; at = typed.find(' ', at + 1)) {
        auto weight = typed.substr(at + 1);
        if (weight.starts_with("of ") || weight.starts_with("in ")) weight.erase(0, 3);
        if (!spoken.find("weight", weight)) continue;
        return {read_amount(typed.substr(0, at)), weight};
    }
    return {read_amount(typed), {}};
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

// Sizes that it comes in; of one that is no length what it says.
struct SizesSaid {
    std::vector<Length> lengths{};
    SizeSaid one{};
};
SizesSaid read_sizes_said(const std::string& written, const SpokenWords& spoken) {
    try {
        return {read_sizes(written), {}};
    } catch (const Unclear&) {
        throw;
    } catch (const Refused&) {
        return {{}, read_size(written, spoken)};
    }
}

void take_size(const SizeSaid& size, Suggestion& out) {
    out.size = size.length;
    out.beside = size.words;
    if (!size.age.empty()) out.who += (out.who.empty() ? "" : ", ") + size.age;
}

// What a name of the trade means that stood with an amount; nothing where it means several.
std::optional<int> class_meant(const std::string& weight, const Catalogue& catalogue) {
    try {
        return read_weight(weight, catalogue.yarn.classes, catalogue.spoken);
    } catch (const Refused&) {
        return {};
    }
}

Suggestion read_cells(Cells cells, const Catalogue& catalogue) {
    Suggestion out;
    cells.keep("idea", out.idea);
    cells.keep("who", out.who);
    if (const auto age = as_age(out.who, true); !age.empty()) out.who = age;
    cells.keep("from", out.from);
    cells.keep("when", out.when);
    cells.read("craft", out.craft, read_craft);
    const auto& spoken = catalogue.spoken;
    AmountSaid said;
    cells.read("needs", said, [&](const std::string& t) { return read_amount_said(t, spoken); });
    out.needs = said.amount.length;
    out.needs_mass = said.amount.mass;
    if (!said.weight.empty()) out.weight_class = class_meant(said.weight, catalogue);
    cells.read("weight", out.weight_class, [&](const std::string& t) {
        return read_weight(t, catalogue.yarn.classes, catalogue.spoken);
    });
    cells.read("grist", out.grist, [](const std::string& t) { return read_grist(t); });
    cells.read("gauge", out.gauge, [](const std::string& t) { return read_gauge(t); });
    cells.read("sett", out.sett, [](const std::string& t) { return read_sett(t); });
    cells.read("needle", out.needle, [&](const std::string& t) { return read_needle(t, spoken); });
    SizeSaid size;
    cells.read("size", size, [&](const std::string& t) { return read_size(t, spoken); });
    SizesSaid sizes;
    cells.read("sizes", sizes, [&](const std::string& t) { return read_sizes_said(t, spoken); });
    out.sizes = std::move(sizes.lengths);
    take_size(size.length || !size.age.empty() || !size.words.empty() ? size : sizes.one, out);
    cells.read("colours", out.colours,
               [&](const std::string& t) { return count_colours(t, spoken); });
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
