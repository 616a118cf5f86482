// What each skein says of itself: wraps, fibre, colour, where the skeins are not alike.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/spoken.hpp"
#include "catalog/typed/batch_text.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {

// "139m/38.5g wraps 14wpi fibre BFL colour teal", "8/2 cotton 250g": a skein as it is typed in one
// text; the words wraps, fibre and colour begin what it says of itself. "3 x 110 yd @ 57 g" is
// three of them. Throws Unreadable.
std::vector<SkeinText> read_skeins_said(const std::string& text, const std::string& where,
                                        const SpokenWords& spoken);

// "8/2 cotton", "2/20 Nm": bought yarn, in place of a length; its mass says how much there is.
bool is_a_count(const std::string& length);
// Throws Refused where the count's system is not said: wool is sold by two.
std::pair<Reading<Length>, Reading<Mass>> skein_by_count(const SkeinText& skein);

// Reads what the skeins say of themselves into `out`, whose batch is read already. A skein that
// does not say what others say is as the batch says, else as the others where these are alike.
// Throws Refused for a text that cannot be read, and where the others differ: then it must say it.
void read_own(const BatchText& text, const Catalogue& catalogue, WrapsHow how, MeasuredBatch& out);

}  // namespace gristwright::catalog
