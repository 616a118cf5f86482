#include <fmt/core.h>

#include <algorithm>

#include "cli/output/page.hpp"
#include "engine/cloth/knitting_constants.hpp"
#include "engine/cloth/weaving_constants.hpp"
#include "engine/suitability/constants.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright::cli {
namespace {

Leaned leaned(const Constant& c) {
    return {fmt::format("{}: {:g} {}", c.name, c.value, c.unit == "1" ? "" : c.unit),
            std::string(words(c.mark)), std::string(c.source)};
}

template <class Fabric>
Leaned leaned(const Fabric& fabric) {
    return {fabric.name, std::string(words(fabric.mark)), fabric.source};
}

bool same(const Leaned& a, const Leaned& b) { return a.what == b.what; }

Leaned leaned(const Template& article) {
    const auto& apart = article.apart;
    return {fmt::format("how far pieces like {} lie apart: {:g}", article.title, apart.spread),
            std::string(words(apart.mark)), apart.source};
}

void add(std::vector<Leaned>& all, Leaned one) {
    if (std::none_of(all.begin(), all.end(), [&](const auto& o) { return same(o, one); }))
        all.push_back(std::move(one));
}

void add_sources_of_cloth(std::vector<Leaned>& all, const PlanPiece& piece) {
    if (piece.knit) {
        const auto& loop = constants::loop_constants[static_cast<std::size_t>(Relaxation::full)];
        for (const auto& c : {loop.kw, loop.kc, constants::wraps_to_stitches,
                              piece.knit->from_swatch ? constants::swatch_gauge
                                                      : needle_taken_for(piece.knit->purpose),
                              constants::besides_gauge})
            add(all, leaned(c));
        add(all, leaned(*piece.knit->fabric));
    }
    if (piece.woven) {
        for (const auto& c : {constants::woollen_c, constants::worsted_c, constants::crimp_factor,
                              constants::before_sample})
            add(all, leaned(c));
        add(all, leaned(*piece.woven->weave));
    }
}

}  // namespace

std::vector<Leaned> leaned_on(const Question& q, const std::vector<const JudgedPlan*>& plans) {
    std::vector<Leaned> out;
    add(out, {"margin of the grist", std::string(words(Mark::cited)),
              "JCGM 100:2008 (GUM), by a note on calibration"});
    add(out,
        {"spread between skeins", std::string(words(Mark::memory)), "DerSimonian and Laird 1986"});
    add(out, {"suitability as a weighted geometric mean", std::string(words(Mark::memory)),
              "Derringer and Suich 1980, J. Quality Technology 12:214-219"});
    if (!q.catalogue->yarn.classes.empty())
        add(out, {"weight classes", "read", q.catalogue->yarn.classes.front().source});
    for (const auto& fibre : q.measured.batch.fibre)
        if (!fibre.source.empty())
            add(out, {fibre.name, std::string(words(fibre.mark)), fibre.source});
    for (const auto& c : {constants::wraps_per_root_grist, constants::carded_packing,
                          constants::combed_packing, constants::prickling})
        add(out, leaned(c));
    for (const auto* judged : plans) {
        for (const auto& piece : judged->plan.pieces) add_sources_of_cloth(out, piece);
        if (judged->plan.article->craft == Craft::knitted) add(out, leaned(*judged->plan.article));
    }
    std::stable_partition(out.begin(), out.end(), [](const auto& l) { return !l.source.empty(); });
    return out;
}

}  // namespace gristwright::cli
