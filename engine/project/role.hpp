// What part a batch plays in an article that other yarn shares.
#pragma once

#include <optional>
#include <string_view>

#include "engine/project/template.hpp"
#include "engine/yarn/batch.hpp"

namespace gristwright {

std::string_view words(Role role);    // "weft on another warp"
std::string_view name_of(Role role);  // "weft"
// whole, weft, warp, border, colour, double or plied, or what one of these is in words.
std::optional<Role> role_named(std::string_view name);

// The same article with this batch in that part of it: what is not this batch's is another yarn's,
// and what only the other yarn is asked (a warp's strength) is not asked of this one. Held double
// and plied again it is the article as it stands: the yarn is another one (`strands`).
// Throws Refused where the article has no such part.
Template in_role(Template article, Role role);

// Whether any of it is another yarn's.
bool takes_two(const Template& article);

// The article as the other yarn sees it: what was this batch's is another's, and the other way
// round.
Template rest_of(Template article);

// The batch as two strands of itself: held together while working, or plied once more, against its
// plying twist. Half as many metres, twice the grist, thicker by the root of two; whatever was
// counted on the single yarn is not carried over.
Batch two_strands(Batch batch, Role role);

}  // namespace gristwright
