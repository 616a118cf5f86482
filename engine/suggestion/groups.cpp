#include "engine/suggestion/groups.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace gristwright {
namespace {

constexpr double steps = 20;  // of a logarithm: amounts of one step differ by up to 5 %

long rounded(double value) { return value > 0 ? std::lround(std::log(value) * steps) : -9999; }

// All that was read besides the article, the craft, the fabric and the amounts.
std::string read_besides(const Taken& t) {
    auto out = fmt::format("{}|{}|{}|{}|{}", words(t.role), words(t.wearer), t.weight,
                           t.years.value_or(0), t.alternatives);
    for (const auto topic : t.topics) out += fmt::format("|{}", words(topic));
    for (const auto& unmade : t.not_known) out += "|" + unmade.said;
    for (const auto& said : t.left_out) out += "|-" + said;
    for (const auto& wanted : t.wanted)
        out += fmt::format("|{},{},{},{},{},{},{}",
                           wanted.nearest.empty() ? wanted.kind : wanted.said, wanted.form,
                           wanted.count, wanted.plural, wanted.sizes.size(), wanted.only_width,
                           wanted.sizes.size() > 1 ? rounded(wanted.sizes[1].si()) : 0);
    const auto of = [](const auto& q) { return q ? rounded(q->si()) : 0; };
    return out +
           fmt::format("|{}|{}|{}|{}|{}|{}", of(t.gauge), of(t.sett), of(t.needle),
                       of(t.loom_width), t.shoe, t.other_yarn) +
           fmt::format("|{}|{}|{}|{}|{}|{}|{}", t.no_unit, t.letters, t.worn_by, t.how_big,
                       t.material_said, t.body, t.colours) +
           fmt::format("|{}|{}|{}|{}|{}|{}|{}", of(t.at_hand), of(t.at_hand_mass), of(t.warp),
                       of(t.loom_waste), t.share_of_thing.value_or(0), t.share_of_yarn.value_or(0),
                       t.one_alone) +
           fmt::format("|{}|{}|{}|{}|{}", t.at_hand_skeins.value_or(0),
                       t.wearer == Wearer::animal ? t.wearer_said : t.kin, t.unanswered,
                       fmt::join(t.aside, ","), t.imperial ? 1 + *t.imperial : 0);
}

std::string likeness(const Suggestion& s, const SuggestionAnswer& a) {
    if (a.taken.not_an_idea) return "-";
    if (!a.answered) return "?" + s.idea;
    return fmt::format("{}|{}|{}|{}|{}|{}", a.article->name, a.taken.fabric.in(a.article->craft),
                       rounded(a.need.mid.si()), rounded(a.size.si()), s.colours,
                       read_besides(a.taken));
}

// How far the metres reach decides, then how well the yarn serves (0 to 100).
double rank(const SuggestionAnswer& a) {
    constexpr double above_any_score = 1000;
    const double reach = a.taken.not_an_idea          ? -3
                         : !a.answered                ? -2
                         : a.reach == Reach::short_of ? 0
                         : a.reach == Reach::enough   ? 2
                                                      : 1;
    return above_any_score * reach + a.judgement.score;
}

}  // namespace

SuggestionGroups::Key SuggestionGroups::key_of(const std::string& likeness) {
    const std::hash<std::string> hash;
    return {hash(likeness), hash("\n" + likeness)};
}

void SuggestionGroups::add(std::size_t row, Suggestion s, const SuggestionAnswer& a) {
    const auto [place, fresh] = places_.try_emplace(key_of(likeness(s, a)), groups_.size());
    if (fresh) {
        auto& group = groups_.emplace_back();
        group.rank = rank(a);
        group.rows.push_back({row, {}, {}});
        group.suggestion = std::move(s);
        return;
    }
    auto& group = groups_[place->second];
    if (s.idea == group.suggestion.idea) s.idea.clear();
    s.idea.shrink_to_fit();
    group.rows.push_back({row, std::move(s.idea), std::move(s.from)});
}

std::vector<const SuggestionGroup*> SuggestionGroups::ranked() const {
    std::vector<const SuggestionGroup*> out;
    for (const auto& group : groups_) out.push_back(&group);
    std::stable_sort(out.begin(), out.end(),
                     [](const auto* a, const auto* b) { return a->rank > b->rank; });
    return out;
}

}  // namespace gristwright
