#include "engine/allocation/model.hpp"

#include <algorithm>

namespace gristwright::allocation {
namespace {

ModelPiece as_model(const Piece& p, Cm tail, std::size_t skeins) {
    const int most = static_cast<int>(std::min<std::size_t>(skeins, std::size_t(p.max_joins) + 1));
    ModelPiece out{p.least, p.most(), p.value, p.join_cost, {}, most, p.required, true, tail};
    for (const auto& s : p.stretch)
        if (s.length > 0 && s.per_cm > 0) out.stretch.push_back(s);
    out.most = out.least;
    for (const auto& s : out.stretch) out.most += s.length;
    return out;
}

}  // namespace

Model::Model(const Problem& problem)
    : skeins(problem.skeins.size()),
      pieces(problem.pieces.size()),
      cost(skeins, std::vector<Points>(pieces, 0)),
      meets(skeins, std::vector<bool>(pieces, true)),
      same(problem.same),
      different(problem.different),
      shortest(problem.shortest),
      has_reserve(problem.reserve > 0) {
    for (std::size_t i = 0; i < problem.mismatch.size(); ++i)
        for (std::size_t j = 0; j < pieces; ++j) {
            const auto& mismatch = problem.mismatch[i][j];
            cost[i][j] = mismatch.value_or(0);
            meets[i][j] = mismatch.has_value();
        }
    for (const auto& s : problem.skeins) {
        length.push_back(s.length);
        bonus.push_back(s.bonus);
    }
    for (const auto& p : problem.pieces) piece.push_back(as_model(p, problem.tail, skeins));
    if (has_reserve) {
        ModelPiece reserve;
        reserve.least = reserve.most = problem.reserve;
        reserve.required = true;
        reserve.opens = false;
        piece.push_back(reserve);
        ++pieces;
        for (auto& row : cost) row.push_back(0);
        for (auto& row : meets) row.push_back(true);
    }
    for (std::size_t i = 0; i < skeins; ++i) {
        alike.push_back(i);
        for (std::size_t k = 0; k < i && alike[i] == i; ++k)
            if (length[k] == length[i] && bonus[k] == bonus[i] && cost[k] == cost[i] &&
                meets[k] == meets[i])
                alike[i] = alike[k];
    }
}

}  // namespace gristwright::allocation
