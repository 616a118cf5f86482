#include "catalog/reference/ground.hpp"

namespace gristwright::catalog {

Ground ground(std::reference_wrapper<const Catalogue> known,
              std::reference_wrapper<const YarnProfile> yarn,
              std::reference_wrapper<const Equipment> owned, const Request& asked) {
    const Catalogue& c = known;
    return {yarn,  c.templates.rows(), c.kinds,  c.yarn.classes, c.fabrics,
            owned, c.words.text(),     c.bodies, c.needs,        asked};
}

}  // namespace gristwright::catalog
