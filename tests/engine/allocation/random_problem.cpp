#include "tests/engine/allocation/random_problem.hpp"

#include <fmt/core.h>

#include <random>

namespace gristwright::allocation {
namespace {

class Maker {
  public:
    Maker(std::size_t skeins, std::size_t pieces, std::uint64_t seed, const Kind& kind)
        : random_(seed), kind_(kind), skeins_(skeins), pieces_(pieces) {}

    Problem make() {
        batches_ = any(1, 3);
        for (std::size_t i = 0; i < skeins_; ++i) add_skein(i);
        Cm wished = 0;
        for (std::size_t j = 0; j < pieces_; ++j) wished += add_piece(j);
        scale(wished);
        add_mismatch();
        if (kind_.relations) add_relations();
        return std::move(p_);
    }

  private:
    std::int64_t any(std::int64_t from, std::int64_t to) {
        return from +
               static_cast<std::int64_t>(random_() % static_cast<std::uint64_t>(to - from + 1));
    }
    bool in(int of) { return any(1, of) == 1; }

    void add_skein(std::size_t i) {
        if (i > 0 && in(5)) {  // an equal twin
            p_.skeins.push_back(p_.skeins.back());
            p_.skeins.back().name = fmt::format("K{}", i + 1);
            batch_.push_back(batch_.back());
            return;
        }
        const Cm length = any(25, 115) * any(220, 850);
        p_.skeins.push_back({fmt::format("K{}", i + 1), length,
                             in(2) ? length * any(200, 800) : 0});  // 2 to 8 points per 100 m
        batch_.push_back(any(1, batches_));
    }

    Cm add_piece(std::size_t j) {
        const Cm least = in(4) ? any(800, 2200) : in(3) ? any(15000, 40000) : any(4000, 20000);
        Piece piece{fmt::format("p{}", j + 1), least, least * any(800, 2500), {}, 0, 0, false};
        if (kind_.joins && !in(3)) {
            piece.max_joins = static_cast<int>(any(1, 3));
            piece.join_cost = any(300'000, 2'000'000);
        }
        Points slope = any(500, 1500);
        for (auto s = in(3) ? 0 : any(1, 3); s > 0; --s) {
            piece.stretch.push_back({least * any(5, 40) / 100, slope});
            slope = slope * any(30, 90) / 100;
        }
        p_.pieces.push_back(piece);
        return piece.most();
    }

    void scale(Cm wished) {
        Cm supply = 0;
        for (const auto& s : p_.skeins) supply += s.length;
        const double by = 1.35 * static_cast<double>(supply) / static_cast<double>(wished);
        for (auto& piece : p_.pieces) {
            piece.least = std::max<Cm>(300, static_cast<Cm>(static_cast<double>(piece.least) * by));
            piece.value = piece.least * any(800, 2500);
            for (auto& s : piece.stretch)
                s.length = static_cast<Cm>(static_cast<double>(s.length) * by);
        }
    }

    void add_mismatch() {
        for (std::size_t i = 0; i < skeins_; ++i) {
            p_.mismatch.emplace_back();
            for (std::size_t j = 0; j < pieces_; ++j)
                p_.mismatch[i].push_back(any(1, 3) == 1 ? any(0, 200) : 0);
            if (i > 0 && alike(i)) p_.mismatch[i] = p_.mismatch[i - 1];
        }
    }

    bool alike(std::size_t i) const {
        return p_.skeins[i].length == p_.skeins[i - 1].length && batch_[i] == batch_[i - 1];
    }

    void add_relations() {
        for (std::size_t j = 0; j < pieces_; ++j) {
            const auto batch = any(1, batches_);
            if (in(4))
                for (std::size_t i = 0; i < skeins_; ++i)
                    if (batch_[i] == batch) p_.mismatch[i][j].reset();
        }
        for (std::size_t pairs = pieces_ / 4; pairs > 0 && pieces_ > 1; --pairs) {
            const auto a = static_cast<std::size_t>(any(0, static_cast<Cm>(pieces_) - 2));
            if (!in(2)) continue;
            auto& relation = in(2) ? p_.same : p_.different;
            relation.push_back({a, a + 1});
        }
        for (std::size_t left = pieces_ / 6; left > 0; --left) {
            auto& piece = p_.pieces[static_cast<std::size_t>(any(0, static_cast<Cm>(pieces_) - 1))];
            piece.required = true;
        }
        if (!in(3)) p_.reserve = any(500, 2000);
    }

    std::mt19937_64 random_;
    const Kind kind_;
    const std::size_t skeins_, pieces_;
    std::int64_t batches_ = 1;
    std::vector<std::int64_t> batch_;
    Problem p_;
};

}  // namespace

Problem random_problem(std::size_t skeins, std::size_t pieces, std::uint64_t seed,
                       const Kind& kind) {
    return Maker(skeins, pieces, seed, kind).make();
}

Problem tight_problem(std::size_t skeins, std::size_t pieces, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto any = [&](Cm from, Cm to) {
        return from + static_cast<Cm>(random() % static_cast<std::uint64_t>(to - from + 1));
    };
    Problem out;
    Cm supply = 0;
    for (std::size_t i = 0; i < skeins; ++i) {
        const Cm length = any(5'000, 22'000);
        out.skeins.push_back({fmt::format("K{}", i + 1), length, 500 * length});
        supply += length;
    }
    const std::size_t extra = pieces > 2 ? 1 + random() % 2 : 0;
    for (std::size_t j = 0; j < pieces; ++j) {
        const Cm share = supply / static_cast<Cm>(pieces - extra);
        const Cm least = share * any(85, 99) / 100;
        Piece piece{fmt::format("p{}", j + 1), least, 10'000 * least, {}, 4'000'000, 4, false};
        for (const Points per_cm : {5'800, 4'300, 2'900})
            piece.stretch.push_back({least / 30, per_cm});
        out.pieces.push_back(piece);
    }
    return out;
}

}  // namespace gristwright::allocation
