#include "catalog/typed/equipment_reading.hpp"

#include <optional>

#include "catalog/typed/needle_reading.hpp"
#include "catalog/typed/written_reading.hpp"
#include "engine/cloth/weaving_constants.hpp"
#include "engine/project/constants.hpp"
#include "engine/units/constants.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

using namespace constants;

// The texts of `key`, those that stand in one text apart.
std::vector<Written> each(const BatchText& text, const char* key) {
    std::vector<Written> out;
    const auto found = text.fields.find(key);
    if (found == text.fields.end()) return out;
    for (const auto& at : found->second)
        for (auto& part : apart(at.text)) out.push_back({std::move(part), at.where});
    return out;
}

// "10 epi" or, its hole measured, "10 epi hole 1.5mm".
Heddle heddle(const Written& at) {
    const auto found = at.text.find(" hole ");
    const Written count{at.text.substr(0, found), at.where};
    Heddle out = measured(count, [](const std::string& t) { return read_heddle(t); });
    if (found == std::string::npos) return out;
    const Written hole{at.text.substr(found + 6), at.where};
    out.hole = measured(hole, [](const std::string& t) { return read_length(t).value; });
    if (out.hole < millimetres(narrowest_hole) || out.hole > millimetres(widest_hole))
        throw out_of_range(hole, "holes of heddles are", narrowest_hole, widest_hole);
    return out;
}

// "0", "0cm", "0 in", "none": what would be a length, were it not nothing.
bool is_nothing(const std::string& text) {
    const auto unit = text.find_first_not_of("0.");
    if (text == "none" || (!text.empty() && unit == std::string::npos)) return true;
    if (unit == 0 || text.empty()) return false;
    try {
        static_cast<void>(read_length("1" + text.substr(unit)));
        return true;
    } catch (const Refused&) {
        return false;
    }
}

// What an owner says of one end of a warp; nothing where it is not said.
std::optional<Length> warp_end(const Written* at, const char* are, const Constant& least,
                               const Constant& most) {
    if (!at) return {};
    if (least <= 0 && is_nothing(at->text)) return Length{};
    const auto length = measured(*at, [](const std::string& t) { return read_length(t).value; });
    if (length < centimetres(least) || length > centimetres(most))
        throw out_of_range(*at, are, least, most);
    return length;
}

}  // namespace

Equipment read_equipment(const BatchText& text, const SpokenWords& spoken) {
    Equipment out;
    for (const auto& at : each(text, "heddles")) out.heddles.push_back(heddle(at));
    for (const auto& at : each(text, "needles"))
        out.needles.push_back(
            measured(at, [&](const std::string& t) { return read_needle(t, spoken); }));
    if (const auto* at = one_text(text, "loom_width")) {
        const auto width = measured(*at, [](const std::string& t) {
            return read_length(t, {centimetres(narrowest_loom), centimetres(widest_loom)}).value;
        });
        if (width < centimetres(narrowest_loom) || width > centimetres(widest_loom))
            throw out_of_range(*at, "looms are", narrowest_loom, widest_loom);
        out.loom_width = width;
    }
    out.loom_waste =
        warp_end(one_text(text, "loom_waste"), "loom waste is", least_waste, most_waste);
    out.fringe = warp_end(one_text(text, "fringe"), "fringes are", no_fringe, longest_fringe);
    if (const auto* at = one_text(text, "shafts")) out.shafts = whole_number(*at, 2, 32);
    return out;
}

}  // namespace gristwright::catalog
