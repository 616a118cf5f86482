// Frees the pieces of one skein and a few others, cuts out that small problem, solves it exactly
// and keeps the answer if it is better. The order is a fixed pseudo-random one.
#include <algorithm>
#include <random>

#include "engine/allocation/checker.hpp"
#include "engine/allocation/search.hpp"

namespace gristwright::allocation {
namespace {

constexpr int nodes_each = 200;
constexpr std::size_t extra_skeins = 2;

using Index = std::vector<std::size_t>;

bool holds(const Index& list, std::size_t x) {
    return std::find(list.begin(), list.end(), x) != list.end();
}

class Neighbourhood {
  public:
    Neighbourhood(const Problem& whole, const CutList& list, std::mt19937_64& random)
        : whole_(whole), list_(list), random_(random) {
        choose_pieces();
        choose_skeins();
    }

    // The list with this neighbourhood solved, or as it was.
    CutList better() const {
        const auto part = cut_out();
        const auto now = part_of(list_);
        CutList start = now;
        start.worth = worth(part, start);
        const auto solved = search(part, {nodes_each, 0, {}}, start);
        if (!solved.found() || solved.list.worth <= start.worth) return list_;
        CutList out;
        for (const auto& cut : list_.cuts)
            if (!holds(pieces_, cut.piece)) out.cuts.push_back(cut);
        for (const auto& cut : solved.list.cuts)
            out.cuts.push_back({skeins_[cut.skein], pieces_[cut.piece], cut.gross});
        out.reserve =
            solved.list.reserve ? std::optional(skeins_[*solved.list.reserve]) : list_.reserve;
        out.worth = worth(whole_, out);
        return broken_rule(whole_, out).empty() && out.worth > list_.worth ? out : list_;
    }

  private:
    std::size_t any(std::size_t below) { return static_cast<std::size_t>(random_() % below); }

    void add_piece(std::size_t j) {
        if (holds(pieces_, j)) return;
        pieces_.push_back(j);
        for (const auto& [a, b] : whole_.same) {
            if (a == j) add_piece(b);
            if (b == j) add_piece(a);
        }
    }

    void choose_pieces() {
        const std::size_t size = 3 + any(5);
        const std::size_t skein = any(whole_.skeins.size());
        for (const auto& cut : list_.cuts)
            if (cut.skein == skein && pieces_.size() < size) add_piece(cut.piece);
        for (int tries = 0; pieces_.size() < size && tries < 50; ++tries)
            add_piece(any(whole_.pieces.size()));
        skeins_.push_back(skein);
    }

    void choose_skeins() {
        for (const auto& cut : list_.cuts)
            if (holds(pieces_, cut.piece) && !holds(skeins_, cut.skein))
                skeins_.push_back(cut.skein);
        for (std::size_t s = 0; s < extra_skeins; ++s) {
            const auto skein = any(whole_.skeins.size());
            if (!holds(skeins_, skein)) skeins_.push_back(skein);
        }
    }

    bool frozen(const Cut& cut) const { return !holds(pieces_, cut.piece); }

    bool reserve_here() const { return list_.reserve && holds(skeins_, *list_.reserve); }

    Problem cut_out() const {
        Problem part;
        part.tail = whole_.tail;
        part.shortest = whole_.shortest;
        part.reserve = reserve_here() ? whole_.reserve : 0;
        for (const auto i : skeins_) {
            auto skein = whole_.skeins[i];
            for (const auto& cut : list_.cuts)
                if (cut.skein == i && frozen(cut)) skein.length -= cut.gross, skein.bonus = 0;
            part.skeins.push_back(skein);
        }
        for (const auto j : pieces_) part.pieces.push_back(whole_.pieces[j]);
        for (std::size_t i = 0; i < skeins_.size(); ++i) {
            part.mismatch.emplace_back();
            for (const auto j : pieces_) part.mismatch[i].push_back(meeting(skeins_[i], j));
        }
        add_relations(whole_.same, part.same);
        add_relations(whole_.different, part.different);
        return part;
    }

    // Whether they may meet besides what stays: a piece that must differ keeps its skeins to
    // itself.
    std::optional<Points> meeting(std::size_t i, std::size_t j) const {
        for (const auto& [a, b] : whole_.different)
            for (const auto& [x, y] : {std::pair{a, b}, std::pair{b, a}})
                for (const auto& cut : list_.cuts)
                    if (x == j && cut.piece == y && cut.skein == i && frozen(cut)) return {};
        return whole_.mismatch.empty() ? Points{0} : whole_.mismatch[i][j];
    }

    void add_relations(const std::vector<Pair>& from, std::vector<Pair>& to) const {
        for (const auto& [a, b] : from)
            if (holds(pieces_, a) && holds(pieces_, b))
                to.push_back({place(pieces_, a), place(pieces_, b)});
    }

    static std::size_t place(const Index& list, std::size_t x) {
        return static_cast<std::size_t>(std::find(list.begin(), list.end(), x) - list.begin());
    }

    CutList part_of(const CutList& list) const {
        CutList out;
        for (const auto& cut : list.cuts)
            if (!frozen(cut))
                out.cuts.push_back(
                    {place(skeins_, cut.skein), place(pieces_, cut.piece), cut.gross});
        if (reserve_here()) out.reserve = place(skeins_, *list.reserve);
        return out;
    }

    const Problem& whole_;
    const CutList& list_;
    std::mt19937_64& random_;
    Index pieces_, skeins_;
};

}  // namespace

CutList improved(const Problem& problem, CutList list, int rounds, const std::stop_token& stop) {
    std::mt19937_64 random(1);
    for (int r = 0; r < rounds && !stop.stop_requested(); ++r)
        list = Neighbourhood(problem, list, random).better();
    return list;
}

}  // namespace gristwright::allocation
