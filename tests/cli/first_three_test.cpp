// The first three of a list, held against what a master of the craft would put there and what she
// would refuse: tests/cases/first_three.csv, in our own words (judgement of three people, no
// published source).
#include <doctest/doctest.h>

#include <algorithm>

#include "cli/ranking.hpp"
#include "tests/cases.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;

namespace {

std::vector<std::string> parts(const std::string& text) {
    std::vector<std::string> out(1);
    for (const char c : text)
        if (c == '|')
            out.emplace_back();
        else
            out.back() += c;
    return out;
}

// "--fibre Merino 70%" is an option and its value.
asked::Typed typed(const std::string& options) {
    asked::Typed out;
    for (const auto& option : parts(options)) {
        const auto space = option.find(' ');
        out.push_back(option.substr(0, space));
        out.push_back(option.substr(space + 1));
    }
    return out;
}

bool among(const std::vector<std::string>& kinds, const std::string& kind) {
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

}  // namespace

TEST_CASE(
    "no list begins with what a master would refuse, and each with something she would name") {
    for (const auto& row : read_cases("first_three.csv")) {
        CAPTURE(row.at("yarn"));
        const auto best = cli::rank(asked::of_options(typed(row.at("options")))).best;
        REQUIRE_FALSE(best.empty());
        if (const auto& first = row.at("first"); !first.empty()) {
            CHECK(best.front().plan.article->article == first);
            CHECK(in_centimetres(best.front().plan.size) >= std::stod(row.at("at_least_cm")));
        }
        bool named = false;
        for (std::size_t i = 0; i < std::min<std::size_t>(3, best.size()); ++i) {
            const auto& article = *best[i].plan.article;
            CAPTURE(article.title);
            CHECK_FALSE(among(parts(row.at("refused")), article.article));
            named = named || among(parts(row.at("one_of")), article.article);
        }
        CHECK(named);
    }
}

TEST_CASE("of a yarn of which nothing is known nothing is said to serve well") {
    const auto ranked =
        cli::rank(asked::of_options({"--skein", "400m/100g", "--skein", "390m/98g"}));
    for (const auto* part : {&ranked.best, &ranked.also})
        for (const auto& j : *part) CHECK(serves(j.judgement.score) != Serves::well);
}
