// Woven cloth from yarn: setts, take-up, losses, metres and mass per area.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/cloth/equipment.hpp"
#include "engine/estimate/constant.hpp"
#include "engine/estimate/estimate.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright {

// A weave: a row of catalog/tables/weaves.csv. R threads and I intersections per repeat
// (Ashenhurst: greatest sett = D R / (R + I)).
struct Weave {
    std::string name;                       // "plain", "pick-up floats", "basket", "2/2 twill"
    double threads = 2, intersections = 2;  // averaged over all picks of the repeat
    int shafts = 2;                         // 2: a rigid heddle weaves it
    double take_up_factor = 1;  // against plain weave at the same share (twill about 0.5)
    int end_repeat = 2, pick_repeat = 2;
    double definition = 0;
    bool loose_loops = false;
    Mark mark = Mark::judgement;
    std::string source;
};

enum class Spacing {
    open,
    drapey,
    general,
    firm
};  // share of the greatest sett, 50-60, 60-70, 75-80, 80-90 %
struct ShareBand {
    double low, high;
};
ShareBand share_band(Spacing purpose);

double diameters_per_inch(LinearDensity d, double ashenhurst_c);  // C sqrt(yd/lb)
Sett greatest_sett(Length packed_diameter, const Weave& weave);
// Crimp of one system by Peirce's relation as (9/16) s^2, s = crossing threads per length x
// diameter.
double take_up(Sett crossing, Length packed_diameter, const Weave& weave);

// How the finished cloth is washed: light, open or lightly fulled, hard fulled.
enum class Finish { light, open_or_fulled, hard_fulled };
struct Loss {
    double mid, low, high;
};
Loss width_loss(Finish finish);   // reed to finished
Loss length_loss(Finish finish);  // off the loom to finished

struct WovenCloth {
    std::string weave;
    Sett heddle;  // chosen; 0: none that the person owns suits
    bool heddle_owned = true;
    Sett picks;  // on the loom
    Sett greatest;
    double share = 0;  // of the greatest sett
    ShareBand wanted{0, 0};
    double warp_take_up = 0, weft_take_up = 0;
    Loss width, length;
    ArealDensity mass_per_area;  // finished
    bool shafts_ok = true;       // false: this loom cannot weave it
    bool passes_heddle = true;   // the yarn goes through the hole
};

WovenCloth weave_cloth(const YarnProfile& yarn, const Weave& weave, Spacing purpose, Finish finish,
                       const Equipment& owned);

struct WovenMetres {
    int ends = 0, picks = 0;
    Length reed_width, woven_length, warp_length_per_end;  // woven: on the loom, under tension
    Estimate<Length> warp, weft;
};

// Metres for a panel of a finished size. `fringe` is the total for both ends, `loom_waste` per end.
WovenMetres woven_metres(const WovenCloth& cloth, Length width, Length length, Length fringe,
                         Length loom_waste, int end_repeat);

}  // namespace gristwright
