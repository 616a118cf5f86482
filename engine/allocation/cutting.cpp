#include "engine/allocation/cutting.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gristwright::allocation {
namespace {

constexpr double least_progress = 2e-5;   // of a round, by the worth of the mixture
constexpr double close_to_enough = 0.02;  // of what is missing to `enough`
constexpr std::size_t known_each = 10;    // patterns kept for each skein and piece
constexpr double unreachable = -std::numeric_limits<double>::infinity();

bool in_pair(const std::vector<TwoPieces>& pairs, std::size_t j) {
    return std::any_of(pairs.begin(), pairs.end(),
                       [&](const TwoPieces& p) { return p.first == j || p.second == j; });
}

// Both are made, so they come from the same skeins.
bool together_now(const Decisions& d, const TwoPieces& pair) {
    return d.made[pair.first] == Say::yes && d.made[pair.second] == Say::yes;
}

// Floating point lost some 1e-12 of the sums on the way.
Points rounded_up(double sum) {
    if (sum > 4e18) return std::numeric_limits<Points>::max() / 2;
    if (sum < -4e18) return std::numeric_limits<Points>::min() / 2;
    return static_cast<Points>(std::floor(sum + 0.01 + 1e-11 * std::abs(sum)));
}

}  // namespace

// What the skein may give the piece and earns by it; nothing when they may not meet.
std::optional<Offer> Cutting::offer(const Decisions& d, const Prices& at, std::size_t i,
                                    std::size_t j) const {
    if (d.made[j] == Say::no || d.pair(i, j) == Say::no || !model_.may_meet(i, j)) return {};
    const auto& piece = model_.piece[j];
    const double cost = as_double(model_.cost[i][j]);
    Offer out;
    out.piece = j;
    out.must = d.pair(i, j) == Say::yes;
    out.least = as_double(least_gross(model_, d, j));
    if (out.least > as_double(model_.length[i])) return {};
    if (whole(d, j)) {
        out.worth = as_double(piece.value) - at.per_skein[j] - cost * out.least;
        for (const auto& s : piece.stretch)
            out.more.push_back({as_double(s.length), as_double(s.per_cm) - cost});
    } else {
        const double most = as_double(std::min(model_.length[i], piece.most + piece.tail));
        out.worth = (at.per_cm[j] - cost) * out.least - at.per_cm[j] * as_double(piece.tail) -
                    as_double(piece.join_cost) - at.per_skein[j];
        if (most > out.least) out.more.push_back({most - out.least, at.per_cm[j] - cost});
    }
    return out;
}

Pattern Cutting::pattern(const Decisions& d, const Prices& at, std::size_t i, bool opened,
                         std::optional<std::size_t> must) const {
    std::vector<TwoPieces> together;
    for (const auto& pair : model_.same)
        if (together_now(d, pair)) together.push_back(pair);
    std::vector<Offer> offers;
    for (std::size_t j = 0; j < model_.pieces; ++j) {
        auto one = offer(d, at, i, j);
        if (!one) continue;
        one->must = one->must || must == j;
        if (!opened && model_.piece[j].opens) {
            if (one->must) return {0, unreachable, false, {}};
            continue;
        }
        double best = one->worth;
        for (const auto& more : one->more) best += std::max(0.0, more.per_cm * more.length);
        if (best > 0 || one->must || in_pair(together, j)) offers.push_back(std::move(*one));
    }
    auto out =
        best_pattern(as_double(model_.length[i]), std::move(offers), model_.different, together);
    if (!out.possible) out.at_most = unreachable;
    if (!opened) out.at_most += as_double(model_.bonus[i]), out.worth += as_double(model_.bonus[i]);
    return out;
}

// What the piece earns at these prices if it is made.
double Cutting::made(const Decisions& d, const Prices& at, std::size_t j) const {
    if (d.made[j] == Say::no) return unreachable;
    if (whole(d, j)) return at.per_skein[j];
    const auto& piece = model_.piece[j];
    double out = as_double(piece.value + piece.join_cost) - at.per_cm[j] * as_double(piece.least);
    for (const auto& s : piece.stretch)
        out += std::max(0.0, as_double(s.per_cm) - at.per_cm[j]) * as_double(s.length);
    return out + at.per_skein[j] * (at.per_skein[j] > 0 ? d.most[j] : d.fewest[j]);
}

bool Cutting::holds(const SkeinPattern& cut, std::size_t j) {
    return std::any_of(cut.uses.begin(), cut.uses.end(),
                       [&](const Pattern::Use& use) { return use.piece == j; });
}

bool Cutting::allowed(const Decisions& d, const SkeinPattern& cut) const {
    const auto i = cut.skein;
    if (d.opened[i] == (cut.opened ? Say::no : Say::yes)) return false;
    std::size_t musts = 0, met = 0;
    for (std::size_t j = 0; j < model_.pieces; ++j) musts += d.pair(i, j) == Say::yes ? 1 : 0;
    for (const auto& use : cut.uses) {
        const auto say = d.pair(i, use.piece);
        if (say == Say::no || d.made[use.piece] == Say::no) return false;
        if (use.length < as_double(least_gross(model_, d, use.piece)) - 0.5) return false;
        met += say == Say::yes ? 1 : 0;
    }
    for (const auto& pair : model_.same)
        if (together_now(d, pair) && holds(cut, pair.first) != holds(cut, pair.second))
            return false;
    return met == musts;
}

// What all earn at these prices by the patterns put into `found`. What they earn at most is kept
// as the bound when it is the least so far.
double Cutting::price_all(const Decisions& d, const Prices& at, std::vector<SkeinPattern>& found) {
    ++rounds_;
    double sum = 0, earned = 0;
    std::vector<double> piece_made(model_.pieces), opened(model_.skeins), kept(model_.skeins);
    for (std::size_t j = 0; j < model_.pieces; ++j) {
        piece_made[j] = made(d, at, j);
        sum += d.made[j] == Say::yes ? piece_made[j] : std::max(0.0, piece_made[j]);
    }
    const double pieces = sum;
    for (std::size_t i = 0; i < model_.skeins; ++i) {
        opened[i] = kept[i] = unreachable;
        Pattern best;
        best.at_most = unreachable;
        bool best_opened = true;
        for (const bool open : {true, false}) {
            if (d.opened[i] == (open ? Say::no : Say::yes)) continue;
            if (!open && model_.bonus[i] == 0 && d.opened[i] == Say::open) continue;
            auto one = pattern(d, at, i, open);
            (open ? opened : kept)[i] = one.at_most;
            if (one.at_most <= best.at_most) continue;
            best = std::move(one);
            best_opened = open;
        }
        sum += best.at_most;
        earned += best.worth;
        found.push_back({i, best_opened, std::move(best.uses)});
    }
    if (best_prices_.per_cm.empty() || sum < best_) {
        best_ = sum;
        best_prices_ = at;
        piece_made_ = std::move(piece_made);
        skein_opened_ = std::move(opened);
        skein_whole_ = std::move(kept);
    }
    return earned + pieces;
}

// The patterns this call used, then those it could not use, then those it left idle.
void Cutting::remember(const Mixture& mixture) {
    std::vector<SkeinPattern> used, idle, out_of_play;
    std::vector<const SkeinPattern*> seen;
    for (const auto& [pattern, amount] : mixture.patterns()) {
        (amount > 1e-6 ? used : idle).push_back(*pattern);
        seen.push_back(pattern);
    }
    std::sort(seen.begin(), seen.end());
    for (auto& pattern : known_)
        if (!std::binary_search(seen.begin(), seen.end(), &pattern))
            out_of_play.push_back(std::move(pattern));
    known_ = std::move(used);
    const auto most = known_each * (model_.skeins + model_.pieces);
    for (auto* rest : {&out_of_play, &idle})
        for (auto one = rest->rbegin(); one != rest->rend() && known_.size() < most; ++one)
            known_.push_back(std::move(*one));
}

void Cutting::learn(const CutList& list) {
    for (std::size_t i = 0; i < model_.skeins; ++i) {
        SkeinPattern cut{i, false, {}};
        for (const auto& c : list.cuts)
            if (c.skein == i) cut.uses.push_back({c.piece, as_double(c.gross)});
        cut.opened = !cut.uses.empty();
        if (model_.has_reserve && list.reserve == i) {
            const auto reserve = model_.pieces - 1;
            cut.uses.push_back({reserve, as_double(model_.piece[reserve].least)});
        }
        if (!cut.uses.empty()) known_.push_back(std::move(cut));
    }
}

Points Cutting::bound(const Decisions& d, Points enough, int rounds) {
    rounds = std::clamp(rounds, 1, most_rounds);
    Mixture mixture(model_, d);
    for (const auto& cut : known_)
        if (allowed(d, cut)) mixture.add(cut);
    best_prices_ = {};
    std::vector<SkeinPattern> fresh;
    fresh.reserve(static_cast<std::size_t>(most_rounds) * model_.skeins);
    for (int round = 0; round < rounds; ++round) {
        mixture.solve();
        std::vector<SkeinPattern> found;
        const double earned = price_all(d, mixture.prices(), found);
        if (rounded_up(best_) <= enough) break;
        const double mixed = mixture.worth();
        const double close = std::max(close_to_enough * (mixed - as_double(enough)), 0.0);
        if (earned - mixed < least_progress * std::abs(mixed) || best_ - mixed < close) break;
        for (auto& cut : found) {
            fresh.push_back(std::move(cut));
            mixture.add(fresh.back());
        }
    }
    wants_ = mixture.wants();
    remember(mixture);
    return rounded_up(best_);
}

void Cutting::narrow(Decisions& d, Points enough) const {
    const auto hopeless = [&](double sum) { return rounded_up(sum) <= enough; };
    for (std::size_t j = 0; j < model_.pieces; ++j) {
        if (d.made[j] != Say::open) continue;
        const double now = std::max(0.0, piece_made_[j]);
        if (hopeless(best_ - now + piece_made_[j]))
            d.made[j] = Say::no;
        else if (hopeless(best_ - now))
            d.made[j] = Say::yes;
    }
    for (std::size_t i = 0; i < model_.skeins; ++i) {
        const double now = std::max(skein_opened_[i], skein_whole_[i]);
        if (d.opened[i] == Say::open && model_.bonus[i] > 0) {
            if (hopeless(best_ - now + skein_opened_[i]))
                d.opened[i] = Say::no;
            else if (hopeless(best_ - now + skein_whole_[i]))
                d.opened[i] = Say::yes;
        }
        for (std::size_t j = 0; j < model_.pieces; ++j) {
            if (d.pair(i, j) != Say::open || d.made[j] == Say::no || !model_.may_meet(i, j))
                continue;
            const bool opens = model_.piece[j].opens;
            double with =
                d.opened[i] == Say::no ? unreachable : pattern(d, best_prices_, i, true, j).at_most;
            if (!opens && d.opened[i] != Say::yes)
                with = std::max(with, pattern(d, best_prices_, i, false, j).at_most);
            if (hopeless(best_ - now + with)) d.pair(i, j) = Say::no;
        }
    }
}

}  // namespace gristwright::allocation
