// Whose a word of role is: what stands around "border", "double" or "stripes" tells whether it is
// said of this yarn, of the piece, of a part of it or of another yarn.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// "with a garter border", "a shawl, lace edge": of the piece, and no part for this yarn.
bool is_of_the_piece(const std::vector<Item>& items, std::size_t at);
// "the brim worked double": of the cloth there, and not of the yarn.
bool is_done_to_a_part(const std::vector<Item>& items, std::size_t at);
// "black for the edging": ours is then the rest.
bool is_in_another(const std::vector<Item>& items, std::size_t at);
// "would it go stripy?", "do the colours end up in stripes?": of this yarn alone.
bool asks_how_it_stripes(const std::vector<Item>& items, std::size_t at);
// "pass yours as weft".
bool speaks_of_this(const Item& item);

}  // namespace gristwright
