#include "cli/output/svg.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <kainjow/mustache.hpp>
#include <limits>

#include "cli/output/html.hpp"
#include "cli/output/layout.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/drawing.hpp"
#include "tests/cli/odd_texts.hpp"
#include "tests/near.hpp"

using namespace gristwright::cli;

TEST_CASE("whatever people write, the picture is well formed and says it") {
    std::mt19937 random{8};
    for (int i = 0; i < 200; ++i) {
        const auto text = odd::anything(random, 10);
        Svg svg(100, 50, text, text + "!");
        svg.text({1, 2}, text, "label");
        const auto back = drawing::read(svg);
        CHECK(back.title == inert(text));
        CHECK(back.description == inert(text + "!"));
        REQUIRE(back.texts.size() == 1);
        CHECK(back.texts[0].words == inert(text));
    }
}

TEST_CASE("nothing that is markup is left once a text is escaped") {
    const std::pair<const char*, const char*> cases[] = {
        {"", ""},
        {"<script>alert(1)</script>", "&lt;script&gt;alert(1)&lt;/script&gt;"},
        {"\" onload='x'", "&quot; onload=&#39;x&#39;"},
        {"a & b &amp; c", "a &amp; b &amp;amp; c"},
        {"]]>", "]]&gt;"},
        {"羊毛", "羊毛"},
        {"line\nline", "line?line"}};
    for (const auto& [text, safe] : cases) CHECK(escaped(text) == safe);
}

TEST_CASE("a text is shortened to so many characters, and only when it must be") {
    std::mt19937 random{9};
    for (std::size_t most = 1; most <= 200; most += 3) {
        const auto text = odd::prose(random, 12);
        const auto out = shortened(text, most);
        CHECK(characters(out) <= most);
        CHECK(odd::is_utf8(out));
        if (characters(text) <= most) {
            CHECK(out == text);
        } else {
            CHECK(characters(out) == most);
            CHECK(text.compare(0, out.size() - 3, out, 0, out.size() - 3) == 0);
            CHECK(out.substr(out.size() - 3) == "…");
        }
    }
}

TEST_CASE("a number has two decimals at most, none that is zero, and no exponent") {
    const std::pair<double, const char*> cases[] = {{0, "0"},
                                                    {-0.0, "0"},
                                                    {-0.004, "0"},
                                                    {12.5, "12.5"},
                                                    {3, "3"},
                                                    {-0.25, "-0.25"},
                                                    {100, "100"},
                                                    {0.126, "0.13"},
                                                    {1e7, "10000000"},
                                                    {-20, "-20"},
                                                    {std::numeric_limits<double>::infinity(), "0"},
                                                    {std::nan(""), "0"}};
    for (const auto& [value, text] : cases) CHECK(decimal(value) == text);
    std::mt19937 random{10};
    std::uniform_real_distribution<double> any(-2000, 2000);
    for (int i = 0; i < 500; ++i) {
        const double value = any(random);
        CHECK(std::abs(std::stod(decimal(value)) - value) <= 0.005 + 1e-9);
    }
}

TEST_CASE("lines of any width hold every word in order, and say where the next line stands") {
    std::mt19937 random{11};
    for (std::size_t most = 20; most <= 200; ++most) {
        const auto text = odd::prose(random, 50);
        Svg svg(2000, 2000, "", "");
        const double next = svg.lines({5, 30}, text, most, "label");
        const auto back = drawing::read(svg);
        std::string all;
        for (std::size_t i = 0; i < back.texts.size(); ++i) {
            const auto& line = back.texts[i];
            CHECK(line.at.y == near(30 + 15 * double(i), 1e-12));
            CHECK((characters(line.words) <= most || line.words.find(' ') == std::string::npos));
            all += " " + line.words;
        }
        CHECK(next == near(30 + 15 * double(back.texts.size()), 1e-12));
        CHECK(odd::words_of(all) == odd::words_of(text));
    }
}

TEST_CASE("every element is drawn as it was asked for") {
    Svg inner(20, 10, "", "");
    inner.rect({1, 2}, 3, 4, "inner");
    Svg svg(100, 50, "t", "d");
    svg.line({1, 1}, {9, 9}, "a").rect({1, 2}, -3, 4, "b", 2).circle({50, 25}, 5, "c");
    svg.path(Path().move({0, 0}).line({4, 0}).line({4, 3}).close(), "d");
    svg.stroke(Path().move({0, 0}).line({4, 0}), "e", 2, 3, 1).place(inner, {70, 30});
    const auto back = drawing::read(svg);
    CHECK(back.width == 100);
    CHECK(back.height == 50);
    CHECK(drawing::outside(back).empty());
    for (const char* look : {"a", "b", "c", "d", "e", "inner", "paper"})
        CHECK(back.count(look) == 1);
    const auto& last = back.points.back();
    CHECK((last.x == 74 && last.y == 36));  // the inner rectangle, moved with its picture
    svg.circle({99, 25}, 5, "out");
    CHECK(drawing::outside(drawing::read(svg)).size() == 1);
}

TEST_CASE("inside a page a picture has its own names and no style of its own") {
    const Svg svg(10, 10, "T", "D");
    const auto page = svg.inlined("first");
    CHECK(asked::holds(page, "aria-labelledby=\"firstt firstd\""));
    CHECK(asked::holds(page, "id=\"firstt\""));
    CHECK(asked::holds(page, "id=\"firstd\""));
    CHECK_FALSE(asked::holds(page, "<style"));
    CHECK(drawing::read(page).title == "T");
}

TEST_CASE("a page's template escapes what people wrote and keeps what is ours") {
    std::mt19937 random{12};
    for (int i = 0; i < 50; ++i) {
        const auto text = odd::anything(random, 8);
        const PageData data{"name", text};
        CHECK(rendered("<p>{{name}}</p>", data) == "<p>" + escaped(text) + "</p>");
    }
    CHECK(rendered("{{{ours}}}", PageData{"ours", "<b>ours</b>"}) == "<b>ours</b>");
    CHECK(rendered("{{#each}}{{text}};{{/each}}", PageData{"each", lines_of({"soft", "é & ü"})}) ==
          "Soft;é &amp; ü;");
    CHECK_THROWS_AS(rendered("{{#open}}", PageData{}), std::logic_error);
}
