#include "cli/split_asked.hpp"

#include <fmt/core.h>

#include <cstdlib>

#include "catalog/text/nearest.hpp"
#include "cli/article_asked.hpp"
#include "cli/lifesign.hpp"
#include "cli/output/layout.hpp"
#include "cli/roles.hpp"
#include "cli/yarns.hpp"
#include "engine/allocation/constants.hpp"
#include "engine/project/role.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

using allocation::Wish;

Wish wish_for(SplitAsked& asked, const Question& q, const Template& article, bool main) {
    auto& judged = asked.plans.emplace_back(judged_plan(article, q));
    for (const auto obstacle : judged.plan.obstacles)
        if (stops(obstacle)) throw Refused(fmt::format("{}: {}", article.name, words(obstacle)));
    Wish wish;
    wish.name = article.title;
    wish.plan = judged.plan;
    wish.main = main;
    wish.suitability = judged.judgement.score / 100;
    wish.at_size = [article = std::make_shared<const Template>(article), yarn = q.yarn,
                    catalogue = q.catalogue, owned = q.measured.owned,
                    request = q.request](Length size) {
        auto sized = request;
        sized.size = size;
        return plan(article, yarn, catalogue->fabrics, owned, sized);
    };
    return wish;
}

// Nothing larger than what the other yarn of the batch reaches for in its own part.
void cap_by_other(const Arguments& arguments, const Question& q, Template& article) {
    const auto number = yarn_of_same_batch(arguments);
    if (number.empty()) return;
    auto other = of_other_yarn(arguments, q);
    other.request.other = as_other("the first", q.yarn);
    const auto theirs = judged_plan(rest_of(article), other).plan;
    if (theirs.reach == Reach::short_of)
        throw Refused(
            fmt::format("--with: yarn {} does not hold the {} of {} at its smallest: {} "
                        "more would",
                        number, article.role == Role::weft ? "warp" : "rest", article.title,
                        q.units.yarn(theirs.short_by)));
    article.largest = std::min(article.largest, theirs.covered * constants::for_tails);
}

// The main project in the part that --as gives the batch.
Template main_article(const Arguments& arguments, const Template& whole, Question& q) {
    const auto as = arguments.text("as");
    if (as == "double" || as == "plied")
        throw Refused(fmt::format(
            "--as {}: wind two strands together and split that; a split takes weft, warp, border "
            "or colour",
            as));
    auto article = part_played(arguments, whole, q);
    cap_by_other(arguments, q, article);
    return article;
}

Wish article_wish(SplitAsked& asked, Question q, const std::string& name, bool main,
                  const Arguments& arguments) {
    auto article = find_template(*q.catalogue, name);
    if (main && (arguments.has("as") || arguments.has("with")))
        article = main_article(arguments, article, q);
    return wish_for(asked, q, article, main);
}

const PlanPiece* first_piece(const SplitAsked& asked, bool knitted) {
    for (const auto& judged : asked.plans)
        for (const auto& piece : judged.plan.pieces)
            if (piece.knit.has_value() == knitted) return &piece;
    return nullptr;
}

template <class Rows>
Refused no_fabric(std::string_view kind, const std::string& name, const Rows& rows) {
    return Refused(fmt::format("--sample: there is no {} '{}'{}", kind, name,
                               catalog::did_you_mean_or_all(name, catalog::names_of(rows))));
}

// "knitted", "woven:plain": in the fabric named, else in the one the project needs.
Wish sample_wish(SplitAsked& asked, const Question& q, const std::string& text, Length loom_waste) {
    const auto colon = text.find(':');
    const auto craft = text.substr(0, colon);
    const auto fabric = colon == std::string::npos ? "" : text.substr(colon + 1);
    if (craft != "knitted" && craft != "woven")
        throw Refused(fmt::format(
            "--sample is knitted or woven, with a fabric if you like (knitted:cables), not '{}'{}",
            text, catalog::did_you_mean(craft, {"knitted", "woven"})));
    const bool knitted = craft == "knitted";
    const auto* piece = first_piece(asked, knitted);
    const auto name = !fabric.empty() ? fabric
                      : piece         ? piece->piece->fabric
                      : knitted       ? std::string("stocking stitch")
                                      : std::string("plain");
    Wish wish;
    wish.name = fmt::format("{} sample", craft);
    if (knitted) {
        const auto* row = q.catalogue->fabrics.knitted_named(name);
        if (!row) throw no_fabric("stitch", name, q.catalogue->fabrics.knitted);
        asked.fabrics.push_back({name, row->stitch_repeat, row->row_repeat});
        const auto firmness = piece && piece->knit ? piece->knit->purpose : Firmness::ordinary;
        wish.sample = knitted_sample(knit_cloth(q.yarn, *row, firmness, q.measured.owned.needles));
    } else {
        const auto* row = q.catalogue->fabrics.weave_named(name);
        if (!row) throw no_fabric("weave", name, q.catalogue->fabrics.weaves);
        asked.fabrics.push_back({name, row->end_repeat, row->pick_repeat});
        wish.sample = woven_sample(
            weave_cloth(q.yarn, *row, {Spacing::scarf, Finish::light}, q.measured.owned),
            loom_waste);
    }
    return wish;
}

allocation::JoinCost join_cost(const std::string& word) {
    if (word == "low") return allocation::JoinCost::low;
    if (word == "high") return allocation::JoinCost::high;
    return allocation::JoinCost::usual;
}

constexpr double least_effort = 0.1, most_effort = 1000;

double effort_of(const Arguments& arguments) {
    const auto text = arguments.text("effort", "1");
    char* end = nullptr;
    const bool plain = !text.empty() && text.find_first_not_of("0123456789.") == std::string::npos;
    const double out = plain ? std::strtod(text.c_str(), &end) : 0;
    if (!plain || *end != '\0' || out < least_effort || out > most_effort)
        throw Refused(fmt::format("--effort is a number from {} to {}, times the usual, not '{}'",
                                  least_effort, most_effort, text));
    return out;
}

std::string how_far(const allocation::Progress& at) {
    using Stage = allocation::Progress::Stage;
    const auto doing = at.stage == Stage::what_is_made ? "what is made and how large"
                       : at.stage == Stage::where_from ? "where each part comes from"
                                                       : "why a wish is not met";
    auto out = fmt::format("looking for {}: {:.0f} % of the effort", doing,
                           at.of > 0 ? 100.0 * at.nodes / at.of : 100.0);
    if (at.stage == Stage::what_is_made && at.gap < 1)
        out += fmt::format(", at most {:.1f} % from the best", 100 * at.gap);
    return out + " (Ctrl-C: take the best so far)";
}

}  // namespace

SplitAsked asked_of(const Arguments& arguments, const Question& q) {
    SplitAsked asked;
    auto& request = asked.request;
    request.certainty = q.request.certainty;
    request.join_cost = join_cost(arguments.text("join-cost", "usual"));
    request.whole_warp = arguments.has("whole-warp");
    asked.effort = effort_of(arguments);
    if (arguments.has("reserve")) request.reserve = read_length_option(arguments, "reserve");
    std::vector<Wish> articles;
    for (const auto& name : arguments.all("main"))
        articles.push_back(article_wish(asked, q, name, true, arguments));
    for (const auto& name : arguments.all("piece"))
        articles.push_back(article_wish(asked, q, name, false, arguments));
    const auto waste =
        q.measured.owned.loom_waste.value_or(centimetres(constants::sample_loom_waste));
    for (const auto& text : arguments.all("sample")) {
        auto wish = sample_wish(asked, q, text, waste);
        if (arguments.has("from")) wish.only_from = skein_named(q, "from", arguments.text("from"));
        request.wishes.push_back(std::move(wish));
    }
    for (auto& wish : articles) {
        request.wishes.push_back(std::move(wish));
        asked.fabrics.emplace_back();
    }
    if (request.wishes.empty())
        throw Misused(
            "split needs something to make: --sample knitted, --main TEMPLATE, --piece TEMPLATE");
    return asked;
}

void add_article(SplitAsked& asked, const Question& q, const Template& article, bool main) {
    asked.request.wishes.push_back(wish_for(asked, q, article, main));
    asked.fabrics.emplace_back();
}

std::vector<Option> split_options() {
    return {
        {"sample", "knitted:cables",
         "a knitted or woven sample, in the fabric named or "
         "the project's own",
         true},
        {"main", "TEMPLATE", "the main project: must be made, as large as it can", true},
        {"piece", "TEMPLATE", "a further article, if it fits", true},
        {"from", "D", "take the samples from this skein only"},
        {"whole-warp", "", "wind every warp from one skein"},
        {"reserve", "5m", "keep this length for mending, in one skein"},
        {"join-cost", "high", "how much joins matter: low, usual or high", false, "low|usual|high"},
        {"effort", "10", "look so many times longer than usual, 0.1 to 1000", false, "", "1"}};
}

allocation::Split split_for(const SplitAsked& asked, const Question& q) {
    Lifesign life;
    allocation::Effort effort;
    effort.times = asked.effort;
    effort.stop = life.stop();
    effort.watch = [&](const allocation::Progress& at) {
        if (life.due()) life.say(how_far(at));
    };
    return allocation::split(q.yarn, asked.request, effort);
}

bool asks_for_split(const Arguments& arguments) {
    return arguments.has("sample") || arguments.has("main") || arguments.has("piece");
}

Length left_in(std::size_t skein, const allocation::Split& split, const Question& q) {
    auto left = q.yarn.skeins[skein].length;
    for (const auto& cut : split.cuts)
        if (cut.skein == skein) left -= cut.length;
    if (split.placed.list.reserve == skein)
        left -= centimetres(static_cast<double>(split.problem.reserve));
    return left;
}

}  // namespace gristwright::cli
