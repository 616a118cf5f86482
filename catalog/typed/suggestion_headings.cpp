#include "catalog/typed/suggestion_headings.hpp"

#include "catalog/text/words_of.hpp"
#include "engine/units/measure.hpp"

namespace gristwright::catalog {
namespace {

std::string without_besides(std::string_view text, const SpokenWords& spoken) {
    std::string out;
    for (const auto& word : words_of(text))
        if (!spoken.find("heading besides", word)) out += word;
    return out;
}

// "Needs, yd" without its unit; empty where none ends it.
std::string_view before_unit(std::string_view header) {
    const auto at = header.find_last_of(" ,");
    if (at == std::string_view::npos) return {};
    const auto last = words_of(header.substr(at));
    return last.size() == 1 && unit_word(last[0]) ? header.substr(0, at) : std::string_view();
}

}  // namespace

HeadingOfSuggestion heading_of_suggestion(std::string_view header, const SpokenWords& spoken) {
    const auto bare = header.substr(0, header.find('('));
    for (const auto& text :
         {joined_words(header), joined_words(bare), joined_words(before_unit(header)),
          without_besides(header, spoken), without_besides(bare, spoken)})
        for (const auto* list : {"heading", "heading that gives way"})
            if (const auto said = spoken.find(list, text))
                return {said->means, list != std::string_view("heading"), text == "who"};
    return {};
}

}  // namespace gristwright::catalog
