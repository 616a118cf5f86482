#include "engine/allocation/checker.hpp"

#include <fmt/core.h>

#include <set>

namespace gristwright::allocation {
namespace {

struct Used {
    Cm gross = 0;
    std::set<std::size_t> skeins;
};

std::vector<Used> by_piece(const Problem& p, const CutList& list) {
    std::vector<Used> used(p.pieces.size());
    for (const auto& cut : list.cuts) {
        used.at(cut.piece).gross += cut.gross;
        used.at(cut.piece).skeins.insert(cut.skein);
    }
    return used;
}

Cm net(const Problem& p, const Used& used) {
    return used.gross - p.tail * static_cast<Cm>(used.skeins.size());
}

std::string broken_by_piece(const Problem& p, const CutList& list, std::size_t j,
                            const Used& used) {
    const auto& piece = p.pieces[j];
    if (used.skeins.empty())
        return piece.required ? fmt::format("{} is required and not made", piece.name) : "";
    const Cm length = net(p, used);
    if (length < piece.least || length > piece.most())
        return fmt::format("{} gets {} cm", piece.name, length);
    if (static_cast<int>(used.skeins.size()) > piece.max_joins + 1)
        return fmt::format("{} has too many joins", piece.name);
    for (const auto& cut : list.cuts) {
        if (cut.piece != j) continue;
        if (!p.mismatch.empty() && !p.mismatch[cut.skein][j])
            return fmt::format("{} may not come from {}", piece.name, p.skeins[cut.skein].name);
        if (used.skeins.size() > 1 && cut.gross < p.shortest + p.tail)
            return fmt::format("{} has too short a length from {}", piece.name,
                               p.skeins[cut.skein].name);
    }
    return "";
}

std::string broken_by_skein(const Problem& p, const CutList& list) {
    if (p.reserve > 0 && !list.reserve) return "the reserve is not kept";
    for (std::size_t i = 0; i < p.skeins.size(); ++i) {
        const Cm kept = list.reserve == i ? p.reserve : 0;
        if (list.taken_from(i) + kept > p.skeins[i].length)
            return fmt::format("{} gives more than it has", p.skeins[i].name);
    }
    return "";
}

std::string broken_by_pairs(const Problem& p, const std::vector<Used>& used) {
    for (const auto& [a, b] : p.same)
        if (!used[a].skeins.empty() && !used[b].skeins.empty() && used[a].skeins != used[b].skeins)
            return fmt::format("{} and {} are from different skeins", p.pieces[a].name,
                               p.pieces[b].name);
    for (const auto& [a, b] : p.different)
        for (const auto skein : used[a].skeins)
            if (used[b].skeins.count(skein) > 0)
                return fmt::format("{} and {} share {}", p.pieces[a].name, p.pieces[b].name,
                                   p.skeins[skein].name);
    return "";
}

std::string broken_by_cuts(const Problem& p, const CutList& list) {
    std::set<std::pair<std::size_t, std::size_t>> seen;
    for (const auto& cut : list.cuts) {
        if (cut.skein >= p.skeins.size() || cut.piece >= p.pieces.size() || cut.gross <= 0)
            return "a cut is of nothing";
        if (!seen.insert({cut.skein, cut.piece}).second) return "a cut stands twice";
    }
    if (list.reserve && *list.reserve >= p.skeins.size()) return "the reserve is in no skein";
    return "";
}

}  // namespace

Points worth(const Problem& p, const CutList& list) {
    Points sum = 0;
    const auto used = by_piece(p, list);
    for (std::size_t j = 0; j < p.pieces.size(); ++j) {
        if (used[j].skeins.empty()) continue;
        const auto& piece = p.pieces[j];
        sum += piece.value - piece.join_cost * (static_cast<Points>(used[j].skeins.size()) - 1);
        Cm more = net(p, used[j]) - piece.least;
        for (const auto& s : piece.stretch) {
            const Cm part = more < s.length ? more : s.length;
            sum += part * s.per_cm;
            more -= part;
        }
    }
    for (const auto& cut : list.cuts)  // that they may not meet is no cost, but a broken rule
        if (!p.mismatch.empty()) sum -= cut.gross * p.mismatch[cut.skein][cut.piece].value_or(0);
    for (std::size_t i = 0; i < p.skeins.size(); ++i)
        if (list.taken_from(i) == 0) sum += p.skeins[i].bonus;
    return sum;
}

std::string broken_rule(const Problem& p, const CutList& list) {
    if (auto broken = broken_by_cuts(p, list); !broken.empty()) return broken;
    const auto used = by_piece(p, list);
    for (std::size_t j = 0; j < p.pieces.size(); ++j)
        if (auto broken = broken_by_piece(p, list, j, used[j]); !broken.empty()) return broken;
    if (auto broken = broken_by_skein(p, list); !broken.empty()) return broken;
    if (auto broken = broken_by_pairs(p, used); !broken.empty()) return broken;
    if (list.worth != worth(p, list)) return "its worth is miscounted";
    return "";
}

}  // namespace gristwright::allocation
