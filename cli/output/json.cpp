#include "cli/output/json.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/output/layout.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/yarns.hpp"
#include "engine/project/role.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

template <class Q>
Json range(const Estimate<Q>& e, double (*in)(Q)) {
    return {
        {"mid", number(in(e.mid))}, {"low", number(in(e.low()))}, {"high", number(in(e.high()))}};
}

const char* word(SameYarn answer) {
    switch (answer) {
        case SameYarn::only_one_skein:
            return "only one skein";
        case SameYarn::differ:
            return "several yarns";
        case SameYarn::alternate:
            return "one yarn, alternated";
        case SameYarn::same:
            return "same within your margin";
        case SameYarn::states_differ:
            return "measured in different states";
        case SameYarn::cannot_tell:
            break;
    }
    return "this scale cannot tell";
}

Json skeins(const YarnProfile& yarn) {
    Json out = Json::array();
    for (const auto& s : yarn.skeins)
        out.push_back({{"name", inert(s.name)},
                       {"metres", number(in_metres(s.length))},
                       {"grams", number(in_grams(s.mass))},
                       {"tex", range(s.linear_density, in_tex)}});
    return out;
}

Json agreement(const Agreement& found) {
    return {{"answer", word(found.answer)},
            {"widest_difference", number(found.widest)},
            {"smallest_difference_shown", number(found.smallest_shown)}};
}

Json classes(const std::vector<WeightClass>& list) {
    Json out = Json::array();
    for (const auto& c : list) out.push_back(c.name);
    return out;
}

Json traits(const YarnProfile& yarn) {
    Json out = Json::object();
    for (std::size_t t = 0; t < trait_count; ++t) {
        const auto& trait = yarn.traits[t];
        out[std::string(words(static_cast<TraitName>(t)))] = {{"value", number(trait.value)},
                                                              {"spread", number(trait.spread)},
                                                              {"reasons", texts(trait.reasons)}};
    }
    return out;
}

Json piece_json(const PlanPiece& p) {
    Json out{{"name", p.piece->name},
             {"alike", p.piece->count},
             {"fabric", p.piece->fabric},
             {"shape", words(p.outline.shape)},
             {"width_cm", number(in_centimetres(p.outline.width))},
             {"length_cm", number(in_centimetres(p.outline.length))},
             {"from_this_batch", p.ours.si() > 0},
             {"metres", range(p.metres, in_metres)},
             {"metres_of_batch", number(in_metres(p.ours))},
             {"grams", number(in_grams(p.mass))}};
    if (p.knit) {
        out["stitches"] = p.stitches;
        out["rows"] = p.rows;
        out["stitches_per_10cm"] = number(in_stitches_per_10cm(p.knit->stitches));
        out["rows_per_10cm"] = number(in_stitches_per_10cm(p.knit->rows));
        out["needle_mm"] = number(in_millimetres(p.knit->needle));
        out["tightness"] = number(p.knit->tightness);
    }
    if (p.woven) {
        out["ends"] = p.panel.ends;
        out["picks"] = p.panel.picks;
        out["heddle_per_10cm"] = number(in_ends_per_10cm(p.woven->heddle));
        out["ends_in_hole"] = p.woven->sleying.most();
        out["sleying"] = p.woven->sleying.order;
        out["ends_per_10cm"] = number(in_ends_per_10cm(p.woven->ends));
        out["share_of_greatest_sett"] = number(p.woven->share);
        out["heddle_width_cm"] = number(in_centimetres(p.panel.reed_width));
        out["warp_metres"] = number(in_metres(p.warp));
        out["weft_metres"] = number(in_metres(p.weft));
    }
    return out;
}

// What the article needs and the yarn does not wholly have.
Json needs(const Judgement& judged) {
    Json out = Json::array();
    for (const auto& need : judged.unmet)
        out.push_back({{"need", need.demand->trait ? words(*need.demand->trait) : "plies"},
                       {"had", number(need.had)},
                       {"enough", number(need.demand->enough)},
                       {"met", number(need.met)},
                       {"cost", number(need.cost)},
                       {"reason", need.demand->reason},
                       {"raise", need.demand->remedy}});
    return out;
}

Json factors(const JudgedPlan& judged, const YarnProfile& yarn) {
    Json out = Json::array();
    for (std::size_t f = 0; f < factor_count; ++f) {
        const auto name = static_cast<FactorName>(f);
        const auto& factor = judged.judgement.factor(name);
        if (factor.weight == 0) continue;
        out.push_back({{"factor", words(name)},
                       {"had", number(factor.had)},
                       {"wanted", number(factor.wanted)},
                       {"weight", number(factor.weight)},
                       {"desirability", number(factor.desirability)},
                       {"cost", number(factor.cost)},
                       {"reason", inert(sentence(name, judged.judgement, judged.plan, yarn))},
                       {"raise", remedy(name, judged.judgement, judged.plan)}});
    }
    return out;
}

}  // namespace

// Six significant figures: more than any measurement bears, and no NaN ever.
Json number(double value) {
    if (!std::isfinite(value)) return nullptr;
    if (std::abs(value) < 1e-12) return 0.0;
    const double scale = std::pow(10.0, 5 - std::floor(std::log10(std::abs(value))));
    return std::round(value * scale) / scale;
}

Json range(const Estimate<double>& e) {
    return {{"mid", number(e.mid)}, {"low", number(e.low())}, {"high", number(e.high())}};
}

Json texts(const std::vector<std::string>& list) {
    Json out = Json::array();
    for (const auto& text : list) out.push_back(inert(text));
    return out;
}

Json json_answer(const std::string& command) {
    return {{"gristwright", json_version}, {"command", command}};
}

Json whole_to_json(const Question& q) {
    if (!several_yarns(q)) return to_json(q);
    std::vector<std::string> cautions;
    for (const auto& one : q.yarn.cautions)
        if (of_the_whole_batch(one))
            cautions.push_back(words(one, q.yarn, Units{UnitChoice::metric}));
    return {{"name", inert(q.measured.batch.name)},     {"metres", range(q.yarn.length, in_metres)},
            {"grams", number(in_grams(q.yarn.mass))},   {"skeins", skeins(q.yarn)},
            {"agreement", agreement(q.yarn.agreement)}, {"cautions", texts(cautions)}};
}

Json to_json(const Question& q) {
    const auto& yarn = q.yarn;
    Json counts = Json::object();
    for (const auto& system : count_systems())
        counts[std::string(system.name)] = number(count_of(yarn.linear_density.mid, system));
    Json out{{"name", inert(q.measured.batch.name)},
             {"metres", range(yarn.length, in_metres)},
             {"grams", number(in_grams(yarn.mass))},
             {"tex", range(yarn.linear_density, in_tex)},
             {"counts", counts},
             {"skeins", skeins(yarn)},
             {"agreement", agreement(yarn.agreement)},
             {"wraps_per_inch", number(in_wraps_per_inch(yarn.laid_wraps.mid))},
             {"wraps_measured", yarn.wraps_measured},
             {"class_by_grist", classes(yarn.class_by_grist)},
             {"class_by_wraps", classes(yarn.class_by_wraps)},
             {"packing", yarn.wraps_measured ? number(yarn.packing.mid) : Json(nullptr)},
             {"specific_volume_cm3_per_g",
              yarn.wraps_measured ? number(yarn.specific_volume) : Json(nullptr)},
             {"share_over_prickle",
              yarn.fibre_diameter ? number(yarn.share_over_prickle) : Json(nullptr)},
             {"traits", traits(yarn)},
             {"stands_on", texts(standings(yarn.evidence))},
             {"assumed", texts(assumptions(yarn, Units{UnitChoice::metric}))},
             {"sharpen", texts(hints(yarn))},
             {"cautions", texts(yarn_cautions(yarn, Units{UnitChoice::metric}))}};
    return out;
}

Json to_json(const JudgedPlan& judged, const YarnProfile& yarn) {
    const auto& plan = judged.plan;
    Json pieces = Json::array();
    for (const auto& p : plan.pieces) pieces.push_back(piece_json(p));
    Json obstacles = Json::array();
    for (const auto o : plan.obstacles) obstacles.push_back(words(o));
    return {{"template", plan.article->name},
            {"article", plan.article->article},
            {"craft", words(plan.article->craft)},
            {"suitability", number(judged.judgement.score)},
            {"serves", words(serves(judged.judgement.score))},
            {"better_than",
             judged.judgement.compared ? number(judged.judgement.better_than) : Json(nullptr)},
            {"needs", needs(judged.judgement)},
            {"reach", words(plan.reach)},
            {"measure", plan.article->measure},
            {"size_cm", number(in_centimetres(plan.size))},
            {"certainty", number(plan.certainty)},
            {"certainty_asked", number(plan.asked)},
            {"metres_needed", range(plan.need, in_metres)},
            {"metres_left", number(in_metres(plan.left()))},
            {"metres_short", number(in_metres(plan.short_by))},
            {"second_yarn_metres", number(in_metres(plan.second_yarn))},
            {"second_yarn_to_have_metres", number(in_metres(plan.second_to_have))},
            {"part", words(plan.article->role)},
            {"grams", number(in_grams(plan.mass))},
            {"pieces", pieces},
            {"obstacles", obstacles},
            {"for", texts(said_in_favour(judged.judgement, yarn))},
            {"against", texts(said_against(judged.judgement, plan, yarn))},
            {"factors", factors(judged, yarn)},
            {"cautions", texts(own_cautions(plan, yarn, Units{UnitChoice::metric}))}};
}

Json to_json(const BestSet& set) {
    Json members = Json::array();
    for (const auto& m : set.members)
        members.push_back({{"template", m.article->name},
                           {"size_cm", number(in_centimetres(m.size))},
                           {"metres_needed", number(in_metres(m.need))}});
    return {{"members", members},
            {"metres_needed", number(in_metres(set.need))},
            {"certainty", number(set.certainty)}};
}

std::string dumped(const Json& json) { return json.dump(2) + "\n"; }

}  // namespace gristwright::cli
