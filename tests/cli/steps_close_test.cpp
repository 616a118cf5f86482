// What a knitter is told to add or take away leads from each count to the next, in every built-in
// template, at several sizes and in several yarns. It did not: a raglan gained 256 stitches on the
// way to 285, and a shawl that doubled came to 530.
#include <doctest/doctest.h>

#include <cmath>
#include <regex>

#include "cli/output/steps.hpp"
#include "engine/project/plan.hpp"
#include "engine/project/shaping.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;

namespace {

// A thread of numbers through the steps: the stitches now on the needles, 0 where that is not told.
class Reader {
  public:
    explicit Reader(const std::vector<std::string>& steps) {
        for (const auto& step : steps) text_ += step + " ";
    }

    // Reads what is told of counts from first to last.
    void read() {
        static const std::regex told(
            "(?:cast on|pick up|double them to|leaves|mark) (\\d+)|(increase evenly|decrease "
            "evenly|go "
            "on over) (?:to )?(\\d+) stitch"
            "|(\\d+)[^.;:\\d]*?((?:,? ?(?:then )?in every (?:\\d+\\w\\w )?(?:row|round) "
            "(?:\\d+ times|once))+),? to (\\d+)"
            "|to ((?:\\d+ in (?:row|round) \\d+(?:, | and )?)+)"
            "|: (\\d+) stitches|(?:, (\\d+) in all|over (\\d+))[.;]",
            std::regex::icase);
        for (std::sregex_iterator it(text_.begin(), text_.end(), told), end; it != end; ++it)
            take(*it);
    }

    int shapings = 0, changes = 0;

  private:
    static int number(const std::ssub_match& match) { return std::stoi(match.str()); }

    void take(const std::smatch& m) {
        INFO(m.str());
        if (m[1].matched) now_ = number(m[1]);
        if (m[2].matched) change(m[2].str(), number(m[3]));
        if (m[4].matched) shape(number(m[4]), m[5].str(), number(m[6]));
        if (m[7].matched) one_by_one(m[7].str());
        if (m[8].matched) now_ = number(m[8]);
        if (m[9].matched) now_ = number(m[9]);
        if (m[10].matched) now_ = number(m[10]);
    }

    void change(const std::string& how, int to) {
        ++changes;
        const char first = how[0] | 0x20;
        if (now_ > 0) CHECK((first == 'i' ? to > now_ : first == 'd' ? to < now_ : to == now_));
        now_ = to;
    }

    // So many stitches in each of the rows told come to what is said.
    void shape(int by, const std::string& runs, int to) {
        ++shapings;
        static const std::regex run("every (?:\\d+\\w\\w )?(?:row|round) (?:(\\d+) times|once)");
        int times = 0;
        for (std::sregex_iterator it(runs.begin(), runs.end(), run), end; it != end; ++it)
            times += (*it)[1].matched ? number((*it)[1]) : 1;
        INFO("from ", now_, " by ", by, " x ", times, " to ", to);
        if (now_ > 0) CHECK(std::abs(to - now_) == by * times);
        now_ = to;
    }

    // Doubled, or the same share taken out, each time in a later row.
    void one_by_one(const std::string& counts) {
        ++shapings;
        static const std::regex each("(\\d+) in \\w+ (\\d+)");
        int row = 0;
        double share = 0;
        for (std::sregex_iterator it(counts.begin(), counts.end(), each), end; it != end; ++it) {
            const double next = number((*it)[1]) / double(now_);
            INFO(counts, " from ", now_);
            CHECK(number((*it)[2]) > row);
            if (share > 0) CHECK(next == doctest::Approx(share).epsilon(0.05));
            share = next;
            now_ = number((*it)[1]);
            row = number((*it)[2]);
        }
    }

    std::string text_;
    int now_ = 0;
};

const PlanPiece* named(const Plan& plan, std::string_view name) {
    for (const auto& p : plan.pieces)
        if (p.piece->name == name) return &p;
    return nullptr;
}

void check_shapings(const Plan& plan) {
    for (const auto& p : plan.pieces) {
        const auto s = shaping_of(p);
        INFO(p.piece->name, ": ", s.from, " to ", s.to, " in ", s.rows);
        CHECK(s.from > 0);
        CHECK((s.to > 0 || !p.piece->counting.gusset_of.empty()));  // which comes to a point
        if (!s.reached.empty()) {
            CHECK(s.reached.back().stitches == s.to);
            CHECK(s.reached.back().row <= s.rows);
        } else if (s.from != s.to && p.outline.shape != Shape::square_from_corner) {
            int times = 0, rows = 0;
            for (const auto& run : s.runs) times += run.times, rows += run.times * run.every;
            CHECK(s.by * times == std::abs(s.to - s.from));
            CHECK(rows <= s.rows);
        }
    }
}

// Neck -> yoke -> body and sleeves.
void check_yoke(const Plan& plan, const PlanPiece& yoke) {
    const auto* body = named(plan, "body");
    const auto* sleeve = named(plan, "sleeve");
    REQUIRE((body && sleeve));
    const auto parts = yoke_parts(plan, yoke);
    CHECK(body->stitches + 2 * sleeve->stitches - 4 * parts.underarm == yoke.stitches);
    CHECK(parts.underarm > 0);
    if (yoke.piece->counting.by != 8) return;
    CHECK(2 * parts.sleeve + parts.back + parts.front == yoke.few_stitches);
    if (body->outline.shape == Shape::rectangle) CHECK(parts.front % 2 == 0);  // two fronts
    CHECK(parts.sleeve >= 2);
    CHECK(parts.back > parts.sleeve);
}

// The rows that an edge worked across takes, and the double heel.
void check_rest(const Plan& plan, const PlanPiece& p) {
    const auto& c = p.piece->counting;
    if (const auto* edge = named(plan, c.along))
        CHECK(p.rows == 2 * edge->stitches * edge->piece->count);
    if (c.multiple > 1 && c.stitches_of.empty()) CHECK(p.stitches % c.multiple == 0);
    if (const auto* from = named(plan, c.stitches_of); from && c.by == 0)
        CHECK(p.stitches * c.part == from->stitches);
    if (p.outline.shape == Shape::square_from_corner)
        CHECK(p.rows == 2 * (p.stitches - p.few_stitches));
}

struct Read {
    int shapings = 0, changes = 0;
};

Read check(const Plan& plan) {
    check_shapings(plan);
    for (const auto& p : plan.pieces) {
        INFO(p.piece->name);
        if (p.piece->counting.underarm.si() > 0) check_yoke(plan, p);
        check_rest(plan, p);
    }
    Reader reader(steps_of(plan, Units(UnitChoice::metric)));
    reader.read();
    return {reader.shapings, reader.changes};
}

}  // namespace

TEST_CASE("the counts in the steps of every knitted template close") {
    const Question questions[] = {asked::of_options({"--skein", "500m/450g", "--wraps", "7wpi"}),
                                  asked::of_options({"--skein", "2600m/1170g", "--wraps", "11wpi"}),
                                  asked::of_options({"--skein", "2000m/500g", "--wraps", "15wpi"}),
                                  asked::of_options({"--skein", "1500m/200g", "--wraps", "24wpi"})};
    Read all;
    for (const auto& article : questions[0].catalogue->templates) {
        if (article.craft != Craft::knitted) continue;
        for (const auto& q : questions)
            for (const auto size :
                 {article.smallest, article.ideal, article.largest, article.ideal * 1.03}) {
                INFO(article.name, " at ", in_centimetres(size), " cm in ",
                     in_tex(q.yarn.linear_density.mid), " tex");
                auto request = q.request;
                request.size = size;
                const auto read =
                    check(plan(article, q.yarn, q.catalogue->fabrics, q.measured.owned, request));
                all.shapings += read.shapings;
                all.changes += read.changes;
            }
    }
    // Some are read at all.
    CHECK(all.shapings > 300);
    CHECK(all.changes > 300);
}

TEST_CASE("no step says by hand what its counts would have to bear out") {
    static const std::regex by_hand(
        "(increas|decreas|narrow|widen|let out|take out|mak|doubl)[^.]*every "
        "(second|third|fourth|fifth|row|round)[^.]*\\bto \\{[^}]*stitches\\}"
        "|(ncrease|ecrease|et the count|raw in)( evenly)?( back)? to \\{");
    static const std::string one_a_row = "at the beginning of every row";
    for (const auto& article : asked::heron().catalogue->templates)
        for (const auto& step : article.steps) {
            INFO(article.name, ": ", step);
            CHECK((step.find(one_a_row) != std::string::npos || !std::regex_search(step, by_hand)));
        }
}

TEST_CASE("a larger chest has a deeper yoke, a longer body and a wider neck, each by less") {
    const auto q = asked::of_options({"--skein", "2600m/1170g", "--wraps", "11wpi"});
    for (const char* name : {"raglan-pullover", "yoke-pullover", "plain-cardigan"}) {
        INFO(name);
        const auto article =
            std::find_if(q.catalogue->templates.begin(), q.catalogue->templates.end(),
                         [&](const Template& t) { return t.name == name; });
        REQUIRE(article != q.catalogue->templates.end());
        const auto at = [&](Length size) {
            auto request = q.request;
            request.size = size;
            return plan(*article, q.yarn, q.catalogue->fabrics, {}, request);
        };
        const auto small = at(article->smallest), large = at(article->largest);
        const double chest = large.size / small.size;
        const auto grows = [&](const char* piece, auto size) {
            const double by = size(*named(large, piece)) / size(*named(small, piece));
            INFO(piece, " ", by);
            CHECK(by > 1.05);
            CHECK(by < chest);
        };
        grows("yoke", [](const PlanPiece& p) { return double(p.rows); });
        grows("body", [](const PlanPiece& p) { return double(p.rows); });
        grows("yoke", [](const PlanPiece& p) { return double(p.few_stitches); });
    }
}
