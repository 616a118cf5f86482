#include "cli/bulk_answers.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <random>

#include "cli/output/answers_many.hpp"
#include "cli/output/layout.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/odd_texts.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::complaint;
using asked::holds;

namespace {

// A spreadsheet that is there as long as this is.
class Sheet {
  public:
    explicit Sheet(const std::string& text) { std::ofstream(path(), std::ios::binary) << text; }
    std::string path() const { return folder_.file("suggestions.csv"); }

  private:
    asked::Folder folder_;
};

// A spreadsheet answered for Heron.
struct AnsweredSheet {
    Sheet sheet;
    BulkAnswers bulk;

    explicit AnsweredSheet(const std::string& text, bool keep = false)
        : sheet(text), bulk(asked::heron(), keep) {
        bulk.read(sheet.path());
    }
};

std::vector<std::string> random_rows(std::mt19937& random, int count) {
    constexpr const char* ideas[] = {"lace shawl", "cabled hat", "weave a scarf", "plain socks",
                                     "xyzzy",      "mittens",    "a rug"};
    std::vector<std::string> out;
    for (int i = 0; i < count; ++i) {
        std::string needs;
        if (random() % 2 == 0) needs = fmt::format("{}m", 50 + 50 * (random() % 12));
        if (random() % 10 == 0) needs = "lots";
        out.push_back(fmt::format("{},{}", ideas[random() % std::size(ideas)], needs));
    }
    return out;
}

std::string sheet_of(const std::vector<std::string>& rows) {
    return "idea,needs\n" + joined(rows, "\n") + "\n";
}

// What a group is, whatever its place: its article or words, its rank, its verdict.
using Groups = std::map<std::tuple<double, std::string>, std::size_t>;
Groups groups_of(const BulkAnswers& bulk) {
    Groups out;
    for (const auto* g : bulk.ranked()) out[{g->rank, g->suggestion.idea}] += g->rows.size();
    return out;
}

}  // namespace

TEST_CASE("every row is answered once or refused, and groups stand best first") {
    for (unsigned seed = 0; seed < 6; ++seed) {
        std::mt19937 random{seed};
        const AnsweredSheet a(sheet_of(random_rows(random, 80)));
        std::size_t answered = 0;
        for (const auto* g : a.bulk.ranked()) answered += g->rows.size();
        CHECK(a.bulk.rows() == 80);
        CHECK(answered + a.bulk.bad() == 80);
        const auto ranked = a.bulk.ranked();
        CHECK(std::is_sorted(ranked.begin(), ranked.end(), [](const auto* x, const auto* y) {
            return x->rank > y->rank ||
                   (x->rank == y->rank && x->rows.front().number < y->rows.front().number);
        }));
    }
}

TEST_CASE("the order of the rows changes no group but by which row came first") {
    std::mt19937 random{17};
    auto rows = random_rows(random, 60);
    const auto before = groups_of(AnsweredSheet(sheet_of(rows)).bulk);
    std::shuffle(rows.begin(), rows.end(), random);
    CHECK(groups_of(AnsweredSheet(sheet_of(rows)).bulk) == before);
}

TEST_CASE("suggestions near alike are one group, with how often and which came first") {
    const AnsweredSheet a(
        "idea,needs,craft\nlace shawl,400m,\nbeanie,,\nlace shawl,401m,knitted\nlace "
        "shawl,900m,\nhat,,\n");
    const auto ranked = a.bulk.ranked();
    std::map<std::size_t, std::size_t> counts;
    for (const auto* g : ranked) counts[g->rows.front().number] = g->rows.size();
    CHECK(counts == std::map<std::size_t, std::size_t>{{2, 2}, {3, 2}, {5, 1}});
}

TEST_CASE("who is answered in other words is of another group") {
    // They shared a reply: in the first sender's units, of one hat or of none, of somebody's niece.
    const char* apart[] = {"hat",
                           "hats",
                           "hat 22 inches round",
                           "hat 56 cm round",
                           "hat for my niece",
                           "hat for my son",
                           "I made a dress once. A hat"};
    std::string text = "idea\n";
    for (const auto* idea : apart) text += std::string(idea) + "\n";
    const AnsweredSheet a(text);
    CHECK(a.bulk.ranked().size() == std::size(apart));
}

TEST_CASE("a cell that cannot be read is left out and said, its idea is answered") {
    // One unreadable amount dropped the whole suggestion, and its sender got no reply.
    struct Case {
        const char *row, *wrong, *right;
    };
    const Case cases[] = {
        {"hat,lots,,,,,", "needs: 'lots' is neither a length nor a mass", "440yd"},
        {"hat,,heavy,,,,", "weight: there is no weight class 'heavy'", ""},
        {"hat,,fien,,,,", "weight: there is no weight class 'fien'", "did you mean 'fine'?"},
        {"hat,,,24,,,", "gauge: '24' can mean", "22st/10cm"},
        {"hat,,,,huge,,", "size: cannot read 'huge'", "60 x 8 in"},
        {"hat,,,,,ten,", "colours: 'ten' is not a number", "from 1 to 9"},
        {"hat,,,,,0,", "colours: '0' is not a number", "from 1 to 9"},
        {"hat,,,,,,by hand", "craft: knitted or woven, not 'by hand'", "knitted or woven"},
    };
    for (const auto& c : cases) {
        const AnsweredSheet a("idea,needs,weight,gauge,size,colours,craft\nscarf,,,,,,\n" +
                              std::string(c.row) + "\nscarf,,,,,,\n");
        REQUIRE(a.bulk.complaints().size() == 1);
        const auto& said = a.bulk.complaints()[0];
        INFO(said);
        CHECK(said.starts_with("row 3: "));
        CHECK(said.ends_with("; the row is answered without it"));
        CHECK(holds(said, c.wrong));
        CHECK(holds(said, c.right));
        CHECK(a.bulk.ranked().size() == 2);
        CHECK(a.bulk.bad() == 0);
        CHECK_FALSE(a.bulk.all_read());
        REQUIRE(a.bulk.left_out().count(3) == 1);
        CHECK(holds(a.bulk.left_out().at(3)[0].why, c.wrong));
    }
}

TEST_CASE("a row with more cells than headings is refused and kept to be told") {
    const AnsweredSheet a("idea,from\nscarf,Odo\nhat,Mags,red\nscarf,Tilda\n");
    CHECK(a.bulk.ranked().size() == 1);
    REQUIRE(a.bulk.refused().size() == 1);
    CHECK(a.bulk.refused()[0].number == 3);
    CHECK(a.bulk.refused()[0].from == "Mags");
    CHECK(a.bulk.complaints() ==
          std::vector<std::string>{"row 3: more fields than the header names"});
}

TEST_CASE("what is written has a line for every row, and says of each what was wrong") {
    AnsweredSheet a("idea,from,needs\nscarf,Odo,lots\nhat,Mags,1,x\nscarf,Tilda,\n,Tom,\n");
    const auto csv = whole(answers_csv(a.bulk, asked::heron()));
    INFO(csv);
    CHECK(std::count(csv.begin(), csv.end(), '\n') == 5);
    for (const char* sender : {"Odo", "Mags", "Tilda", "Tom"}) CHECK(holds(csv, sender));
    CHECK(holds(csv, "needs: 'lots' is neither"));
    CHECK(holds(csv, "I could not read 'lots' (needs) and left it out."));
    CHECK(holds(csv, "more fields than the header names"));
    const auto json = whole(answers_json(a.bulk, asked::heron()));
    CHECK(holds(json, "\"left_out\""));
    CHECK(holds(json, "\"from\": \"Mags\""));
}

TEST_CASE("another craft in the column of crafts is wanted, and not known") {
    const AnsweredSheet a("idea,craft\nhat,crochet\n");
    CHECK(a.bulk.all_read());
    REQUIRE(a.bulk.ranked().size() == 1);
    CHECK(a.bulk.ranked()[0]->suggestion.idea == "crochet hat");
}

TEST_CASE("twenty complaints are kept, all counted") {
    std::string text = "idea,colours\n";
    for (int i = 0; i < 50; ++i) text += "hat,many\n";
    const AnsweredSheet a(text);
    CHECK(a.bulk.left_out().size() == 50);
    CHECK(a.bulk.complaints().size() == 20);
    CHECK(a.bulk.more_complaints() == 30);
    CHECK(a.bulk.ranked().size() == 1);
}

TEST_CASE("headers in people's own words, in any order, what is not known is not used") {
    const AnsweredSheet named(
        "When,Finished size (cm),Project,Colour of eyes\n2026,150cm,scarf,blue\n");
    REQUIRE(named.bulk.ranked().size() == 1);
    const auto s = named.bulk.ranked()[0]->suggestion;
    CHECK(s.idea == "scarf");
    CHECK(s.when == "2026");
    CHECK(in_centimetres(*s.size) == doctest::Approx(150));
}

TEST_CASE("a spreadsheet without ideas is refused with the columns that are known") {
    const Sheet sheet("craft,size\nwoven,1m\n");
    BulkAnswers bulk(asked::heron());
    const auto said = complaint([&] { bulk.read(sheet.path()); });
    CHECK(holds(said, ":1: the header needs a column 'idea'; known: "));
    for (const auto key : suggestion_fields) CHECK(holds(said, key));
    CHECK_THROWS_AS(bulk.read("no-such.csv"), std::runtime_error);
}

TEST_CASE("what has an idea is kept to be remembered, and answered alike when it is") {
    const AnsweredSheet a("idea,needs\nlace shawl,400m\nhat,lots\n,200m\nmittens,\n", true);
    CHECK(a.bulk.good().size() == 3);
    CHECK(a.bulk.complaints().back() == "row 4: no idea stands in it");
    CHECK(AnsweredSheet("idea\nhat\n").bulk.good().empty());
    BulkAnswers again(asked::heron());
    again.take_all(a.bulk.good());
    CHECK(groups_of(again) == groups_of(a.bulk));
}

TEST_CASE("a very long idea is cut between characters") {
    // Found a bug: it was cut between bytes, and half a letter became a '?'.
    for (const std::size_t before : {479U, 478U, 477U, 480U}) {
        const AnsweredSheet a("idea\nhat " + std::string(before - 4, 'x') + "羊毛羊毛\n");
        const auto idea = a.bulk.ranked()[0]->suggestion.idea;
        INFO(before);
        CHECK(idea.size() <= 480);
        CHECK(odd::is_utf8(idea));
    }
}

TEST_CASE("whatever a spreadsheet holds, each row is answered or refused") {
    std::mt19937 random{23};
    for (int i = 0; i < 40; ++i) {
        std::string text = "idea,needs,who\n";
        for (int row = 0; row < 5; ++row) {
            auto odd_text = odd::anything(random, 6);
            std::string cell;
            for (const char c : odd_text) cell += c == '"' ? "\"\"" : std::string(1, c);
            text += "\"" + cell + "\",,\n";
        }
        const AnsweredSheet a(text);
        std::size_t answered = 0;
        for (const auto* g : a.bulk.ranked()) answered += g->rows.size();
        CHECK(answered + a.bulk.bad() == a.bulk.rows());
    }
}
