#include "engine/project/counts.hpp"

#include <algorithm>
#include <cmath>

#include "engine/project/heel.hpp"

namespace gristwright {
namespace {

constexpr int even = 2;

const Counting& of(const PlanPiece& p) { return p.piece->counting; }

int nearest(double count, int multiple) {
    return multiple * std::max(1, static_cast<int>(std::lround(count / multiple)));
}

// Shaping rows that bring it about that many stitches further; at least none, at most one a row.
int shaping_rows(const PlanPiece& p, double stitches, int by) {
    return std::clamp(static_cast<int>(std::lround(stitches / by)), 0,
                      p.rows / std::max(1, of(p).every));
}

void take_over(Plan& plan, PlanPiece& p) {
    if (of(p).stitches_of.empty()) return;
    if (const auto* from = plan.piece_named(of(p).stitches_of))
        p.stitches = from->stitches / of(p).part;
}

// Where it grows from a few stitches, or goes on growing from another piece's.
void grow(PlanPiece& p) {
    const auto& c = of(p);
    if (c.doubles > 0) {
        p.few_stitches = p.stitches = c.begins;
        for (int row = c.doubles; row <= p.rows; row *= 2) p.stitches *= 2;
    } else if (c.every > 0 && (c.begins > 0 || !c.stitches_of.empty())) {
        p.few_stitches = c.begins > 0 ? c.begins : p.stitches;
        p.stitches = p.few_stitches + c.by * (p.rows / c.every);
    } else if (c.begins > 0) {
        p.few_stitches = c.begins;
        p.stitches = c.begins + c.by * shaping_rows(p, p.stitches - c.begins, c.by);
    }
}

// From a corner there are as many rows as stitches come and go.
void grow_and_shrink(PlanPiece& p) {
    p.few_stitches = std::min(std::max(1, of(p).begins), p.stitches);
    p.rows = 2 * (p.stitches - p.few_stitches);
}

// A yoke holds what body and sleeves bring to it, less the underarms.
int underarm_of(const Plan& plan, const PlanPiece& yoke) {
    const double size = plan.size / plan.article->ideal;
    return nearest(yoke.knit->stitches * of(yoke).underarm * size, even);
}

void join(Plan& plan, PlanPiece& p) {
    if (of(p).underarm.si() <= 0) return;
    const auto* body = plan.piece_named("body");
    const auto* sleeve = plan.piece_named("sleeve");
    if (!body || !sleeve) return;
    p.stitches = body->stitches + 2 * sleeve->stitches - 4 * underarm_of(plan, p);
}

void narrow(PlanPiece& p) {
    const auto& c = of(p);
    const double few = p.stitches * (p.outline.narrow / p.outline.width);
    const int by = c.by > 0 ? c.by : even;
    p.few_stitches =
        c.steps > 0 ? nearest(few, even) : p.stitches - by * shaping_rows(p, p.stitches - few, by);
}

// A shape that its counts decide.
void as_counted(PlanPiece& p) {
    const auto wide = [&](int stitches) {
        return Length::from_si(stitches / p.knit->stitches.si());
    };
    p.outline.width = wide(p.stitches);
    p.outline.narrow = wide(p.few_stitches);
    p.outline.length = Length::from_si(p.rows / p.knit->rows.si());
}

void turn_heel(const Plan& plan, PlanPiece& p) {
    const auto* flap = of(p).turns.empty() ? nullptr : plan.piece_named(of(p).turns);
    if (!flap) return;
    const auto turn = turned(flap->stitches);
    p.stitches = turn.stitches;
    p.few_stitches = turn.first;
    p.rows = turn.rows;
    as_counted(p);
}

// Two stitches go in every second round until none is left over.
void take_up_gusset(const Plan& plan, PlanPiece& p) {
    const auto* flap = of(p).gusset_of.empty() ? nullptr : plan.piece_named(of(p).gusset_of);
    if (!flap) return;
    p.stitches = p.rows = std::max(even, gusset_of(flap->stitches, flap->rows));
    p.few_stitches = 0;
    as_counted(p);
}

void close_rows(Plan& plan, PlanPiece& p) {
    const auto& c = of(p);
    if (const auto* edge = c.along.empty() ? nullptr : plan.piece_named(c.along)) {
        p.stitches =
            std::max(1, static_cast<int>(std::lround(p.knit->stitches * p.piece->outline.length)));
        p.rows = 2 * edge->stitches * edge->piece->count;
    }
}

// What two yarns knit together in the same rows stands as two pieces, each with its share of them.
void share_rows(Plan& plan, PlanPiece& p) {
    if (of(p).within.empty()) return;
    auto* whole = plan.piece_named(of(p).within);
    if (!whole || whole->piece->yarn == p.piece->yarn) return;
    whole->rows += p.rows;
    p.rows = whole->rows;
    p.stitches = whole->stitches;
}

}  // namespace

void close_counts(Plan& plan) {
    if (plan.article->craft != Craft::knitted) return;
    for (auto& p : plan.pieces) {
        if (p.outline.shape == Shape::square_from_corner) grow_and_shrink(p);
        take_over(plan, p);
        if (p.outline.shape != Shape::square_from_corner) grow(p);
        join(plan, p);
        if (p.outline.shape == Shape::taper) narrow(p);
        turn_heel(plan, p);
        take_up_gusset(plan, p);
        share_rows(plan, p);
    }
    for (auto& p : plan.pieces) close_rows(plan, p);
}

}  // namespace gristwright
