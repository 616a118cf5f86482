#include "engine/project/order.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

std::size_t piece_named(const Template& article, const std::string& name) {
    const auto& pieces = article.pieces;
    const auto found = std::find_if(pieces.begin(), pieces.end(),
                                    [&](const PieceTemplate& p) { return p.name == name; });
    if (found == pieces.end()) throw Refused(fmt::format("'{}' is not the name of a piece", name));
    return static_cast<std::size_t>(found - pieces.begin());
}

// How often each piece is named: once for all alike, or for every one of them.
std::vector<int> times_named(const Template& article) {
    std::vector<int> out(article.pieces.size());
    for (const auto& name : article.worked) ++out[piece_named(article, name)];
    for (std::size_t i = 0; i < out.size(); ++i) {
        const auto& piece = article.pieces[i];
        if (out[i] == 0) throw Refused(fmt::format("the {} is left out", piece.name));
        if (out[i] != 1 && out[i] != piece.count)
            throw Refused(
                fmt::format("the {} is named {} times: once, or {} times, as many as are made",
                            piece.name, out[i], piece.count));
    }
    return out;
}

void add_all(std::vector<Worked>& out, std::size_t piece, int count) {
    for (int which = 1; which <= count; ++which) out.push_back({piece, which});
}

}  // namespace

std::vector<Worked> order_of_work(const Template& article) {
    std::vector<Worked> out;
    if (article.worked.empty()) {
        for (std::size_t i = 0; i < article.pieces.size(); ++i)
            add_all(out, i, article.pieces[i].count);
        return out;
    }
    const auto times = times_named(article);
    std::vector<int> made(article.pieces.size());
    for (const auto& name : article.worked) {
        const auto piece = piece_named(article, name);
        if (times[piece] == 1)
            add_all(out, piece, article.pieces[piece].count);
        else
            out.push_back({piece, ++made[piece]});
    }
    return out;
}

std::vector<const PlanPiece*> pieces_as_worked(const Plan& plan) {
    std::vector<const PlanPiece*> out;
    for (const auto& worked : order_of_work(*plan.article))
        if (worked.which == 1) out.push_back(&plan.pieces[worked.piece]);
    return out;
}

}  // namespace gristwright
