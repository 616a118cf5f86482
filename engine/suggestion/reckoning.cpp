// A length stated at a gauge stays that length while the gauge is kept. With the stitches kept and
// the gauge changed it goes as the loop does, and so does the size: w = kw / l (cloth/loop.hpp).
// Where that size would be of no use the size is kept: the stitches of an area go as 1 / l^2, and
// their length as 1 / l.
#include "engine/suggestion/reckoning.hpp"

#include <algorithm>
#include <cmath>

#include "engine/evidence/spin.hpp"
#include "engine/suggestion/best.hpp"
#include "engine/suggestion/constants.hpp"

namespace gristwright {

using namespace constants;

namespace {

// The middle of a class's gauge or grist, as the trade's table has it.
std::optional<Gauge> gauge_of(const WeightClass& c) {
    if (!c.stitches_4in_low || !c.stitches_4in_high) return {};
    return stitches_per_inch((*c.stitches_4in_low + *c.stitches_4in_high) / 8);
}

// What will be needed: a stated amount is what a pattern asks one to buy, and it is used up to
// that.
Estimate<Length> used_of(const SuggestionAnswer& out) {
    if (out.basis == SuggestionAnswer::Basis::template_plan) return out.need;
    return {out.need.mid * (1 - stated_allowance), out.need.spread};
}

}  // namespace

void take_stated(const Suggestion& s, const Ground& ground, const Plan& plan, Length stated,
                 SuggestionAnswer& out) {
    out.need = {stated, stated_amount};
    out.stated = stated;
    const auto& first = plan.pieces.front();
    if (!first.knit) return;
    auto gauge = s.gauge;
    if (!gauge) gauge = of_class(ground.classes, s.weight_class, gauge_of);
    if (!gauge) return;
    out.gauge_of_class = !s.gauge;
    const auto loop = loop_from_stitches(*gauge, Relaxation::full);
    const auto band = first.knit->wanted;
    out.tightness = tightness(ground.yarn.linear_density.mid, loop);
    if (out.tightness >= band.low * (1 - gauge_slack) &&
        out.tightness <= band.high * (1 + gauge_slack))
        return;
    const double larger = first.knit->loop / loop;
    const auto size = out.size * larger;
    const bool of_use = size >= plan.article->smallest && size <= plan.article->largest;
    out.suiting = first.knit->gauge.mid;
    using Kept = SuggestionAnswer::Kept;
    out.kept = of_use ? Kept::stitches : Kept::size;
    if (of_use) out.size = size;
    out.need.mid = of_use ? stated * larger : stated / larger;
}

// "heel turn" is of the heels, "neck band" the neckband.
static bool is_named(std::string_view piece, std::string_view said) {
    while (!piece.empty()) {
        const auto word = piece.substr(0, piece.find(' '));
        if (said.find(word) != std::string_view::npos) return true;
        piece.remove_prefix(std::min(word.size() + 1, piece.size()));
    }
    return false;
}

void look_at_part(const Ground& ground, const Plan& plan, SuggestionAnswer& out) {
    Length part, all;
    for (const auto& piece : plan.pieces) {
        all += piece.metres.mid;
        if (is_named(piece.piece->name, out.taken.role_said)) part += piece.metres.mid;
    }
    if (all <= Length{}) return;
    out.part = out.need.mid * (part / all);
    const Estimate<Length> need{out.part, out.need.spread};
    out.part_reaches = chance_of_enough(need, plan.have) >= ground.request.certainty;
}

void look_at_sett(const Suggestion& s, const Plan& plan, SuggestionAnswer& out) {
    const auto& first = plan.pieces.front();
    if (!s.sett || !first.woven) return;
    out.share = *s.sett / first.woven->greatest;
    out.suiting_share = first.woven->wanted;
}

void compare_metres(const Ground& ground, const Plan& plan, SuggestionAnswer& out) {
    const auto& have = plan.have;
    const auto used = used_of(out);
    out.certainty = chance_of_enough(used, have);
    out.left = std::max(Length{}, have.mid - out.need.mid);
    if (out.certainty >= ground.request.certainty) {
        out.reach = Reach::enough;
        return;
    }
    const double aside = set_aside(ground.request.certainty, used.spread, have.spread);
    out.short_by = std::max(Length{}, used.mid * aside - have.mid);
    out.margin = std::max(Length{}, used.mid * aside - out.need.mid);
    out.spin_more = fibre_for(out.short_by, ground.yarn.linear_density.mid, spinning_losses);
    // The template says how metres go with size; the amount that was stated scales it.
    const auto& t = *plan.article;
    const double asked = out.size / t.ideal;
    const double scale = used.mid.si() / plan.by_size.at(asked);
    const double fits = plan.by_size.largest(have.mid.si() / aside / scale, asked);
    if (out.kept != SuggestionAnswer::Kept::stitches && fits >= t.smallest / t.ideal) {
        out.reach = Reach::enough_if_smaller;
        out.size_that_fits = metres(std::floor(fits * t.ideal.si() * 100 + 1e-6) / 100);
    } else {
        out.reach = Reach::short_of;
    }
}

void compare_at_hand(const Ground& ground, const Plan& plan, SuggestionAnswer& out) {
    const auto& taken = out.taken;
    if (taken.other_yarn) return;
    if (taken.at_hand) out.at_hand = *taken.at_hand;
    if (taken.at_hand_mass) out.at_hand = *taken.at_hand_mass / ground.yarn.linear_density.mid;
    const auto skeins = static_cast<double>(ground.yarn.skeins.size());
    if (taken.at_hand_skeins && *taken.at_hand_skeins <= skeins)
        out.at_hand = plan.have.mid * (*taken.at_hand_skeins / skeins);
    if (taken.share_of_yarn) out.at_hand = plan.have.mid * *taken.share_of_yarn;
    if (out.at_hand <= Length{}) return;
    const auto used = used_of(out);
    const double aside = set_aside(ground.request.certainty, used.spread, 0);
    out.at_hand_lacks = std::max(Length{}, used.mid * aside - out.at_hand);
}

std::optional<Length> off_this_warp(const Plan& plan, Length warp, std::optional<Length> waste) {
    const auto& t = *plan.article;
    const auto& first = plan.pieces.front();
    if (!first.woven || t.measure != "length" || t.pieces.size() != 1 || first.piece->count != 1)
        return {};
    const auto bare = std::max(t.loom_waste, t.fringe * 2);
    const double a_length = (first.panel.warp_per_end - bare) / plan.size;
    const auto out = (warp - std::max(waste.value_or(t.loom_waste), t.fringe * 2)) / a_length;
    if (out <= Length{}) return {};
    return out;
}

void look_at_sizes(const Suggestion& s, const Ground& ground, const Plan& plan,
                   SuggestionAnswer& out) {
    const auto& t = *plan.article;
    const double scale = out.need.mid.si() / plan.by_size.at(out.size / t.ideal);
    for (const auto size : s.sizes) {
        const Estimate<Length> need{metres(plan.by_size.at(size / t.ideal) * scale),
                                    out.need.spread};
        if (chance_of_enough(need, plan.have) >= ground.request.certainty)
            out.largest_offered = std::max(out.largest_offered, size);
    }
}

void count_repeats(const Plan& plan, SuggestionAnswer& out) {
    const auto& first = plan.pieces.front();
    if (out.reach != Reach::enough_if_smaller || !first.knit) return;
    const int repeat = first.knit->fabric->row_repeat;
    if (repeat < 4 || first.piece->grows == Grows::width) return;
    const double smaller = 1 - out.size_that_fits / out.size;
    out.fewer_repeats = static_cast<int>(std::ceil(first.rows * smaller / repeat));
}

Reach reach_of(const Estimate<Length>& need, const Plan& plan, double asked) {
    if (chance_of_enough(need, plan.have) >= asked) return Reach::enough;
    const double aside = set_aside(asked, need.spread, plan.have.spread);
    const auto& t = *plan.article;
    const double least = plan.by_size.at(t.smallest / t.ideal) / plan.by_size.at(1);
    return need.mid.si() * least * aside <= plan.have.mid.si() ? Reach::enough_if_smaller
                                                               : Reach::short_of;
}

void look_around(const Ground& ground, const Plan& plan, SuggestionAnswer& out) {
    const auto& first = plan.pieces.front();
    if (first.knit) out.usual_needle = first.knit->needle, out.usual_gauge = first.knit->stitches;
    if (first.woven && out.taken.loom_width)
        out.off_loom = *out.taken.loom_width * (1 - first.woven->width.mid);
    const auto& t = *plan.article;
    const double aside = set_aside(ground.request.certainty, plan.need.spread, plan.have.spread);
    const double one = plan.by_size.at(out.size / t.ideal) / articles_made(t) * aside;
    out.possible = static_cast<int>(std::floor(plan.have.mid.si() / one));
    const double fits =
        plan.by_size.largest(plan.have.mid.si() / aside, t.largest / t.ideal) * t.ideal.si();
    out.largest = metres(std::floor(fits * 100 + 1e-6) / 100);
}

void count_in_strands(double strands, SuggestionAnswer& out) {
    for (auto* metres : {&out.need.mid, &out.left, &out.short_by, &out.margin, &out.stated})
        *metres = *metres * strands;
    out.spin_more = out.spin_more * strands;
}

}  // namespace gristwright
