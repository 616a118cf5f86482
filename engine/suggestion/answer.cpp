#include "engine/suggestion/answer.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/project/constants.hpp"
#include "engine/suggestion/asking.hpp"
#include "engine/suggestion/best.hpp"
#include "engine/suggestion/constants.hpp"
#include "engine/suggestion/items.hpp"
#include "engine/suggestion/reckoning.hpp"
#include "engine/suggestion/shoe.hpp"

namespace gristwright {
namespace {

using namespace constants;

std::optional<LinearDensity> grist_of(const WeightClass& c) {
    if (!c.yd_per_lb_low || !c.yd_per_lb_high) return {};
    return pounds(1) / yards(std::sqrt(*c.yd_per_lb_low * *c.yd_per_lb_high));
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

// Measured round a head, a hand, a chest: how long it is said to be is no size of it.
bool goes_round(const Template& article) {
    for (const std::string_view round : {"head", "hand", "wrist", "chest"})
        if (article.measure.find(round) != std::string::npos) return true;
    return false;
}

bool cared_for_as_small(Wearer wearer) { return wearer == Wearer::baby || wearer == Wearer::child; }

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
        // "log cabin, garter": the fabric that is reckoned leaves this one to be told.
        const auto has_another = [](const Wanted& w) { return w.fabric.named(); };
        if (!taken.wanted.empty() &&
            std::all_of(taken.wanted.begin(), taken.wanted.end(), has_another))
            return false;
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
    const bool loom = taken.sett || taken.loom_width || taken.warp || taken.loom_waste ||
                      taken.about(Topic::warp) || taken.about(Topic::waste) ||
                      taken.about(Topic::sett);
    if (taken.role == YarnRole::weft_only || taken.role == YarnRole::warp_only ||
        (loom && !taken.craft))
        taken.craft = Craft::woven;
    const bool needles =
        taken.gauge || taken.needle || taken.about(Topic::needle) || taken.about(Topic::gauge);
    if (!taken.craft && needles) taken.craft = Craft::knitted;
}

// A child or a baby of so many years, as the table of bodies has them; empty: no age was said.
std::string Answerer::body_of(const Wanted& wanted, const Taken& taken) const {
    const bool own = wanted.wearer != Wearer::unsaid;
    const auto aged = own ? wanted.years : taken.years;
    if (!aged) return own ? wanted.body : taken.body;
    const double years = *aged;
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

// A head, a foot, a hand or a chest of about that size is in the table of bodies.
bool Answerer::fits_somebody(const Template& article, Length size) const {
    bool measured = false;
    for (const auto& row : ground_.bodies) {
        if (row.measure != article.measure) continue;
        measured = true;
        if (size >= row.low * (1 - taken_beyond) && size <= row.high * (1 + taken_beyond))
            return true;
    }
    const bool near = size >= article.smallest / far_size && size <= article.largest * far_size;
    return !measured || (!article.fitted && near);
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
              taken.forms_out,
              wanted.wearer != Wearer::unsaid ? wanted.wearer : taken.wearer,
              taken.role == YarnRole::fulled,
              part_of(taken.role),
              {},
              body_of(wanted, taken),
              wanted.count > 1 || !wanted.plural ? wanted.count : 0};
    if (!taken.shoe.empty()) wish.foot = foot_of_shoe(taken.shoe, cared_for_as_small(wish.wearer));
    wish.sett = taken.sett.value_or(Sett{});
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
    const bool round_only = wanted.is_tall && t.measure == "round";
    const bool no_size = wish.size && (round_only || (wanted.is_long && goes_round(t)));
    if (no_size || (wish.size && !fits_somebody(t, *wish.size))) {
        auto without = wanted;
        without.sizes.clear();
        out = look_at(without, taken, craft, found);
        if (no_size)
            out.wanted.sizes = wanted.sizes, out.wanted.only_width = true;
        else
            out.unfit = wanted.sizes.front();
        return out;
    }
    const bool square = wanted.form == "square" && t.measure == "side";
    out.form_missed = !wanted.form.empty() && !has_form(t, wanted.form) && !square;
    out.wanted.only_width = wanted.only_width && !is_a_size(wanted, t);
    if (is_a_size(wanted, t)) wish.size = wanted.sizes.front();
    if (taken.warp && !wish.size && wanted.count < 2)
        wish.size = off_this_warp(found->plan, *taken.warp, taken.loom_waste);
    out.of_warp = taken.warp && wish.size && wanted.sizes.empty();
    out.size = size_wished(wish, t);
    out.of_shoe = wish.foot && !wish.size && t.measure == "foot length";
    if (!wish.size && !out.of_shoe && out.size != t.ideal) out.body = wish.body;
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
    if (out.taken.role == YarnRole::part) look_at_part(ground_, plan, out);
    compare_at_hand(ground_, plan, out);
    if (out.article->measure == "length") out.wide = plan.pieces.front().outline.width;
    look_around(ground_, plan, out);
    out.usual_sett = found.usual_sett;
}

const Taken& Answerer::read(const std::string& idea) {
    constexpr std::size_t most_kept = 16'384;  // about 20 MB
    if (read_.size() == most_kept) read_.clear();
    const auto known = read_.find(idea);
    if (known != read_.end()) return known->second;
    return read_.emplace(idea, understand(idea, lexicon_, stemmer_)).first->second;
}

SuggestionAnswer Answerer::answer(const Suggestion& suggestion) {
    SuggestionAnswer out;
    const auto& [idea, beside] = std::tie(suggestion.idea, suggestion.beside);
    out.taken = read(beside.empty() ? idea : idea + ", " + beside);
    if (!suggestion.who.empty() && out.taken.wearer == Wearer::unsaid) {
        const auto who = understand("for the " + suggestion.who, lexicon_, stemmer_);
        out.taken.wearer = who.wearer;
        out.taken.wearer_said = who.wearer_said;
        out.taken.kin = who.kin;
        out.taken.years = who.years;
        out.taken.body = who.body;
    }
    resolve(out.taken);
    out.ask = what_to_ask(out.taken);
    if (!out.ask.empty() || out.taken.wanted.empty()) return out;
    const auto s = with_what_was_read(suggestion, out.taken, ground_);
    out.taken.sett = s.sett;
    std::vector<Best*> found;
    for (const auto& wanted : out.taken.wanted) {
        Best* one = nullptr;
        auto asked = wanted;
        if (s.size && out.things.empty()) asked.sizes = {*s.size}, asked.only_width = false;
        const auto craft = wanted.craft && !suggestion.craft ? wanted.craft : s.craft;
        out.things.push_back(look_at(asked, out.taken, craft, one));
        if (out.things.size() == 1)
            out.things[0] = with_its_unit(std::move(out.things[0]), out.taken, craft, one);
        auto& read = out.taken.wanted[out.things.size() - 1];
        read.only_width = out.things.back().wanted.only_width;
        if (out.things.back().unfit > Length{}) read.sizes.clear();
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
        out.ask = none_such(out, s.craft, ground_);
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
