#include "engine/allocation/search.hpp"

#include <algorithm>
#include <limits>
#include <queue>

#include "engine/allocation/branching.hpp"
#include "engine/allocation/cutting.hpp"
#include "engine/allocation/rounding.hpp"

namespace gristwright::allocation {
namespace {

constexpr int rounded_always = 40;  // nodes whose flow is always rounded; then every eighth
constexpr int rounded_every = 8;
// The closer bound is asked for after so many nodes of a small problem, of a larger one at once.
constexpr int easy = 60;
constexpr int nodes_a_round = 2;  // that a round of its prices counts for

struct Node {
    Decisions decisions;
    Question question;
    Points bound = 0;
    int number = 0;
    bool priced = false;
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
          cutting_(model_),
          best_(std::move(incumbent)),
          easy_(model_.skeins * model_.pieces <= small_size ? easy : 0) {}

    Allocation run() {
        if (best_) cutting_.learn(*best_);
        Decisions root(model_);
        if (conclude(model_, root)) {
            if (auto greedy = filled_up(model_, root)) take(*greedy);
            visit(std::move(root), std::numeric_limits<Points>::max());
        }
        while (!open_.empty() && nodes_ < effort_.nodes && !effort_.stop.stop_requested()) {
            auto node = open_.top();
            open_.pop();
            if (best_ && node.bound <= best_->worth) break;  // all the others are no better
            if (best_ && nodes_ > easy_ && !node.priced && !look_closer(node)) continue;
            for (auto& answer : answers(model_, node.decisions, node.question))
                if (conclude(model_, answer)) visit(std::move(answer), node.bound);
        }
        return outcome();
    }

  private:
    // The closer bound of a node about to be opened, and what follows from it. False: it is done
    // with, or waits for another that promises more now.
    bool look_closer(Node& node) {
        const Points enough = best_->worth;
        const int rounds = cutting_.rounds();
        node.bound = std::min(node.bound, cutting_.bound(node.decisions, enough));
        nodes_ += (cutting_.rounds() - rounds) * nodes_a_round;
        if (node.bound <= enough) return false;
        cutting_.narrow(node.decisions, enough);
        if (!conclude(model_, node.decisions)) return false;
        const auto flow = flow_.bound(node.decisions);
        if (!flow || *flow <= enough) return false;
        node.bound = std::min(node.bound, *flow);
        node.question = next_question(model_, node.decisions, flow_);
        if (node.question.of == Question::Of::nothing) {
            keep(flow_.plan(problem_));
            return false;
        }
        if (auto near = rounded(model_, node.decisions, flow_)) take(*near);
        if (auto near = rounded(model_, node.decisions, cutting_.wants())) take(*near);
        if (const auto wanted = next_question(model_, node.decisions, cutting_.wants());
            wanted.of != Question::Of::nothing)
            node.question = wanted;
        node.priced = true;
        if (open_.empty() || node.bound >= open_.top().bound) return true;
        open_.push(std::move(node));
        return false;
    }

    // No answer to a question promises more than the question did.
    void visit(Decisions d, Points promised) {
        ++nodes_;
        auto bound = flow_.bound(d);
        if (bound) bound = std::min(*bound, promised);
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
        if (best_ && list.worth <= best_->worth) return;
        cutting_.learn(list);
        best_ = std::move(list);
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
    Cutting cutting_;
    std::optional<CutList> best_;
    std::priority_queue<Node, std::vector<Node>, Later> open_;
    int easy_;
    int nodes_ = 0;
};

}  // namespace

Allocation search(const Problem& problem, const Effort& effort, std::optional<CutList> incumbent) {
    return Search(problem, effort, std::move(incumbent)).run();
}

}  // namespace gristwright::allocation
