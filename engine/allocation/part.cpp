#include "engine/allocation/part.hpp"

#include <algorithm>

namespace gristwright::allocation {
namespace {

// Where it stands in the list; nothing when it does not.
std::optional<std::size_t> place(const std::vector<std::size_t>& list, std::size_t x) {
    const auto at = std::find(list.begin(), list.end(), x);
    if (at == list.end()) return {};
    return static_cast<std::size_t>(at - list.begin());
}

}  // namespace

Problem Part::problem(const Problem& whole) const {
    Problem out;
    out.tail = whole.tail;
    out.shortest = whole.shortest;
    out.reserve = reserve ? whole.reserve : 0;
    for (const auto j : pieces) out.pieces.push_back(whole.pieces[j]);
    for (const auto i : skeins) {
        out.skeins.push_back(whole.skeins[i]);
        auto& row = out.mismatch.emplace_back();
        for (const auto j : pieces)
            row.push_back(whole.mismatch.empty() ? Points{0} : whole.mismatch[i][j]);
    }
    for (const auto& [from, to] :
         {std::pair{&whole.same, &out.same}, std::pair{&whole.different, &out.different}})
        for (const auto& pair : *from)
            if (const auto a = place(pieces, pair.first), b = place(pieces, pair.second); a && b)
                to->push_back({*a, *b});
    return out;
}

CutList Part::from_whole(const CutList& list) const {
    CutList out;
    for (const auto& cut : list.cuts)
        if (const auto i = place(skeins, cut.skein), j = place(pieces, cut.piece); i && j)
            out.cuts.push_back({*i, *j, cut.gross});
    if (reserve && list.reserve) out.reserve = place(skeins, *list.reserve);
    return out;
}

void Part::add_to_whole(const CutList& list, CutList& whole) const {
    for (const auto& cut : list.cuts)
        whole.cuts.push_back({skeins[cut.skein], pieces[cut.piece], cut.gross});
    if (list.reserve) whole.reserve = skeins[*list.reserve];
}

}  // namespace gristwright::allocation
