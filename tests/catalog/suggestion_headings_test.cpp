// What people call the columns of a sheet of suggestions.
#include "catalog/typed/suggestion_headings.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>

#include "catalog/reference/catalogue.hpp"
#include "catalog/reference/heading_words.hpp"
#include "catalog/text/bad_text.hpp"

using namespace gristwright::catalog;

namespace {

HeadingOfSuggestion heading(std::string_view header) {
    static const auto catalogue = built_in();
    return heading_of_suggestion(header, catalogue.spoken);
}

}  // namespace

TEST_CASE("headings of suggestions are read in people's words") {
    constexpr std::pair<const char*, const char*> cases[] = {
        {"Idea", "idea"},
        {"Your idea", "idea"},
        {"SUGGESTIONS", "idea"},
        {"What should I make?", "idea"},
        {"Project idea", "idea"},
        {"Needs, yd", "needs"},
        {"Needs (yards)", "needs"},
        {"Pattern calls for", "needs"},
        {"Yarn needed", "needs"},
        {"Meterage", "needs"},
        {"Yarn weight", "weight"},
        {"Weight class", "weight"},
        {"Pattern gauge", "gauge"},
        {"Needle size", "needle"},
        {"Finished size (cm)", "size"},
        {"Suggested by", "from"},
        {"Your name", "from"},
        {"Who from", "from"},
        {"For whom?", "who"},
        {"Who for", "who"},
        {"Timestamp", "when"},
        {"Knit or weave?", "craft"},
        {"Qty", ""},
        {"Mood", ""},
        {"Email address", ""},
        {"", ""},
        {"?", ""},
        {" ", ""},
    };
    for (const auto& [header, key] : cases) {
        CAPTURE(header);
        CHECK(heading(header).key == std::string(key));
    }
}

TEST_CASE("a heading that may say something else gives way") {
    for (const char* weak : {"What", "Comment", "Name", "Pattern", "Title"}) {
        CAPTURE(weak);
        CHECK(heading(weak).weak);
    }
    for (const char* outright : {"Idea", "Suggested by", "Yards", "Size"}) {
        CAPTURE(outright);
        CHECK_FALSE(heading(outright).weak);
    }
    CHECK(heading("Who").bare_who);
    CHECK_FALSE(heading("Who for").bare_who);
}

TEST_CASE("headings of suggestions: a mistake in their table is told with file and line") {
    for (const char* row : {"Idea,idea,no,common practice,\nidea!,size,no,common practice,\n",
                            "idea,idea,perhaps,common practice,\n", "idea,idea,no,heard,\n"}) {
        CAPTURE(row);
        SpokenWords out;
        CHECK_THROWS_WITH_AS(
            read_suggestion_headings(std::string("heading,means,gives_way,mark,source\n") + row,
                                     "suggestion_headings.csv", out),
            doctest::Contains("suggestion_headings.csv:"), BadText);
    }
}
