// Owning more never makes a woven article worse: of the heddles the one is taken that serves best.
#include <doctest/doctest.h>

#include "catalog/reference/catalogue.hpp"
#include "engine/suitability/judgement.hpp"
#include "tests/engine/random_case.hpp"

using namespace gristwright;
using random_case::Random;

namespace {

constexpr double counts_by_the_inch[] = {5, 7.5, 8, 10, 12, 12.5, 15};

// Nothing where a second heddle alike is lent to who has none near: that is not what is owned.
std::optional<double> score_with(const Equipment& owned, const Template& article,
                                 const YarnProfile& yarn, const Fabrics& fabrics) {
    const auto planned = plan(article, yarn, fabrics, owned, {});
    if (planned.pieces.front().woven->heddles_together > 1) return {};
    return judge(planned, yarn).score;
}

}  // namespace

// Once 10 epi gave a scarf 78 points and 12 epi 77, and with both 12 was taken.
TEST_CASE("a heddle or reed more never lowers the score of a woven article") {
    const auto catalogue = catalog::built_in();
    int looked_at = 0;
    for (unsigned seed = 0; seed < 12; ++seed) {
        Random random(seed);
        const auto yarn = profile(random_case::batch(random), catalogue.yarn);
        Equipment few, more;
        few.shafts = more.shafts = random.once_in(2) ? 2 : 4;
        few.heddles = {ends_per_inch(random.one_of(counts_by_the_inch))};
        more.heddles = few.heddles;
        more.heddles.push_back(ends_per_inch(random.one_of(counts_by_the_inch)));
        for (const auto& article : catalogue.templates) {
            if (article.craft != Craft::woven) continue;
            const auto before = score_with(few, article, yarn, catalogue.fabrics);
            const auto after = score_with(more, article, yarn, catalogue.fabrics);
            if (!before || !after) continue;
            INFO("seed ", seed, ": ", article.name);
            // Whether one must be borrowed is weighed beside the sett, not after the standing.
            CHECK(*after >= *before - 0.5);
            looked_at += *before > 0;
        }
    }
    CHECK(looked_at > 100);
}
