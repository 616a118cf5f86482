// Texts that the TOML parser cannot take: they are refused, or written otherwise, before it sees
// them.
#include "catalog/text/parser_limits.hpp"

#include <doctest/doctest.h>

#include <string>

#include "catalog/text/bad_text.hpp"
#include "catalog/typed/batch_text.hpp"

using namespace gristwright::catalog;

namespace {

std::string complaint_about_toml(const std::string& toml) {
    try {
        within_parser_limits(toml, "t.toml");
    } catch (const BadText& error) {
        return error.what();
    }
    return "";
}

bool passes_unchanged(const std::string& toml) {
    return within_parser_limits(toml, "t.toml") == toml;
}

}  // namespace

TEST_CASE("a key of too many parts is refused with its line, wherever it stands") {
    // A key of 40,000 parts ended the program without a word.
    std::string deep = "a";
    for (int i = 0; i < 40'000; ++i) deep += ".a";
    for (const auto& toml :
         {"x = 1\n" + deep + " = 1\n", "x = 1\n[" + deep + "]\n", "# \"\n[[" + deep + "]]\n",
          "\nx = {" + deep + " = 1}", "\nx = {y = \"\"\"z\"\"\"\"\"," + deep + " = 1}",
          "x = 'y'\n\"q\" . " + deep + " = 1"})
        CHECK(complaint_about_toml(toml) == "t.toml:2: a key has at most 9 parts");
    CHECK(complaint_about_toml("\na.b.c.d.e.f.g.h.i.j = 1") ==
          "t.toml:2: a key has at most 9 parts");
}

TEST_CASE("dots in texts, comments and numbers are no keys") {
    const std::string dots(50, '.');
    for (const auto& toml : {"x = \"" + dots + "\"", "x = '" + dots + "'", "# " + dots,
                             "x = \"\"\"a\n" + dots + "\n\"\"\"", "x = '''" + dots + "'''",
                             std::string("x = [1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 1.0]"),
                             "x = \"\\\"" + dots + "\"", std::string("a.b.c.d.e.f.g.h.i = 1")})
        CHECK(passes_unchanged(toml));
}

// The parser's table of blanks holds a place that it says is never reached, and most letters near
// the blanks reach it. Found by fuzzing, with a Greek letter before a key.
TEST_CASE("a character beyond ASCII outside quotes is refused with its line") {
    const auto outside = [](const std::string& shown) {
        return "t.toml:2: this is not TOML: " + shown +
               " stands outside quotes; text goes between straight ones: \"text\"";
    };
    CHECK(complaint_about_toml("x = 1\n\u03a0y = 2") == outside("'\u03a0' (U+03A0)"));
    CHECK(complaint_about_toml("x = 1\ny = \u201cgrey\u201d") == outside("'\u201c' (U+201C)"));
    CHECK(complaint_about_toml("x = 1\n\u00a0y = 2") == outside("'\u00a0' (U+00A0)"));
    CHECK(complaint_about_toml("x = 'a'\ny = 'b'\u202e") == outside("'?' (U+202E)"));
    CHECK(complaint_about_toml("x = \"a\ny\u00e9 = 1") == outside("'\u00e9' (U+00E9)"));
    CHECK(complaint_about_toml("x = 1\n\xc3 = 2") == "t.toml:2: this is not UTF-8");
    CHECK(complaint_about_toml("x = \"\"\"\n\\\u00e9\"\"\"") ==
          "t.toml:2: '\u00e9' (U+00E9) stands behind a backslash, which takes none such");
}

TEST_CASE("a character beyond ASCII in quotes or a comment is the parser's") {
    for (const std::string toml :
         {"\xef\xbb\xbfx = 1", "x = \"\u00e9\"", "x = '\u00e9' # \u00e9\n", "'\u00e9' = 1",
          "x = '''\u00e9'''''", "x = \"\"\"\u00e9\n\u00e9 \\\\\n\u00e9 \\n\u00e9\"\"\"",
          "x = '''\\\n\u00e9'''", "x = \"\\\u00e9\"", "# \u00e9"})
        CHECK(passes_unchanged(toml));
}

// From a number the parser looks ahead to its end, over quotes and what stands in them.
TEST_CASE("a string right behind a number is refused") {
    for (const std::string number :
         {"x = 1", "x=+", "x = [1[", "1=", "x = 2026-11-28 1", "x = {y = 1.", "x = [2, -3="})
        CHECK(complaint_about_toml("\n" + number + "'\u00e9'") ==
              "t.toml:2: quotes begin right behind a number; put a blank between them");
    for (const std::string toml : {"x1='\u00e9'", "x = [1,'\u00e9']", "x = {y1='\u00e9'}",
                                   "x = 1#'\u00e9'", "x = 1\n'\u00e9' = 2", "k-1.'\u00e9' = 1"})
        CHECK(passes_unchanged(toml));
}

TEST_CASE("a line joined by a backslash may begin with any letter") {
    CHECK(within_parser_limits(
              "x = \"\"\"a\\\n \n \u00e9t\u00e9\\ \r\n\U0001F411\"\"\"\ny = '\u00e9'", "t.toml") ==
          "x = \"\"\"a\\\n \n \\U000000E9t\u00e9\\ \r\n\\U0001F411\"\"\"\ny = '\u00e9'");
    // A wide blank that began such a line was lost.
    const auto read = read_batch_toml(
        "name = \"\"\"a\\\n\u3000\u03b2\"\"\"\n[[skein]]\nmass = \"100 g\"\nlength = \"250 m\"\n",
        "t.toml");
    CHECK(read.fields.at("name").front().text == "a\u3000\u03b2");
}
