// What a loom and its owner make of a woven article: how it is set up, and the warp that no cloth
// comes of.
#pragma once

#include <memory>

#include "engine/cloth/equipment.hpp"
#include "engine/project/template.hpp"

namespace gristwright {

struct OtherYarn;

// The article with the waste of this person's loom and the fringe they want. A frame with pins
// wastes nothing; what is woven without a fringe gets none.
std::shared_ptr<const Template> on_this_loom(std::shared_ptr<const Template> article,
                                             const Equipment& owned);

// The first fringe and the last are cut from what cannot be woven, but for what the knots and the
// back rod hold: of one end, once a warp.
Length waste_beyond_fringe(const Template& article);

// One piece's cloth, its warp and weft perhaps of two yarns.
WovenCloth weave_piece(const Template& article, const PieceTemplate& piece, const Weave& weave,
                       const YarnProfile& yarn, const OtherYarn& other, const Equipment& owned);

// Of one panel on that warp.
Panel panel_of(const Template& article, const PieceTemplate& piece, const WovenCloth& cloth);

}  // namespace gristwright
