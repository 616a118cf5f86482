#include "engine/allocation/rounding.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gristwright::allocation {
namespace {

using Skeins = std::vector<std::size_t>;

// Fits pieces in one by one, at their least length, and keeps count of the room that is left: what
// it decides can always be cut.
class Fitter {
  public:
    Fitter(const Model& m, Decisions d)
        : m_(m), d_(std::move(d)), room_(m.length), placed_(m.pieces) {}

    // What a relaxation makes whole, from the skeins it takes it from.
    template <class Gross>
    void follow(Gross gross) {
        for (const auto j : order()) {
            const auto wish = [&](std::size_t i) { return gross(i, j); };
            Cm sum = 0;
            for (std::size_t i = 0; i < m_.skeins; ++i) sum += wish(i);
            if (d_.made[j] == Say::no || sum < m_.piece[j].least + m_.piece[j].tail) continue;
            Skeins skeins;
            for (std::size_t i = 0; i < m_.skeins; ++i)
                if (wish(i) > 0) skeins.push_back(i);
            sort_by(skeins, [&](std::size_t i) { return std::pair(!serves(i, j), -wish(i)); });
            skeins.resize(std::min(skeins.size(), static_cast<std::size_t>(d_.most[j])));
            while (skeins.size() > 1 && wish(skeins.back()) < m_.shortest + m_.piece[j].tail)
                skeins.pop_back();
            place(j, skeins, wish);
        }
    }

    // Everything else that fits; false when a piece that must be made does not.
    bool fill_up() {
        for (const auto j : order()) {
            if (placed_[j] || d_.made[j] == Say::no || fit_in(j)) continue;
            if (d_.made[j] == Say::yes) return false;
            d_.made[j] = Say::no;
            if (!conclude(m_, d_)) return false;
        }
        return true;
    }

    Decisions take() { return std::move(d_); }

  private:
    // What must be made first, the longest of it before the others; then the dearest by length.
    Skeins order() const {
        Skeins out(m_.pieces);
        std::iota(out.begin(), out.end(), std::size_t{0});
        std::stable_sort(out.begin(), out.end(), [&](std::size_t a, std::size_t b) {
            const auto &x = m_.piece[a], &y = m_.piece[b];
            const bool first = d_.made[a] == Say::yes, second = d_.made[b] == Say::yes;
            if (first != second) return first;
            if (first) return x.least > y.least;
            return static_cast<double>(x.value) * static_cast<double>(y.least) >
                   static_cast<double>(y.value) * static_cast<double>(x.least);
        });
        return out;
    }

    template <class Key>
    static void sort_by(Skeins& skeins, Key key) {
        std::stable_sort(skeins.begin(), skeins.end(),
                         [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    }

    bool serves(std::size_t i, std::size_t j) const { return d_.pair(i, j) == Say::yes; }

    // One skein first, the snuggest that holds it and is opened anyway; then several, the roomiest.
    bool fit_in(std::size_t j) {
        const auto no_wish = [](std::size_t) { return Cm{0}; };
        Skeins skeins;
        for (std::size_t i = 0; i < m_.skeins; ++i)
            if (d_.pair(i, j) != Say::no) skeins.push_back(i);
        sort_by(skeins, [&](std::size_t i) {
            const bool breaks = d_.opened[i] == Say::open && m_.piece[j].opens;
            return std::tuple(!serves(i, j), breaks ? m_.bonus[i] : 0, m_.cost[i][j], room_[i]);
        });
        if (d_.fewest[j] == 1)
            for (const auto i : skeins)
                if (place(j, {i}, no_wish)) return true;
        sort_by(skeins, [&](std::size_t i) { return std::pair(!serves(i, j), -room_[i]); });
        const auto most = std::min(skeins.size(), static_cast<std::size_t>(d_.most[j]));
        for (auto count = std::max(2, d_.fewest[j]); static_cast<std::size_t>(count) <= most;
             ++count)
            if (place(j, Skeins(skeins.begin(), skeins.begin() + count), no_wish)) return true;
        return false;
    }

    // The piece from exactly these skeins, each giving what is wished before it gives more.
    template <class Wish>
    bool place(std::size_t j, const Skeins& skeins, Wish wish) {
        const auto lengths = shared_out(j, skeins, wish);
        if (!lengths) return false;
        auto next = d_;
        next.made[j] = Say::yes;
        next.fewest[j] = next.most[j] = static_cast<int>(skeins.size());
        for (const auto i : skeins) {
            if (next.pair(i, j) == Say::no) return false;
            next.pair(i, j) = Say::yes;
        }
        if (!conclude(m_, next)) return false;
        d_ = std::move(next);
        for (std::size_t s = 0; s < skeins.size(); ++s) room_[skeins[s]] -= (*lengths)[s];
        return placed_[j] = true;
    }

    template <class Wish>
    std::optional<std::vector<Cm>> shared_out(std::size_t j, const Skeins& skeins,
                                              Wish wish) const {
        const auto& piece = m_.piece[j];
        const auto count = static_cast<Cm>(skeins.size());
        const Cm each = count == 1 ? piece.least + piece.tail : m_.shortest + piece.tail;
        Cm wanted = piece.least + count * piece.tail - count * each;
        std::vector<Cm> out(skeins.size(), each);
        for (const bool wished : {true, false})
            for (std::size_t s = 0; s < skeins.size(); ++s) {
                const Cm room = room_[skeins[s]];
                if (room < each) return {};
                const Cm upto = wished ? std::min(room, wish(skeins[s])) : room;
                const Cm more = std::clamp<Cm>(upto - out[s], 0, std::max<Cm>(wanted, 0));
                out[s] += more;
                wanted -= more;
            }
        if (wanted > 0) return {};
        return out;
    }

    const Model& m_;
    Decisions d_;
    std::vector<Cm> room_;
    std::vector<bool> placed_;
};

template <class Gross>
std::optional<Decisions> near(const Model& m, const Decisions& d, Gross gross) {
    Fitter fitter(m, d);
    fitter.follow(gross);
    if (!fitter.fill_up()) return {};
    return fitter.take();
}

}  // namespace

std::optional<Decisions> filled_up(const Model& m, Decisions d) {
    Fitter fitter(m, std::move(d));
    if (!fitter.fill_up()) return {};
    return fitter.take();
}

std::optional<Decisions> rounded(const Model& m, const Decisions& d, const FlowBound& flow) {
    return near(m, d, [&](std::size_t i, std::size_t j) { return flow.gross(i, j); });
}

std::optional<Decisions> rounded(const Model& m, const Decisions& d, const Wants& wants) {
    return near(m, d, [&](std::size_t i, std::size_t j) {
        return static_cast<Cm>(std::llround(wants.gross[i * m.pieces + j]));
    });
}

}  // namespace gristwright::allocation
