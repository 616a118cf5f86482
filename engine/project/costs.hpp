// What the pieces of a plan take, by how it grows with the size.
//
// An implementation header of plan(): others read the Plan.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

inline bool width_grows(Grows g) { return g == Grows::width || g == Grows::both; }
inline bool length_grows(Grows g) { return g == Grows::length || g == Grows::both; }

// How much of the article's growth each size of a piece takes part in.
inline double width_share(const PieceTemplate& p) {
    return growth(p.follows.width, width_grows(p.grows));
}
inline double length_share(const PieceTemplate& p) {
    return growth(p.follows.length, length_grows(p.grows));
}
inline double narrow_share(const PieceTemplate& p) {
    return growth(p.follows.narrow, width_grows(p.grows));
}

// What one piece's cloth makes of it: its metres by how they grow, and their relative margin.
struct Costed {
    std::shared_ptr<const PieceTemplate> piece;
    std::optional<KnitCloth> knit;
    std::optional<WovenCloth> woven;
    Need need;   // of this batch
    Need other;  // of the other yarn
    double spread = 0;
};

// Of every piece of an article, which lives as long as what points to its pieces.
std::vector<Costed> costs(const std::shared_ptr<const Template>& article, const YarnProfile& yarn,
                          const OtherYarn& other, const Fabrics& fabrics, const Equipment& owned);

struct Total {
    Need need, other_yarn;
    double spread = 0;  // of the need near the ideal size; pieces share their error
};
Total total(const std::vector<Costed>& costed);

}  // namespace gristwright
