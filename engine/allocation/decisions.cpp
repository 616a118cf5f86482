#include "engine/allocation/decisions.hpp"

#include <algorithm>

namespace gristwright::allocation {
namespace {

class Conclusion {
  public:
    Conclusion(const Model& m, Decisions& d) : m_(m), d_(d), room_(m.skeins) {}

    bool run() {
        do {
            changed_ = false;
            if (!look_at_rooms()) return false;
            for (std::size_t j = 0; j < m_.pieces; ++j)
                if (!look_at_piece(j)) return false;
            if (!look_at_pairs()) return false;
        } while (changed_);
        return true;
    }

  private:
    // False when it was decided the other way.
    bool say(Say& what, Say value) {
        if (what == value) return true;
        if (what != Say::open) return false;
        what = value;
        changed_ = true;
        return true;
    }

    bool serve(std::size_t i, std::size_t j) {
        return say(d_.pair(i, j), Say::yes) && say(d_.made[j], Say::yes) &&
               (!m_.piece[j].opens || say(d_.opened[i], Say::yes));
    }

    bool leave_out(std::size_t j) {
        if (!say(d_.made[j], Say::no)) return false;
        for (std::size_t i = 0; i < m_.skeins; ++i)
            if (!say(d_.pair(i, j), Say::no)) return false;
        return true;
    }

    bool look_at_rooms() {
        for (std::size_t i = 0; i < m_.skeins; ++i) {
            room_[i] = m_.length[i];
            for (std::size_t j = 0; j < m_.pieces; ++j)
                if (d_.pair(i, j) == Say::yes) room_[i] -= least_gross(m_, d_, j);
            if (room_[i] < 0) return false;
        }
        return true;
    }

    bool look_at_piece(std::size_t j) {
        if (d_.made[j] == Say::no) return leave_out(j);
        const auto& piece = m_.piece[j];
        const Cm least = least_gross(m_, d_, j);
        candidates_.clear();
        int serving = 0;
        Cm serving_room = 0;
        for (std::size_t i = 0; i < m_.skeins; ++i) {
            auto& pair = d_.pair(i, j);
            const Cm own = pair == Say::yes ? room_[i] + least : room_[i];
            if (pair == Say::open &&
                (!m_.may_meet(i, j) || own < least || (piece.opens && d_.opened[i] == Say::no)))
                say(pair, Say::no);
            if (pair == Say::no) continue;
            const Cm gives = std::min(own, piece.most + piece.tail);
            if (pair == Say::yes)
                ++serving, serving_room += gives;
            else
                candidates_.push_back(gives);
        }
        return count_skeins(j, serving, serving_room) && settle(j, serving);
    }

    // The fewest skeins that can hold the piece, those that serve it already among them.
    bool count_skeins(std::size_t j, int serving, Cm serving_room) {
        const auto& piece = m_.piece[j];
        d_.most[j] = std::min(d_.most[j], serving + static_cast<int>(candidates_.size()));
        std::sort(candidates_.rbegin(), candidates_.rend());
        int count = serving;
        Cm held = serving_room;
        std::size_t next = 0;
        while (count < d_.fewest[j] || held < piece.least + count * piece.tail || count == 0) {
            if (count >= d_.most[j] || next >= candidates_.size())
                return d_.made[j] == Say::yes ? false : leave_out(j);
            held += candidates_[next++];
            ++count;
        }
        if (count > d_.most[j]) return d_.made[j] == Say::yes ? false : leave_out(j);
        if (count > d_.fewest[j]) d_.fewest[j] = count, changed_ = true;
        return true;
    }

    // As many serve as may: no others. As few are left as are needed: all of them.
    bool settle(std::size_t j, int serving) {
        if (d_.made[j] == Say::no) return true;
        const int possible = serving + static_cast<int>(candidates_.size());
        for (std::size_t i = 0; i < m_.skeins; ++i) {
            const auto pair = d_.pair(i, j);
            if (pair == Say::yes && !serve(i, j)) return false;
            if (pair != Say::open) continue;
            if (serving == d_.most[j] && !say(d_.pair(i, j), Say::no)) return false;
            if (serving < d_.most[j] && d_.made[j] == Say::yes && possible == d_.fewest[j] &&
                !serve(i, j))
                return false;
        }
        return true;
    }

    bool look_at_pairs() {
        for (const auto& [a, b] : m_.different)
            for (std::size_t i = 0; i < m_.skeins; ++i)
                for (const auto& [x, y] : {std::pair{a, b}, std::pair{b, a}})
                    if (d_.pair(i, x) == Say::yes && !say(d_.pair(i, y), Say::no)) return false;
        for (const auto& [a, b] : m_.same)
            for (const auto& [x, y] : {std::pair{a, b}, std::pair{b, a}})
                if (d_.made[x] == Say::yes && !follow(x, y)) return false;
        return true;
    }

    // x is made: if y is too, then from the same skeins, and so from as many.
    bool follow(std::size_t x, std::size_t y) {
        if (d_.most[y] > d_.most[x]) d_.most[y] = d_.most[x], changed_ = true;
        if (d_.fewest[y] < d_.fewest[x]) d_.fewest[y] = d_.fewest[x], changed_ = true;
        for (std::size_t i = 0; i < m_.skeins; ++i) {
            if (d_.pair(i, x) == Say::no && !say(d_.pair(i, y), Say::no)) return false;
            if (d_.pair(i, x) == Say::yes && d_.made[y] == Say::yes && !serve(i, y)) return false;
        }
        return true;
    }

    const Model& m_;
    Decisions& d_;
    std::vector<Cm> room_, candidates_;
    bool changed_ = false;
};

}  // namespace

Decisions::Decisions(const Model& m)
    : made(m.pieces, Say::open),
      opened(m.skeins, Say::open),
      serves(m.skeins * m.pieces, Say::open),
      fewest(m.pieces, 1) {
    for (std::size_t j = 0; j < m.pieces; ++j) {
        most.push_back(m.piece[j].most_skeins);
        if (m.piece[j].required) made[j] = Say::yes;
    }
}

Cm least_gross(const Model& m, const Decisions& d, std::size_t j) {
    const auto& piece = m.piece[j];
    if (d.most[j] == 1) return piece.least + piece.tail;
    if (d.fewest[j] > 1) return m.shortest + piece.tail;
    return std::min(m.shortest, piece.least) + piece.tail;
}

Cm least_bare(const Model& m, const Decisions& d, std::size_t j) {
    const Cm gross = least_gross(m, d, j);
    return d.fewest[j] == d.most[j] ? gross : gross - m.piece[j].tail;
}

bool conclude(const Model& m, Decisions& d) { return Conclusion(m, d).run(); }

}  // namespace gristwright::allocation
