#include "engine/evidence/skein_ends.hpp"

#include <algorithm>
#include <numeric>

namespace gristwright {
namespace {

class Winding {
  public:
    Winding(const std::vector<Length>& skeins, Taking taking)
        : skeins_(skeins), at_once_(taking == Taking::by_turns ? 2 : 1) {
        out_.of_each.resize(skeins.size());
    }

    TakenSkeins until(Length wanted) {
        for (take_up(); used_ < wanted && !in_work_.empty(); take_up()) {
            const auto shortest =
                std::min_element(in_work_.begin(), in_work_.end(),
                                 [&](std::size_t a, std::size_t b) { return left(a) < left(b); });
            const auto share = (wanted - used_) / static_cast<double>(in_work_.size());
            const bool ends = left(*shortest) <= share;
            take_of_each(ends ? left(*shortest) : share);
            if (!ends) break;
            out_.of_each[*shortest] = skeins_[*shortest];
            out_.ends.push_back({*shortest, used_});
            in_work_.erase(shortest);
        }
        return std::move(out_);
    }

  private:
    Length left(std::size_t skein) const { return skeins_[skein] - out_.of_each[skein]; }
    void take_up() {
        while (in_work_.size() < at_once_ && next_ < skeins_.size()) in_work_.push_back(next_++);
    }
    void take_of_each(Length share) {
        for (const auto skein : in_work_) out_.of_each[skein] += share;
        used_ += share * static_cast<double>(in_work_.size());
    }

    const std::vector<Length>& skeins_;
    std::size_t at_once_, next_ = 0;
    std::vector<std::size_t> in_work_;
    Length used_;
    TakenSkeins out_;
};

}  // namespace

Taking taking_for(const Agreement& agreement) {
    return agreement.answer == SameYarn::alternate ? Taking::by_turns : Taking::one_by_one;
}

TakenSkeins taken(const std::vector<Length>& skeins, Taking taking, Length wanted) {
    return Winding(skeins, taking).until(wanted);
}

std::vector<SkeinEnd> skein_ends(const Plan& plan, const std::vector<Length>& skeins, Taking taking,
                                 double factor, Length used) {
    std::vector<SkeinEnd> out;
    const auto work = stretches(plan);
    if (work.empty()) return out;
    const auto all = std::accumulate(skeins.begin(), skeins.end(), Length{});
    auto ends = taken(skeins, taking, all * 2).ends;  // each of them to its end
    if (!ends.empty()) ends.pop_back();
    for (const auto& end : ends) {
        if (end.used <= used) continue;
        const auto planned = end.used * (1 / factor);
        if (planned >= work.back().ends) break;
        out.push_back({end.skein, place_after(plan, work, planned)});
    }
    return out;
}

}  // namespace gristwright
