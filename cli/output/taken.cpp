#include "cli/output/taken.hpp"

#include <fmt/core.h>

#include <nlohmann/json.hpp>

#include "cli/output/layout.hpp"
#include "cli/output/reply_names.hpp"

namespace gristwright::cli {
namespace {

Json text_or_null(std::string_view text) {
    return text.empty() ? Json(nullptr) : Json(inert(text));
}

template <class Q, class Read>
Json quantity(const std::optional<Q>& q, const char* key, Read read) {
    if (!q) return nullptr;
    return Json{{key, number(read(*q))}};
}

// The catalogue's kind; as it was typed where the catalogue has none such.
std::string kind_said(const SuggestionAnswer& a, std::size_t i) {
    const bool ours = i < a.things.size() && a.things[i].article && !a.things[i].as_nearest;
    return inert(ours ? a.taken.wanted[i].kind : a.taken.wanted[i].said);
}

Json needs_json(const Wanted& wanted) {
    if (wanted.needs) return Json{{"m", number(in_metres(*wanted.needs))}};
    return quantity(wanted.needs_mass, "g", in_grams);
}

Json craft_json(const Taken& taken) {
    if (taken.craft) return words(*taken.craft);
    for (const auto& unmade : taken.not_known)
        if (unmade.other_craft) return "other";
    return nullptr;
}

std::string fabric_name(const NamedFabric& fabric) {
    return fabric.knitted.empty() ? fabric.woven : fabric.knitted;
}

// What nobody reckons here, each as it was typed.
Json not_known_json(const Taken& taken) {
    auto out = Json::array();
    for (const auto& unmade : taken.not_known) out.push_back(inert(unmade.said));
    return out;
}

void add_sizes(const Taken& taken, Json& out) {
    out["size"] = nullptr;
    out["sizes"] = Json::array();
    if (taken.wanted.empty()) return;
    const auto& first = taken.wanted.front();
    for (std::size_t i = 0; i < first.sizes.size(); ++i) {
        const Json cm{{"cm", number(in_centimetres(first.sizes[i]))}};
        if (i == 0 && !first.only_width)
            out["size"] = cm;
        else
            out["sizes"].push_back(cm);
    }
}

}  // namespace

std::string taken_line(const SuggestionAnswer& a, const Units& units) {
    auto out = a.taken.taken_as;
    const auto lacking = left_out(a);
    if (!lacking.empty()) out.push_back("not known: " + joined(lacking));
    for (const auto& said : a.taken.left_out) out.push_back("left out: " + said);
    for (const auto& said : a.taken.aside) out.push_back("heard as talk: " + said);
    if (!a.taken.how_big.empty()) out.push_back("no measure: " + a.taken.how_big);
    for (const auto& kind : a.taken.ruled_out) out.push_back("ruled out: " + kind);
    if (a.taken.role != YarnRole::unsaid) out.push_back("as " + std::string(words(a.taken.role)));
    if (a.taken.wearer != Wearer::unsaid)
        out.push_back("for " + std::string(words(a.taken.wearer)));
    for (const auto& wanted : a.taken.wanted)
        if (wanted.count > 1) out.push_back(fmt::format("{} times {}", wanted.count, wanted.kind));
    if (a.answered) {
        out.push_back(fmt::format("answered with {}{}{} ({})", a.article->title,
                                  a.put_into.empty() ? "" : ", worked in ", a.put_into,
                                  words(a.article->craft)));
        if (a.taken.wanted[a.main].sizes.empty())
            out.push_back(fmt::format("assumed: {} {}", a.article->measure, units.size(a.size)));
    }
    return inert(joined(out));
}

Json taken_json(const SuggestionAnswer& a) {
    const auto& taken = a.taken;
    Json out;
    const bool one = !taken.wanted.empty();
    out["article"] = one ? Json(kind_said(a, 0)) : Json(nullptr);
    out["form"] = one ? text_or_null(taken.wanted.front().form) : Json(nullptr);
    out["craft"] = craft_json(taken);
    out["fabric"] = text_or_null(fabric_name(taken.fabric));
    add_sizes(taken, out);
    out["needs"] = one ? needs_json(taken.wanted.front()) : Json(nullptr);
    out["weight"] = text_or_null(taken.weight);
    out["needle"] = quantity(taken.needle, "mm", in_millimetres);
    out["gauge"] = quantity(taken.gauge, "st_per_10cm", in_stitches_per_10cm);
    out["sett"] = quantity(taken.sett, "per_10cm", in_ends_per_10cm);
    out["role"] = text_or_null(words(taken.role));
    out["for"] = text_or_null(words(taken.wearer));
    out["count"] = one ? taken.wanted.front().count : 0;
    out["several"] = Json::array();
    if (taken.wanted.size() > 1)
        for (std::size_t i = 0; i < taken.wanted.size(); ++i)
            out["several"].push_back(kind_said(a, i));
    out["ruled_out"] = texts(taken.ruled_out);
    out["not_known"] = not_known_json(taken);
    out["left_out"] = texts(taken.left_out);
    out["aside"] = texts(taken.aside);
    out["not_an_idea"] = taken.not_an_idea;
    return out;
}

}  // namespace gristwright::cli
