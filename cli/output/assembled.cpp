#include "cli/output/assembled.hpp"

#include <algorithm>
#include <cmath>

#include "cli/output/laying.hpp"

namespace gristwright::cli {
namespace {

constexpr double gap = 4;                // cm between things that are not joined
constexpr double shortest_fringe = 5.5;  // cm; less at a cloth's end is turned in as a hem

struct Upwards {
    std::string_view kind;
    std::vector<std::string_view> names;
};

// From below, as they are used.
const std::vector<Upwards>& stacks() {
    static const std::vector<Upwards> all = {
        {"hat", {"brim", "ground", "pattern", "body", "crown"}},
        {"cowl", {"rim", "ground", "pattern", "body", "rim"}},
        {"cosy", {"body", "neck"}},
        {"tea cosy", {"side", "crown"}},
        {"stole", {"end", "body", "end"}},
        {"wrap", {"end", "body", "end"}},
        {"bag", {"base", "body", "rim"}},
        {"top", {"hem", "body", "upper"}},
    };
    return all;
}

using Layer = void (*)(Laying&);
struct Kind {
    std::string_view name;
    Layer lay;
};

const Kind kinds[] = {
    {"pullover", lay_worn_on_body}, {"cardigan", lay_worn_on_body}, {"vest", lay_front_and_back},
    {"mittens", lay_pair_of_hands}, {"mitts", lay_pair_of_hands},   {"gloves", lay_pair_of_hands},
    {"socks", lay_pair_of_feet},    {"bootees", lay_pair_of_feet},  {"slippers", lay_pair_of_feet},
    {"shawl", lay_with_edge},
};

// Joined into one, or a set of them.
bool joined_up(std::string_view kind) {
    constexpr std::string_view made_of_many[] = {"blanket", "scarf", "shawl",   "wrap",
                                                 "poncho",  "throw", "cushion", "bag"};
    return std::find(std::begin(made_of_many), std::end(made_of_many), kind) !=
           std::end(made_of_many);
}

// How many stand in a row: strips side by side, squares as square as they go, a scarf two wide.
int columns(const PlanPiece& p, std::string_view kind) {
    const int count = p.piece->count;
    const auto size = flat(p.outline);
    if (size.height > 1.3 * size.width) return count;
    if (kind == "scarf") return std::min(2, count);
    int out = std::max(1, int(std::sqrt(double(count))));
    while (count % out != 0) --out;
    return out;
}

void lay_alike(Laying& laying) {
    const auto& p = laying.plan().pieces.front();
    const auto& kind = laying.plan().article->article;
    const auto size = flat(p.outline);
    const double apart = joined_up(kind) ? 0 : gap;
    const int wide = columns(p, kind);
    for (int i = 0; i < p.piece->count; ++i)
        laying.lay(p, size,
                   standing(size, {(i % wide) * (size.width + apart),
                                   -(i / wide) * (size.height + apart)}));
}

// Narrow strips that are worked along a long side.
void lay_sides(Laying& laying, double height) {
    const auto size = laying.size("side"),
               body = laying.size("body").width > 0 ? laying.size("body") : laying.size("panel");
    if (size.width <= 0 || size.width > 5) return;
    for (const double side : {-1.0, 1.0})
        if (const auto* p = laying.next("side"))
            laying.lay(*p, size,
                       standing(size, {side * (body.width + size.width) / 2,
                                       -(height - size.height) / 2}));
}

void lay_stacked(Laying& laying, std::string_view kind) {
    for (const auto& one : stacks())
        if (one.kind == kind) return lay_sides(laying, -laying.stack(one.names, {0, 0}));
    std::vector<std::string_view> as_listed;
    for (const auto& p : laying.plan().pieces)
        if (p.piece->name != "side") as_listed.push_back(p.piece->name);
    lay_sides(laying, -laying.stack(as_listed, {0, 0}));
}

void lay_all(Laying& laying) {
    const auto& plan = laying.plan();
    const auto& kind = plan.article->article;
    if (plan.pieces.size() == 1) return lay_alike(laying);
    for (const auto& one : kinds)
        if (one.name == kind) return one.lay(laying);
    lay_stacked(laying, kind);
}

// Threads at both ends of a woven piece.
void add_fringe(const Placed& placed, double length, std::vector<Line>& out) {
    Bounds box;
    box.hold(placed.edge);
    const int threads = std::max(4, int(box.width() / 1.6));
    for (int i = 0; i <= threads; ++i) {
        const double x = box.low.x + 0.3 + (box.width() - 0.6) * i / threads;
        out.push_back({{x, box.low.y}, {x, box.low.y - length}});
        out.push_back({{x, box.high.y}, {x, box.high.y + length}});
    }
}

}  // namespace

Pose standing(Flat size, Point foot, double turn, bool mirrored) {
    Pose out{{}, mirrored ? -turn : turn, 1, mirrored};
    const auto middle = out.at(Point{size.width / 2, size.height});
    out.shift = {foot.x - middle.x, foot.y - middle.y};
    return out;
}

std::size_t Laying::laid(const PlanPiece& piece) const {
    return std::size_t(std::count_if(out_.parts.begin(), out_.parts.end(),
                                     [&](const Placed& one) { return one.piece == &piece; }));
}

const PlanPiece* Laying::next(std::string_view name) const {
    for (const auto& p : plan_.pieces)
        if (p.piece->name == name && laid(p) < std::size_t(p.piece->count)) return &p;
    return nullptr;
}

Flat Laying::size(std::string_view name) const {
    const auto* p = plan_.piece_named(name);
    return p ? flat(p->outline) : Flat{};
}

Placed& Laying::lay(const PlanPiece& piece, Flat size, const Pose& pose, bool capped) {
    auto outline = piece.outline;
    if (!capped && outline.shape == Shape::cap) outline.shape = Shape::tube;
    auto row = [=](double t) { return pose.at(row_line(outline, {0, 0}, size, t).along()); };
    out_.parts.push_back({.piece = &piece,
                          .edge = pose.at(outline_path(outline, {0, 0}, size).along()),
                          .row = std::move(row)});
    return out_.parts.back();
}

Placed& Laying::lay_between(const PlanPiece& piece, const Line& from, const Line& to) {
    Line edge = from;
    edge.insert(edge.end(), to.rbegin(), to.rend());
    auto row = [=](double t) {
        Line out;
        for (std::size_t i = 0; i < from.size(); ++i)
            out.push_back(
                {from[i].x + t * (to[i].x - from[i].x), from[i].y + t * (to[i].y - from[i].y)});
        return out;
    };
    out_.parts.push_back({.piece = &piece, .edge = std::move(edge), .row = std::move(row)});
    return out_.parts.back();
}

double Laying::stack(std::initializer_list<std::string_view> upwards, Point foot) {
    return stack(std::vector<std::string_view>(upwards), foot);
}

double Laying::stack(const std::vector<std::string_view>& upwards, Point foot) {
    for (std::size_t i = 0; i < upwards.size(); ++i) {
        const auto* p = next(upwards[i]);
        if (!p) continue;
        const bool covered = std::any_of(upwards.begin() + std::ptrdiff_t(i) + 1, upwards.end(),
                                         [&](auto name) { return next(name) && next(name) != p; });
        const auto size = flat(p->outline);
        lay(*p, size, standing(size, foot), !covered);
        foot.y -= size.height;
    }
    return foot.y;
}

const PlanPiece* Laying::left_over() const {
    for (const auto& p : plan_.pieces)
        if (laid(p) < std::size_t(p.piece->count)) return &p;
    return nullptr;
}

Assembled Laying::done() {
    const bool nothing = out_.parts.empty();
    auto box = out_.bounds(true);
    if (nothing) box = {{0, 0}, {0, 0}};
    while (const auto* p = left_over()) {
        const auto size = flat(p->outline);
        const Point foot{(box.low.x + box.high.x) / 2, box.high.y + gap + size.height};
        lay(*p, size, standing(size, foot)).loose = !nothing;
        box.hold(out_.parts.back().edge);
    }
    if (has_fringe(*plan_.article))
        for (const auto& placed : out_.parts)
            add_fringe(placed, in_centimetres(plan_.article->fringe), out_.fringe);
    return std::move(out_);
}

Bounds Assembled::bounds(bool with_loose) const {
    Bounds out;
    for (const auto& placed : parts)
        if (with_loose || !placed.loose) out.hold(placed.edge);
    for (const auto& thread : fringe) out.hold(thread);
    return out;
}

Bounds Assembled::measured() const {
    constexpr double joined = 0.2;  // cm; things that are not joined lie further apart
    Bounds out;
    if (!parts.empty()) out.hold(parts.front().edge);
    for (bool grown = true; grown;) {
        grown = false;
        for (const auto& placed : parts) {
            if (placed.loose) continue;
            Bounds own;
            own.hold(placed.edge);
            const bool touches = own.low.x < out.high.x + joined &&
                                 own.high.x > out.low.x - joined &&
                                 own.low.y < out.high.y + joined && own.high.y > out.low.y - joined;
            const auto before = out;
            if (touches) out.hold(placed.edge);
            grown = grown || out.width() > before.width() || out.height() > before.height();
        }
    }
    return out;
}

bool has_fringe(const Template& article) {
    return article.craft == Craft::woven && in_centimetres(article.fringe) > shortest_fringe;
}

bool is_on_frame(const Template& article) {
    return article.craft == Craft::woven && article.loom == Loom::pins;
}

Assembled assembled(const Plan& plan) {
    Laying laying(plan);
    lay_all(laying);
    return laying.done();
}

}  // namespace gristwright::cli
