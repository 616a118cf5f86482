// A length stated at a gauge stays that length while the gauge is kept; with the stitches kept and
// the gauge changed it goes as the loop does, and so does the size: w = kw / l (cloth/loop.hpp).
#include "engine/suggestion/answer.hpp"

#include <algorithm>
#include <cmath>

#include "engine/suggestion/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

// The middle of a class's gauge or grist, as the trade's table has it.
std::optional<Gauge> gauge_of(const WeightClass& c) {
    if (!c.stitches_4in_low || !c.stitches_4in_high) return {};
    return stitches_per_inch((*c.stitches_4in_low + *c.stitches_4in_high) / 8);
}

std::optional<LinearDensity> grist_of(const WeightClass& c) {
    if (!c.yd_per_lb_low || !c.yd_per_lb_high) return {};
    return pounds(1) / yards(std::sqrt(*c.yd_per_lb_low * *c.yd_per_lb_high));
}

template <class Row, class Get>
auto of_class(const std::vector<Row>& classes, std::optional<int> number, Get get)
    -> decltype(get(classes.front())) {
    for (const auto& c : classes)
        if (number && c.number == *number) return get(c);
    return {};
}

bool is_in_fabric(const Template& article, const std::string& fabric) {
    return std::any_of(article.pieces.begin(), article.pieces.end(),
                       [&](const auto& piece) { return piece.fabric == fabric; });
}

// The whole template in another fabric: its largest piece, which gives the article its character.
Template in_fabric(Template article, const std::string& fabric) {
    auto largest = std::max_element(
        article.pieces.begin(), article.pieces.end(),
        [](const auto& a, const auto& b) { return area(a.outline) < area(b.outline); });
    largest->fabric = fabric;
    std::iter_swap(article.pieces.begin(), largest);
    auto& definition = article.wishes[static_cast<std::size_t>(Asked::definition)];
    definition.weight = std::max<double>(definition.weight, asked_character);
    return article;
}

}  // namespace

struct Answerer::Best {
    Plan plan;  // at the ideal size
    Judgement judgement;
    bool drawn = false;  // in the fabric that was asked for

    // What was asked for comes before what is only put into it; hard fulling, which nobody asked
    // for and which cannot be undone, comes last.
    auto rank() const {
        const auto& article = *plan.article;
        const bool gentle =
            article.craft == Craft::knitted || article.finish != Finish::hard_fulled;
        return std::tuple(drawn, gentle, judgement.score);
    }
};

Answerer::Answerer(const Ground& ground) : ground_(ground) {}
Answerer::~Answerer() = default;

// The template of that kind that this yarn serves best; nullptr when there is none.
const Answerer::Best* Answerer::best(const std::string& article, std::optional<Craft> craft,
                                     const NamedFabric& named) {
    const std::tuple key{article, craft, named};
    if (const auto found = known_.find(key); found != known_.end()) return found->second.get();
    std::unique_ptr<Best> best;
    for (const auto& t : ground_.templates) {
        if (t.article != article || (craft && t.craft != *craft)) continue;
        const auto& fabric = named.in(t.craft);
        if (named.named() && fabric.empty()) continue;
        const bool drawn = !fabric.empty() && is_in_fabric(t, fabric);
        auto next = std::make_unique<Best>();
        auto request = ground_.request;
        request.size = t.ideal;
        next->plan = plan(fabric.empty() ? t : in_fabric(t, fabric), ground_.yarn, ground_.fabrics,
                          ground_.owned, request);
        next->drawn = drawn;
        next->judgement = judge(next->plan, ground_.yarn);
        if (!best || next->rank() > best->rank()) best = std::move(next);
    }
    return (known_[key] = std::move(best)).get();
}

namespace {

// What the amount that was stated comes to with this yarn.
void take_stated(const Suggestion& s, const Ground& ground, const Plan& plan, Length stated,
                 SuggestionAnswer& out) {
    out.need = {stated, stated_amount};
    const auto& first = plan.pieces.front();
    if (!first.knit) return;
    auto gauge = s.gauge;
    if (!gauge) gauge = of_class(ground.classes, s.weight_class, gauge_of);
    if (!gauge) return;
    const auto loop = loop_from_stitches(*gauge, Relaxation::full);
    const auto band = tightness_band(first.knit->purpose);
    out.tightness = tightness(ground.yarn.linear_density.mid, loop);
    if (out.tightness >= band.low * (1 - gauge_slack) &&
        out.tightness <= band.high * (1 + gauge_slack))
        return;
    const double larger = first.knit->loop / loop;
    out.suiting = first.knit->gauge.mid;
    out.stitches_kept = true;
    out.size = out.size * larger;
    out.need.mid = stated * larger;
}

void look_at_sett(const Suggestion& s, const Plan& plan, SuggestionAnswer& out) {
    const auto& first = plan.pieces.front();
    if (!s.sett || !first.woven) return;
    out.share = *s.sett / first.woven->greatest;
    out.suiting_share = first.woven->wanted;
}

void compare_metres(const Ground& ground, const Plan& plan, SuggestionAnswer& out) {
    const auto& have = plan.have;
    out.certainty = chance_of_enough(out.need, have);
    out.left = std::max(Length{}, have.mid - out.need.mid);
    if (out.certainty >= ground.request.certainty) {
        out.reach = Reach::enough;
        return;
    }
    const double aside = set_aside(ground.request.certainty, out.need.spread, have.spread);
    out.short_by = std::max(Length{}, out.need.mid * aside - have.mid);
    out.spin_more = out.short_by * ground.yarn.linear_density.mid * (1 + spinning_losses);
    // The template says how metres go with size; the amount that was stated scales it.
    const auto& t = *plan.article;
    const double asked = out.size / t.ideal;
    const double scale = out.need.mid.si() / plan.by_size.at(asked);
    const double fits = plan.by_size.largest(have.mid.si() / aside / scale, asked);
    if (!out.stitches_kept && fits >= t.smallest / t.ideal) {
        out.reach = Reach::enough_if_smaller;
        out.size_that_fits = metres(std::floor(fits * t.ideal.si() * 100 + 1e-6) / 100);
    } else {
        out.reach = Reach::short_of;
    }
}

// The largest of the sizes it comes in that the metres reach for.
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

// A pattern of many rows gets smaller by whole repeats.
void count_repeats(const Plan& plan, SuggestionAnswer& out) {
    const auto& first = plan.pieces.front();
    if (out.reach != Reach::enough_if_smaller || !first.knit) return;
    const int repeat = first.knit->fabric->row_repeat;
    if (repeat < 4 || first.piece->grows == Grows::width) return;
    const double smaller = 1 - out.size_that_fits / out.size;
    out.fewer_repeats = static_cast<int>(std::ceil(first.rows * smaller / repeat));
}

std::string what_to_ask(const Understood& understood) {
    if (understood.article.empty() && understood.unknown.empty()) return "what is it to be?";
    if (!understood.article.empty()) return "";
    std::string words;
    for (std::size_t i = 0; i < std::min<std::size_t>(3, understood.unknown.size()); ++i)
        words += (i ? ", " : "") + understood.unknown[i];
    return "which article is meant by '" + words + "'?";
}

std::string none_such(const Understood& understood, std::optional<Craft> craft) {
    std::string what = craft ? std::string(words(*craft)) + " " : std::string();
    what += understood.article;
    const auto& fabric = understood.fabric;
    if (fabric.named()) what += " in " + (fabric.knitted.empty() ? fabric.woven : fabric.knitted);
    return "there is no " + what + " in the catalogue: which craft and fabric would do?";
}

}  // namespace

SuggestionAnswer Answerer::answer(const Suggestion& s) {
    SuggestionAnswer out;
    out.understood = understand(s.idea, ground_.words);
    const auto craft = s.craft ? s.craft : out.understood.craft;
    out.ask = what_to_ask(out.understood);
    if (!out.ask.empty()) return out;
    const auto* found = best(out.understood.article, craft, out.understood.fabric);
    if (!found) {
        out.ask = none_such(out.understood, craft);
        return out;
    }
    auto grist = s.grist;
    if (!grist) grist = of_class(ground_.classes, s.weight_class, grist_of);
    if (s.needs_mass && !s.needs && !grist) {
        out.ask = "how many metres is that mass: which yarn was it?";
        return out;
    }
    out.answered = true;
    const auto& plan = found->plan;
    out.article = plan.article;
    if (!found->drawn) out.put_into = out.understood.fabric.in(plan.article->craft);
    out.judgement = found->judgement;
    out.obstacles = plan.obstacles;
    out.size = s.size ? *s.size : plan.article->ideal;
    if (s.needs || s.needs_mass) {
        using Basis = SuggestionAnswer::Basis;
        out.basis = s.needs ? Basis::stated_length : Basis::stated_mass;
        take_stated(s, ground_, plan, s.needs ? *s.needs : *s.needs_mass / *grist, out);
    } else {
        out.need = {metres(plan.by_size.at(out.size / plan.article->ideal)), plan.need.spread};
        if (s.gauge && plan.pieces.front().knit)
            out.tightness = tightness(ground_.yarn.linear_density.mid,
                                      loop_from_stitches(*s.gauge, Relaxation::full));
    }
    look_at_sett(s, plan, out);
    compare_metres(ground_, plan, out);
    look_at_sizes(s, ground_, plan, out);
    count_repeats(plan, out);
    if (out.reach == Reach::short_of && craft) {
        const auto other = *craft == Craft::knitted ? Craft::woven : Craft::knitted;
        const auto* instead = best(out.understood.article, other, {});
        out.other_craft_reaches = instead && instead->plan.certainty >= ground_.request.certainty &&
                                  serves(instead->judgement.score) <= Serves::fairly;
    }
    return out;
}

}  // namespace gristwright
