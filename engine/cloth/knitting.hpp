// A knitted cloth planned from a yarn: gauge from what is known, needle, metres and mass per area.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "engine/cloth/loop.hpp"
#include "engine/cloth/needle.hpp"
#include "engine/estimate/constant.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright {

// What a chart of stitches alone cannot say: two layers knitted at once, each the other's back; or
// small blocks, each picked up along the last tier's sides, so that all lie on the slant.
enum class KnitBuild { one_layer, two_layers, slanted_blocks };

// A stitch: a row of catalog/tables/knitted_fabrics.csv. Factors compare it with stocking stitch
// knitted by the same hands on the same needle, washed and not stretched.
struct KnitFabric {
    std::string name;
    double metres = 1, metres_low = 1, metres_high = 1;  // metres per area, on the same needle
    double stitches = 1;                                 // stitches per width
    double rows = 1;                                     // rows per length
    double growth = 1, growth_low = 1, growth_high = 1;  // area blocked, against plain cloth's
    int stitch_repeat = 1, row_repeat = 2;
    double definition = 0;     // stitch definition it asks of the yarn, 0..1
    double openness = 0;       // 0 closed .. 1 mesh
    bool loose_loops = false;  // floats or holes that small fingers catch in
    bool fulled = false;       // hard, which cannot be undone; its figures are of the fulled cloth
    Mark mark = Mark::judgement;
    std::string source;
    std::string chart;       // as engine/lay/chart.hpp reads it; empty: none
    int longest_strand = 0;  // stitches that a second yarn's strand passes behind, of its chart
    std::string colours;     // which of two yarns each row is, from the first: "1122"; empty: one
    std::string areas;       // which of two yarns each stitch is, as a chart of 1 and 2; empty: one
    KnitBuild built = KnitBuild::one_layer;
};

struct [[nodiscard]] KnitCloth {
    std::shared_ptr<const KnitFabric> fabric;  // its own copy
    Firmness purpose = Firmness::ordinary;
    Estimate<Gauge> by_grist, by_wraps;  // ordinary cloth; by_wraps.mid 0: the wraps tell nothing
    Estimate<Gauge> ordinary;            // both weighed: what chooses the needle
    Length needle_wanted;
    Length needle;             // a size owned, or one that is sold
    bool needle_owned = true;  // false: no size said to be owned, or sold, comes near
    bool needle_told = false;  // of those owned there is no other that would serve as well
    Estimate<Gauge> gauge;     // stocking stitch, washed: of the needle, or as counted on a swatch
    bool from_swatch = false;
    bool needle_of_swatch = false;  // the swatch's own needle was said, and tells this one
    Gauge counted;         // on the swatch, where the gauge was moved to another firmness; else 0
    Gauge stitches, rows;  // of the fabric as finished
    Length loop;
    double tightness = 0;
    TightnessBand wanted;                     // of the needles that serve the purpose in this yarn
    Estimate<double> growth;                  // area blocked / area washed and left to itself
    Estimate<LengthPerArea> metres_per_area;  // of finished cloth
    ArealDensity mass_per_area;
};

// The longest strand behind, as finished; none: no row has two yarns.
Length longest_strand(const KnitCloth& cloth);

// How far the needles that people take for it lie about the one wanted.
const Constant& needle_taken_for(Firmness purpose);

// The needle is chosen for the purpose and the gauge follows from it. A washed swatch's gauge is
// taken as counted; where its firmness was said and another is asked, it is moved by as much as the
// table's gauges of the two lie apart.
KnitCloth knit_cloth(const YarnProfile& yarn, const KnitFabric& fabric, Firmness purpose,
                     const std::vector<Length>& needles);

// The needle to say: 0 where the gauge is a swatch's as counted and nobody said which needle that
// was knitted on.
Length needle_known(const KnitCloth& cloth);

// How far a fabric itself may lie from the table's metres per area, blocking included.
double fabric_range(const KnitCloth& cloth);

}  // namespace gristwright
