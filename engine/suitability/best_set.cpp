#include "engine/suitability/best_set.hpp"

#include "engine/suitability/constants.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

constexpr int sizes_tried = 5;

struct Candidate {
    const Plan* plan;
    double score;                  // 0..1
    std::vector<SetMember> sizes;  // largest first
};

std::vector<Candidate> candidates(const std::vector<Judged>& plans) {
    std::vector<Candidate> out;
    for (const auto& judged : plans) {
        const auto s = serves(judged.score);
        const auto& p = *judged.plan;
        if (p.reach == Reach::short_of || s == Serves::poorly || s == Serves::not_at_all) continue;
        Candidate c{&p, judged.score / 100, {}};
        for (int i = 0; i < sizes_tried; ++i) {
            const auto step = (p.size - p.article->smallest) * (i / double{sizes_tried - 1});
            const auto size = metres(std::floor((p.size - step).si() * 100 + 1e-6) / 100);
            const auto need = metres(p.by_size.at(size / p.article->ideal));
            if (c.sizes.empty() || size < c.sizes.back().size)
                c.sizes.push_back({p.article, size, i == 0 ? p.need.mid : need});
        }
        out.push_back(std::move(c));
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const auto& a, const auto& b) { return a.score > b.score; });
    return out;
}

class Search {
  public:
    Search(const std::vector<Candidate>& from, std::size_t most) : from_(from), most_(most) {
        const auto& first = *from.front().plan;
        have_ = first.have;
        quantile_ = normal_quantile(first.asked);
        price_ = article_price * have_.mid.si();
        double least = INFINITY;
        for (const auto& c : from) least = std::min(least, c.plan->need.spread);
        room_ = have_.mid.si() * std::exp(-quantile_ * together(least, have_.spread));
    }

    BestSet run() {
        for (const auto& c : from_) weigh_alone(c);
        go(0, {}, 0);
        std::stable_sort(best_.members.begin(), best_.members.end(),
                         [](const auto& a, const auto& b) { return a.need > b.need; });
        best_.alone = alone_;
        return best_;
    }

  private:
    // Articles from one yarn share their error: medians add, and so do the spreads in metres.
    struct Used {
        double need = 0, error = 0;
        double spread() const { return need > 0 ? error / need : 0; }
    };

    double margin(const Used& used) const { return together(used.spread(), have_.spread); }
    bool reaches(const Used& used) const {
        return used.need <= room_ &&
               used.need * std::exp(quantile_ * margin(used)) <= have_.mid.si();
    }

    void weigh_alone(const Candidate& c) {
        for (const auto& member : c.sizes) {
            const double need = member.need.si();
            if (reaches({need, need * c.plan->need.spread}))
                alone_ = std::max(alone_, need * c.score - price_);
        }
    }

    void go(std::size_t next, const Used& used, double worth) {
        if (chosen_.size() > 1 && worth > best_.worth + 1e-9)
            best_ = {chosen_, metres(used.need),
                     normal_below(std::log(have_.mid.si() / used.need) / margin(used)), worth, 0};
        if (chosen_.size() == most_) return;
        for (std::size_t i = next; i < from_.size(); ++i) {
            const auto& c = from_[i];
            // Scores only fall from here on: no filling of what is left beats this.
            if (worth + (room_ - used.need) * c.score - price_ <= best_.worth + 1e-9) return;
            if (!taken(c.plan->article->article)) choose(i, used, worth);
        }
    }

    void choose(std::size_t i, const Used& used, double worth) {
        const auto& c = from_[i];
        for (const auto& member : c.sizes) {
            const double need = member.need.si();
            const Used more{used.need + need, used.error + need * c.plan->need.spread};
            if (!reaches(more)) continue;
            chosen_.push_back(member);
            go(i + 1, more, worth + need * c.score - price_);
            chosen_.pop_back();
            if (chosen_.size() + 1 == most_) return;  // the largest that reaches is worth most
        }
    }

    bool taken(const std::string& article) const {
        return std::any_of(chosen_.begin(), chosen_.end(),
                           [&](const SetMember& m) { return m.article->article == article; });
    }

    const std::vector<Candidate>& from_;
    std::size_t most_;
    Estimate<Length> have_;
    double quantile_ = 0, price_ = 0;
    double room_ = 0;  // metres that the surest article could use
    std::vector<SetMember> chosen_;
    double alone_ = 0;
    BestSet best_;
};

}  // namespace

BestSet best_set(const std::vector<Judged>& plans, std::size_t most) {
    const auto from = candidates(plans);
    if (from.empty()) return {};
    return Search(from, most).run();
}

}  // namespace gristwright
