#include "engine/suggestion/best.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "engine/suggestion/constants.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

using namespace constants;

bool is_in_fabric(const Template& article, const std::string& fabric) {
    return std::any_of(article.pieces.begin(), article.pieces.end(),
                       [&](const auto& piece) { return piece.fabric == fabric; });
}

// The whole template in another fabric: its largest piece, which gives the article its character.
// It needs what its kind needs in that fabric; with other yarns it is not compared in it.
Template in_fabric(Template article, const std::string& fabric,
                   const std::vector<DemandFor>& needs) {
    auto largest = std::max_element(
        article.pieces.begin(), article.pieces.end(),
        [](const auto& a, const auto& b) { return area(a.outline) < area(b.outline); });
    const bool another = largest->fabric != fabric;
    largest->fabric = fabric;
    std::iter_swap(article.pieces.begin(), largest);
    if (another) article.calling = std::make_shared<const Calling>(calling_of(article, needs, {}));
    auto& definition = article.wishes[static_cast<std::size_t>(Asked::definition)];
    definition.weight = std::max<double>(definition.weight, asked_character);
    return article;
}

// In a cloth that is made where nobody names another.
bool is_plain(const Template& article) {
    const auto& fabric = article.pieces.front().fabric;
    return std::find(std::begin(everyday_fabrics), std::end(everyday_fabrics), fabric) !=
           std::end(everyday_fabrics);
}

// Whose size and safety are their own; anybody else is an adult.
Wearer cared_for(Wearer wearer) {
    const bool own = wearer == Wearer::baby || wearer == Wearer::child || wearer == Wearer::animal;
    return own ? wearer : Wearer::unsaid;
}

bool is_ruled_out(const Template& t, const std::vector<NamedFabric>& out) {
    return std::any_of(out.begin(), out.end(), [&](const NamedFabric& f) {
        const auto& fabric = f.in(t.craft);
        return !fabric.empty() && is_in_fabric(t, fabric);
    });
}

// Nobody can make it with what there is here.
bool is_stopped(const Plan& plan) {
    return std::any_of(plan.obstacles.begin(), plan.obstacles.end(), stops);
}

// Bed socks are not what one walks in: answered with only where they are asked for.
bool is_for_one_use(const std::string& form) { return form == "bed"; }

bool has_a_form_of(const Template& t, const std::vector<std::string>& forms) {
    return std::any_of(forms.begin(), forms.end(), [&](const auto& f) { return has_form(t, f); });
}

// Where the template leaves that part to another yarn, the parts change hands first.
Template taking_part(Template article, Role role) {
    const auto ours = [&](const PieceTemplate& piece) {
        return role == Role::warp ? piece.warp_ours() > 0
                                  : role != Role::weft || piece.weft_ours() > 0;
    };
    const bool any = std::any_of(article.pieces.begin(), article.pieces.end(), ours);
    return in_role(any ? std::move(article) : rest_of(std::move(article)), role);
}

}  // namespace

bool has_form(const Template& article, const std::string& form) {
    return article.name.find(form) != std::string::npos;
}

int articles_made(const Template& article) {
    const auto& piece = article.pieces.front();
    const auto& kind = article.article;
    const bool alone = article.pieces.size() == 1 && kind.size() >= piece.name.size();
    const bool bears_its_name = alone && kind.substr(kind.size() - piece.name.size()) == piece.name;
    return bears_its_name ? piece.count : 1;
}

Answerer::Answerer(const Ground& ground) : ground_(ground), lexicon_(ground.words, ground.kinds) {}
Answerer::~Answerer() = default;

const YarnProfile& Answerer::yarn_as(Role role) {
    const bool two = role == Role::doubled || role == Role::plied_again;
    if (!two || !ground_.as_two_strands) return ground_.yarn;
    const auto known = strands_.find(role);
    if (known != strands_.end()) return known->second;
    return strands_.emplace(role, ground_.as_two_strands(role)).first->second;
}

// The template planned and judged once; empty fabric: as it is drawn. An article that has no such
// part is planned whole. What is set as it was said takes the metres of that sett.
Answerer::Best& Answerer::realised(const Template& article, const std::string& fabric, Role role,
                                   Sett sett) {
    auto& known = known_[{&article, fabric, role, sett.si()}];
    if (known) return *known;
    known = std::make_unique<Best>();
    known->drawn = !fabric.empty() && is_in_fabric(article, fabric);
    const auto title = understand(article.title, lexicon_, stemmer_);
    known->unasked = !title.not_known.empty();
    known->plain = is_plain(article);
    if (!title.wanted.empty() && is_for_one_use(title.wanted.front().form))
        known->purpose = title.wanted.front().form;
    known->made_for = article.for_baby ? Wearer::baby : cared_for(title.wearer);
    auto planned = fabric.empty() ? article : in_fabric(article, fabric, ground_.needs);
    if (role != Role::whole) try {
            planned = taking_part(planned, role);
            const bool two = role == Role::doubled || role == Role::plied_again;
            known->in_role = !two || ground_.as_two_strands;
        } catch (const Refused&) {
        }
    auto request = ground_.request;
    request.size = article.ideal;
    const auto& yarn = yarn_as(role);
    known->strands = ground_.yarn.length.mid / yarn.length.mid;
    auto owned = ground_.owned;
    const auto planned_with = [&] { return plan(planned, yarn, ground_.fabrics, owned, request); };
    known->plan = planned_with();
    if (const auto& woven = known->plan.pieces.front().woven) {
        known->usual_sett = woven->ends;
        if (sett.si() > 0) owned.sett = sett, known->plan = planned_with();
    }
    const bool all = role == Role::whole || role == Role::doubled || role == Role::plied_again;
    known->unasked = known->unasked || article.role != Role::whole ||
                     (all && known->plan.second_yarn > Length{});
    known->judgement = judge(known->plan, yarn);
    return *known;
}

// What is too large for one of its squares is the size of the whole: so many squares a side.
Length of_its_square(const Template& article, Length said) {
    if (article.measure != "side of a square" || said <= article.largest * far_size) return said;
    const auto side = said / std::sqrt(double(article.pieces.front().count));
    const bool made = side >= article.smallest * (1 - blocking_slack) &&
                      side <= article.largest * (1 + blocking_slack);
    return made ? side : said;
}

// As it was typed; else by the body; else as the template is best.
Length Answerer::size_wished(const Wish& wish, const Template& article) const {
    if (wish.size) return of_its_square(article, *wish.size);
    if (wish.foot && article.measure == "foot length") return *wish.foot;
    const auto* body =
        wish.body.empty() ? nullptr : body_size(ground_.bodies, wish.body, article.measure);
    return body && article.fitted ? body->mid : article.ideal;
}

// Hard fulling, which cannot be undone, comes last unless it was asked for, and what the equipment
// stops comes behind what it does not. A smaller one, and a
// cloth that nobody named, must be better by so much. A sett that is said changes the metres, not
// the article.
Answerer::Best* Answerer::best(const Wish& wish) {
    Best* best = nullptr;
    const Template* chosen = nullptr;
    std::tuple<bool, bool, bool, bool, bool, bool, bool, bool, bool, double> rank;
    for (const auto& t : ground_.templates) {
        if (t.article != wish.kind || (wish.craft && t.craft != *wish.craft)) continue;
        const auto& fabric = wish.fabric.in(t.craft);
        if (wish.fabric.named() && fabric.empty()) continue;
        if (is_ruled_out(t, wish.fabrics_out) || has_a_form_of(t, wish.forms_out)) continue;
        auto& next = realised(t, fabric, wish.role, {});
        const bool hard = is_hard_fulled(t, ground_.fabrics);
        const auto size = size_wished(wish, t);
        const double scale = size / t.ideal;
        const double share = wish.count > 0 ? double(wish.count) / articles_made(t) : 1;
        const auto certainty = [&](double s) {
            return chance_of_enough(
                Estimate<Length>{metres(next.plan.by_size.at(s) * share), next.plan.need.spread},
                next.plan.have);
        };
        // Of the size that is wished, what the metres cover with the certainty asked.
        const double aside =
            set_aside(ground_.request.certainty, next.plan.need.spread, next.plan.have.spread);
        const double reach =
            next.plan.by_size.largest(next.plan.have.mid.si() / share / aside, scale) / scale;
        const bool fits =
            size >= t.smallest * (1 - blocking_slack) && size <= t.largest * (1 + blocking_slack);
        // Of a blanket of squares the square is measured: a size far off is of something else.
        const bool near = size >= t.smallest / far_size && size <= t.largest * far_size;
        const int reaches = certainty(scale) >= ground_.request.certainty                  ? 2
                            : certainty(t.smallest / t.ideal) >= ground_.request.certainty ? 1
                                                                                           : 0;
        const std::tuple next_rank(
            !wish.form.empty() && has_form(t, wish.form), next.made_for == cared_for(wish.wearer),
            next.drawn, next.in_role, t.fitted ? fits : near, hard == wish.fulled,
            !is_stopped(next.plan),
            !next.unasked && (next.purpose.empty() || next.purpose == wish.form), reaches > 0,
            next.judgement.score - (next.plain || wish.fabric.named() ? 0 : fancy_unasked) -
                (reaches == 2 ? 0 : 100 * smaller_costs * (1 - reach)));
        if (best && next_rank <= rank) continue;
        best = &next;
        chosen = &t;
        rank = next_rank;
    }
    if (!best || wish.sett.si() <= 0) return best;
    return &realised(*chosen, wish.fabric.in(chosen->craft), wish.role, wish.sett);
}

}  // namespace gristwright
