// A watch cap was listed with its body first, in the sheet and where its skeins end, though it is
// begun at the brim: the order of the work is the template's to say.
#include "engine/project/order.hpp"

#include <doctest/doctest.h>

#include "engine/units/failure.hpp"

using namespace gristwright;

namespace {

Template made_of(const std::vector<std::pair<std::string, int>>& pieces,
                 std::vector<std::string> worked) {
    Template out;
    for (const auto& [name, count] : pieces) {
        PieceTemplate piece;
        piece.name = name;
        piece.count = count;
        out.pieces.push_back(std::move(piece));
    }
    out.worked = std::move(worked);
    return out;
}

std::string said(const Template& article) {
    std::string out;
    for (const auto& worked : order_of_work(article))
        out += article.pieces[worked.piece].name + std::to_string(worked.which) + " ";
    return out;
}

std::string complaint(const Template& article) {
    try {
        order_of_work(article);
    } catch (const Refused& error) {
        return error.what();
    }
    return "";
}

}  // namespace

TEST_CASE("pieces are worked as the template names them, else as listed") {
    CHECK(said(made_of({{"body", 1}, {"brim", 1}}, {})) == "body1 brim1 ");
    CHECK(said(made_of({{"body", 1}, {"brim", 1}}, {"brim", "body"})) == "brim1 body1 ");
    CHECK(said(made_of({{"body", 1}, {"rim", 2}}, {"rim", "body", "rim"})) == "rim1 body1 rim2 ");
    CHECK(said(made_of({{"leg", 2}, {"cuff", 2}}, {"cuff", "leg", "cuff", "leg"})) ==
          "cuff1 leg1 cuff2 leg2 ");
    CHECK(said(made_of({{"body", 1}, {"sleeve", 2}}, {"sleeve", "body"})) ==
          "sleeve1 sleeve2 body1 ");
}

TEST_CASE("an order that leaves a piece out, names it too often or names none is refused") {
    const std::vector<std::pair<std::string, int>> pieces{{"body", 1}, {"rim", 2}};
    CHECK(complaint(made_of(pieces, {"rim"})) == "the body is left out");
    CHECK(complaint(made_of(pieces, {"rim", "rim", "rim", "body"})) ==
          "the rim is named 3 times: once, or 2 times, as many as are made");
    CHECK(complaint(made_of(pieces, {"brim", "body"})) == "'brim' is not the name of a piece");
    CHECK(complaint(made_of(pieces, {"rim", "body", "rim"})).empty());
}
