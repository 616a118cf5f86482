// A knitted cloth planned from a yarn: gauge from what is known, needle, metres and mass per area.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "engine/cloth/loop.hpp"
#include "engine/estimate/constant.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright {

// A stitch: a row of catalog/tables/knitted_fabrics.csv. Factors compare it with stocking stitch
// knitted by the same hands on the same needle, washed and not stretched.
struct KnitFabric {
    std::string name;
    double metres = 1, metres_low = 1, metres_high = 1;  // metres per area at one stitch gauge
    double stitches = 1;                                 // stitches per width
    double rows = 1;                                     // rows per length
    double growth = 1, growth_low = 1, growth_high = 1;  // area blocked / area not stretched
    int stitch_repeat = 1, row_repeat = 2;
    double definition = 0;     // stitch definition it asks of the yarn, 0..1
    double openness = 0;       // 0 closed .. 1 mesh
    bool loose_loops = false;  // floats or holes that small fingers catch in
    Mark mark = Mark::judgement;
    std::string source;
    std::string chart;       // as engine/lay/chart.hpp reads it; empty: none
    int longest_strand = 0;  // stitches that a second yarn's strand passes behind, of its chart
};

struct [[nodiscard]] KnitCloth {
    std::shared_ptr<const KnitFabric> fabric;  // its own copy
    Firmness purpose = Firmness::ordinary;
    Estimate<Gauge> by_grist, by_wraps;  // by_wraps.mid 0: no wraps measured
    Estimate<Gauge> gauge;               // stocking stitch, washed: both weighed, or the swatch
    bool from_swatch = false;
    Gauge stitches, rows;  // of the fabric as finished
    Length loop;
    Length usual_loop;  // on the same needle by usual hands; else the loop
    double tightness = 0;
    Length needle;             // a size owned, or a usual one
    bool needle_owned = true;  // false: the sizes said to be owned are all too far off
    Estimate<LengthPerArea> metres_per_area;  // of finished cloth
    ArealDensity mass_per_area;
};

// The longest strand behind, as finished; none: no row has two yarns.
Length longest_strand(const KnitCloth& cloth);

// A swatch's gauge is taken as it is where it suits the purpose; for another purpose it tells how
// tightly these hands knit.
KnitCloth knit_cloth(const YarnProfile& yarn, const KnitFabric& fabric, Firmness purpose,
                     const std::vector<Length>& needles);

}  // namespace gristwright
