#include "engine/allocation/group.hpp"

#include <algorithm>

namespace gristwright::allocation {

GroupPromise::GroupPromise(const Model& model, const Decisions& decisions)
    : m_(model), d_(decisions), cheapest_(model.pieces), least_(std::size_t{1} << m_.pieces) {
    for (std::size_t j = 0; j < m_.pieces; ++j) {
        for (std::size_t i = 0; i < m_.skeins; ++i)
            if (d_.pair(i, j) != Say::no && m_.may_meet(i, j)) cheapest_[j].push_back(i);
        std::stable_sort(
            cheapest_[j].begin(), cheapest_[j].end(),
            [&](std::size_t a, std::size_t b) { return m_.cost[a][j] < m_.cost[b][j]; });
        for (Set others = 0; others < Set{1} << j; ++others)
            least_[others | Set{1} << j] =
                least_[others] + m_.piece[j].least + d_.fewest[j] * m_.piece[j].tail;
    }
}

Points GroupPromise::of(const Group& group) {
    members_.clear();
    stretches_.clear();
    sum_ = 0;
    left_ = 0;
    joins_ = -1;  // a group of one skein needs none
    if (!add_skeins(group) || left_ < least_[group.pieces]) return never;
    for (std::size_t j = 0; j < m_.pieces; ++j)
        if (holds(group.pieces, j) && !add_piece(group, j)) return never;
    return joined();
}

bool GroupPromise::add_skeins(const Group& group) {
    bool opens = false;
    for (std::size_t j = 0; j < m_.pieces; ++j)
        opens = opens || (holds(group.pieces, j) && m_.piece[j].opens);
    for (std::size_t i = 0; i < m_.skeins; ++i) {
        if (!holds(group.skeins, i)) continue;
        if (d_.opened[i] == (opens ? Say::no : Say::yes)) return false;
        if (!opens) sum_ += m_.bonus[i];
        left_ += m_.length[i];
        ++joins_;
    }
    return true;
}

bool GroupPromise::add_piece(const Group& group, std::size_t j) {
    if (d_.made[j] == Say::no) return false;
    const auto& piece = m_.piece[j];
    const int fewest = d_.fewest[j];
    const Cm gross = piece.least + fewest * piece.tail;
    int candidates = 0;
    Points least = 0;  // per cm
    Cm wanted = gross;
    for (const auto i : cheapest_[j]) {
        if (!holds(group.skeins, i)) {
            if (d_.pair(i, j) == Say::yes) return false;
            continue;
        }
        const auto cost = m_.cost[i][j];
        if (candidates++ == 0) least = cost;
        const Cm part = std::min(wanted, m_.length[i]);
        sum_ -= part * cost;
        wanted -= part;
    }
    const int most = std::min(d_.most[j], candidates);
    if (wanted > 0 || most < fewest) return false;
    sum_ += piece.value - (fewest - 1) * piece.join_cost;
    left_ -= gross;
    joins_ -= fewest - 1;
    members_.push_back({piece.join_cost + least * piece.tail, piece.tail, most - fewest});
    for (const auto& s : piece.stretch)
        if (s.per_cm > least) stretches_.push_back({s.length, s.per_cm - least});
    return true;
}

Points GroupPromise::joined() {
    std::sort(members_.begin(), members_.end(),
              [](const Member& a, const Member& b) { return a.join < b.join; });
    for (const auto& member : members_) {
        const int here = std::clamp(joins_, 0, member.more);
        joins_ -= here;
        sum_ -= here * member.join;
        left_ -= here * member.tail;
    }
    if (joins_ > 0 || left_ < 0) return never;
    std::sort(stretches_.begin(), stretches_.end(),
              [](const Stretch& a, const Stretch& b) { return a.per_cm > b.per_cm; });
    for (const auto& s : stretches_) {
        const Cm part = std::min(left_, s.length);
        sum_ += part * s.per_cm;
        left_ -= part;
    }
    return sum_;
}

}  // namespace gristwright::allocation
