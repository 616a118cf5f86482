#include "engine/allocation/possible.hpp"

#include "engine/allocation/allocate.hpp"

namespace gristwright::allocation {
namespace {

// Wishes left out and nothing worth anything: the first plan found is as good as any.
Problem bare(Problem p) {
    for (auto& piece : p.pieces) piece.value = piece.join_cost = 0;
    for (auto& piece : p.pieces)
        for (auto& s : piece.stretch) s.per_cm = 0;
    for (auto& skein : p.skeins) skein.bonus = 0;
    for (auto& row : p.mismatch)
        for (auto& cost : row)
            if (cost) cost = 0;
    return p;
}

}  // namespace

bool possible(const Problem& problem, int nodes) {
    return allocate(bare(problem), {nodes, 0, {}}).found();
}

}  // namespace gristwright::allocation
