// Frees the pieces of one skein and a few others, cuts out that small problem, solves it exactly
// and keeps the answer if it is better. The order is a fixed pseudo-random one.
#include <algorithm>
#include <random>

#include "engine/allocation/checker.hpp"
#include "engine/allocation/part.hpp"
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
        part_.reserve = list_.reserve && holds(part_.skeins, *list_.reserve);
    }

    // The list with this neighbourhood solved, or as it was.
    CutList better() const {
        const auto problem = cut_out();
        auto start = part_.from_whole(list_);
        start.worth = worth(problem, start);
        Start from{start};
        from.by_groups = false;  // they cost more than so few nodes
        const auto solved = Search(problem, std::move(from)).run(nodes_each);
        if (!solved.found() || solved.list.worth <= start.worth) return list_;
        CutList out;
        out.reserve = list_.reserve;
        for (const auto& cut : list_.cuts)
            if (frozen(cut)) out.cuts.push_back(cut);
        part_.add_to_whole(solved.list, out);
        out.worth = worth(whole_, out);
        return broken_rule(whole_, out).empty() && out.worth > list_.worth ? out : list_;
    }

  private:
    std::size_t any(std::size_t below) { return static_cast<std::size_t>(random_() % below); }

    void add_piece(std::size_t j) {
        if (holds(part_.pieces, j)) return;
        part_.pieces.push_back(j);
        for (const auto& [a, b] : whole_.same) {
            if (a == j) add_piece(b);
            if (b == j) add_piece(a);
        }
    }

    void choose_pieces() {
        const std::size_t size = 3 + any(5);
        const std::size_t skein = any(whole_.skeins.size());
        for (const auto& cut : list_.cuts)
            if (cut.skein == skein && part_.pieces.size() < size) add_piece(cut.piece);
        for (int tries = 0; part_.pieces.size() < size && tries < 50; ++tries)
            add_piece(any(whole_.pieces.size()));
        part_.skeins.push_back(skein);
    }

    void choose_skeins() {
        for (const auto& cut : list_.cuts)
            if (!frozen(cut) && !holds(part_.skeins, cut.skein)) part_.skeins.push_back(cut.skein);
        for (std::size_t s = 0; s < extra_skeins; ++s) {
            const auto skein = any(whole_.skeins.size());
            if (!holds(part_.skeins, skein)) part_.skeins.push_back(skein);
        }
    }

    bool frozen(const Cut& cut) const { return !holds(part_.pieces, cut.piece); }

    // The part, its skeins without what stays.
    Problem cut_out() const {
        auto out = part_.problem(whole_);
        for (std::size_t i = 0; i < part_.skeins.size(); ++i) {
            auto& skein = out.skeins[i];
            for (const auto& cut : list_.cuts)
                if (cut.skein == part_.skeins[i] && frozen(cut))
                    skein.length -= cut.gross, skein.bonus = 0;
            for (std::size_t j = 0; j < part_.pieces.size(); ++j)
                if (kept_apart(part_.skeins[i], part_.pieces[j])) out.mismatch[i][j].reset();
        }
        return out;
    }

    // Something that stays in the skein must differ from the piece.
    bool kept_apart(std::size_t i, std::size_t j) const {
        for (const auto& [a, b] : whole_.different)
            for (const auto& [x, y] : {std::pair{a, b}, std::pair{b, a}})
                for (const auto& cut : list_.cuts)
                    if (x == j && cut.piece == y && cut.skein == i && frozen(cut)) return true;
        return false;
    }

    const Problem& whole_;
    const CutList& list_;
    std::mt19937_64& random_;
    Part part_;
};

}  // namespace

CutList improved(const Problem& problem, CutList list, int rounds, const std::stop_token& stop) {
    std::mt19937_64 random(1);
    for (int r = 0; r < rounds && !stop.stop_requested(); ++r)
        list = Neighbourhood(problem, list, random).better();
    return list;
}

}  // namespace gristwright::allocation
