#include "engine/project/plan.hpp"

#include <algorithm>
#include <cmath>

#include "engine/project/on_the_loom.hpp"
#include "engine/project/realise.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

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

}  // namespace

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

bool is_hard_fulled(const Template& article, const Fabrics& fabrics) {
    if (article.craft == Craft::woven) return article.finish == Finish::hard_fulled;
    const auto* fabric = fabrics.knitted_named(article.pieces.front().fabric);
    return fabric && fabric->fulled;
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

template <class Pieces>
static auto* named(Pieces& pieces, std::string_view name) {
    const auto found = std::find_if(pieces.begin(), pieces.end(),
                                    [&](const PlanPiece& p) { return p.piece->name == name; });
    return found == pieces.end() ? nullptr : &*found;
}

const PlanPiece* Plan::piece_named(std::string_view name) const { return named(pieces, name); }
PlanPiece* Plan::piece_named(std::string_view name) { return named(pieces, name); }

Length Plan::left() const { return std::max(have.mid - need.mid, Length{}); }

Plan plan(const Template& article, const YarnProfile& yarn, const Fabrics& fabrics,
          const Equipment& owned, const Request& request) {
    return plan(std::make_shared<const Template>(article), yarn, fabrics, owned, request);
}

Plan plan(std::shared_ptr<const Template> shared, const YarnProfile& yarn, const Fabrics& fabrics,
          const Equipment& owned, const Request& request) {
    if (!(request.certainty >= 0.5 && request.certainty <= 0.999))
        throw Refused("certainty is from 50 to 99.9 %");
    Plan out;
    out.article = on_this_loom(std::move(shared), owned);
    const auto& article = *out.article;
    out.asked = request.certainty;
    out.other = request.other;
    out.have = {std::max(yarn.length.mid - request.keep, Length{}), yarn.length.spread};

    const auto costed = costs(out.article, yarn, request.other, fabrics, owned);
    const auto sum = total(costed);
    out.by_size = sum.need;
    const double most = equipment_limit(article, costed, owned, out);

    // P(need <= have) = asked, solved for the median need.
    const double aside = set_aside(request.certainty, sum.spread, out.have.spread);
    const double reached = sum.need.largest(out.have.mid.si() / aside, most);
    const auto fits = whole_size(article.ideal * reached);

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
