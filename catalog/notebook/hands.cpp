#include "catalog/notebook/hands.hpp"

#include <algorithm>
#include <stdexcept>

#include "catalog/typed/swatch_text.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/kinds.hpp"

namespace gristwright::catalog {
namespace {

// Ratios of one batch's swatches, weighted by their precision.
void add_gauge(const std::optional<Estimate<double>>& ratio, HandsSeen& seen) {
    if (ratio) seen.gauge = seen.gauge ? posterior(*seen.gauge, *ratio) : *ratio;
}

// Each of the yarns that its skeins are, by itself.
std::vector<YarnProfile> yarns_of(const Batch& batch, YarnProfile whole, const YarnTables& tables) {
    const auto places = whole.agreement.yarns;
    if (places.size() < 2) return {std::move(whole)};
    std::vector<YarnProfile> out;
    for (const auto& yarn : places) out.push_back(profile(with_skeins(batch, yarn), tables, true));
    return out;
}

// A swatch of one of several yarns that does not say of which tells nothing.
HandsSeen seen_in(const SwatchedBatch& batch, const Catalogue& catalogue) {
    const auto measured = interpret(batch.text, catalogue);
    const auto whole = profile(measured.batch, catalogue.yarn, true);
    const auto yarns = yarns_of(measured.batch, whole, catalogue.yarn);
    HandsSeen out;
    out.batch = batch.name;
    out.made = make_up_of(measured.batch);
    double looks = 0;
    int rated = 0;
    for (const auto& text : batch.swatches) {
        const auto of = yarn_of(text, measured.batch, whole.agreement);
        if (!of) continue;
        if (const auto look = look_of(text))
            looks += *look - yarns[*of].trait(TraitName::definition).value, ++rated;
        if (text.kind != SwatchText::Kind::knitted) continue;
        add_gauge(
            gauge_against_table(read_knitted(text), fabric_of(text, catalogue.fabrics), yarns[*of]),
            out);
    }
    if (rated > 0) out.look = looks / rated;
    return out;
}

}  // namespace

std::vector<HandsSeen> hands_seen(const std::vector<SwatchedBatch>& batches,
                                  const Catalogue& catalogue) {
    std::vector<HandsSeen> out;
    for (const auto& batch : batches) try {
            auto seen = seen_in(batch, catalogue);
            if (seen.gauge || seen.look) out.push_back(std::move(seen));
        } catch (const Refused&) {  // its own commands say what is wrong with it
        }
    return out;
}

std::vector<HandsSeen> without(std::vector<HandsSeen> all, const std::string& batch) {
    all.erase(std::remove_if(all.begin(), all.end(),
                             [&](const HandsSeen& seen) { return seen.batch == batch; }),
              all.end());
    return all;
}

}  // namespace gristwright::catalog
