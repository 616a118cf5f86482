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

}  // namespace

bool has_form(const Template& article, const std::string& form) {
    return article.name.find(form) != std::string::npos;
}

Answerer::Answerer(const Ground& ground) : ground_(ground), lexicon_(ground.words) {}
Answerer::~Answerer() = default;

// The template planned and judged once; empty fabric: as it is drawn. An article that has no such
// part is planned whole.
Answerer::Best& Answerer::realised(const Template& article, const std::string& fabric, Role role) {
    auto& known = known_[{&article, fabric, role}];
    if (known) return *known;
    known = std::make_unique<Best>();
    known->drawn = !fabric.empty() && is_in_fabric(article, fabric);
    const auto title = understand(article.title, lexicon_, stemmer_);
    known->unasked = !title.not_known.empty();
    known->made_for = article.for_baby ? Wearer::baby : cared_for(title.wearer);
    auto planned = fabric.empty() ? article : in_fabric(article, fabric);
    if (role != Role::whole) try {
            planned = in_role(planned, role);
            known->in_role = true;
        } catch (const Refused&) {
        }
    auto request = ground_.request;
    request.size = article.ideal;
    known->plan = plan(planned, ground_.yarn, ground_.fabrics, ground_.owned, request);
    known->unasked = known->unasked || article.role != Role::whole ||
                     (role == Role::whole && known->plan.second_yarn > Length{});
    known->judgement = judge(known->plan, ground_.yarn);
    return *known;
}

// Hard fulling, which cannot be undone, comes last unless it was asked for.
Answerer::Best* Answerer::best(const Wish& wish) {
    Best* best = nullptr;
    std::tuple<bool, bool, bool, bool, bool, bool, int, double> rank;
    for (const auto& t : ground_.templates) {
        if (t.article != wish.kind || (wish.craft && t.craft != *wish.craft)) continue;
        const auto& fabric = wish.fabric.in(t.craft);
        if (wish.fabric.named() && fabric.empty()) continue;
        if (is_ruled_out(t, wish.fabrics_out)) continue;
        auto& next = realised(t, fabric, wish.role);
        const bool hard = t.craft == Craft::woven && t.finish == Finish::hard_fulled;
        const double scale = wish.size ? *wish.size / t.ideal : 1;
        const auto certainty = [&](double s) {
            return chance_of_enough(
                Estimate<Length>{metres(next.plan.by_size.at(s)), next.plan.need.spread},
                next.plan.have);
        };
        const int reaches = certainty(scale) >= ground_.request.certainty                  ? 2
                            : certainty(t.smallest / t.ideal) >= ground_.request.certainty ? 1
                                                                                           : 0;
        const std::tuple next_rank(!wish.form.empty() && has_form(t, wish.form), next.drawn,
                                   next.in_role, next.made_for == cared_for(wish.wearer),
                                   hard == wish.fulled, !next.unasked, reaches,
                                   next.judgement.score);
        if (best && next_rank <= rank) continue;
        best = &next;
        rank = next_rank;
    }
    return best;
}

}  // namespace gristwright
