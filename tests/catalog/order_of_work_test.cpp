// The steps of every built-in template come in the order in which it says that its pieces are
// worked: each piece's rows are first named in a step no earlier than those of the piece before.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/reference/catalogue.hpp"
#include "engine/project/order.hpp"

using namespace gristwright;

namespace {

// How far into the steps the piece's rows are first named; beyond all of them where never.
std::size_t first_named(const Template& article, const PieceTemplate& piece) {
    std::string all;
    for (const auto& step : article.steps) all += step + "\n";
    return all.find("{" + piece.name + ".rows}");
}

}  // namespace

TEST_CASE("the steps of a template follow its order of work") {
    for (const auto& article : catalog::built_in().templates) {
        CAPTURE(article.name);
        std::size_t before = 0;
        for (const auto& worked : order_of_work(article)) {
            if (worked.which > 1) continue;
            const auto at = first_named(article, article.pieces[worked.piece]);
            if (at == std::string::npos) continue;
            CHECK_MESSAGE(at >= before, article.pieces[worked.piece].name);
            before = at;
        }
    }
}
