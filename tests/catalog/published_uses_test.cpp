// docs/suitability.md: what published sources say a yarn is for, beside what the program says. The
// statements, each with its source, stand in tests/cases/uses_open.csv; a statement's silent parts
// take the ordinary grist and make of its use (uses_targets.csv, judgement). The test fails when
// the page is stale, or when agreement falls below what is promised.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <sstream>

#include "catalog/reference/catalogue.hpp"
#include "engine/suitability/ranking.hpp"
#include "engine/yarn/count.hpp"
#include "tests/cases.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

std::vector<std::string> parts(const std::string& text, char mark) {
    std::vector<std::string> out;
    std::stringstream in(text);
    for (std::string part; std::getline(in, part, mark);) out.push_back(part);
    return out;
}

// How a statement's use is made where its source is silent, and the templates that stand for it.
struct Use {
    std::vector<std::vector<std::string>> templates;  // by article, for wide uses
    CaseRow make;
};

std::map<std::string, Use> read_uses() {
    std::map<std::string, Use> out;
    for (const auto& row : read_cases("uses_targets.csv")) {
        Use use{{}, row};
        for (const auto& group : parts(row.at("templates"), ';'))
            use.templates.push_back(parts(group, '|'));
        out[row.at("use")] = use;
    }
    return out;
}

std::vector<FibrePart> blend(const std::string& said) {
    std::vector<FibrePart> out;
    for (std::size_t from = 0; from < said.size();) {
        const auto plus = std::min(said.find(" + ", from), said.size());
        auto name = said.substr(from, plus - from);
        double share = 1;
        if (name.back() == '%') {
            const auto space = name.rfind(' ');
            share = std::stod(name.substr(space + 1)) / 100;
            name.resize(space);
        }
        const auto* known = catalog::carried().fibre_named(name);
        REQUIRE_MESSAGE(known, name);
        out.push_back(*known);
        out.back().share = share;
        from = plus + 3;
    }
    return out;
}

FibrePart own_wool(const std::string& micron) {
    const auto ends = parts(micron, '-');
    FibrePart out;
    out.kind = "sheep";
    out.micron_low = microns(std::stod(ends.front()));
    out.micron_high = microns(std::stod(ends.back()));
    return out;
}

YarnProfile yarn_of(const CaseRow& row, const std::string& which, const Use& use) {
    const auto said = [&](const char* column, const char* usual) {
        const auto& stated = row.at(which + column);
        return stated.empty() ? use.make.at(usual) : stated;
    };
    const double per_gram = std::stod(said("grist_m_per_g", "metres_per_gram"));
    Batch batch;
    batch.skeins = {{"skein", metres(9000), grams(9000 / per_gram), LengthState::washed}};
    const auto& fibre = row.at(which + "fibre");
    batch.fibre =
        fibre.starts_with("own") ? std::vector{own_wool(row.at(which + "micron"))} : blend(fibre);
    batch.preparation =
        said("preparation", "preparation") == "combed" ? Preparation::combed : Preparation::carded;
    batch.draw = said("draw", "draw") == "long" ? Draw::long_draw : Draw::short_draw;
    batch.plies = std::stoi(said("plies", "plies"));
    const std::map<std::string, double> twists{{"soft", 2.0}, {"firm", 3.5}, {"hard", 4.5}};
    if (const auto found = twists.find(row.at(which + "twist")); found != twists.end())
        batch.ply_twist = turns_per_inch(found->second * std::sqrt(885.812 * per_gram / 1000));
    return profile(batch, catalog::carried().yarn, true);
}

using Scores = std::map<std::string, double>;  // by template

Scores scores_of(const YarnProfile& yarn) {
    const Equipment ample{
        {ends_per_10cm(20), ends_per_10cm(25), ends_per_10cm(30), ends_per_10cm(40),
         ends_per_10cm(50), ends_per_10cm(60), ends_per_10cm(80), ends_per_10cm(100)},
        centimetres(150),
        4,
        {}};
    Scores out;
    for (const auto& article : catalog::carried().templates)
        if (!article.sample)
            out[article.name] =
                judged_plan(article, yarn, catalog::carried().fabrics, ample, {}).judgement.score;
    return out;
}

double middle(std::vector<double> of) {
    std::sort(of.begin(), of.end());
    const auto half = of.size() / 2;
    return of.size() % 2 ? of[half] : (of[half - 1] + of[half]) / 2;
}

// Share of the other articles of its craft that score less, ties half.
double rank_in_craft(const std::string& name, const Scores& scores) {
    const auto craft = catalog::carried().template_named(name)->craft;
    double below = 0, others = 0;
    for (const auto& [other, score] : scores) {
        if (other == name || catalog::carried().template_named(other)->craft != craft) continue;
        ++others;
        const double ahead = scores.at(name) - score;
        below += std::abs(ahead) < 1e-9 ? 0.5 : ahead > 0 ? 1 : 0;
    }
    return below / others;
}

struct Told {
    double rank = 0, score = 0;
};

// A use that several templates serve takes the median, first within each article.
Told told(const Use& use, const Scores& scores) {
    std::vector<double> ranks, points;
    for (const auto& group : use.templates) {
        std::vector<double> r, s;
        for (const auto& name : group)
            r.push_back(rank_in_craft(name, scores)), s.push_back(scores.at(name));
        ranks.push_back(middle(r)), points.push_back(middle(s));
    }
    return {middle(ranks), middle(points)};
}

struct Outcome {
    CaseRow row;
    double first = 0, second = 0;  // score and rank, or the two scores of a pair
    bool agrees = false;
};

double mean_score(const Use& use, const Scores& scores) {
    double sum = 0, count = 0;
    for (const auto& group : use.templates)
        for (const auto& name : group) sum += scores.at(name), ++count;
    return sum / count;
}

Outcome looked_at(const CaseRow& row, const Use& use) {
    const auto scores = scores_of(yarn_of(row, "", use));
    if (row.at("kind") == "pair") {
        const double a = mean_score(use, scores);
        const double b = mean_score(use, scores_of(yarn_of(row, "b_", use)));
        return {row, a, b, a - b > 0.5};
    }
    const auto [rank, score] = told(use, scores);
    const bool poor = serves(score) >= Serves::poorly;
    const bool against = row.at("direction") == "advised against";
    return {row, score, rank, against ? rank <= 1 / 3.0 || poor : rank > 0.5 && !poor};
}

std::vector<Outcome> looked_at_all() {
    const auto uses = read_uses();
    std::vector<Outcome> out;
    for (const auto& row : read_cases("uses_open.csv")) {
        const auto use = uses.find(row.at("target"));
        if (use == uses.end() || row.at("direction") == "possible") continue;
        out.push_back(looked_at(row, use->second));
    }
    return out;
}

struct Tally {
    int agree = 0, of = 0;
    void add(bool yes) { agree += yes, ++of; }
    double share() const { return of > 0 ? double(agree) / of : 1; }
    std::string said() const { return of == 0 ? "-" : fmt::format("{} of {}", agree, of); }
};

using ByDirection = std::map<std::string, Tally>;

ByDirection totals(const std::vector<Outcome>& all) {
    ByDirection out;
    for (const auto& o : all) out[o.row.at("direction")].add(o.agrees);
    return out;
}

// Chance that a recommended use scores more than one advised against, ties half.
double apart(const std::vector<Outcome>& all) {
    double wins = 0, pairs = 0;
    for (const auto& good : all)
        for (const auto& bad : all)
            if (good.row.at("direction") == "recommended" &&
                bad.row.at("direction") == "advised against") {
                ++pairs;
                wins += good.first > bad.first ? 1 : good.first == bad.first ? 0.5 : 0;
            }
    return wins / pairs;
}

std::string cell(std::string text) {
    for (auto& c : text)
        if (c == '|') c = '/';
    return text;
}

std::string table_by(const char* title, const char* column, const std::vector<Outcome>& all) {
    std::map<std::string, ByDirection> groups;
    for (const auto& o : all) groups[o.row.at(column)][o.row.at("direction")].add(o.agrees);
    auto out = fmt::format(
        "\n## {}\n\n| {} | recommended | advised against | better than another |\n"
        "| --- | --- | --- | --- |\n",
        title, column == std::string("target") ? "use" : "fibre");
    for (auto& [name, by] : groups)
        out += fmt::format("| {} | {} | {} | {} |\n", cell(name), by["recommended"].said(),
                           by["advised against"].said(), by["better"].said());
    return out;
}

std::string yarn_said(const CaseRow& row, const std::string& which) {
    auto out = row.at(which + "fibre_said");
    for (const char* column : {"preparation", "draw", "plies", "twist", "grist_m_per_g"})
        if (const auto& said = row.at(which + column); !said.empty())
            out += fmt::format(", {}{}", said,
                               column == std::string("plies")           ? "-ply"
                               : column == std::string("grist_m_per_g") ? " m/g"
                               : column == std::string("twist")         ? " twist"
                               : column == std::string("draw")          ? " draw"
                                                                        : "");
    return out;
}

std::string disagreements(const std::vector<Outcome>& all) {
    std::string out =
        "\n## Where they disagree\n\n| yarn | use | published | the program | source |\n"
        "| --- | --- | --- | --- | --- |\n";
    for (const auto& o : all) {
        if (o.agrees) continue;
        const bool pair = o.row.at("kind") == "pair";
        const auto said =
            pair ? fmt::format("better than {}", yarn_said(o.row, "b_")) : o.row.at("direction");
        const auto ours = pair ? fmt::format("{:.0f} against {:.0f}", o.first, o.second)
                               : fmt::format("{:.0f}, {}; above {:.0f} % of its craft", o.first,
                                             words(serves(o.first)), 100 * o.second);
        out += fmt::format("| {} | {} | {} | {} | {} |\n", cell(yarn_said(o.row, "")),
                           cell(o.row.at("use")), cell(said), ours, cell(o.row.at("source")));
    }
    return out;
}

std::string page(const std::vector<Outcome>& all) {
    auto by = totals(all);
    std::string out = fmt::format(
        "# What a yarn is for, and what others say\n\n"
        "Written by `tests/catalog/published_uses_test.cpp` from {} published statements, each "
        "with\n"
        "its source, in `tests/cases/uses_open.csv`; the test fails when this page is stale. A\n"
        "recommended use agrees when it stands in the upper half of its craft for that yarn and\n"
        "serves; one advised against when it stands in the lowest third or serves poorly; a pair\n"
        "when the better yarn scores more. Sources contradict one another on some of the same\n"
        "yarns and uses.\n\n"
        "| what is said | agrees |\n| --- | --- |\n",
        all.size());
    for (auto& [direction, tally] : by)
        out +=
            fmt::format("| {} | {} = {:.0f} % |\n", direction, tally.said(), 100 * tally.share());
    out += fmt::format(
        "| a recommended use scores above one advised against | {:.2f} (0.5: cannot tell) |\n",
        apart(all));
    out +=
        "\nHow it is reckoned: traits from how the fibre behaves and how it was spun\n"
        "(`catalog/tables/fibres.csv`, `traits.csv`); what the article wishes for (its template)\n"
        "and what such articles need (`needs.csv`), which nothing else buys back; and the share "
        "of\n"
        "ordinary handspun yarns (`ordinary_yarns.csv`) that serve the article less well, so that "
        "an\n"
        "article that any yarn can serve does not lead.\n";
    return out + table_by("By use", "target", all) + table_by("By fibre", "fibre_said", all) +
           disagreements(all);
}

}  // namespace

TEST_CASE("published statements of use agree: docs/suitability.md says how many") {
    const auto all = looked_at_all();
    auto by = totals(all);
    CHECK(all.size() > 290);
    CHECK(by["recommended"].share() >= 0.80);
    CHECK(by["advised against"].share() >= 0.75);
    CHECK(by["better"].share() >= 0.85);
    CHECK(apart(all) >= 0.86);
    const auto path = ROOT_DIR "/docs/suitability.md";
    const auto fresh = page(all);
    if (std::getenv("GRISTWRIGHT_WRITE")) std::ofstream(path) << fresh;
    std::ifstream kept(path);
    CHECK(std::string(std::istreambuf_iterator<char>(kept), {}) == fresh);
}
