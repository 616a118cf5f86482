#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/reference/article_kind_text.hpp"
#include "catalog/reference/catalogue.hpp"
#include "catalog/text/bad_text.hpp"

using namespace gristwright;

namespace {

bool is_kind(const ArticleKinds& kinds, const std::string& name) {
    return std::any_of(kinds.begin(), kinds.end(),
                       [&](const ArticleKind& kind) { return kind.name == name; });
}

}  // namespace

TEST_CASE("every kind of article that a table or a template names is a row of the kinds") {
    const auto catalogue = catalog::built_in();
    const auto check = [&](const std::string& name) {
        CAPTURE(name);
        CHECK(is_kind(catalogue.kinds, name));
    };
    for (const auto& article : catalogue.templates) check(article.article);
    for (const auto& row : catalogue.piece_ranges) check(row.article);
    for (const auto& row : catalogue.needs)
        for (const auto& name : row.article.words) check(name);
    for (const auto& row : catalogue.spun_for)
        for (const auto& name : row.article.words) check(name);
}

TEST_CASE("a template knows what the name of its kind tells, of another kind nothing is known") {
    const auto catalogue = catalog::built_in();
    CHECK(catalogue.template_named("bed-socks")->kind.in_pairs);
    CHECK(catalogue.template_named("leg-warmers")->kind.draped);
    CHECK_FALSE(catalogue.template_named("tea-cosy")->kind.worn);
    const auto& nothing = kind_named(catalogue.kinds, "hammock");
    CHECK(nothing.name.empty());
    CHECK_FALSE(nothing.worn);
}

TEST_CASE("a kind that contradicts itself, or stands twice, is refused with its line") {
    const std::string head = "article,worn,draped,long,on_feet,in_pairs\n";
    CHECK(catalog::read_article_kinds(head + "hat,yes,no,no,no,no\n", "k.csv").size() == 1);
    CHECK_THROWS_AS(catalog::read_article_kinds(head + "bag,no,yes,no,no,no\n", "k.csv"),
                    catalog::BadText);
    CHECK_THROWS_AS(
        catalog::read_article_kinds(head + "hat,yes,no,no,no,no\nhat,yes,no,no,no,no\n", "k.csv"),
        catalog::BadText);
}
