#include "catalog/reference/image.hpp"

#include <cmath>
#include <stdexcept>

#include "catalog/reference/image_values.hpp"
#include "catalog/reference/piece_range_text.hpp"

namespace gristwright::catalog {
namespace {

// What every image begins with; another layout has another number.
const std::string heading = "gristwright catalogue 5\n";

using Levels = std::vector<std::vector<double>>;

// How ordinary yarns serve each template: to four places, which no compiler's last bit moves.
Levels levels_of(const Templates& templates) {
    Levels out;
    for (const auto& t : templates)
        for (auto& all = out.emplace_back(); const double level : t.calling->levels)
            all.push_back(std::round(level * 1e4) / 1e4);
    return out;
}

}  // namespace

std::string image_of(const Catalogue& catalogue) {
    ImageWriter out{heading};
    out.put(catalogue);
    out.put(catalogue.templates.rows());
    out.put(levels_of(catalogue.templates));
    return std::move(out.bytes);
}

Catalogue read_image(std::span<const unsigned char> image) {
    if (image.size() < heading.size() || !std::equal(heading.begin(), heading.end(), image.begin()))
        throw std::runtime_error("the built-in catalogue has another layout");
    ImageReader from(image.subspan(heading.size()));
    Catalogue out;
    std::vector<Template> templates;
    Levels levels;
    from.take(out);
    from.take(templates);
    from.take(levels);
    if (!from.at_end() || levels.size() != templates.size())
        throw std::runtime_error("the built-in catalogue is damaged");
    for (std::size_t i = 0; i < levels.size(); ++i) {
        auto& t = templates[i];
        t.origin = "built in";
        t.kind = kind_named(out.kinds, t.article);
        t.apart = range_of(t, out.piece_ranges);
        auto calling = calling_of(t, out.needs, out.spun_for);
        calling.levels = std::move(levels[i]);
        t.calling = std::make_shared<const Calling>(std::move(calling));
    }
    out.templates = std::move(templates);
    return out;
}

}  // namespace gristwright::catalog
