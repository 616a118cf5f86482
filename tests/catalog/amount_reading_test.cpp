// How much yarn something takes, beyond the table of ways to write it (ways_to_write.csv).
#include "catalog/typed/amount_reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <random>
#include <string>

#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

double metres_of(const std::string& text) { return in_metres(*read_amount(text).length); }

std::string complaint_about_amount(const std::string& text) {
    try {
        read_amount(text);
    } catch (const Refused& error) {
        return error.what();
    }
    return "read";
}

}  // namespace

TEST_CASE("amounts: what cannot be read says what would be right") {
    CHECK(complaint_about_amount("550") ==
          "cannot read '550': it lacks its unit; write 550yd, 550m or, as a mass, 550g");
    CHECK(complaint_about_amount("3 balls") ==
          "'3 balls' can mean any amount, since it does not say how much is in one: which? Write "
          "it such as 3 x 50g, or 440yd");
    CHECK(complaint_about_amount("1,250m") ==
          "'1,250m' can mean 1.25 m or 1250 m: which? Write it without the mark");
    CHECK(complaint_about_amount("lots") ==
          "'lots' is neither a length nor a mass; write it such as 440yd, 400m or 150g");
    CHECK(complaint_about_amount("2 100g balls").find("2 x 100, or 2100 in one") !=
          std::string::npos);
    CHECK(complaint_about_amount("60in").find("this is a size") != std::string::npos);
    CHECK(complaint_about_amount("200-150 yd").find("runs backwards") != std::string::npos);
}

TEST_CASE("amounts: a range is never read below its upper end") {
    std::mt19937 random{31};
    for (int i = 0; i < 200; ++i) {
        const auto low = 50 + random() % 400, high = low + 1 + random() % 400;
        for (const char* form : {"{}-{} m", "{}m-{}m", "{} to {} m", "between {} and {} m"}) {
            const auto text = fmt::format(fmt::runtime(form), low, high);
            CAPTURE(text);
            CHECK(metres_of(text) == doctest::Approx(static_cast<double>(high)));
        }
    }
}

TEST_CASE("amounts: counted balls are their number times one") {
    for (int count = 2; count < 13; ++count)
        for (const int grams : {20, 25, 40, 50})
            for (const char* form : {"{} x {}g", "{} balls of {}g", "{} {}g balls"}) {
                const auto text = fmt::format(fmt::runtime(form), count, grams);
                CAPTURE(text);
                CHECK(in_grams(*read_amount(text).mass) == doctest::Approx(count * grams));
            }
}

TEST_CASE("amounts: whatever is typed is read or refused") {
    std::mt19937 random{37};
    const std::string letters = "0123456789 .,/-+()xmyd g'\"ball of";
    for (int i = 0; i < 5000; ++i) {
        std::string text;
        for (auto n = random() % 14; n > 0; --n) text += letters[random() % letters.size()];
        try {
            const auto read = read_amount(text);
            CHECK(read.length.has_value() != read.mass.has_value());
            CHECK((read.length ? read.length->si() : read.mass->si()) > 0);
        } catch (const Refused&) {
        }
    }
}
