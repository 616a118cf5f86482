// A length stated at a gauge stays that length while the gauge is kept; with the stitches kept and
// the gauge changed it goes as the loop does, and so does the size: w = kw / l (cloth/loop.hpp).
#include "engine/suggestion/answer.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/evidence/spin.hpp"
#include "engine/suggestion/best.hpp"
#include "engine/suggestion/constants.hpp"
#include "engine/suggestion/items.hpp"

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

// What the amount that was stated comes to with this yarn.
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

// What will be needed: a stated amount is what a pattern asks one to buy, and it is used up to
// that.
Estimate<Length> used_of(const SuggestionAnswer& out) {
    if (out.basis == SuggestionAnswer::Basis::template_plan) return out.need;
    return {out.need.mid * (1 - stated_allowance), out.need.spread};
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

// What was stated outright goes before what was read in the words.
Suggestion with_what_was_read(Suggestion s, const Taken& taken, const Ground& ground) {
    if (!s.gauge) s.gauge = taken.gauge;
    if (!s.sett) s.sett = taken.sett;
    if (!s.needle) s.needle = taken.needle;
    if (!s.craft && !taken.both_crafts) s.craft = taken.craft;
    for (const auto& c : ground.classes)
        if (!s.weight_class && c.name == taken.weight) s.weight_class = c.number;
    if (!s.grist) s.grist = of_class(ground.classes, s.weight_class, grist_of);
    if (taken.wanted.empty()) return s;
    const auto& first = taken.wanted.front();
    if (!s.needs && !s.needs_mass) s.needs = first.needs, s.needs_mass = first.needs_mass;
    return s;
}

std::string what_to_ask(const Taken& taken) {
    if (taken.not_an_idea || !taken.wanted.empty()) return "";
    if (!taken.topics.empty() && taken.asks) return "";
    std::string unknown;
    std::size_t named = 0;
    for (const auto& word : taken.not_known)
        if (!word.craft && !word.other_craft && named++ < 3)
            unknown += (unknown.empty() ? "" : ", ") + word.said;
    if (unknown.empty()) return "what is it to be?";
    return "which article is meant by '" + unknown + "'?";
}

std::string none_such(const SuggestionAnswer& a, std::optional<Craft> craft) {
    std::string what = craft ? std::string(words(*craft)) + " " : std::string();
    const auto& wanted = a.things.front().wanted;
    what += wanted.said == wanted.kind + "s" ? wanted.kind : wanted.said;
    const auto& fabric = a.taken.fabric;
    if (fabric.named()) what += " in " + (fabric.knitted.empty() ? fabric.woven : fabric.knitted);
    return "there is no " + what + " in the catalogue: which craft and fabric would do?";
}

Reach reach_of(const Estimate<Length>& need, const Plan& plan, double asked) {
    if (chance_of_enough(need, plan.have) >= asked) return Reach::enough;
    const double aside = set_aside(asked, need.spread, plan.have.spread);
    const auto& t = *plan.article;
    const double least = plan.by_size.at(t.smallest / t.ideal) / plan.by_size.at(1);
    return need.mid.si() * least * aside <= plan.have.mid.si() ? Reach::enough_if_smaller
                                                               : Reach::short_of;
}

// What a question may want besides: the usual needle or sett, the largest size, how many.
void look_around(const Ground& ground, const Plan& plan, SuggestionAnswer& out) {
    const auto& first = plan.pieces.front();
    if (first.knit) out.usual_needle = first.knit->needle, out.usual_gauge = first.knit->stitches;
    if (first.woven) {
        out.usual_sett = first.woven->ends;
        if (out.taken.loom_width)
            out.off_loom = *out.taken.loom_width * (1 - first.woven->width.mid);
    }
    const auto& t = *plan.article;
    const double aside = set_aside(ground.request.certainty, plan.need.spread, plan.have.spread);
    const double one = plan.by_size.at(out.size / t.ideal) / articles_made(t) * aside;
    out.possible = static_cast<int>(std::floor(plan.have.mid.si() / one));
    const double fits =
        plan.by_size.largest(plan.have.mid.si() / aside, t.largest / t.ideal) * t.ideal.si();
    out.largest = metres(std::floor(fits * 100 + 1e-6) / 100);
}

// The fabric of that name in the tables: "waffle weave" is waffle, "double weave" doubleweave.
NamedFabric known_fabric(const std::string& said, const Fabrics& fabrics) {
    auto whole = said;
    std::erase(whole, ' ');
    NamedFabric out;
    for (const auto& name : {said, said.substr(0, said.find_last_of(' ')), whole}) {
        if (out.knitted.empty() && fabrics.knitted_named(name)) out.knitted = name;
        if (out.woven.empty() && fabrics.weave_named(name)) out.woven = name;
    }
    return out;
}

// "5 ft across" is the size of what is measured across: of a shawl, a square, a circle.
bool is_a_size(const Wanted& wanted, const Template& article) {
    const auto& measure = article.measure;
    const bool across = measure == "span" || measure == "side" || measure == "across" ||
                        measure == "width" || measure == "straight edge";
    return !wanted.sizes.empty() && (!wanted.only_width || across);
}

// Of two strands held or plied together each metre takes so many of this yarn.
void count_in_strands(double strands, SuggestionAnswer& out) {
    for (auto* metres : {&out.need.mid, &out.left, &out.short_by, &out.margin, &out.stated})
        *metres = *metres * strands;
    out.spin_more = out.spin_more * strands;
}

// The part in a plan that reckons with it; whole: no plan can.
Role part_of(YarnRole role) {
    switch (role) {
        case YarnRole::weft_only:
            return Role::weft;
        case YarnRole::warp_only:
            return Role::warp;
        case YarnRole::border:
            return Role::border;
        case YarnRole::doubled:
            return Role::doubled;
        case YarnRole::plied_again:
            return Role::plied_again;
        default:
            return Role::whole;
    }
}

}  // namespace

// The tables may have learnt a fabric or a kind that the words knew by name only.
void Answerer::resolve(Taken& taken) const {
    auto known = [&](const Unmade& u) {
        const auto named = known_fabric(u.said, ground_.fabrics);
        if (u.other_craft || !named.named()) return false;
        taken.fabric = named;
        taken.fabric_said = u.said;
        for (auto& wanted : taken.wanted)
            if (!wanted.fabric.named()) wanted.fabric = named;
        return true;
    };
    std::erase_if(taken.not_known, known);
    for (const auto& unmade : taken.not_known) {
        if (!taken.craft && unmade.craft) taken.craft = unmade.craft;
        if (!taken.fabric.named() && unmade.nearest.named()) {
            taken.fabric = unmade.nearest;
            for (auto& wanted : taken.wanted)
                if (!wanted.fabric.named()) wanted.fabric = unmade.nearest;
        }
    }
    const bool loom = taken.sett || taken.loom_width || taken.about(Topic::warp) ||
                      taken.about(Topic::waste) || taken.about(Topic::sett);
    if (taken.role == YarnRole::weft_only || taken.role == YarnRole::warp_only ||
        (loom && !taken.craft))
        taken.craft = Craft::woven;
    if (!taken.craft && (taken.gauge || taken.needle)) taken.craft = Craft::knitted;
}

// A child or a baby of so many years, as the table of bodies has them; empty: no age was said.
std::string Answerer::body_of(const Taken& taken) const {
    if (!taken.years) return "";
    const double years = *taken.years;
    std::string best;
    double nearest = 1;  // of years apart
    for (const auto& row : ground_.bodies) {
        const auto space = row.who.find(' ');
        const bool months = row.who.ends_with("months");
        if (!months && !row.who.starts_with("child ")) continue;
        const auto number =
            figure_of(months ? row.who.substr(0, space) : row.who.substr(space + 1));
        if (!number) continue;
        const double apart = std::abs(years - *number / (months ? 12 : 1));
        if (apart < nearest) nearest = apart, best = row.who;
    }
    return best;
}

ThingAnswer Answerer::look_at(const Wanted& wanted, const Taken& taken, std::optional<Craft> craft,
                              Best*& found) {
    ThingAnswer out;
    out.wanted = wanted;
    Wish wish{wanted.kind,
              wanted.form,
              craft,
              wanted.fabric,
              taken.fabrics_out,
              taken.wearer,
              taken.role == YarnRole::fulled,
              part_of(taken.role),
              {},
              body_of(taken),
              wanted.count > 1 || !wanted.plural ? wanted.count : 0};
    if (!wanted.sizes.empty() && !wanted.only_width) wish.size = wanted.sizes.front();
    found = best(wish);
    if (!found && !wanted.nearest.empty()) {
        wish.kind = wanted.nearest;
        found = best(wish);
        out.as_nearest = found != nullptr;
    }
    if (!found) return out;
    out.article = found->plan.article;
    const auto& t = *out.article;
    const bool square = wanted.form == "square" && t.measure == "side";
    out.form_missed = !wanted.form.empty() && !has_form(t, wanted.form) && !square;
    out.wanted.only_width = wanted.only_width && !is_a_size(wanted, t);
    if (is_a_size(wanted, t)) wish.size = wanted.sizes.front();
    out.size = size_wished(wish, t);
    if (!wish.size && out.size != t.ideal) out.body = wish.body;
    const int made = articles_made(t);
    if (wish.count == 0) out.wanted.count = made;
    out.need = {metres(found->plan.by_size.at(out.size / t.ideal) * out.wanted.count / made),
                found->plan.need.spread};
    if (wanted.needs) out.need = {*wanted.needs / found->strands, stated_amount};
    out.reach = reach_of(out.need, found->plan, ground_.request.certainty);
    out.need.mid = out.need.mid * found->strands;
    return out;
}

// The same article in the other craft, where none was asked for or this one falls short.
void Answerer::add_other_craft(const Taken& taken, SuggestionAnswer& out) {
    const auto& main = out.things[out.main];
    const auto other = out.article->craft == Craft::knitted ? Craft::woven : Craft::knitted;
    auto wanted = main.wanted;
    if (taken.craft || wanted.fabric.named()) wanted.fabric = {};
    Best* found = nullptr;
    // A span is no length: a size goes over only where both are measured alike.
    const auto sizes = std::exchange(wanted.sizes, {});
    auto there = look_at(wanted, taken, other, found);
    if (!found || !there.article) return;
    if (!sizes.empty() && there.article->measure == out.article->measure) {
        wanted.sizes = sizes;
        there = look_at(wanted, taken, other, found);
    }
    out.other_craft = there.article;
    out.other_need = there.need;
    out.other_reach = there.reach;
    out.other_craft_reaches = out.reach == Reach::short_of && there.reach == Reach::enough &&
                              serves(found->judgement.score) <= Serves::fairly;
}

void Answerer::reckon(const Suggestion& s, Best& found, SuggestionAnswer& out) {
    const auto& plan = found.plan;
    auto& main = out.things[out.main];
    out.article = plan.article;
    out.fabric = out.article->pieces.front().fabric;
    if (!found.drawn) out.put_into = main.wanted.fabric.in(out.article->craft);
    out.judgement = found.judgement;
    out.role_reckoned = found.in_role;
    out.plain = found.plain;
    out.made_for = found.made_for;
    out.obstacles = plan.obstacles;
    out.size = main.size;
    if (s.needs || s.needs_mass) {
        using Basis = SuggestionAnswer::Basis;
        out.basis = s.needs ? Basis::stated_length : Basis::stated_mass;
        if (!s.needs) out.stated_mass = *s.needs_mass;
        const auto stated = s.needs ? *s.needs : *s.needs_mass / *s.grist;
        take_stated(s, ground_, plan, stated / found.strands, out);
    } else {
        out.need = {metres(plan.by_size.at(out.size / out.article->ideal) * main.wanted.count /
                           articles_made(*out.article)),
                    plan.need.spread};
        if (s.gauge && plan.pieces.front().knit)
            out.tightness = tightness(ground_.yarn.linear_density.mid,
                                      loop_from_stitches(*s.gauge, Relaxation::full));
    }
    main.need = out.need;
    main.need.mid = main.need.mid * found.strands;
    if (!out.taken.alternatives)
        for (std::size_t i = 0; i < out.things.size(); ++i)
            if (i != out.main) out.need.mid += out.things[i].need.mid / found.strands;
    look_at_sett(s, plan, out);
    compare_metres(ground_, plan, out);
    look_at_sizes(s, ground_, plan, out);
    count_repeats(plan, out);
    main.size = out.size;
    count_in_strands(found.strands, out);
    look_around(ground_, plan, out);
}

SuggestionAnswer Answerer::answer(const Suggestion& suggestion) {
    SuggestionAnswer out;
    out.taken = understand(suggestion.idea, lexicon_, stemmer_);
    if (!suggestion.who.empty() && out.taken.wearer == Wearer::unsaid) {
        const auto who = understand("for the " + suggestion.who, lexicon_, stemmer_);
        out.taken.wearer = who.wearer;
        out.taken.wearer_said = who.wearer_said;
        out.taken.years = who.years;
    }
    resolve(out.taken);
    out.ask = what_to_ask(out.taken);
    if (!out.ask.empty() || out.taken.wanted.empty()) return out;
    const auto s = with_what_was_read(suggestion, out.taken, ground_);
    std::vector<Best*> found;
    for (const auto& wanted : out.taken.wanted) {
        Best* one = nullptr;
        auto asked = wanted;
        if (s.size && out.things.empty()) asked.sizes = {*s.size}, asked.only_width = false;
        const auto craft = wanted.craft && !suggestion.craft ? wanted.craft : s.craft;
        out.things.push_back(look_at(asked, out.taken, craft, one));
        out.taken.wanted[out.things.size() - 1].only_width = out.things.back().wanted.only_width;
        found.push_back(one);
    }
    // Of alternatives the first that reaches; of several things the first that can be made.
    out.main = out.things.size();
    for (std::size_t i = 0; i < found.size(); ++i)
        if (found[i] &&
            (out.main == out.things.size() ||
             (out.taken.alternatives && out.things[i].reach < out.things[out.main].reach)))
            out.main = i;
    if (out.main == out.things.size()) {
        out.main = 0;
        out.ask = none_such(out, s.craft);
        return out;
    }
    if (s.needs_mass && !s.needs && !s.grist && suggestion.needs_mass) {
        out.ask = "what length is that mass: which yarn was it?";
        return out;
    }
    out.answered = true;
    auto reckoned = s;
    if (out.main > 0) reckoned.needs.reset(), reckoned.needs_mass.reset(), reckoned.size.reset();
    // A mass of this very yarn, when no other was named.
    if (reckoned.needs_mass && !reckoned.grist) reckoned.grist = ground_.yarn.linear_density.mid;
    reckon(reckoned, *found[out.main], out);
    const bool either = !out.taken.craft || (out.taken.both_crafts && out.things.size() == 1);
    if (!suggestion.craft && either)
        add_other_craft(out.taken, out);
    else if (out.reach == Reach::short_of)
        add_other_craft(out.taken, out);
    return out;
}

}  // namespace gristwright
