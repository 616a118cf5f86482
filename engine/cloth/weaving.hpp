// A woven cloth planned from a yarn and a loom: heddle, share of the greatest sett, take-up,
// losses.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "engine/cloth/equipment.hpp"
#include "engine/cloth/losses.hpp"
#include "engine/cloth/sett.hpp"
#include "engine/cloth/sleying.hpp"
#include "engine/estimate/constant.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright {

// What a chart of crossings alone cannot say: ends that change places with their neighbour before
// every second pick; or picks of two strands each, one drawn in by the other and held by it.
enum class WeaveBuild { single_threads, crossed_ends, clasped_picks };

// A weave: a row of catalog/tables/weaves.csv.
struct Weave {
    std::string name;
    Interlacing interlacing = plain_weave;  // of its chart, averaged over the picks of the repeat
    double sett = 0;   // ends against plain weave's; 0: as its interlacing says (Ashenhurst)
    double picks = 1;  // to each end
    int warp_float = 1, weft_float = 1;  // threads passed without crossing, of its chart
    int shafts = 2;                      // 2: one rigid heddle weaves it
    double take_up = 1;                  // against plain weave at the same sett
    Loss gathers{};                      // in washing, both ways, beside what its fibre loses
    std::string gathers_source;
    Mark gathers_mark = Mark::judgement;
    int most_in_hole = 1;  // ends that may share a hole of a rigid heddle
    int end_repeat = 2, pick_repeat = 2;
    double definition = 0;     // definition it asks of the yarn, 0..1
    bool loose_loops = false;  // floats that catch
    Mark mark = Mark::judgement;
    std::string source;
    std::string chart;  // as engine/lay/chart.hpp reads it; empty: none
    // Which of two yarns each end is, and each pick: "11112222/11112222"; empty: one yarn.
    std::string colours;
    // Which of two wefts lies where, as a chart of squares an end wide: 1, 2, or 3 for both in one
    // shed; empty: one weft.
    std::string areas;
    WeaveBuild built = WeaveBuild::single_threads;
};

// What a warp is stretched on. On pins warp and weft are one thread: nothing is drawn in at the
// edges, and there is no warp to waste.
enum class Loom { warped, pins };

struct WovenCloth;

// How a piece is woven and finished.
struct Weaving {
    Spacing spacing = Spacing::general;
    Finish finish = Finish::light;
    Loom loom = Loom::warped;
    // Shares of hair in warp and weft, where another yarn than the profile's has a part.
    std::optional<double> warp_hair{}, weft_hair{};
    // What a thread takes of the width, warp and weft together; not said: the profile's diameter.
    std::optional<Length> thickness{};
    // What a cloth is worth in one heddle or reed that is owned against another, its sett known and
    // no loss yet; not said: the nearer the middle of its band, the more.
    std::function<double(const WovenCloth&)> worth{};
};

struct [[nodiscard]] WovenCloth {
    std::shared_ptr<const Weave> weave;  // its own copy
    Spaced by = Spaced::heddle;
    Sett heddle;               // the heddle's, reed's or frame's own count
    Sleying sleying{};         // ends in each hole and slot, or dent
    int heddles_together = 1;  // 2: two rigid heddles of that count, one behind the other
    Sett ends, picks;          // on the loom
    Sett greatest;
    double share = 0;  // of the greatest sett
    ShareBand wanted{};
    bool within_reach = true;   // false: no heddle owned comes near the band; a stated sett does
    bool shafts_enough = true;  // false: this loom cannot weave it
    bool through_hole = true;   // false: the yarn is thicker than the heddle's hole
    Length hole;                // of a rigid heddle; 0: there is none
    double warp_take_up = 0;
    Loss drawn_in{};         // width, reed to off the loom
    Loss width{}, length{};  // reed to washed, off the loom to washed
    double spread = 0;       // relative margin of its metres
};

// The closest that ends can lie in this weave. R / (R + I) holds where one warp and one weft make
// one cloth between them; one-sided, layered and patterned cloths follow plain weave instead.
Sett greatest_sett(const Weave& weave, Length packed_diameter);

// A warp-faced cloth draws itself in as close as its ends lie: no reed spaces them.
bool draws_itself_in(const Weave& weave);

// Of the finished cloth: the longest stretch that lies on it without crossing.
Length longest_float(const WovenCloth& cloth);

WovenCloth weave_cloth(const YarnProfile& yarn, const Weave& weave, const Weaving& how,
                       const Equipment& owned);

}  // namespace gristwright
