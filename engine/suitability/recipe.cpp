#include "engine/suitability/recipe.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "engine/suitability/constants.hpp"
#include "engine/suitability/judgement.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright {
namespace {

using namespace constants;

struct Way {
    Preparation preparation;
    Draw draw;
    int plies;
    double twist;  // plied factor
};

// Every ordinary way, the simplest first: an equal one that asks more of the spinner never wins.
std::vector<Way> ways() {
    std::vector<Way> out;
    for (const int plies : {2, 1, 3, 4})
        for (const double twist : {double{ordinary_twist}, double{soft_twist}, double{firm_twist}})
            for (const auto& [preparation, draw] :
                 {std::pair{Preparation::carded, Draw::short_draw},
                  {Preparation::carded, Draw::long_draw},
                  {Preparation::combed, Draw::short_draw}})
                out.push_back({preparation, draw, plies, twist});
    return out;
}

YarnProfile spun(const FibrePart& fibre, const Way& way, LinearDensity grist,
                 const YarnTables& tables) {
    Batch batch;
    const auto length = metres(ample_metres);
    batch.skeins = {{"skein", length, grist * length, LengthState::washed}};
    batch.fibre = {fibre};
    batch.preparation = way.preparation;
    batch.draw = way.draw;
    batch.plies = way.plies;
    batch.ply_twist =
        turns_per_inch(way.twist * std::sqrt(count_of(grist, count_system("worsted count"))));
    return profile(batch, tables, true);
}

// A row for a whole group of breeds leaves its softness open: nobody can buy that.
bool is_one_fibre(const FibrePart& fibre) {
    const auto& soft = fibre.behaviour.of(Behaviour::softness);
    return soft && soft->high - soft->low < group_width;
}

struct Served {
    const FibrePart* fibre;
    double score;
};

// Best first.
std::vector<Served> served(const Plan& planned, const Way& way, LinearDensity grist,
                           const std::vector<FibrePart>& fibres, const YarnTables& tables) {
    std::vector<Served> out;
    for (const auto& fibre : fibres)
        if (is_one_fibre(fibre))
            out.push_back({&fibre, judge(planned, spun(fibre, way, grist, tables)).score});
    std::stable_sort(out.begin(), out.end(),
                     [](const Served& a, const Served& b) { return a.score > b.score; });
    return out;
}

double of_three(const std::vector<Served>& served) {
    const auto count = std::min<std::size_t>(3, served.size());
    double sum = 0;
    for (std::size_t i = 0; i < count; ++i) sum += served[i].score;
    return sum / static_cast<double>(count);
}

// One of each kind that serves nearly as well as the best, the commonest first.
std::vector<std::string> named(const std::vector<Served>& served) {
    auto common = served;
    std::stable_sort(common.begin(), common.end(),
                     [](const Served& a, const Served& b) { return a.fibre < b.fibre; });
    std::vector<std::string> out;
    std::set<std::string> kinds;
    for (const auto& [fibre, score] : common) {
        if (out.size() == static_cast<std::size_t>(most_fibres)) break;
        if (score < served.front().score - nearly_as_well) continue;
        if (kinds.insert(fibre->category).second) out.push_back(fibre->name);
    }
    return out;
}

}  // namespace

double Recipe::singles_share() const { return plies == 1 ? 1.0 : ply_take_up / plies; }

Recipe recipe_for(const Template& article, LinearDensity grist,
                  const std::vector<FibrePart>& fibres, const YarnTables& tables,
                  const Fabrics& fabrics) {
    Request ideal;
    ideal.size = article.ideal;
    // One plan for all: its cloth hangs on the grist, which is the same.
    const auto planned =
        plan(article, spun(fibres.front(), ways().front(), grist, tables), fabrics, {}, ideal);
    Recipe out;
    double best = -1;
    for (const auto& way : ways()) {
        const auto all = served(planned, way, grist, fibres, tables);
        const double score = of_three(all);
        if (score <= best + clearly_better) continue;
        best = score;
        out.fibres = named(all);
        out.score = all.front().score;
        out.preparation = way.preparation;
        out.draw = way.draw;
        out.plies = way.plies;
        out.twist_low = way.twist - twist_play;
        out.twist_high = way.twist + twist_play;
    }
    out.singles_turns = singles_for_ply;
    return out;
}

}  // namespace gristwright
