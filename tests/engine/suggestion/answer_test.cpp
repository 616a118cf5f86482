// What holds for the answer to any idea, over seeded random yarns and ideas.
#include "engine/suggestion/answer.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/engine/random_case.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using random_case::Random;

namespace {

// word, class, meaning; parted as the packed table parts them.
const std::string words_known =
    "scarf\tarticle\tscarf\nwrap\tarticle\twrap\nneck warmer\tarticle\tscarf\n"
    "lacy\tfabric\tlace/\nsimple\tfabric\tplain/tabby\ntwill\tfabric\t/twill\n"
    "woven\tcraft\twoven\nknitted\tcraft\tknitted\na\tfiller\t\nplease\tfiller\t\n"
    "twice\tnumber\t2\nknotted\ttechnique\tother\nnot\tnegation\t\nor\tjoiner\tor\n"
    "and\tjoiner\tand\nlovely\tremark\tpraise\ncm\tunit\tcm\nm\tunit\tm\nlong\ttool\tsize\n"
    "takes\ttool\tneeds\n";

std::vector<Template> articles() {
    auto wrap = invented::knitted_scarf();
    wrap.name = wrap.article = "wrap";
    wrap.pieces[0] = invented::piece("lace", 60, 180, Grows::both);
    return {invented::knitted_scarf(), invented::woven_scarf(), wrap};
}

// Everything that an answer draws on, kept together.
struct Question {
    YarnProfile yarn;
    std::vector<Template> templates = articles();
    ArticleKinds kinds;
    std::vector<WeightClass> classes;
    Fabrics fabrics = invented::fabrics();
    Equipment owned;
    std::string words = words_known;
    std::vector<BodySize> bodies;
    std::vector<DemandFor> needs;
    Request request;

    explicit Question(YarnProfile of) : yarn(std::move(of)) {}
    Ground ground() const {
        return {yarn, templates, kinds, classes, fabrics, owned, words, bodies, needs, request};
    }
    SuggestionAnswer answer(const Suggestion& s) const { return Answerer(ground()).answer(s); }
};

constexpr const char* ideas[] = {"scarf",       "a lacy scarf", "woven scarf",  "lacy wrap",
                                 "neck warmer", "twill scarf",  "knitted wrap", "simple scarf"};

Suggestion any_idea(Random& random) {
    Suggestion out;
    out.idea = random.one_of(ideas);
    if (random.once_in(2)) out.needs = metres(random.between(50, 1500));
    if (random.once_in(2)) out.size = centimetres(random.between(70, 250));
    if (random.once_in(3)) out.gauge = stitches_per_10cm(random.between(10, 40));
    if (random.once_in(3)) out.sett = ends_per_10cm(random.between(20, 120));
    return out;
}

// Enough before enough if smaller before short.
int rank(const SuggestionAnswer& a) { return static_cast<int>(a.reach); }

void check_same(const SuggestionAnswer& a, const SuggestionAnswer& b) {
    REQUIRE(a.answered == b.answered);
    CHECK(a.ask == b.ask);
    if (!a.answered) return;
    CHECK(a.article->name == b.article->name);
    CHECK(a.reach == b.reach);
    CHECK(a.need.mid.si() == near(b.need.mid.si(), 1e-12));
    CHECK(a.certainty == b.certainty);
    CHECK(a.size == b.size);
    CHECK(a.size_that_fits == b.size_that_fits);
    CHECK(a.other_craft_reaches == b.other_craft_reaches);
}

}  // namespace

TEST_CASE("what was asked before changes no answer, nor who asks, when and for whom") {
    for (unsigned seed = 0; seed < 20; ++seed) {
        Random random(seed);
        const Question q(invented::yarn(random.between(50, 1200), random.between(80, 500)));
        std::vector<Suggestion> all;
        for (int i = 0; i < 30; ++i) all.push_back(any_idea(random));
        Answerer forwards(q.ground()), backwards(q.ground());
        std::vector<SuggestionAnswer> later;
        for (auto i = all.rbegin(); i != all.rend(); ++i) later.push_back(backwards.answer(*i));
        std::reverse(later.begin(), later.end());
        for (std::size_t i = 0; i < all.size(); ++i) {
            auto named = all[i];
            named.who = "child", named.from = "a guild friend", named.when = "tomorrow";
            INFO("seed ", seed, ": ", all[i].idea);
            check_same(forwards.answer(named), later[i]);
        }
    }
}

TEST_CASE("more of the yarn never makes an answer worse, a higher certainty never a better one") {
    for (unsigned seed = 0; seed < 200; ++seed) {
        Random random(seed);
        const auto idea = any_idea(random);
        const double grist = random.between(80, 500), hand = random.between(30, 600);
        Question q(invented::yarn(hand, grist));
        INFO("seed ", seed, ": ", idea.idea);
        int before = 2;
        double chance = 0;
        std::string name;
        auto craft = Craft::knitted;
        for (double share = 1; share < 5; share *= 1.3) {
            q.yarn = invented::yarn(hand * share, grist);
            const auto a = q.answer(idea);
            if (!a.answered) break;
            CHECK(rank(a) <= before);
            // A better article may be answered once it is reached; the chance is then its own.
            if (a.article->about + a.article->name == name && a.article->craft == craft)
                CHECK(a.certainty >= chance);
            before = rank(a), chance = a.certainty, name = a.article->about + a.article->name,
            craft = a.article->craft;
        }
        before = 0;
        for (const double certainty : {0.5, 0.8, 0.95, 0.999}) {
            q.request.certainty = certainty;
            const auto a = q.answer(idea);
            if (!a.answered) break;
            CHECK(rank(a) >= before);
            before = rank(a);
        }
    }
}

TEST_CASE("an idea that needs more is never sooner reached") {
    for (unsigned seed = 0; seed < 100; ++seed) {
        Random random(seed);
        auto idea = any_idea(random);
        const Question q(invented::yarn(random.between(50, 900), random.between(80, 500)));
        int before = 0;
        INFO("seed ", seed, ": ", idea.idea);
        for (double needs = 20; needs < 2000; needs *= 1.5) {
            idea.needs = metres(needs);
            const auto a = q.answer(idea);
            if (!a.answered) break;
            CHECK(rank(a) >= before);
            if (a.left > Length{})
                CHECK((a.left + a.need.mid).si() == near(q.yarn.length.mid.si(), 1e-12));
            CHECK((a.short_by > Length{}) == (a.certainty < 0.9));
            before = rank(a);
        }
    }
}

TEST_CASE("a mass with its grist is the length that it comes to") {
    for (unsigned seed = 0; seed < 100; ++seed) {
        Random random(seed);
        auto by_length = any_idea(random);
        by_length.needs = metres(random.between(50, 1500));
        auto by_mass = by_length;
        by_mass.grist = tex(random.between(80, 600));
        by_mass.needs.reset();
        by_mass.needs_mass = *by_length.needs * *by_mass.grist;
        const Question q(invented::yarn(500, 220));
        const auto a = q.answer(by_length), b = q.answer(by_mass);
        INFO("seed ", seed, ": ", by_length.idea);
        CHECK(a.reach == b.reach);
        CHECK(a.need.mid.si() == near(b.need.mid.si(), 1e-12));
        by_mass.grist.reset();
        CHECK_FALSE(q.answer(by_mass).answered);  // how many metres is that?
    }
}

TEST_CASE("the size that is said to fit does, and the largest of those offered is the largest") {
    int smaller = 0, offered = 0;
    for (unsigned seed = 0; seed < 300; ++seed) {
        Random random(seed);
        auto idea = any_idea(random);
        idea.needs.reset();
        const Question q(invented::yarn(random.between(80, 900), random.between(80, 500)));
        for (const double cm : {80, 120, 160, 200, 240}) idea.sizes.push_back(centimetres(cm));
        const auto a = q.answer(idea);
        if (!a.answered) continue;
        INFO("seed ", seed, ": ", idea.idea);
        auto other = idea;
        for (const auto size : idea.sizes) {
            other.size = size;
            const auto b = q.answer(other);
            // At another size another template may serve better.
            if (b.article->name != a.article->name || b.article->craft != a.article->craft)
                continue;
            CHECK((b.reach == Reach::enough) == (size <= a.largest_offered));
        }
        offered += a.largest_offered > Length{} ? 1 : 0;
        if (a.reach != Reach::enough_if_smaller) continue;
        other.size = a.size_that_fits;
        CHECK(q.answer(other).reach == Reach::enough);
        CHECK(a.size_that_fits < a.size);
        ++smaller;
    }
    CHECK((smaller > 30 && offered > 100));
}

TEST_CASE("capitals, signs, plurals and words that say nothing change nothing of what is meant") {
    const ArticleKinds kinds;
    const Lexicon words(words_known, kinds);
    Stemmer stemmer;
    const std::pair<const char*, const char*> alike[] = {
        {"lacy scarf", "A LACY scarf!"},     {"lacy scarf", "please, a lacy... scarfs"},
        {"woven wrap", "wrap, woven"},       {"neck warmer", "Neck-warmers"},
        {"neck warmer", "a scarf"},          {"twill scarf", "scarf (twill) 2026"},
        {"simple scarf", "scarf\tsimple\n"}, {"knitted wrap", "knitted wrap"}};
    for (const auto& [one, other] : alike) {
        const auto a = understand(one, words, stemmer), b = understand(other, words, stemmer);
        INFO(std::string(one), " / ", std::string(other));
        REQUIRE(a.wanted.size() == 1);
        REQUIRE(b.wanted.size() == 1);
        CHECK(a.wanted[0].kind == b.wanted[0].kind);
        CHECK(a.craft == b.craft);
        CHECK(a.fabric == b.fabric);
        CHECK(b.not_known.empty());
    }
}

TEST_CASE("what nobody knows is asked about, three words at most, and nothing is made up") {
    const Question q(invented::yarn(500, 220));
    const std::pair<const char*, const char*> cases[] = {
        {"", "what is it to be?"},
        {"lacy", "what is it to be?"},
        {"not a scarf", "what is it to be?"},
        {"blob", "which article is meant by 'blob'?"},
        {"blob splog gunk wump", "which article is meant by 'blob, splog, gunk'?"},
        {"twill wrap",
         "there is no wrap in twill in the catalogue: which craft and fabric would do?"},
        {"woven wrap", "there is no woven wrap in the catalogue: which craft and fabric would do?"},
        {"woven lacy scarf",
         "there is no woven scarf in lace in the catalogue: which craft and fabric would do?"}};
    for (const auto& [idea, asks] : cases) {
        Suggestion s;
        s.idea = idea;
        const auto a = q.answer(s);
        INFO(std::string(idea));
        CHECK_FALSE(a.answered);
        CHECK(a.ask == asks);
    }
}

TEST_CASE("a craft that is ruled out leaves the other") {
    const Question q(invented::yarn(900, 200));
    for (const auto& [idea, craft] : {std::pair{"scarf, not woven", Craft::knitted},
                                      std::pair{"a scarf, not knitted", Craft::woven}}) {
        Suggestion s;
        s.idea = idea;
        const auto answer = q.answer(s);
        REQUIRE(answer.answered);
        CHECK(answer.article->craft == craft);
    }
}

TEST_CASE("praise and talk are no idea: nothing is asked and nothing reckoned") {
    const Question q(invented::yarn(500, 220));
    for (const char* talk : {"lovely!", "please", "1234 !!", "lovely, lovely"}) {
        Suggestion s;
        s.idea = talk;
        const auto a = q.answer(s);
        INFO(std::string(talk));
        CHECK(a.taken.not_an_idea);
        CHECK_FALSE(a.answered);
        CHECK(a.ask.empty());
    }
}

TEST_CASE("so many take so many times the metres, and several things their sum") {
    const Question q(invented::yarn(5000, 220));
    const auto need = [&](const char* idea) {
        Suggestion s;
        s.idea = idea;
        return q.answer(s).need.mid;
    };
    const auto scarf = need("knitted scarf"), wrap = need("knitted wrap");
    CHECK(need("3 knitted scarfs").si() == near(scarf.si() * 3, 1e-9));
    CHECK(need("knitted scarf and knitted wrap").si() == near((scarf + wrap).si(), 1e-9));
    CHECK(need("scarf or wrap, knitted").si() == near(scarf.si(), 1e-9));
}

// By hand, 222 tex: packed 0.64 mm. Ends and picks go with the sett, so the metres of a cloth do,
// but for its take-up and what the loom wastes of each end.
TEST_CASE("at a sett that is said the metres are of that sett, and the usual one is still told") {
    const Question q(invented::yarn(5000, 222));
    const auto at = [&](std::optional<Sett> sett) {
        Suggestion s;
        s.idea = "woven scarf";
        s.sett = sett;
        return q.answer(s);
    };
    const auto unsaid = at({}), open = at(ends_per_10cm(30)), close = at(ends_per_10cm(60));
    CHECK(close.need.mid / open.need.mid == near(2, 0.1));
    CHECK(open.usual_sett == unsaid.usual_sett);
    CHECK(close.usual_sett == unsaid.usual_sett);
    CHECK(open.share == near(30 * 0.064 * 2 / 10, 0.01));
    CHECK(at(unsaid.usual_sett).need.mid.si() == near(unsaid.need.mid.si(), 1e-9));
    CHECK(open.judgement.score < unsaid.judgement.score);
    CHECK(open.obstacles.empty());
}

TEST_CASE("a stated amount is what a pattern asks one to buy: it is enough when it is there") {
    const Question q(invented::yarn(400, 220));
    Suggestion s;
    s.idea = "scarf takes 385 m";
    CHECK(q.answer(s).reach == Reach::enough);
    s.idea = "scarf takes 480 m";
    CHECK(q.answer(s).reach != Reach::enough);
}

TEST_CASE(
    "another craft is offered where the metres reach and the yarn serves, not where it does not") {
    // Offered though the yarn is no warp: nobody noticed.
    Question q(invented::yarn(900, 200));
    q.templates = {invented::knitted_scarf(), invented::woven_scarf()};
    auto& knitted = q.templates[0];
    knitted.pieces[0] = invented::piece("plain", 100, 500, Grows::length);
    knitted.smallest = knitted.ideal = knitted.largest = centimetres(500);
    auto& woven = q.templates[1];
    woven.pieces[0] = invented::piece("tabby", 15, 80, Grows::length);
    woven.smallest = woven.ideal = woven.largest = centimetres(80);
    const auto offered = [&](double warp_fitness) {
        woven.wishes[static_cast<std::size_t>(Asked::warp_fitness)] = {1, 1};
        q.yarn.traits[static_cast<std::size_t>(TraitName::warp_fitness)].value = warp_fitness;
        Suggestion s;
        s.idea = "knitted scarf";
        const auto a = q.answer(s);
        REQUIRE(a.answered);
        REQUIRE(a.reach == Reach::short_of);
        REQUIRE(a.other_craft);
        CHECK(a.other_reach == Reach::enough);
        return a.other_craft_reaches;
    };
    CHECK(offered(1));
    CHECK_FALSE(offered(0));
}

TEST_CASE("an article in another fabric needs what its kind needs in that fabric") {
    Question q(invented::yarn(800, 200));
    q.yarn.plies = 4;
    auto& scarf = q.templates.front();
    REQUIRE(scarf.article == "scarf");
    scarf.calling = std::make_shared<const Calling>();
    DemandFor open;
    open.fabric.words = {"lace"};
    Demand two_plies;
    two_plies.enough = 2, two_plies.lacking = 4, two_plies.left = 0.5;
    open.demand = std::make_shared<const Demand>(two_plies);
    q.needs = {open};
    const auto score = [&](const char* idea) {
        Suggestion asked;
        asked.idea = idea;
        return q.answer(asked).judgement.score;
    };
    CHECK(score("knitted simple scarf") > 1.5 * score("a lacy scarf"));
}
