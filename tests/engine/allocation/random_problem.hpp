// Seeded random problems such as a spinner could have: 1 to 3 batches, swatches to shawls, about a
// third more wished for than there is yarn. The figures are invented: judgement.
#pragma once

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

struct Kind {
    bool joins = true;      // false: every piece from one skein
    bool relations = true;  // same, different, forbidden pairs, required pieces, reserve
};

Problem random_problem(std::size_t skeins, std::size_t pieces, std::uint64_t seed,
                       const Kind& kind = {});

// As a spinner's wishes come out of the engine: any skein will do, joins cost the same everywhere,
// and the first pieces (all but one or two) need nearly all the yarn there is. Judgement.
Problem tight_problem(std::size_t skeins, std::size_t pieces, std::uint64_t seed);

}  // namespace gristwright::allocation
