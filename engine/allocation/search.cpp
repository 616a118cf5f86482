#include "engine/allocation/search.hpp"

#include <algorithm>
#include <limits>
#include <queue>

#include "engine/allocation/branching.hpp"
#include "engine/allocation/cutting.hpp"
#include "engine/allocation/grouping.hpp"
#include "engine/allocation/rounding.hpp"

namespace gristwright::allocation {
namespace {

constexpr int rounded_always = 40;  // nodes whose flow is always rounded; then every eighth
constexpr int rounded_every = 8;
// The closer bound is asked for after so many nodes of a small problem, of a larger one at once.
constexpr int easy = 60;
constexpr int nodes_a_round = 2;  // that a round of its prices counts for
constexpr int first_dive = 5;     // times the easy nodes: most are proven by then
constexpr int between_dives = 5;  // a fifth of the nodes before
constexpr double endless = std::numeric_limits<double>::infinity();

struct Node {
    Decisions decisions;
    Branching branching;
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

}  // namespace

struct Search::Tree {
  public:
    Tree(const Problem& problem, Start start)
        : problem_(problem),
          model_(problem),
          root_(model_),
          flow_(model_),
          cutting_(model_),
          best_(std::move(start.incumbent)),
          ceiling_(start.ceiling),
          easy_(model_.skeins * model_.pieces <= small_size ? easy : 0),
          dive_from_(first_dive * easy_),
          groups_from_(start.by_groups && Grouping::can_hold(model_)
                           ? std::max<double>(easy, Grouping::least_nodes(model_))
                           : endless) {
        if (best_) cutting_.learn(*best_);
        if (!conclude(model_, root_)) return;
        if (auto greedy = filled_up(model_, root_)) take(*greedy);
        if (auto node = visit(root_, ceiling_)) open_.push(std::move(*node));
    }

    Allocation run(int nodes, const Effort& effort) {
        limit_ = nodes;
        while (!done() && nodes_ < limit_ && !effort.stop.stop_requested()) {
            if (effort.watch) effort.watch({{}, nodes_, limit_, outcome().gap()});
            if (nodes_ >= groups_from_) look_at_groups();
            if (done() || nodes_ >= limit_) break;
            auto node = open_.top();
            open_.pop();
            if (best_ && nodes_ > easy_ && !node.priced) {
                if (!look_closer(node, best_->worth)) continue;
                if (!open_.empty() && node.bound < open_.top().bound) {
                    open_.push(std::move(node));
                    continue;
                }
            }
            if (nodes_ >= dive_from_)
                dive(std::move(node));
            else
                for (auto& child : children(node)) open_.push(std::move(child));
        }
        return outcome();
    }

    void keep(CutList list) {
        if (best_ && list.worth <= best_->worth) return;
        cutting_.learn(list);
        best_ = std::move(list);
    }

  private:
    // All that is open is no better than what is known.
    bool done() const {
        return open_.empty() || (best_ && std::min(open_.top().bound, ceiling_) <= best_->worth);
    }

    // Groups settle some problems at once and help little with others: up to half of the time goes
    // into them, as long as they promise less than what is open does.
    void look_at_groups() {
        const double before = groups_ ? groups_->spent() : 0;
        if (!groups_)
            groups_.emplace(problem_, model_, root_, best_ ? best_->worth : never,
                            std::min<double>(groups_from_, limit_ - nodes_));
        else if (auto list = groups_->work_out(limit_ - nodes_))
            keep(std::move(*list));
        const double spent = groups_->spent() - before;
        nodes_ += static_cast<int>(spent);
        if (groups_->gave_up()) {
            groups_.reset();
            groups_from_ = 2.0 * nodes_;
            return;
        }
        if (const auto bound = groups_->bound())
            ceiling_ = std::min(ceiling_, *bound);
        else
            open_ = {};
        const bool helps = !open_.empty() && (!best_ || ceiling_ <= open_.top().bound);
        groups_from_ = helps && !groups_->finished() ? nodes_ + spent : endless;
    }

    // The closer bound of a node about to be opened, and what follows from it. False: it is done
    // with.
    bool look_closer(Node& node, Points enough) {
        const int rounds = cutting_.rounds();
        node.bound = std::min(
            node.bound, cutting_.bound(node.decisions, enough, (limit_ - nodes_) / nodes_a_round));
        nodes_ += (cutting_.rounds() - rounds) * nodes_a_round;
        if (node.bound <= enough) return false;
        cutting_.narrow(node.decisions, enough);
        if (!conclude(model_, node.decisions)) return false;
        const auto flow = flow_.bound(node.decisions);
        if (!flow || *flow <= enough) return false;
        node.bound = std::min(node.bound, *flow);
        node.branching = next_branching(model_, node.decisions, flow_);
        if (node.branching.of == Branching::Of::nothing) {
            keep(flow_.plan(problem_));
            return false;
        }
        if (auto near = rounded(model_, node.decisions, flow_)) take(*near);
        if (auto near = rounded(model_, node.decisions, cutting_.wants())) take(*near);
        if (const auto wanted = next_branching(model_, node.decisions, cutting_.wants());
            wanted.of != Branching::Of::nothing)
            node.branching = wanted;
        node.priced = true;
        return true;
    }

    // What remains to be looked at below a node.
    std::vector<Node> children(const Node& node) {
        std::vector<Node> out;
        for (auto& branch : branches(model_, node.decisions, node.branching))
            if (conclude(model_, branch))
                if (auto child = visit(std::move(branch), node.bound))
                    out.push_back(std::move(*child));
        return out;
    }

    // The best bound first proves, and comes late to a plan: now and then the most promising node
    // is followed down at once, to where nothing is open.
    void dive(Node node) {
        std::optional<Node> at = std::move(node);
        do {
            auto below = children(*at);
            at = most_promising(below);
            for (auto& other : below) open_.push(std::move(other));
        } while (at && nodes_ < limit_);
        if (at) open_.push(std::move(*at));
        dive_from_ = nodes_ + nodes_ / between_dives;
    }

    // The best by its closer bound, taken out of these; nothing when none can be better.
    std::optional<Node> most_promising(std::vector<Node>& nodes) {
        while (!nodes.empty()) {
            std::iter_swap(std::max_element(nodes.begin(), nodes.end(), Later{}), nodes.end() - 1);
            auto best = std::move(nodes.back());
            nodes.pop_back();
            if (!best_ || best.priced) return best;
            if (look_closer(best, best_->worth)) nodes.push_back(std::move(best));
        }
        return {};
    }

    // The node, if something better may be below it. No branch promises more than its node did.
    std::optional<Node> visit(Decisions d, Points promised) {
        ++nodes_;
        auto bound = flow_.bound(d);
        if (bound) bound = std::min(*bound, promised);
        if (!bound || (best_ && *bound <= best_->worth)) return {};
        const auto branching = next_branching(model_, d, flow_);
        if (branching.of == Branching::Of::nothing) {
            keep(flow_.plan(problem_));
            return {};
        }
        if (nodes_ <= rounded_always || nodes_ % rounded_every == 0)
            if (auto near = rounded(model_, d, flow_)) take(*near);
        if (best_ && *bound <= best_->worth) return {};
        return Node{std::move(d), branching, *bound, nodes_};
    }

    // The plan of decisions that leave nothing open, if the lengths work out.
    void take(const Decisions& d) {
        if (flow_.bound(d)) keep(flow_.plan(problem_));
    }

    Allocation outcome() const {
        using Outcome = Allocation::Outcome;
        Allocation out;
        out.nodes = nodes_;
        out.bound = best_ ? best_->worth : 0;
        if (!open_.empty()) out.bound = std::max(out.bound, std::min(open_.top().bound, ceiling_));
        const bool proven = done();
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
    Model model_;
    Decisions root_;
    FlowBound flow_;
    Cutting cutting_;
    std::optional<CutList> best_;
    Points ceiling_;  // no plan at all is worth more
    std::priority_queue<Node, std::vector<Node>, Later> open_;
    int easy_;
    int nodes_ = 0, limit_ = 0, dive_from_;
    std::optional<Grouping> groups_;
    double groups_from_;  // nodes
};

Search::Search(const Problem& problem, Start start)
    : tree_(std::make_unique<Tree>(problem, std::move(start))) {}

Search::~Search() = default;

Allocation Search::run(int nodes, const Effort& effort) { return tree_->run(nodes, effort); }

void Search::learn(CutList list) { tree_->keep(std::move(list)); }

}  // namespace gristwright::allocation
