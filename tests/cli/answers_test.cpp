// What holds for the answers of every command that takes a batch, as a person sees them.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <regex>

#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "tests/cli/asked.hpp"
#include "tests/near.hpp"

using namespace gristwright::cli;
using asked::and_more;
using asked::holds;
using asked::said;
using asked::Typed;

namespace {

// Batches of all kinds, as they are typed.
const Typed batches[] = {
    {"--skein", "171m/38.5g"},
    {"--skein", "25m/30g", "--skein", "31m/36g", "--prep", "carded", "--draw", "long", "--ply",
     "1"},
    {"--skein", "1200yd/2oz", "--wraps", "34wpi", "--prep", "combed", "--fibre", "Merino"},
    {"--skein", "400m/200g", "--skein", "380m/230g", "--name", "Långt ullgarn, spunnet i Öster",
     "--heddles", "20/10cm", "--loom-width", "30cm", "--needles", "2mm"},
    {"--skein", "90yd/1 3/4 oz", "--gauge", "18st/10cm", "--units", "both"},
};

const std::pair<const char*, Typed> typed_questions[] = {
    {"yarn", {}},
    {"yarn", {"--counts", "--working"}},
    {"makes", {}},
    {"makes", {"--all"}},
    {"plan", {"triangle-shawl"}},
    {"plan", {"woven-two-panel-wrap", "--working"}},
    {"plan", {"yoke-pullover"}},
    {"compare", {"scarf"}},
    {"compare", {"cowl", "--working"}},
    {"answer", {"--idea", "a lace shawl for my sister", "--needs", "400yd"}},
    {"answer", {"--idea", "twill cushion", "--sett", "12epi", "--working"}},
    {"split", {"--sample", "knitted"}},
    {"spin-more", {"basket-throw"}},
};

// Calls `see` with every text that the questions above get.
template <class See>
void each_answer(See see) {
    for (const auto& batch : batches)
        for (const auto& [command, typed] : typed_questions) {
            INFO(command, " ", joined(typed, " "), " of ", batch[1]);
            see(std::string(command), said(command, and_more(typed, batch)));
        }
}

}  // namespace

TEST_CASE("every answer fits 79 columns, ends its last line, and has no number that is none") {
    each_answer([](const std::string& command, const std::string& text) {
        CHECK(text.back() == '\n');
        for (const auto& line : asked::lines(text)) {
            INFO(line);
            const bool copied = line.rfind("Next: ", 0) == 0;  // never broken
            CHECK((characters(line) <= text_width() || copied));
            CHECK((line.empty() || line.back() != ' '));
            for (const char* none : {"nan", "inf ", "-0 ", "-0.0", "  ,", " ;"})
                CHECK_FALSE(holds(line, none));
        }
        CHECK_FALSE(holds(text, "\n\n\n"));
        CHECK_FALSE(command.empty());
    });
}

TEST_CASE("every range that is printed holds the middle it stands beside") {
    // "589 m (516 to 671)", "4.45 m/g (4.30 to 4.60)"
    const std::regex range(R"(([0-9.]+) [a-z/]+ \(([0-9.]+) to ([0-9.]+)\))");
    int seen = 0;
    each_answer([&](const std::string& command, const std::string& text) {
        if (command == "compare") return;  // two columns: a range is not in one line
        auto flat = joined(asked::lines(text), " ");
        flat = std::regex_replace(flat, std::regex(" +"), " ");
        for (std::sregex_iterator at(flat.begin(), flat.end(), range), end; at != end; ++at) {
            const double mid = std::stod((*at)[1]), low = std::stod((*at)[2]);
            INFO(at->str());
            CHECK((low <= mid && mid <= std::stod((*at)[3])));
            ++seen;
        }
    });
    CHECK(seen > 100);
}

TEST_CASE("the same yarn typed in yards and ounces makes the same, to the same size") {
    struct Pair {
        Typed metric, imperial;
    };
    // Exactly the same: a yard is 0.9144 m, an ounce 28.349523125 g (international, 1959).
    const Pair pairs[] = {
        // Heddles not said are those sold where yards are, and they stand at other setts.
        {{"--skein", "182.88m/56.69904625g", "--heddles", "40/10.16cm"},
         {"--skein", "200yd/2oz", "--heddles", "10epi"}},
        {{"--skein", "91.44m/49.61166546875g", "--heddles", "40/10.16cm"},
         {"--skein", "100 yd/1 3/4 oz", "--heddles", "10epi"}},
        {{"--skein", "609.6m/85.048569375g", "--loom-width", "60.96cm", "--heddles", "40/10.16cm"},
         {"--skein", "2000ft/3oz", "--loom-width", "24in", "--heddles", "10epi"}},
        {{"--skein", "300m/70g", "--spare", "9.144m", "--gauge", "24st/10.16cm"},
         {"--skein", "300m/70g", "--spare", "10yd", "--gauge", "6st/in"}},
        {{"--skein", "300m/70g", "--needles", "3.175mm,6.35mm", "--staple", "76.2mm"},
         {"--skein", "300m/70g", "--needles", "1/8in,1/4in", "--staple", "3in"}},
        {{"--skein", "300m/70g", "--wraps", "6.3 wraps/cm", "--twist", "200 turns/m"},
         {"--skein", "300m/70g", "--wraps", "16.002wpi", "--twist", "5.08tpi"}},
    };
    // How finely each was read bears a little on the margins, and so on the sizes.
    const Typed as_fine{"--scale", "0.1g", "--json"};
    for (const auto& [metric, imperial] : pairs)
        for (const char* name : {"garter-scarf", "triangle-shawl", "woven-scarf", "mittens"}) {
            const auto one = Json::parse(said("plan", and_more(and_more({name}, metric), as_fine)));
            const auto other =
                Json::parse(said("plan", and_more(and_more({name}, imperial), as_fine)));
            INFO(name, ": ", joined(imperial, " "));
            const auto same = [&](const Json& a, const Json& b, double share) {
                CHECK(a.get<double>() == near(b.get<double>(), share));
            };
            same(one["batch"]["tex"]["mid"], other["batch"]["tex"]["mid"], 1e-5);
            same(one["batch"]["metres"]["mid"], other["batch"]["metres"]["mid"], 1e-5);
            same(one["plan"]["suitability"], other["plan"]["suitability"], 1e-3);
            CHECK(std::abs(one["plan"]["size_cm"].get<double>() -
                           other["plan"]["size_cm"].get<double>()) <= 1.001);
            CHECK(one["plan"]["reach"] == other["plan"]["reach"]);
        }
}

TEST_CASE("the units asked for change how an answer is written, not what it says") {
    for (const auto& batch : batches)
        for (const char* command : {"makes", "yarn"}) {
            if (std::find(batch.begin(), batch.end(), "--units") != batch.end()) continue;
            Json first;
            for (const char* units : {"metric", "imperial", "both"}) {
                const auto json =
                    Json::parse(said(command, and_more(batch, {"--json", "--units", units})));
                if (first.is_null()) first = json;
                CHECK(json["batch"] == first["batch"]);
                if (json.contains("large")) CHECK(json["large"] == first["large"]);
            }
        }
}

TEST_CASE("an answer is the same however often it is asked for, and in which order the skeins") {
    for (const auto& [command, typed] : typed_questions) {
        const Typed there{"--skein", "171m/38.5g", "--skein", "204m/45g", "--skein", "96m/21.6g"};
        CHECK(said(command, and_more(typed, there)) == said(command, and_more(typed, there)));
        const Typed back{"--skein", "96m/21.6g", "--skein", "204m/45g", "--skein", "171m/38.5g"};
        const auto json = [&](const Typed& skeins) {
            return Json::parse(said(command, and_more(and_more(typed, skeins), {"--json"})));
        };
        if (std::string_view(command) == "split") continue;  // says which skein
        auto a = json(there), b = json(back);
        if (a.contains("batch")) a["batch"].erase("skeins"), b["batch"].erase("skeins");
        INFO(command);
        CHECK(a == b);
    }
}
