#include "catalog/text/nearest.hpp"

#include <doctest/doctest.h>

using namespace gristwright::catalog;

TEST_CASE("one slip, two slips, and a word of its own") {
    const std::vector<std::string> words{"scarf", "shawl", "socks"};
    CHECK(nearest("scrf", words) == "scarf");
    CHECK(nearest("sahwl", words) == "shawl");
    CHECK(nearest("saks", words).empty());  // two slips in four letters
    CHECK(nearest("SCRAFF", words) == "scarf");
    CHECK(nearest("blanket", words).empty());
    CHECK(nearest("", words).empty());
    CHECK(nearest(std::string(100000, 'x'), words).empty());
    CHECK(did_you_mean("soks", words) == "; did you mean 'socks'?");
    CHECK(did_you_mean("zzz", words).empty());
    CHECK(not_one_of("soks", words) ==
          "'soks' is not one of: scarf, shawl, socks; did you mean 'socks'?");
    CHECK(not_one_of("zzz", words) == "'zzz' is not one of: scarf, shawl, socks");
}
