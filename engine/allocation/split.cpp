#include "engine/allocation/split.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "engine/allocation/constants.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::allocation {
namespace {

using namespace constants;

constexpr int steps = 6;  // of a stretch between the least and the most

Cm in_cm(Length q) { return static_cast<Cm>(std::ceil(q.si() * 100 - 1e-9)); }
Length of_cm(Cm q) { return metres(static_cast<double>(q) / 100); }
Points in_points(double points) { return static_cast<Points>(std::llround(points * 1e6)); }

double join_points(JoinCost cost) {
    return cost == JoinCost::low ? join_low : cost == JoinCost::high ? join_high : join_usual;
}

// What must be set aside so that the chance of reaching holds: the need at its quantile, its own
// margin and that of the metres to hand taken once, together.
double aside_for(const Plan& plan, double certainty, double spread) {
    return gristwright::set_aside(certainty, spread, plan.have.spread);
}

// Stretches between lengths whose worth is given; slopes are made to fall where they do not.
std::vector<Stretch> stretches(const std::vector<std::pair<Cm, double>>& worth_at) {
    std::vector<Stretch> out;
    Points last = in_points(1e6);
    for (std::size_t k = 1; k < worth_at.size(); ++k) {
        const Cm length = worth_at[k].first - worth_at[k - 1].first;
        if (length <= 0) continue;
        const double worth = worth_at[k].second - worth_at[k - 1].second;
        last = std::min(last, in_points(worth / static_cast<double>(length)));
        out.push_back({length, last});
    }
    return out;
}

Piece sample_piece(const std::string& name, const Sample& s, double good_enough) {
    const auto range = sensible(s, good_enough);
    std::vector<std::pair<Cm, double>> worth_at;
    for (int k = 0; k <= steps; ++k) {
        const double growth = std::pow(range.most / range.least, double(k) / steps);
        const auto side = range.least * growth;
        const double per_cent = 100 * s.error(side);
        worth_at.emplace_back(in_cm(s.metres(side)), -worth_of_knowing * per_cent * per_cent);
    }
    return {name, worth_at.front().first, 0, stretches(worth_at), 0, 0, true};
}

// A tail for every piece of an article after its first stands in its length.
Cm more_tails(const Wish& wish) {
    return wish.plan ? static_cast<Cm>(count_of_pieces(*wish.plan) - 1) * Problem{}.tail : 0;
}

// No article may be larger than its longest unbroken piece finds room in one skein.
Cm longest_article(const Wish& wish, const SplitRequest& request, Cm longest_skein) {
    const double share = unbroken_share(*wish.plan, request.whole_warp);
    if (share <= 0) return std::numeric_limits<Cm>::max();
    return static_cast<Cm>(static_cast<double>(longest_skein - Problem{}.tail) / share);
}

Piece article_piece(const Wish& wish, const SplitRequest& request, Cm longest_skein) {
    const auto& plan = *wish.plan;
    const auto& article = *plan.article;
    const double aside = aside_for(plan, request.certainty, plan.need.spread);
    const double least = article.smallest / article.ideal;
    const double most = (article.fitted ? article.ideal : article.largest) / article.ideal;
    const double per_metre = wish.main ? worth_of_main : worth_of_main * wish.suitability;
    std::vector<std::pair<Cm, double>> worth_at;
    double worth = 0;
    const Cm most_length = longest_article(wish, request, longest_skein);
    const Cm tails = more_tails(wish);
    for (int k = 0; k <= steps; ++k) {
        const double size = least + (most - least) * k / steps;
        const Cm needed = in_cm(metres(plan.by_size.at(size) * aside)) + tails;
        if (needed > most_length && k == 0)
            throw Refused(fmt::format(
                "{}: even at its smallest the warp is longer than the longest skein, {:.0f} m; "
                "without an unbroken warp it may be wound from several",
                wish.name, double(longest_skein) / 100));
        const Cm length = std::min(needed, most_length);
        // Growth is worth less the larger the article is already.
        const double growth = worth_of_growth * per_metre * (first_growth - double(k) / steps);
        if (k > 0) worth += growth * static_cast<double>(length - worth_at.back().first) / 100;
        worth_at.emplace_back(length, worth);
        if (needed > most_length) break;
    }
    const Cm first = worth_at.front().first;
    return {wish.name,
            first,
            in_points(per_metre * static_cast<double>(first) / 100),
            stretches(worth_at),
            in_points(join_points(request.join_cost)),
            wish.joins,
            wish.main};
}

Problem problem_of(const YarnProfile& yarn, const SplitRequest& request) {
    Problem out;
    out.reserve = in_cm(request.reserve);
    for (const auto& skein : yarn.skeins) {
        const auto length = static_cast<Cm>(std::floor(skein.length.si() * 100 + 1e-6));
        out.skeins.push_back({skein.name, length, in_points(worth_of_whole * skein.length.si())});
    }
    Cm longest = 0;
    for (const auto& skein : out.skeins) longest = std::max(longest, skein.length);
    out.mismatch.assign(out.skeins.size(), {});
    for (const auto& wish : request.wishes) {
        out.pieces.push_back(wish.sample
                                 ? sample_piece(wish.name, *wish.sample, request.good_enough)
                                 : article_piece(wish, request, longest));
        for (std::size_t i = 0; i < out.skeins.size(); ++i)
            out.mismatch[i].push_back(
                !wish.only_from || *wish.only_from == i ? std::optional<Points>{0} : std::nullopt);
    }
    return out;
}

Length size_for(const Plan& plan, Length given, double aside) {
    const auto& t = *plan.article;
    const auto most = (t.fitted ? t.ideal : t.largest) / t.ideal;
    const double size = plan.by_size.largest(given.si() / aside, most) * t.ideal.si();
    return metres(std::floor(size * 100 + 1e-3) / 100);
}

// The smallest error that a knitted sample of this split leaves; nothing when there is none. It is
// weighed and measured, and metres per area are what a knitted project learns from it.
std::optional<double> known_to_knitting(const SplitRequest& request,
                                        const std::vector<SplitPart>& parts) {
    std::optional<double> best;
    for (std::size_t w = 0; w < parts.size(); ++w) {
        const auto& sample = request.wishes[w].sample;
        if (!sample || !sample->knitted || !parts[w].made) continue;
        const double error = std::hypot(parts[w].error, parts[w].second_error);
        best = std::min(best.value_or(error), error);
    }
    return best;
}

bool all_knitted(const Plan& plan) {
    return std::all_of(plan.pieces.begin(), plan.pieces.end(),
                       [](const PlanPiece& p) { return p.piece->yarn != 1 || p.knit.has_value(); });
}

void read_parts(const SplitRequest& request, Split& out) {
    for (std::size_t w = 0; w < request.wishes.size(); ++w) {
        SplitPart part;
        Cm net = 0;
        for (const auto& cut : out.allocation.list.cuts)
            if (cut.piece == w) net += cut.gross - out.problem.tail;
        part.made = net > 0;
        const auto& wish = request.wishes[w];
        if (part.made) part.metres = of_cm(net - more_tails(wish));
        if (wish.sample && part.made) {
            part.size = wish.sample->side(part.metres);
            part.error = wish.sample->error(part.size);
            part.second_error = wish.sample->second_error(part.size);
        }
        out.parts.push_back(part);
    }
}

// How large each article becomes from its metres, now and once a sample has been weighed.
void read_sizes(const SplitRequest& request, Split& out) {
    const auto known = known_to_knitting(request, out.parts);
    for (std::size_t w = 0; w < request.wishes.size(); ++w) {
        const auto& wish = request.wishes[w];
        auto& part = out.parts[w];
        if (!wish.plan || !part.made) continue;
        const double before = wish.plan->need.spread;
        // Weaving's plan takes nothing from a knitted swatch, and a woven one teaches it losses, of
        // which this makes no figure.
        const double after = known && all_knitted(*wish.plan)
                                 ? std::min(before, std::hypot(swatch_metres, *known))
                                 : before;
        part.size =
            size_for(*wish.plan, part.metres, aside_for(*wish.plan, request.certainty, before));
        part.size_when_known =
            size_for(*wish.plan, part.metres, aside_for(*wish.plan, request.certainty, after));
    }
}

// Samples come off first, then further articles, then the main project.
int turn(const Wish& wish) { return wish.sample ? 0 : wish.main ? 2 : 1; }

void wind_off(const YarnProfile& yarn, const SplitRequest& request, Split& out) {
    auto cuts = out.placed.list.cuts;
    std::stable_sort(cuts.begin(), cuts.end(), [&](const Cut& a, const Cut& b) {
        const auto key = [&](const Cut& c) {
            return std::pair(c.skein, turn(request.wishes[out.pieces[c.piece].wish]));
        };
        return key(a) < key(b);
    });
    std::vector<Cm> left;
    for (const auto& skein : out.problem.skeins) left.push_back(skein.length);
    for (const auto& cut : cuts) {
        left[cut.skein] -= cut.gross;
        const auto grist = yarn.skeins[cut.skein].linear_density.mid;
        const auto ball = of_cm(left[cut.skein]);
        const auto& piece = out.pieces[cut.piece];
        out.cuts.push_back({cut.skein, piece.wish, piece.name, of_cm(cut.gross),
                            of_cm(cut.gross) * grist, ball, ball * grist});
    }
}

// It may be that an article fits into the skeins as one length, but its pieces do not: a join would
// leave too short an end of one. Then all articles are made a little smaller, step by step.
constexpr double smaller[] = {1, 0.995, 0.985, 0.97, 0.95};

std::vector<double> relative_grist(const YarnProfile& yarn) {
    std::vector<double> out;
    for (const auto& skein : yarn.skeins) out.push_back(skein.linear_density.mid.si());
    const double finest = *std::min_element(out.begin(), out.end());
    for (auto& x : out) x /= finest;
    return out;
}

std::vector<LaidPiece> pieces_of(const SplitRequest& request, const Split& s, double part) {
    std::vector<LaidPiece> out;
    for (std::size_t w = 0; w < request.wishes.size(); ++w) {
        const auto& wish = request.wishes[w];
        if (!s.parts[w].made) continue;
        const Cm net = static_cast<Cm>(std::llround(s.parts[w].metres.si() * 100));
        if (wish.sample) {
            out.push_back({w, "", net, true});
            continue;
        }
        const auto plan = wish.at_size ? wish.at_size(s.parts[w].size) : *wish.plan;
        const auto laid =
            laid_out(plan, w, static_cast<Cm>(static_cast<double>(net) * part), request.whole_warp);
        out.insert(out.end(), laid.begin(), laid.end());
    }
    return out;
}

// The same effort, watched as another part of the whole.
Effort in_stage(const Effort& effort, Progress::Stage stage) {
    auto out = effort;
    if (effort.watch)
        out.watch = [watch = effort.watch, stage](Progress at) {
            at.stage = stage;
            watch(at);
        };
    return out;
}

void place_pieces(const YarnProfile& yarn, const SplitRequest& request, const Effort& effort,
                  Split& out) {
    for (const double part : smaller) {
        out.pieces = pieces_of(request, out, part);
        out.placing = placing(out.problem, out.pieces, relative_grist(yarn));
        out.placed = allocate(out.placing, effort);
        if (out.placed.found() || effort.stop.stop_requested()) break;
    }
    if (!out.placed.found()) {  // article by article, then
        out.pieces.clear();
        for (std::size_t w = 0; w < request.wishes.size(); ++w) out.pieces.push_back({w, "", 0});
        out.placing = out.problem;
        out.placed = out.allocation;
        out.by_piece = false;
        return;
    }
    for (std::size_t w = 0; w < request.wishes.size(); ++w) {
        if (!request.wishes[w].plan) continue;
        out.parts[w].metres = {};
        for (const auto& piece : out.pieces)
            if (piece.wish == w) out.parts[w].metres += of_cm(piece.length);
    }
}

}  // namespace

Split split(const YarnProfile& yarn, const SplitRequest& request, const Effort& effort) {
    if (request.wishes.empty()) throw Refused("nothing to split the skeins over");
    using Stage = Progress::Stage;
    Split out;
    out.problem = problem_of(yarn, request);
    out.allocation = allocate(out.problem, effort);
    if (!out.found()) {
        out.parts.resize(request.wishes.size());
        out.stopped = effort.stop.stop_requested();
        out.lacking = least_more(out.problem, most_more, in_stage(effort, Stage::why_not));
        return out;
    }
    read_parts(request, out);
    read_sizes(request, out);
    place_pieces(yarn, request, in_stage(effort, Stage::where_from), out);
    read_sizes(request, out);
    wind_off(yarn, request, out);
    out.unmet = unmet(out.problem, out.allocation, in_stage(effort, Stage::why_not));
    out.stopped = effort.stop.stop_requested();
    return out;
}

}  // namespace gristwright::allocation
