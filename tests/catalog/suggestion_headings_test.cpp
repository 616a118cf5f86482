// What people call the columns of a sheet of suggestions.
#include "catalog/typed/suggestion_headings.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>

using namespace gristwright::catalog;

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
        CHECK(heading_of_suggestion(header).key == std::string(key));
    }
}

TEST_CASE("a heading that may say something else gives way") {
    for (const char* weak : {"What", "Comment", "Name", "Pattern", "Title"}) {
        CAPTURE(weak);
        CHECK(heading_of_suggestion(weak).weak);
    }
    for (const char* outright : {"Idea", "Suggested by", "Yards", "Size"}) {
        CAPTURE(outright);
        CHECK_FALSE(heading_of_suggestion(outright).weak);
    }
    CHECK(heading_of_suggestion("Who").bare_who);
    CHECK_FALSE(heading_of_suggestion("Who for").bare_who);
}
