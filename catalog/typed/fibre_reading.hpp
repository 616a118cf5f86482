// Fibres as people name them: by the table's name, an everyday or trade name, a synonym, alone or
// as a blend: "BFL", "superwash merino", "Corriedale 70%", "70% merino 30% silk", "merino/silk
// 80/20".
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/catalogue.hpp"
#include "catalog/typed/batch_text.hpp"

namespace gristwright::catalog {

struct FibresRead {
    std::vector<FibrePart> parts;    // with their shares, 0 to 1, as typed; empty: not known
    std::vector<std::string> notes;  // what was taken for what
};

// Throws Refused for a name that is not known, with the nearest of the same kind; for
// one that may be several fibres; for a blend without its shares. Whether the shares of several
// texts make a whole is not looked at.
FibresRead read_fibres_said(const std::string& text, const Catalogue& catalogue);
// All the texts of one yarn. Throws Refused with the place, and where their shares make no whole.
FibresRead read_blend(const std::vector<Written>& texts, const Catalogue& catalogue);

}  // namespace gristwright::catalog
