#include "engine/allocation/search.hpp"

#include <algorithm>
#include <queue>

#include "engine/allocation/branching.hpp"
#include "engine/allocation/rounding.hpp"

namespace gristwright::allocation {
namespace {

constexpr int rounded_always = 40;  // nodes whose flow is always rounded; then every eighth
constexpr int rounded_every = 8;

struct Node {
    Decisions decisions;
    Question question;
    Points bound = 0;
    int number = 0;
};

// The best bound first; of equals the newest, which is the deepest.
struct Later {
    bool operator()(const Node& a, const Node& b) const {
        return a.bound != b.bound ? a.bound < b.bound : a.number < b.number;
    }
};

class Search {
  public:
    Search(const Problem& problem, const Effort& effort, std::optional<CutList> incumbent)
        : problem_(problem),
          effort_(effort),
          model_(problem),
          flow_(model_),
          best_(std::move(incumbent)) {}

    Allocation run() {
        Decisions root(model_);
        if (conclude(model_, root)) {
            if (auto greedy = filled_up(model_, root)) take(*greedy);
            visit(std::move(root));
        }
        while (!open_.empty() && nodes_ < effort_.nodes && !effort_.stop.stop_requested()) {
            auto node = open_.top();
            open_.pop();
            if (best_ && node.bound <= best_->worth) break;  // all the others are no better
            for (auto& answer : answers(model_, node.decisions, node.question))
                if (conclude(model_, answer)) visit(std::move(answer));
        }
        return outcome();
    }

  private:
    void visit(Decisions d) {
        ++nodes_;
        const auto bound = flow_.bound(d);
        if (!bound || (best_ && *bound <= best_->worth)) return;
        const auto question = next_question(model_, d, flow_);
        if (question.of == Question::Of::nothing) {
            keep(flow_.plan(problem_));
            return;
        }
        if (nodes_ <= rounded_always || nodes_ % rounded_every == 0)
            if (auto near = rounded(model_, d, flow_)) take(*near);
        if (!best_ || *bound > best_->worth) open_.push({std::move(d), question, *bound, nodes_});
    }

    // The plan of decisions that leave nothing open, if the lengths work out.
    void take(const Decisions& d) {
        if (flow_.bound(d)) keep(flow_.plan(problem_));
    }

    void keep(CutList list) {
        if (!best_ || list.worth > best_->worth) best_ = std::move(list);
    }

    Allocation outcome() const {
        using Outcome = Allocation::Outcome;
        Allocation out;
        out.nodes = nodes_;
        out.bound = best_ ? best_->worth : 0;
        if (!open_.empty()) out.bound = std::max(out.bound, open_.top().bound);
        const bool proven = open_.empty() || (best_ && open_.top().bound <= best_->worth);
        if (best_) {
            out.list = *best_;
            out.outcome = proven ? Outcome::proven_best : Outcome::best_found;
            if (proven) out.bound = best_->worth;
        } else {
            out.outcome = proven ? Outcome::impossible : Outcome::nothing_found;
        }
        return out;
    }

    const Problem& problem_;
    const Effort& effort_;
    Model model_;
    Relaxation flow_;
    std::optional<CutList> best_;
    std::priority_queue<Node, std::vector<Node>, Later> open_;
    int nodes_ = 0;
};

}  // namespace

Allocation search(const Problem& problem, const Effort& effort, std::optional<CutList> incumbent) {
    return Search(problem, effort, std::move(incumbent)).run();
}

}  // namespace gristwright::allocation
