#include "engine/allocation/pattern.hpp"

#include <algorithm>
#include <limits>

namespace gristwright::allocation {
namespace {

constexpr int most_steps = 3'000;
constexpr double near_enough = 1e-5;  // of what the skein could earn at most
constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
constexpr double slack = 1e-6;  // cm, and micro-points

struct Slope {
    double per_cm = 0, length = 0;
    std::size_t offer = 0;
    bool hull = false;  // of an offer not yet decided: its least and all that is steeper, as one
};

class Cutter {
  public:
    Cutter(double length, std::vector<Offer> offers, const std::vector<TwoPieces>& apart,
           const std::vector<TwoPieces>& together)
        : length_(length), offers_(std::move(offers)), in_(offers_.size()) {
        std::sort(offers_.begin(), offers_.end(), [](const Offer& a, const Offer& b) {
            return a.must != b.must ? a.must : steepest(a) > steepest(b);
        });
        for (std::size_t o = 0; o < offers_.size(); ++o) add_slopes(o);
        apart_ = places(apart);
        together_ = places(together);
        std::stable_sort(slopes_.begin(), slopes_.end(),
                         [](const Slope& a, const Slope& b) { return a.per_cm > b.per_cm; });
    }

    Pattern run() {
        const double upper = bound(0, length_, 0);
        slack_ = std::max(slack, near_enough * upper);
        best_.possible = false;
        look(0, length_, 0);
        best_.at_most = steps_ > 0 ? best_.worth + slack_ : std::max(best_.worth, upper);
        return std::move(best_);
    }

  private:
    static double steepest(const Offer& offer) {
        double length = offer.least, worth = offer.worth;
        for (const auto& m : offer.more) {
            if (m.per_cm * length <= worth) break;
            length += m.length;
            worth += m.length * m.per_cm;
        }
        return worth / length;
    }

    void add_slopes(std::size_t o) {
        const auto& offer = offers_[o];
        double length = offer.least, worth = offer.worth;
        bool in_hull = true;
        for (const auto& m : offer.more) {
            if (m.per_cm > 0) slopes_.push_back({m.per_cm, m.length, o, false});
            in_hull = in_hull && m.per_cm * length > worth;
            if (in_hull)
                length += m.length, worth += m.length * m.per_cm;
            else if (m.per_cm > 0)
                slopes_.push_back({m.per_cm, m.length, o, true});
        }
        if (worth > 0) slopes_.push_back({worth / length, length, o, true});
    }

    // What is chosen, and of the offers from `next` on whatever part fits.
    double bound(std::size_t next, double left, double worth) const {
        for (const auto& s : slopes_) {
            if (s.hull ? s.offer < next : !in_[s.offer]) continue;
            const double part = std::min(s.length, left);
            worth += part * s.per_cm;
            left -= part;
            if (left <= 0) break;
        }
        return worth;
    }

    // What is chosen, stretched as well as can be.
    double stretched(double left, double worth) const {
        for (const auto& s : slopes_) {
            if (s.hull || !in_[s.offer]) continue;
            const double part = std::min(s.length, left);
            worth += part * s.per_cm;
            left -= part;
            if (left <= 0) break;
        }
        return worth;
    }

    void keep(double left, double worth) {
        best_.worth = worth;
        best_.possible = true;
        best_.uses.clear();
        for (std::size_t o = 0; o < offers_.size(); ++o) {
            if (!in_[o]) continue;
            double length = offers_[o].least;
            for (const auto& s : slopes_) {
                if (s.hull || s.offer != o) continue;
                length += std::min(s.length, std::max(0.0, left_before(s, left)));
            }
            best_.uses.push_back({offers_[o].piece, length});
        }
    }

    // What is left of the skein when its turn comes.
    double left_before(const Slope& slope, double left) const {
        for (const auto& s : slopes_) {
            if (&s == &slope) return left;
            if (!s.hull && in_[s.offer]) left -= std::min(s.length, std::max(0.0, left));
        }
        return left;
    }

    // The pairs by their offers, the later one second; a partner that offers nothing stands as
    // none.
    std::vector<TwoPieces> places(const std::vector<TwoPieces>& pairs) const {
        std::vector<TwoPieces> out;
        for (const auto& [a, b] : pairs) {
            const auto x = place(a), y = place(b);
            if (x != none || y != none) out.push_back({std::min(x, y), std::max(x, y)});
        }
        return out;
    }
    std::size_t place(std::size_t piece) const {
        for (std::size_t o = 0; o < offers_.size(); ++o)
            if (offers_[o].piece == piece) return o;
        return none;
    }

    // What has been chosen before allows this offer in, or out.
    bool may_take(std::size_t o) const {
        for (const auto& [a, b] : apart_)
            if (b == o && in_[a]) return false;
        for (const auto& [a, b] : together_)
            if ((b == o && !in_[a]) || (a == o && b == none)) return false;
        return true;
    }
    bool may_leave(std::size_t o) const {
        for (const auto& [a, b] : together_)
            if (b == o && in_[a]) return false;
        return !offers_[o].must;
    }

    // Nothing from here on must be taken.
    bool complete_at(std::size_t next) const {
        for (const auto& [a, b] : together_)
            if (b != none && b >= next && a < next && in_[a]) return false;
        return !offers_[next].must;
    }

    void look(std::size_t next, double left, double worth) {
        if (--steps_ <= 0) return;
        if (next == offers_.size() || complete_at(next)) {
            const double now = stretched(left, worth);
            if (!best_.possible || now > best_.worth) keep(left, now);
        }
        if (next == offers_.size()) return;
        if (best_.possible && bound(next, left, worth) <= best_.worth + slack_) return;
        const auto& offer = offers_[next];
        if (offer.least <= left + slack && may_take(next)) {
            in_[next] = true;
            look(next + 1, left - offer.least, worth + offer.worth);
            in_[next] = false;
        }
        if (may_leave(next)) look(next + 1, left, worth);
    }

    double length_;
    std::vector<Offer> offers_;
    std::vector<TwoPieces> apart_, together_;
    std::vector<char> in_;
    std::vector<Slope> slopes_;
    Pattern best_;
    int steps_ = most_steps;
    double slack_ = slack;
};

}  // namespace

Pattern best_pattern(double length, std::vector<Offer> offers, const std::vector<TwoPieces>& apart,
                     const std::vector<TwoPieces>& together) {
    return Cutter(length, std::move(offers), apart, together).run();
}

}  // namespace gristwright::allocation
