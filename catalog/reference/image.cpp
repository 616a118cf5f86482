#include "catalog/reference/image.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <stdexcept>

#include "catalog/reference/image_values.hpp"
#include "catalog/reference/piece_range_text.hpp"

namespace gristwright::catalog {
namespace {

// What every image begins with; another layout has another number.
const std::string heading = "gristwright catalogue 5\n";

// A template's calling as the image holds it: its demands by their places in the table of needs.
struct PackedCalling {
    std::vector<std::uint32_t> needs;
    std::vector<double> levels;
    double place = 1;
    int alike = 1;
};

void columns(RowOf<PackedCalling> auto& r, auto&& at) { at(r.needs, r.levels, r.place, r.alike); }

// Of levels four places, which no compiler's last bit moves.
PackedCalling packed(const Calling& calling, const std::vector<DemandFor>& needs) {
    PackedCalling out{{}, {}, calling.place, calling.alike};
    for (const auto& demand : calling.demands) {
        const auto same = [&](const DemandFor& row) { return row.demand == demand; };
        const auto at = std::find_if(needs.begin(), needs.end(), same) - needs.begin();
        out.needs.push_back(static_cast<std::uint32_t>(at));
    }
    for (const double level : calling.levels) out.levels.push_back(std::round(level * 1e4) / 1e4);
    return out;
}

Calling unpacked(PackedCalling packed, const std::vector<DemandFor>& needs) {
    Calling out{{}, std::move(packed.levels), packed.place, packed.alike};
    out.demands.reserve(packed.needs.size());
    for (const auto at : packed.needs) {
        if (at >= needs.size()) throw std::runtime_error("the built-in catalogue is damaged");
        out.demands.push_back(needs[at].demand);
    }
    return out;
}

std::vector<PackedCalling> callings_of(const Catalogue& catalogue) {
    std::vector<PackedCalling> out;
    for (const auto& t : catalogue.templates) out.push_back(packed(*t.calling, catalogue.needs));
    return out;
}

}  // namespace

std::string image_of(const Catalogue& catalogue) {
    ImageWriter out{heading};
    out.put(catalogue);
    out.put(catalogue.templates.rows());
    out.put(callings_of(catalogue));
    return std::move(out.bytes);
}

Catalogue read_image(std::span<const unsigned char> image) {
    if (image.size() < heading.size() || !std::equal(heading.begin(), heading.end(), image.begin()))
        throw std::runtime_error("the built-in catalogue has another layout");
    ImageReader from(image.subspan(heading.size()));
    Catalogue out;
    std::vector<Template> templates;
    std::vector<PackedCalling> callings;
    from.take(out);
    from.take(templates);
    from.take(callings);
    if (!from.at_end() || callings.size() != templates.size())
        throw std::runtime_error("the built-in catalogue is damaged");
    for (std::size_t i = 0; i < callings.size(); ++i) {
        auto& t = templates[i];
        t.origin = "built in";
        t.kind = kind_named(out.kinds, t.article);
        t.apart = range_of(t, out.piece_ranges);
        t.calling = std::make_shared<const Calling>(unpacked(std::move(callings[i]), out.needs));
    }
    out.templates = std::move(templates);
    return out;
}

}  // namespace gristwright::catalog
