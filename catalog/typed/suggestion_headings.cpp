#include "catalog/typed/suggestion_headings.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>

#include "engine/units/ascii.hpp"
#include "engine/units/measure.hpp"

namespace gristwright::catalog {
namespace {

struct Word {
    std::string_view word, key;
    bool weak = false;  // gives way to a column that says it outright
};
// How people head such columns (common practice, no source), without spaces and signs.
constexpr Word known[] = {
    {"idea", "idea"},
    {"ideas", "idea"},
    {"suggestion", "idea"},
    {"suggestions", "idea"},
    {"article", "idea"},
    {"project", "idea"},
    {"what", "idea", true},
    {"comment", "idea", true},
    {"item", "idea", true},
    {"make", "idea", true},
    {"whattomake", "idea"},
    {"whattoknit", "idea"},
    {"whattoweave", "idea"},
    {"whatshouldimake", "idea"},
    {"whatshouldwemake", "idea"},
    {"suggestedproject", "idea"},
    {"projectidea", "idea"},
    {"suggestionidea", "idea"},
    {"ideasuggestion", "idea"},
    {"request", "idea", true},
    {"message", "idea", true},
    {"comments", "idea", true},
    {"pattern", "idea", true},
    {"title", "idea", true},
    {"craft", "craft"},
    {"technique", "craft", true},
    {"knitorweave", "craft"},
    {"knitweave", "craft"},
    {"needs", "needs"},
    {"yardage", "needs"},
    {"meterage", "needs"},
    {"metreage", "needs"},
    {"amount", "needs"},
    {"yarn", "needs"},
    {"yarnneeded", "needs"},
    {"yarnneeds", "needs"},
    {"yarnrequired", "needs"},
    {"yarnamount", "needs"},
    {"amountofyarn", "needs"},
    {"howmuchyarn", "needs"},
    {"howmuchyarnneeded", "needs"},
    {"howmuch", "needs"},
    {"yardsneeded", "needs"},
    {"metresneeded", "needs"},
    {"metersneeded", "needs"},
    {"yards", "needs"},
    {"yds", "needs"},
    {"yd", "needs"},
    {"metres", "needs"},
    {"meters", "needs"},
    {"m", "needs", true},
    {"grams", "needs"},
    {"g", "needs", true},
    {"ounces", "needs"},
    {"oz", "needs"},
    {"patterncallsfor", "needs"},
    {"callsfor", "needs"},
    {"y", "needs", true},
    {"mtrs", "needs"},
    {"gms", "needs"},
    {"ozs", "needs"},
    {"weight", "weight"},
    {"weightclass", "weight"},
    {"yarnweight", "weight"},
    {"class", "weight"},
    {"yarntype", "weight"},
    {"yarnclass", "weight"},
    {"thickness", "weight"},
    {"grist", "grist"},
    {"gauge", "gauge"},
    {"tension", "gauge"},
    {"stitchgauge", "gauge"},
    {"knittinggauge", "gauge"},
    {"sett", "sett"},
    {"epi", "sett"},
    {"endsperinch", "sett"},
    {"needle", "needle"},
    {"needles", "needle"},
    {"needlesize", "needle"},
    {"size", "size"},
    {"finishedsize", "size"},
    {"finishedlength", "size"},
    {"span", "size"},
    {"height", "size", true},
    {"around", "size", true},
    {"circumference", "size"},
    {"dimensions", "size"},
    {"sizes", "sizes"},
    {"comesin", "sizes"},
    {"colours", "colours"},
    {"colors", "colours"},
    {"numberofcolours", "colours"},
    {"numberofcolors", "colours"},
    {"who", "who"},
    {"forwhom", "who"},
    {"for", "who"},
    {"wearer", "who"},
    {"recipient", "who"},
    {"whofor", "who"},
    {"whosefor", "who"},
    {"whoisitfor", "who"},
    {"giftfor", "who"},
    {"from", "from"},
    {"by", "from"},
    {"name", "from", true},
    {"sender", "from"},
    {"suggestedby", "from"},
    {"submittedby", "from"},
    {"sentby", "from"},
    {"askedby", "from"},
    {"proposedby", "from"},
    {"ideafrom", "from"},
    {"ideaby", "from"},
    {"whosuggested", "from"},
    {"whosuggestedit", "from"},
    {"whosays", "from"},
    {"whoasked", "from"},
    {"whosentit", "from"},
    {"names", "from", true},
    {"firstname", "from", true},
    {"fullname", "from", true},
    {"nickname", "from", true},
    {"username", "from", true},
    {"user", "from", true},
    {"person", "from", true},
    {"member", "from", true},
    {"author", "from"},
    {"contributor", "from"},
    {"participant", "from"},
    {"viewer", "from"},
    {"visitor", "from"},
    {"submitter", "from"},
    {"contact", "from", true},
    {"when", "when"},
    {"date", "when"},
    {"timestamp", "when"},
    {"day", "when", true},
    {"sent", "when"},
    {"received", "when"},
};

constexpr std::array fillers{"your",   "my",          "the",      "a", "an",
                             "our",    "their",       "please",   "s", "pattern",
                             "stated", "recommended", "suggested"};

std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> out(1);
    for (const char c : text)
        if (ascii::is_letter(c))
            out.back() += ascii::lower(c);
        else if (!out.back().empty())
            out.emplace_back();
    if (out.back().empty()) out.pop_back();
    return out;
}

std::string joined_words(std::string_view text, bool without_fillers) {
    std::string out;
    for (const auto& word : words_of(text)) {
        const bool filler = std::find(fillers.begin(), fillers.end(), word) != fillers.end();
        if (!filler || !without_fillers) out += word;
    }
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

HeadingOfSuggestion heading_of_suggestion(std::string_view header) {
    const auto bare = header.substr(0, header.find('('));
    const auto without_unit = before_unit(header);
    for (const auto& text :
         {joined_words(header, false), joined_words(bare, false), joined_words(without_unit, false),
          joined_words(header, true), joined_words(bare, true)})
        for (const auto& word : known)
            if (word.word == text) return {word.key, word.weak, text == "who"};
    return {};
}

}  // namespace gristwright::catalog
