#include "cli/for_whom.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "engine/project/body.hpp"
#include "engine/project/constants.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

bool is_baby(const std::string& who) {
    return who == "newborn" || who.find("months") != std::string::npos;
}

// Everybody in the table of whom `measure` is known; empty: whatever is known of them.
std::vector<std::string> people(const std::vector<BodySize>& bodies, const std::string& measure) {
    std::vector<std::string> out;
    for (const auto& row : bodies)
        if ((measure.empty() || row.measure == measure) &&
            std::find(out.begin(), out.end(), row.who) == out.end())
            out.push_back(row.who);
    return out;
}

Refused nobody(const std::string& said, const std::vector<std::string>& known) {
    return Refused(fmt::format("--for {}: nobody of that name is in the table; it has {}",
                               inert(said), joined(known)));
}

bool is_child(const std::string& who) { return who.rfind("child", 0) == 0; }

// Nothing of a body: as it stands. Of a body of which nothing is known, or far off: not for them.
bool fits(const std::string& who, const std::vector<BodySize>& bodies, Template& article) {
    if (!article.sample && article.for_baby != is_baby(who)) return false;
    const bool by_body = std::any_of(bodies.begin(), bodies.end(), [&](const auto& row) {
        return row.measure == article.measure;
    });
    // What is draped is drawn as adults wear it.
    if (!by_body) return !(is_child(who) && article.kind.draped);
    const auto* body = body_size(bodies, who, article.measure);
    if (!body || body->mid < article.smallest * (1 - constants::taken_beyond) ||
        body->mid > article.largest * (1 + constants::taken_beyond))
        return false;
    article.smallest = article.largest = body->mid;
    article.fitted = false;
    return true;
}

}  // namespace

std::string articles_for(const Arguments& arguments, Question& q) {
    if (!arguments.has("for")) return "";
    const auto who = body_named(arguments.text("for"));
    const auto known = people(q.catalogue->bodies, "");
    if (std::find(known.begin(), known.end(), who) == known.end())
        throw nobody(arguments.text("for"), known);
    auto fitting = *q.catalogue;
    auto articles = fitting.templates.rows();
    articles.erase(std::remove_if(articles.begin(), articles.end(),
                                  [&](auto& one) { return !fits(who, fitting.bodies, one); }),
                   articles.end());
    fitting.templates = std::move(articles);
    q.catalogue = std::make_shared<const catalog::Catalogue>(std::move(fitting));
    if (is_baby(who))
        return fmt::format(
            "For {}: what is made for a baby, at that size where a body measures it. Nothing else "
            "is listed: cords, loops and open fabrics are not for a baby.",
            who);
    if (is_child(who))
        return fmt::format(
            "For {}: what a body measures is planned at that size. Scarves, cowls, shawls and "
            "what else is drawn for adults are left out: no table says their size for a child.",
            who);
    return fmt::format(
        "For {}: what a body measures is planned at that size; the rest stands as it is.", who);
}

std::string size_for(const Arguments& arguments, const Template& article, Question& q) {
    if (!arguments.has("for")) return "";
    const auto said = arguments.text("for"), who = body_named(said);
    if (arguments.has("size")) throw Refused("--for and --size: give one of the two");
    const auto known = people(q.catalogue->bodies, article.measure);
    if (known.empty())
        throw Refused(
            fmt::format("--for: {} is measured by its {}, which no body decides: give --size",
                        article.title, article.measure));
    const auto* body = body_size(q.catalogue->bodies, who, article.measure);
    if (!body) throw nobody(said, known);
    q.request.size = body->mid;
    return fmt::format("For {}: {} {} ({} to {}; {}, {}).", who, article.measure,
                       q.units.size(body->mid), q.units.size(body->low), q.units.size(body->high),
                       words(body->mark), body->source);
}

}  // namespace gristwright::cli
