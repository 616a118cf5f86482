// What a template says about a knitted piece beyond its sizes: which of them go with a measure of
// the body that grows less than the article does, and how its counts of stitches close.
#pragma once

#include <string>
#include <vector>

#include "engine/units/quantity.hpp"

namespace gristwright {

// Of a size that grows with the article: in step with it, or as this measure of a body grows from
// one chest to the next (engine/project/constants.hpp).
enum class Follows {
    article,
    neck,
    upper_arm,
    wrist,
    armhole,
    back_length,
    arm_length,
    yoke,  // the body and both upper arms together, less the underarms
};
inline constexpr std::size_t follows_count = 8;
std::string_view words(Follows follows);
// How much of the article's growth such a size takes part in: 1 all of it, 0 none.
double growth(Follows follows, bool grows);

struct Following {
    Follows width{}, length{}, narrow{};
};

// Nothing said: stitches and rows as the sizes give them; a taper changes by two at a time.
struct Counting {
    int multiple = 1;         // its stitches are a multiple of this
    std::string stitches_of;  // it begins with the stitches of this piece
    int part = 1;             // or with one part in so many of them
    int begins = 0;           // stitches it begins with, where it grows from a few
    int by = 0;               // stitches that one shaping row adds or takes
    int every = 0;            // rows from one shaping row to the next; 0: as its rows give
    int doubles = 0;          // doubled in this row, and each time its rows have doubled
    int steps = 0;            // a taper narrowed in so many rows, by the same share in each
    std::string along;        // worked across, two rows to each stitch of this piece's edge
    std::string within;       // its rows are among those of this piece
    std::string turns;        // a heel turned out of this flap
    std::string gusset_of;    // what is taken up along this flap, beyond the foot's stitches
    Length underarm;          // a yoke: left at each underarm by "body" and "sleeve"; 0: no yoke
    bool in_rounds = false;   // a taper that goes round
};

}  // namespace gristwright
