#include "engine/project/plan.hpp"

#include "engine/project/constants.hpp"
#include "engine/project/on_the_loom.hpp"
#include "engine/units/failure.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace gristwright {
namespace {

using namespace constants;

constexpr double size_step = 0.01;  // sizes are whole centimetres

bool width_grows(Grows g) { return g == Grows::width || g == Grows::both; }
bool length_grows(Grows g) { return g == Grows::length || g == Grows::both; }

// What one piece's cloth makes of it: its metres by how they grow, and their relative margin.
struct Costed {
    std::shared_ptr<const PieceTemplate> piece;
    std::optional<KnitCloth> knit;
    std::optional<WovenCloth> woven;
    Need need;   // of this batch
    Need other;  // of the other yarn
    double spread = 0;
};

void add(Need& need, int powers, double metres) {
    (powers == 0 ? need.fixed : powers == 1 ? need.linear : need.square) += metres;
}

Costed cost_knitted(const PieceTemplate& piece, const KnitCloth& cloth) {
    Costed out{{}, cloth, {}, {}, {}, cloth.metres_per_area.spread};
    const double ours = piece.weft_ours();
    const auto divide = [&](int powers, double metres) {
        add(out.need, powers, ours * metres);
        add(out.other, powers, (1 - ours) * metres);
    };
    const int wide = width_grows(piece.grows) ? 1 : 0;
    const int along = length_grows(piece.grows) ? 1 : 0;
    const double dense = cloth.metres_per_area.mid.si() * piece.count;
    // A crown is as deep as it is wide round: what it leaves out goes as the square of the width.
    const double left_out = crown_leaves_out(piece.outline).si();
    divide(one_measure(piece.outline.shape) ? 2 * wide : wide + along,
           dense * (area(piece.outline).si() + left_out));
    divide(2 * wide, -dense * left_out);
    divide(0, joins_and_tails * piece.count);
    return out;
}

// Panels alike are woven one after the other on one warp: its waste is paid once.
Costed cost_woven(const Template& article, const PieceTemplate& piece, const WovenCloth& cloth) {
    Costed out{{}, {}, cloth, {}, {}, cloth.spread};
    const auto panel = panel_of(article, piece, cloth);
    const double reed = before_loss(panel.width, panel.width_loss).si();
    const double ends = panel.ends.si() * reed;
    const double pick = panel.picks.si() * reed * (1 + panel.weft_slack);
    const double woven = before_loss(panel.length, panel.length_loss).si();
    const double bare = panel.fringe.si() + panel.loom_waste.si();
    const int wide = width_grows(piece.grows) ? 1 : 0;
    const int along = length_grows(piece.grows) ? 1 : 0;
    const auto divide = [&](int powers, double metres, double ours) {
        add(out.need, powers, ours * metres * piece.count);
        add(out.other, powers, (1 - ours) * metres * piece.count);
    };
    const auto weave = [&](int powers, double length) {
        divide(powers, ends * length * (1 + panel.warp_take_up), piece.warp_ours());
        divide(powers, pick * length, piece.weft_ours());
    };
    weave(wide + along, woven);
    weave(wide, panel.hems.si());
    divide(wide, ends * bare, piece.warp_ours());
    if (article.loom == Loom::pins) divide(0, pin_tails, 1);
    return out;
}

Costed cost(const Template& article, const PieceTemplate& piece, const YarnProfile& yarn,
            const OtherYarn& other, const Fabrics& fabrics, const Equipment& owned) {
    const auto unknown = [&] {
        return std::out_of_range(fmt::format("template {}, piece {}: there is no {} fabric '{}'",
                                             article.name, piece.name, words(article.craft),
                                             piece.fabric));
    };
    if (article.craft == Craft::knitted) {
        const auto* fabric = article.own.knitted_named(piece.fabric);
        if (!fabric) fabric = fabrics.knitted_named(piece.fabric);
        if (!fabric) throw unknown();
        return cost_knitted(piece, knit_cloth(yarn, *fabric, article.firmness, owned.needles));
    }
    const auto* weave = article.own.weave_named(piece.fabric);
    if (!weave) weave = fabrics.weave_named(piece.fabric);
    if (!weave) throw unknown();
    return cost_woven(article, piece, weave_piece(article, piece, *weave, yarn, other, owned));
}

struct Total {
    Need need, other_yarn;
    double spread = 0;  // of the need near the ideal size; pieces share their error
};

Total total(const std::vector<Costed>& costed) {
    Total sum;
    double weighted = 0;
    for (const auto& c : costed) {
        sum.other_yarn += c.other;
        sum.need += c.need;
        weighted += c.need.at(1) * c.spread;
    }
    const double all = sum.need.at(1);
    sum.spread = all > 0 ? weighted / all : 0;
    return sum;
}

void note(Plan& out, bool is, Obstacle what) {
    if (is && std::find(out.obstacles.begin(), out.obstacles.end(), what) == out.obstacles.end())
        out.obstacles.push_back(what);
}

void note_needle(const KnitCloth& cloth, const Equipment& owned, Plan& out) {
    const bool finest = cloth.needle_wanted < nearest_needle({}, owned.needles);
    note(out, !cloth.needle_owned,
         finest ? Obstacle::finer_than_needles : Obstacle::no_needle_fits);
}

// The widest warp of whole repeats that a loom takes.
Length widest_warp(Length loom, const WovenCloth& cloth) {
    const int repeat = cloth.weave->end_repeat;
    return Length::from_si(repeat * std::floor(cloth.ends * loom / repeat + 1e-9) /
                           cloth.ends.si());
}

// The largest size the loom's width allows; notes the obstacles that stand in the way.
double equipment_limit(const Template& article, const std::vector<Costed>& costed,
                       const Equipment& owned, Plan& out) {
    double most = article.largest / article.ideal;
    for (const auto& c : costed) {
        if (c.knit) note_needle(*c.knit, owned, out);
        if (!c.woven) continue;
        note(out, !c.woven->shafts_enough, Obstacle::needs_shafts);
        note(out, !c.woven->within_reach, Obstacle::no_heddle_fits);
        note(out, !c.woven->through_hole, Obstacle::too_thick);
        if (owned.loom_width.si() <= 0) continue;
        const auto warp = widest_warp(owned.loom_width, *c.woven);
        const double fits = warp * (1 - c.woven->width.mid) / c.piece->outline.width;
        if (width_grows(c.piece->grows))
            most = std::min(most, fits);
        else
            note(out, fits < 1 - 1e-9, Obstacle::loom_too_narrow);
    }
    note(out, most < article.smallest / article.ideal, Obstacle::loom_too_narrow);
    return most;
}

// The least count that covers the size asked.
int covering(double count) { return std::max(1, static_cast<int>(std::ceil(count - 1e-6))); }

// Whole repeats, at least one, that cover a count.
int whole_repeats(double count, int repeat) {
    return repeat * ((covering(count) + repeat - 1) / repeat);
}

// A flat piece has edges: what lies beyond its whole repeats is knitted plain there, up to half a
// repeat; more than that is one repeat more.
void count_stitches(double count, int repeat, PlanPiece& out) {
    out.stitches = whole_repeats(count, repeat);
    if (out.outline.shape != Shape::rectangle) return;
    const int beyond = covering(count) % repeat;
    if (covering(count) < repeat || beyond == 0 || beyond > repeat / 2) return;
    out.stitches = covering(count);
    out.edge_stitches = beyond;
}

void realise_knitted(const KnitCloth& cloth, PlanPiece& out) {
    const auto wanted = stitches_and_rows(out.outline, cloth.stitches, cloth.rows);
    count_stitches(wanted.stitches, cloth.fabric->stitch_repeat, out);
    out.rows = whole_repeats(wanted.rows, cloth.fabric->row_repeat);
    if (out.outline.shape == Shape::rectangle || out.outline.shape == Shape::tube) {
        out.outline.width = Length::from_si(out.stitches / cloth.stitches.si());
        out.outline.length = Length::from_si(out.rows / cloth.rows.si());
    }
    const auto one = cloth.metres_per_area.mid * area(out.outline);
    out.metres = {(one + metres(joins_and_tails)) * out.piece->count, cloth.metres_per_area.spread};
    out.ours = out.metres.mid * out.piece->weft_ours();
}

void realise_woven(const Template& article, const WovenCloth& cloth, PlanPiece& out) {
    const int count = out.piece->count;
    auto panel = panel_of(article, *out.piece, cloth);
    panel.width = out.outline.width;
    panel.length = out.outline.length;
    out.panel = panel_metres(panel);
    out.outline.width = out.panel.reed_width * (1 - cloth.width.mid);
    out.warp = out.panel.warp * count;
    out.weft = out.panel.weft * count;
    if (article.loom == Loom::pins) out.weft += metres(pin_tails) * count;
    out.metres = {out.warp + out.weft, cloth.spread};
    out.ours = out.warp * out.piece->warp_ours() + out.weft * out.piece->weft_ours();
}

// The other yarn's, or this one's where nothing is known of it.
LinearDensity other_grist(const Plan& plan, const YarnProfile& yarn) {
    return plan.other.grist.si() > 0 ? plan.other.grist : yarn.linear_density.mid;
}

PlanPiece realise(const Template& article, const Costed& costed, double s) {
    PlanPiece out;
    out.piece = costed.piece;
    out.knit = costed.knit;
    out.woven = costed.woven;
    out.outline = costed.piece->outline;
    if (width_grows(out.piece->grows)) {
        out.outline.width = out.outline.width * s;
        out.outline.narrow = out.outline.narrow * s;
    }
    if (length_grows(out.piece->grows)) out.outline.length = out.outline.length * s;
    if (costed.knit) realise_knitted(*costed.knit, out);
    if (costed.woven) realise_woven(article, *costed.woven, out);
    return out;
}

void realise_at(Length size, const std::vector<Costed>& costed, const YarnProfile& yarn,
                double spread, Plan& out) {
    out.size = size;
    out.pieces.clear();
    out.need = {{}, spread};
    out.second_yarn = {};
    const auto grist = yarn.linear_density.mid;
    for (const auto& c : costed) {
        auto piece = realise(*out.article, c, size / out.article->ideal);
        piece.mass =
            piece.ours.si() > 0 ? piece.ours * grist : piece.metres.mid * other_grist(out, yarn);
        out.need.mid += piece.ours;
        out.second_yarn += piece.metres.mid - piece.ours;
        out.pieces.push_back(std::move(piece));
    }
    out.second_to_have = out.second_yarn * set_aside(out.asked, spread, 0);
    out.mass = out.need.mid * yarn.linear_density.mid;
    out.certainty = chance_of_enough(out.need, out.have);
}

double exact_multiple(double value) { return std::floor(value / size_step + 1e-6) * size_step; }

// The whole step below a size.
Length next_smaller(Length size) { return metres(exact_multiple(size.si() - size_step / 1000)); }

// Whole repeats can need a little more than the quadratic says: step down until the chance holds,
// at the last to the smallest, which need not be a whole step.
void realise_largest(Length size, Length smallest, const std::vector<Costed>& costed,
                     const YarnProfile& yarn, double spread, Plan& out) {
    realise_at(size, costed, yarn, spread, out);
    while (out.certainty < out.asked && next_smaller(size) >= smallest) {
        size = next_smaller(size);
        realise_at(size, costed, yarn, spread, out);
    }
    if (out.certainty < out.asked && size > smallest)
        realise_at(smallest, costed, yarn, spread, out);
}

}  // namespace

double Need::largest(double metres, double most) const {
    if (at(most) <= metres) return most;
    if (fixed > metres) return 0;
    // The root that stays good when the square vanishes; a crown's square is below zero.
    const double over = metres - fixed;
    const double roots = linear * linear + 4 * square * over;
    const double below = roots < 0 ? 0 : linear + std::sqrt(roots);
    return below > 0 ? std::min(most, 2 * over / below) : most;
}

Need& Need::operator+=(const Need& other) {
    fixed += other.fixed;
    linear += other.linear;
    square += other.square;
    return *this;
}

std::string_view words(Reach reach) {
    switch (reach) {
        case Reach::enough:
            return "enough";
        case Reach::enough_if_smaller:
            return "enough if smaller";
        case Reach::short_of:
            return "short";
    }
    return "";
}

std::string_view words(Obstacle obstacle) {
    switch (obstacle) {
        case Obstacle::needs_shafts:
            return "needs four shafts; a loom with one heddle cannot weave it";
        case Obstacle::loom_too_narrow:
            return "needs a wider loom, even at the smallest useful size";
        case Obstacle::no_heddle_fits:
            return "no heddle or reed near enough gives a sett for this";
        case Obstacle::finer_than_needles:
            return "wants a needle finer than any at hand";
        case Obstacle::no_needle_fits:
            return "no needle at hand is near the size for this";
        case Obstacle::too_thick:
            return "the yarn is thicker than the heddle's holes are taken to be: try one end first";
    }
    return "";
}

bool stops(Obstacle obstacle) {
    return obstacle == Obstacle::needs_shafts || obstacle == Obstacle::loom_too_narrow;
}

const KnitFabric* Fabrics::knitted_named(std::string_view name) const {
    for (const auto& row : knitted)
        if (row.name == name) return &row;
    return nullptr;
}

const Weave* Fabrics::weave_named(std::string_view name) const {
    for (const auto& row : weaves)
        if (row.name == name) return &row;
    return nullptr;
}

Length Plan::left() const { return std::max(have.mid - need.mid, Length{}); }

Plan plan(const Template& article, const YarnProfile& yarn, const Fabrics& fabrics,
          const Equipment& owned, const Request& request) {
    if (!(request.certainty >= 0.5 && request.certainty <= 0.999))
        throw Refused("certainty is from 50 to 99.9 %");
    Plan out;
    out.article = std::make_shared<const Template>(on_this_loom(article, owned));
    out.asked = request.certainty;
    out.other = request.other;
    out.have = {std::max(yarn.length.mid - request.keep, Length{}), yarn.length.spread};

    std::vector<Costed> costed;
    costed.reserve(article.pieces.size());
    for (const auto& piece : out.article->pieces) {
        costed.push_back(cost(*out.article, piece, yarn, request.other, fabrics, owned));
        costed.back().piece = {out.article, &piece};
    }
    const auto sum = total(costed);
    out.by_size = sum.need;
    const double most = equipment_limit(article, costed, owned, out);

    // P(need <= have) = asked, solved for the median need.
    const double aside = set_aside(request.certainty, sum.spread, out.have.spread);
    const double reached = sum.need.largest(out.have.mid.si() / aside, most);
    const Length fits = metres(exact_multiple(reached * article.ideal.si()));

    if (request.size) {
        realise_at(*request.size, costed, yarn, sum.spread, out);
    } else {
        const auto most_wanted = article.fitted ? std::min(fits, article.ideal) : fits;
        realise_largest(std::max(most_wanted, article.smallest), article.smallest, costed, yarn,
                        sum.spread, out);
    }
    out.covered = std::max(fits, out.size);
    if (out.certainty < request.certainty) {
        out.reach = Reach::short_of;
        out.short_by = std::max(Length{}, out.need.mid * aside - out.have.mid);
    } else {
        const auto wanted = std::min(article.ideal, request.size.value_or(article.largest));
        out.reach = out.size >= wanted ? Reach::enough : Reach::enough_if_smaller;
    }
    return out;
}

double Plan::certainty_at(Length at) const {
    // Through the piece that is really planned, whole repeats and all.
    const double smooth = by_size.at(size / article->ideal);
    const double realised = smooth > 0 ? need.mid.si() / smooth : 1;
    return chance_of_enough(by_size.at(at / article->ideal) * realised, need.spread, have.mid.si(),
                            have.spread);
}

}  // namespace gristwright
