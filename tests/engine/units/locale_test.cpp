// The engine is a library: whatever locale its host sets, its answers are the same. The locale is
// made here, by localedef, so that the test does not depend on what is installed.
#include <doctest/doctest.h>
#include <unistd.h>

#include <cctype>
#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "engine/units/ascii.hpp"
#include "engine/units/reading.hpp"

using namespace gristwright;

namespace {

// The Turkish locale, set for one test: a decimal comma, and a capital I whose small letter is no
// i.
class Odd {
  public:
    Odd()
        : folder_(std::filesystem::temp_directory_path() / ("odd-" + std::to_string(::getpid()))) {
        std::filesystem::create_directories(folder_);
        const auto made = "localedef -c -f UTF-8 -i tr_TR '" + (folder_ / "odd").string() + "'";
        CHECK(std::system(made.c_str()) == 0);
        ::setenv("LOCPATH", folder_.c_str(), 1);
        CHECK(std::setlocale(LC_ALL, "odd") != nullptr);
    }
    ~Odd() {
        std::setlocale(LC_ALL, "C");
        ::unsetenv("LOCPATH");
        std::filesystem::remove_all(folder_);
    }
    Odd(const Odd&) = delete;
    Odd& operator=(const Odd&) = delete;

  private:
    std::filesystem::path folder_;
};

}  // namespace

TEST_CASE("in a locale with other letters and a decimal comma everything reads as ever") {
    const Odd odd;
    REQUIRE(std::localeconv()->decimal_point == std::string(","));
    REQUIRE(std::tolower('I') != 'i');
    CHECK(ascii::lowered("KNIT MITTENS, 40 EPI") == "knit mittens, 40 epi");
    CHECK(in_metres(read_length("1.5m").value) == 1.5);
    CHECK(in_grams(read_mass("38,5 g").value) == doctest::Approx(38.5));
}

TEST_CASE("only the letters and digits of English text are letters and digits") {
    for (int c = 0; c < 256; ++c) {
        const auto byte = static_cast<char>(c);
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        CHECK(ascii::is_letter(byte) == letter);
        CHECK(ascii::is_digit(byte) == (c >= '0' && c <= '9'));
        CHECK(ascii::lower(byte) == (c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : byte));
    }
}
