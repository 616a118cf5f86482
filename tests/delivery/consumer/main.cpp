// What the program does, by others: profile, makes, plan, split, answer.
#include <cstdio>

#include "catalog/reference/catalogue.hpp"
#include "catalog/reference/ground.hpp"
#include "catalog/typed/batch_text.hpp"
#include "engine/allocation/split.hpp"
#include "engine/suggestion/answer.hpp"
#include "engine/suitability/ranking.hpp"

using namespace gristwright;

int main(int, char** argv) {
    const auto known = catalog::built_in();
    const auto measured = catalog::interpret(catalog::read_batch_file(argv[1]), known);
    const auto& owned = measured.owned;
    const auto yarn = profile(measured.batch, known.yarn);
    const auto makes = ranked(known.templates, yarn, known.fabrics, owned, {});
    const auto& first = makes.best.front().plan;
    std::printf("makes: %s, %.0f\n", first.article->name.c_str(),
                makes.best.front().judgement.score);
    const auto hat = plan(*known.template_named("watch-cap"), yarn, known.fabrics, owned, {});
    std::printf("plan: %.0f m of %.0f m\n", in_metres(hat.need.mid), in_metres(hat.have.mid));
    const auto cut = allocation::split(yarn, {{{"shawl", {}, first, true}, {"hat", {}, hat}}});
    std::printf("split: %zu cuts\n", cut.cuts.size());
    Answerer answerer(catalog::ground(known, yarn, owned));
    const auto said = answerer.answer({"a lace shawl"});
    std::printf("answer: %s, %.0f\n", said.article->name.c_str(), said.judgement.score);
}
