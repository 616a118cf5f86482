// What handspun is spun for: the table that says which articles come first.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/reference/need_text.hpp"
#include "catalog/text/bad_text.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

const std::string columns = "article,touches,firmness,baby,place,alike,mark,source\n";

std::vector<SpunFor> read_under_columns(const std::string& rows) {
    return read_spun_for(columns + rows, "spun_for.csv");
}

Template of_kind(const std::string& article, Touches touches = Touches::clothes) {
    Template out;
    out.article = article;
    out.touches = touches;
    return out;
}

}  // namespace

TEST_CASE("the first row that fits gives an article its place, and no row leaves it as it is") {
    const auto kinds = read_under_columns(
        "blanket,nothing,,,0.7,1,judgement,a pet's\n"
        ",,,yes,0.8,1,judgement,only where one is expected\n"
        "blanket|shawl,,,,0.9,2,judgement,\n");
    const auto pet = calling_of(of_kind("blanket", Touches::nothing), {}, kinds);
    CHECK(pet.place == 0.7);
    CHECK(pet.alike == 1);
    const auto shawl = calling_of(of_kind("shawl"), {}, kinds);
    CHECK(shawl.place == 0.9);
    CHECK(shawl.alike == 2);
    auto babys = of_kind("blanket");
    babys.for_baby = true;
    CHECK(calling_of(babys, {}, kinds).place == 0.8);
    CHECK(calling_of(of_kind("kite"), {}, kinds).place == 1);
    auto sample = of_kind("blanket");
    sample.sample = true;
    CHECK(calling_of(sample, {}, kinds).place == 1);
}

TEST_CASE("a place outside 0 to 1, no article at all of it, and a word not known are refused") {
    CHECK(read_under_columns("hat,,,,0.9,1,judgement,\n").size() == 1);
    for (const auto* row :
         {"hat,,,,0,1,judgement,\n", "hat,,,,1.2,1,judgement,\n", "hat,,,,0.9,0,judgement,\n",
          "hat,,,,0.9,1,guess,\n", "hat,nose,,,0.9,1,judgement,\n"})
        CHECK_THROWS_AS((void)read_under_columns(row), BadText);
}

TEST_CASE("every kind of article that is built in has its place") {
    const auto catalogue = built_in();
    for (const auto& t : catalogue.templates) {
        if (t.sample) continue;
        CAPTURE(t.name);
        CHECK(std::any_of(catalogue.spun_for.begin(), catalogue.spun_for.end(),
                          [&](const SpunFor& row) {
                              return !row.article.words.empty() && row.article.admits(t.article);
                          }));
    }
}
