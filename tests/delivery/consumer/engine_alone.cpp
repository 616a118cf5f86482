// The engine alone, without tables; what asks for tables says so.
#include <cstdio>

#include "engine/suitability/judgement.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

using namespace gristwright;

int main() {
    const auto [length, mass] = read_skein("139m/38.5g");
    std::printf("%.0f tex\n", in_tex(mass.value / length.value));
    Template scarf;
    scarf.name = scarf.article = "scarf";
    scarf.smallest = scarf.ideal = scarf.largest = metres(1);
    scarf.pieces.push_back({"body", "plain", {Shape::rectangle, metres(1), metres(0.2), {}}});
    Fabrics fabrics;
    fabrics.knitted.emplace_back().name = "plain";
    Batch batch;
    batch.skeins = {{"A", length.value, mass.value}};
    const auto yarn = profile(batch, {});
    try {
        std::printf("%.0f\n", judge(plan(scarf, yarn, fabrics, {}, {}), yarn).score);
    } catch (const OurMistake& error) {
        std::printf("%s\n", error.what());
    }
}
