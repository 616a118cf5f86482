#include "engine/evidence/yarn_places.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright {
namespace {

class Walk {
  public:
    explicit Walk(const Plan& plan)
        : plan_(plan),
          on_pins_(plan.article && plan.article->loom == Loom::pins),
          made_(plan.pieces.size()) {}

    std::vector<Stretch> in_order() {
        if (plan_.article) {
            const auto& order = plan_.article->order;
            for (const auto& name : order)
                take_up(name, static_cast<int>(std::count(order.begin(), order.end(), name)));
        }
        for (std::size_t p = 0; p < made_.size(); ++p) make(p, plan_.pieces[p].piece->count);
        return std::move(out_);
    }

  private:
    // One of so many times that pieces of this name are worked on.
    void take_up(const std::string& name, int times) {
        for (std::size_t p = 0; p < made_.size(); ++p)
            if (const auto& piece = *plan_.pieces[p].piece; piece.name == name)
                make(p, std::max(1, piece.count / times));
    }

    // So many more of a piece, of those that are not made yet.
    void make(std::size_t p, int how_many) {
        const auto& piece = plan_.pieces[p];
        const int count = piece.piece->count;
        for (int i = 0; i < how_many && made_[p] < count; ++i) {
            const auto warp = piece.warp * piece.piece->warp_ours();
            if (on_pins_ || made_[p] == 0) add(p, true, on_pins_ ? warp / count : warp);
            const auto rest = piece.woven ? piece.weft * piece.piece->weft_ours() : piece.ours;
            add(p, false, rest / count);
            ++made_[p];
        }
    }

    void add(std::size_t p, bool warp, Length takes) {
        if (takes.si() <= 0) return;
        out_.push_back({p, made_[p] + 1, warp, used_, used_ + takes});
        used_ += takes;
    }

    const Plan& plan_;
    bool on_pins_;
    std::vector<int> made_;
    Length used_;
    std::vector<Stretch> out_;
};

double counted(const Plan& plan, const YarnPlace& place) {
    const auto& piece = plan.pieces[place.piece];
    const int all = place.warp ? piece.panel.ends : piece.woven ? piece.panel.picks : piece.rows;
    return place.share * all;
}

}  // namespace

std::vector<Stretch> stretches(const Plan& plan) { return Walk(plan).in_order(); }

YarnPlace place_after(const Plan& plan, const std::vector<Stretch>& work, Length used) {
    if (work.empty()) return {};
    const auto at = std::find_if(work.begin(), work.end(),
                                 [&](const Stretch& stretch) { return used < stretch.ends; });
    if (at == work.end()) return {work.back().piece, work.back().which, work.back().warp, 1};
    const double share = std::max(0.0, (used - at->begins) / (at->ends - at->begins));
    const auto& piece = plan.pieces[at->piece];
    return {at->piece, at->which, at->warp, piece.woven ? share : row_by_yarn(piece, share)};
}

int done_at(const Plan& plan, const YarnPlace& place) {
    return static_cast<int>(std::floor(counted(plan, place)));
}

int in_work_at(const Plan& plan, const YarnPlace& place) {
    return std::max(1, static_cast<int>(std::ceil(counted(plan, place))));
}

double yarn_by_row(const PlanPiece& piece, double rows_share) {
    if (!piece.piece->narrow_first) return yarn_after_rows(piece.outline, rows_share);
    return 1 - yarn_after_rows(piece.outline, 1 - rows_share);
}

double row_by_yarn(const PlanPiece& piece, double yarn_share) {
    if (!piece.piece->narrow_first) return rows_for_yarn(piece.outline, yarn_share);
    return 1 - rows_for_yarn(piece.outline, 1 - yarn_share);
}

}  // namespace gristwright
