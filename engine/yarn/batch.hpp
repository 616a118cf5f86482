// A finished batch of handspun as the spinner measured it. Nothing here is computed.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/estimate/constant.hpp"
#include "engine/units/quantity.hpp"
#include "engine/yarn/behaviour.hpp"

namespace gristwright {

// How the length was taken. Lengths in different states are never compared silently: a washed
// skein can be a fifth shorter than it was on the reel.
enum class LengthState { unknown, on_reel, off_reel, washed };

// Laid side by side (spinners, knitters) or packed to refusal (weavers): the counts differ about
// twofold, so a count without its convention is assumed laid and the answer says so.
enum class WrapsHow { assumed_laid, laid, packed };

struct WrapsReading {
    Wraps count;                // > 0
    Length over = inches(1.0);  // how much of the ruler was wrapped
    WrapsHow how = WrapsHow::assumed_laid;
};

enum class Preparation { unknown, carded, combed };
enum class Draw { unknown, long_draw, short_draw };

// One fibre, or a share of a blend. Diameter and staple as ranges; either may be missing.
struct FibrePart {
    std::string name;  // as the person wrote it, or as the fibre table spells it
    double share = 1;  // of the mass, 0..1; the shares of a blend sum to 1
    Density density = grams_per_cm3(1.31);
    std::optional<Length> micron_low, micron_high;
    std::optional<Length> staple_low, staple_high;
    std::string kind;      // sheep, goat, plant, silk, ... as the fibre table has it; may be empty
    std::string category;  // fine, medium, longwool, down, ...; may be empty
    std::string felting;   // high, medium, low, unknown
    FibreBehaviour behaviour;
    Mark mark = Mark::judgement;  // how diameter and staple are known; of the person's own: unsaid
    std::string source;           // where the figures come from; empty: the person's own
};

// How a blend behaves. By mass, but the coarsest part is felt beyond its share, and a strong
// man-made fibre reinforces beyond its own. A wool with only a diameter behaves by it, one of
// which nothing is known like any wool: its levels are ranges.
FibreBehaviour behaviour_of(const std::vector<FibrePart>& fibre);

struct Skein {
    std::string name;
    Length length;  // > 0
    Mass mass;      // > 0
    LengthState state = LengthState::unknown;
    // Where the skeins are not alike (kinds.hpp); nothing: as the batch.
    std::optional<WrapsReading> wraps{};
    std::vector<FibrePart> fibre{};
    std::string colour{};  // in lower case, as it was named
};

// How the yarn was weighed and measured, for the margin of its grist.
struct Measuring {
    Mass scale_step{};     // the scale's resolution; 0: exact
    bool tared = true;     // two readings instead of one
    Length length_step{};  // resolution of the length; 0: covered by the loop's margin
    double loop = 0.01;    // relative margin of the reel's or niddy-noddy's loop
};

// How a yarn is built or left, besides preparation, draw and plies.
enum class Made {
    thick_and_thin,  // slubs and thin places, on purpose or not
    core_spun,       // fibre wrapped round a core thread
    boucle,          // loops held by a binder
    chain_plied,     // one singles looped back on itself: three strands
    cabled,          // plied yarns plied again, the other way
    energised,       // singles left with live twist
    fulled,          // singles or yarn fulled in the skein
    overplied,       // does not hang open: more plying twist than balances
    underplied,      // less of it
    plied_z,         // plied clockwise, the other way than is usual
};
inline constexpr std::size_t made_count = 10;
std::string_view words(Made made);
std::optional<Made> made_named(std::string_view word);

struct Batch {
    std::string name;
    std::vector<Skein> skeins;  // at least one
    Measuring measuring;
    std::optional<WrapsReading> wraps;
    std::vector<FibrePart> fibre;  // empty: unknown, wool is assumed and the answer says so
    Preparation preparation = Preparation::unknown;
    Draw draw = Draw::unknown;
    int plies = 0;  // 0: unknown
    std::optional<Twist> ply_twist;
    std::optional<Gauge> washed_gauge;  // stocking stitch, from a washed swatch of this yarn
    bool variegated = false;            // colour changes that break up the surface
    std::array<bool, made_count> made{};

    bool is(Made how) const { return made[static_cast<std::size_t>(how)]; }
};

}  // namespace gristwright
