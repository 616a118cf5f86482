#include "catalog/typed/suggestion_headings.hpp"

#include <algorithm>
#include <array>

#include "engine/units/ascii.hpp"
#include "engine/units/measure.hpp"

namespace gristwright::catalog {
namespace {

struct Words {
    std::string_view key;
    bool weak;               // gives way to a column that says it outright
    std::string_view words;  // each between spaces, as is the whole
};
// How people head such columns (common practice, no source), without spaces and signs.
constexpr Words known[] = {
    {"idea", false,
     " idea ideas suggestion suggestions article project whattomake whattoknit "
     "whattoweave whatshouldimake whatshouldwemake suggestedproject projectidea "
     "suggestionidea ideasuggestion "},
    {"idea", true, " what comment item make request message comments pattern title "},
    {"craft", false, " craft knitorweave knitweave "},
    {"craft", true, " technique "},
    {"needs", false,
     " needs yardage meterage metreage amount yarn yarnneeded yarnneeds yarnrequired "
     "yarnamount amountofyarn howmuchyarn howmuchyarnneeded howmuch yardsneeded "
     "metresneeded metersneeded yards yds yd metres meters grams ounces oz "
     "patterncallsfor callsfor mtrs gms ozs "},
    {"needs", true, " m g y "},
    {"weight", false, " weight weightclass yarnweight class yarntype yarnclass thickness "},
    {"grist", false, " grist "},
    {"gauge", false, " gauge tension stitchgauge knittinggauge "},
    {"sett", false, " sett epi endsperinch "},
    {"needle", false, " needle needles needlesize "},
    {"size", false, " size finishedsize finishedlength span circumference dimensions "},
    {"size", true, " height around "},
    {"sizes", false, " sizes comesin "},
    {"colours", false, " colours colors numberofcolours numberofcolors "},
    {"who", false, " who forwhom for wearer recipient whofor whosefor whoisitfor giftfor "},
    {"from", false,
     " from by sender suggestedby whofrom submittedby sentby askedby proposedby ideafrom ideaby "
     "whosuggested whosuggestedit whosays whoasked whosentit author contributor "
     "participant viewer visitor submitter "},
    {"from", true, " name names firstname fullname nickname username user person member contact "},
    {"when", false, " when date timestamp sent received "},
    {"when", true, " day "},
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

std::string without_fillers(std::string_view text) {
    std::string out;
    for (const auto& word : words_of(text))
        if (std::find(fillers.begin(), fillers.end(), word) == fillers.end()) out += word;
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
         {ascii::lowered_letters(header), ascii::lowered_letters(bare),
          ascii::lowered_letters(without_unit), without_fillers(header), without_fillers(bare)})
        for (const auto& [key, weak, words] : known)
            if (!text.empty() && words.find(" " + text + " ") != std::string_view::npos)
                return {key, weak, text == "who"};
    return {};
}

}  // namespace gristwright::catalog
