// How many template variants the engine plans and judges in a second on one core.
#include "catalog/reference/catalogue.hpp"
#include "engine/suitability/best_set.hpp"
#include "engine/suitability/judgement.hpp"
#include "tests/bench/timing.hpp"

using namespace gristwright;

namespace {

Batch demo() {
    Batch batch;
    for (const auto& [m, g] : {std::pair{171.0, 38.5}, {204.0, 45.0}, {188.0, 43.0}, {96.0, 21.6}})
        batch.skeins.push_back({"skein", metres(m), grams(g), LengthState::washed});
    batch.wraps = WrapsReading{wraps_per_inch(16)};
    batch.plies = 2;
    return batch;
}

void plan_and_judge(benchmark::State& state) {
    const auto catalogue = catalog::built_in();
    const auto yarn = profile(demo(), catalogue.yarn);
    const Equipment owned{{ends_per_10cm(30), ends_per_10cm(40), ends_per_10cm(50)},
                          centimetres(60),
                          2,
                          {millimetres(3), millimetres(4)}};
    std::size_t i = 0;
    for (auto _ : state) {
        Request request;
        request.certainty = 0.80 + 0.001 * static_cast<double>(i % 190);
        const auto& article = catalogue.templates[i++ % catalogue.templates.size()];
        const auto planned = plan(catalogue.templates.shared(article), yarn, catalogue.fabrics, owned, request);
        benchmark::DoNotOptimize(judge(planned, yarn).score);
    }
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(plan_and_judge);

void load_catalogue(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(catalog::built_in().templates.size());
}
BENCHMARK(load_catalogue)->Unit(benchmark::kMillisecond);

void find_best_set(benchmark::State& state) {
    const auto catalogue = catalog::built_in();
    const auto yarn = profile(demo(), catalogue.yarn);
    std::vector<Plan> plans;
    for (const auto& t : catalogue.templates)
        plans.push_back(plan(t, yarn, catalogue.fabrics, {}, {}));
    std::vector<Judged> judged;
    for (const auto& p : plans) judged.push_back({&p, judge(p, yarn).score});
    for (auto _ : state) benchmark::DoNotOptimize(best_set(judged).worth);
}
BENCHMARK(find_best_set)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
    const auto timing = bench::run(argc, argv);
    const double one = timing.seconds("plan_and_judge");
    bench::row("a template planned and judged", fmt::format("{:.1f} us", 1e6 * one), "",
               fmt::format("{:.0f} a second", 1 / one));
}
