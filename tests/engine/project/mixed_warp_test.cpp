// A cloth of two yarns, and a warp out of several skeins: what is said of ends and metres adds up.
#include <doctest/doctest.h>

#include "engine/project/plan.hpp"
#include "engine/project/role.hpp"
#include "engine/project/warp.hpp"
#include "tests/engine/invented.hpp"
#include "tests/engine/project/fabrics.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

OtherYarn cotton() {
    OtherYarn out;
    out.name = "8/2 cotton";
    out.grist = tex(148);
    out.packed_diameter = packed_diameter(tex(148), 0.92);
    out.hair = 0;
    return out;
}

}  // namespace

TEST_CASE("warp and weft, ours and the other yarn's, are all the metres there are") {
    for (const auto role : {Role::weft, Role::warp, Role::colour})
        for (const double grist : {100.0, 222.0, 500.0}) {
            const auto article = in_role(invented::woven_scarf(), role);
            const auto p = plan(article, invented::yarn(2000, grist), fabrics, {},
                                {0.9, metres(1.6), {}, cotton()});
            const auto& piece = p.pieces[0];
            const auto& panel = piece.panel;
            CAPTURE(grist);
            CHECK((p.need.mid + p.second_yarn).si() == Approx((piece.warp + piece.weft).si()));
            CHECK(piece.warp.si() == Approx(panel.ends * panel.warp_per_end.si()));
            CHECK(panel.reed_width.si() == Approx(panel.ends / piece.woven->ends.si()));
            CHECK(p.second_to_have >= p.second_yarn);
        }
}

TEST_CASE("ends from several skeins are whole, and are all the ends where the skeins hold them") {
    const std::vector<Length> skeins{metres(50), metres(31), metres(7), metres(120)};
    for (const int ends : {1, 17, 60, 90})
        for (const double each : {1.3, 2.29, 4.0}) {
            int got = 0;
            Length used;
            for (const auto& share : share_warp(skeins, ends, metres(each))) {
                CHECK(share.used.si() == Approx(share.ends * each));
                CHECK(share.used <= skeins[share.skein] + metres(1e-6));
                got += share.ends;
                used += share.used;
            }
            int most = 0;
            for (const auto skein : skeins) most += static_cast<int>(skein.si() / each + 1e-9);
            CHECK(got == std::min(ends, most));
            CHECK(used.si() == Approx(got * each));
        }
}
