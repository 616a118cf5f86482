#include "cli/output/cloth_picture.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/image.hpp"
#include "cli/output/laid_cloth.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/yarn_in_cloth.hpp"
#include "engine/lay/laid.hpp"
#include "engine/project/by_cloth.hpp"

namespace gristwright::cli {
namespace {

// CSS pixels: 96 to the inch, so that a patch drawn so is as large as life on paper.
constexpr double per_mm = 96 / 25.4;
constexpr double picture_edge = 16, near_width = 330, near_height = 280, life_width = 60 * per_mm,
                 life_height = 50 * per_mm;
constexpr double near_pixels = 1.4, table_pixels = 2;  // of the picture, to a CSS pixel

struct Views {
    lay::Picture near, table;
    double near_mm = 0;  // across the near view
};

const char* not_a_photograph = "A drawing from measurements, not a photograph.";

lay::Picture seen(const LaidCloth& laid, double width, double height, double pixels) {
    return lay::relief(laid.strands(width, height), laid.yarns, {width, height, pixels});
}

lay::Picture near_view(const LaidCloth& laid) {
    const double wide = laid.near_mm, high = wide * near_height / near_width;
    auto strands = laid.strands(wide, high);
    if (laid.half_mm > 0) strands = lay::corner_turned(strands, wide, high, laid.half_mm);
    return lay::relief(strands, laid.yarns, {wide, high, near_pixels * near_width / wide});
}

lay::Picture table_view(const LaidCloth& laid) {
    return seen(laid, life_width / per_mm, life_height / per_mm, table_pixels * per_mm);
}

Views views_of(const Plan& plan, const PlanPiece& piece, const YarnProfile& yarn,
               const Question& q) {
    const auto laid = laid_cloth(plan, piece, yarn, q);
    return {near_view(laid), table_view(laid), laid.near_mm};
}

std::string drawn_as(const std::string& name, const std::string& chart, const char* instead) {
    return chart.empty() ? fmt::format("{} (drawn as {}: no chart of it yet)", name, instead)
                         : name;
}

std::string knitted_words(const KnitCloth& k, const Units& units) {
    return fmt::format("{}, {} as finished, {} of yarn to a plain loop",
                       drawn_as(k.fabric->name, k.fabric->chart, "stocking stitch"),
                       units.gauge(k.stitches, k.rows), units.small(k.loop));
}

std::string woven_words(const WovenCloth& w, const Units& units) {
    return fmt::format("{}, ends at {} and picks at {} as finished",
                       drawn_as(w.weave->name, w.weave->chart, "plain weave"),
                       units.sett(w.ends / (1 - w.width.mid)),
                       units.sett(w.picks / (1 - w.length.mid)));
}

std::string cloth_words(const Plan& plan, const PlanPiece& piece, const Question& q) {
    const auto cloth = by_cloth(
        piece, [&](const KnitCloth& k) { return knitted_words(k, q.units); },
        [&](const WovenCloth& w) { return woven_words(w, q.units); });
    return cloth + second_words(plan, piece, q);
}

std::string cover_words(const Views& views, const YarnProfile& yarn, const Units& units) {
    return fmt::format(
        "Yarn {} thick as laid, {} squeezed; it hides {:.0f} % of what "
        "lies behind.",
        units.small(yarn.laid_diameter), units.small(yarn.packed_diameter),
        100 * views.table.cover);
}

// Of the view across the table.
const char* table_size(const Units& units) { return units.imperial() ? "2.4 x 2 in" : "6 x 5 cm"; }

double asked_definition(const PlanPiece& piece) {
    return by_cloth(
        piece, [](const KnitCloth& k) { return k.fabric->definition; },
        [](const WovenCloth& w) { return w.weave->definition; });
}

// The piece whose stitches have most to read.
const PlanPiece& telling_piece(const Plan& plan) {
    return *std::max_element(
        plan.pieces.begin(), plan.pieces.end(),
        [](const auto& a, const auto& b) { return asked_definition(a) < asked_definition(b); });
}

double definition_of(const YarnProfile& yarn) { return yarn.trait(TraitName::definition).value; }

// What the across-the-table view is there to answer.
std::string answer_words(const PlanPiece& piece, const YarnProfile& yarn,
                         const YarnProfile& combed) {
    const auto& name = by_cloth(
        piece, [](const KnitCloth& k) -> const std::string& { return k.fabric->name; },
        [](const WovenCloth& w) -> const std::string& { return w.weave->name; });
    const double had = definition_of(yarn), wanted = asked_definition(piece);
    const char* reads = had >= wanted ? "read clearly" : had >= wanted - 0.15 ? "soften" : "blur";
    return fmt::format(
        "From arm's length stitches {} in {}: definition {:.2f}, {:.2f} wanted. Combed it would be "
        "{:.2f}.",
        reads, name, had, wanted, definition_of(combed));
}

void draw_views(Svg& out, double x, double top, const std::string& title, const Views& views,
                const YarnProfile& yarn, const Units& units) {
    out.text({x, top}, title, "label strong");
    out.lines({x, top + 17}, cover_words(views, yarn, units), 50, "faint");
    const double near = top + 40, table = near + near_height + 40;
    out.image({x, near}, near_width, near_height, data_address(views.near));
    const double bar = (units.imperial() ? 12.7 : 10) * near_width / views.near_mm;
    out.line({x, near + near_height + 12}, {x + bar, near + near_height + 12}, "edge");
    out.text({x + bar + 8, near + near_height + 16}, units.imperial() ? "1/2 in" : "10 mm",
             "label");
    out.image({x, table}, life_width, life_height, data_address(views.table));
}

// One view as a picture of its own.
Svg alone(const lay::Picture& picture, double width, double height, const std::string& title,
          const std::string& said) {
    Svg out(width, height, title, said + " " + not_a_photograph);
    return out.image({0, 0}, width, height, data_address(picture));
}

}  // namespace

Svg cloth_picture(const Plan& plan, const Question& q) {
    const auto& piece = telling_piece(plan);
    const auto yours = views_of(plan, piece, q.yarn, q);
    const auto combed_yarn = combed_alike(q);
    const auto combed = views_of(plan, piece, combed_yarn, q);
    const auto said = capital(cloth_words(plan, piece, q));
    const auto answer = answer_words(piece, q.yarn, combed_yarn);
    const double second = 2 * picture_edge + near_width;
    const double top = 127;  // below two lines of what it is
    const double foot = top + 80 + near_height + life_height;
    Svg out(second + near_width + picture_edge, foot + 44, plan.article->title + ": the cloth",
            fmt::format("{} {}. Yours: {} Smooth combed: {} {}", answer, said,
                        cover_words(yours, q.yarn, q.units),
                        cover_words(combed, combed_yarn, q.units), not_a_photograph));
    out.text({picture_edge, 26}, plan.article->title, "head");
    out.lines({picture_edge, 48}, answer, 72, "answer");
    out.lines({picture_edge, 84}, said, 100, "label");
    draw_views(out, picture_edge, top, "From this yarn", yours, q.yarn, q.units);
    draw_views(out, second, top, "From a smooth combed yarn of the same grist", combed, combed_yarn,
               q.units);
    out.text({picture_edge, foot + 16},
             fmt::format("Below: {}, as large as life when printed at 100 %.", table_size(q.units)),
             "faint");
    out.text({picture_edge, foot + 32}, not_a_photograph, "faint");
    return out;
}

ClothNear cloth_near(const Plan& plan, const Question& q) {
    const auto& piece = telling_piece(plan);
    const auto laid = laid_cloth(plan, piece, q.yarn, q);
    return {
        capital(cloth_words(plan, piece, q)),
        alone(near_view(laid), near_width, near_height, plan.article->title + ": the cloth, near",
              fmt::format("{}; {} across.", capital(cloth_words(plan, piece, q)),
                          q.units.span(millimetres(laid.near_mm))))};
}

double definition_wanted(const Plan& plan) { return asked_definition(telling_piece(plan)); }

ClothAcross cloth_across(const Plan& plan, const Question& q, const std::string& whose) {
    const auto& piece = telling_piece(plan);
    const auto about = capital(cloth_words(plan, piece, q));
    return {about,
            alone(table_view(laid_cloth(plan, piece, q.yarn, q)), life_width, life_height,
                  fmt::format("{}: the cloth across the table, {}", plan.article->title, whose),
                  fmt::format("{} of it. {}.", table_size(q.units), about))};
}

ClothViews cloth_views(const Plan& plan, const Question& q) {
    const auto& piece = telling_piece(plan);
    const auto combed_yarn = combed_alike(q);
    const auto yours = laid_cloth(plan, piece, q.yarn, q);
    const auto combed = laid_cloth(plan, piece, combed_yarn, q);
    const auto answer = answer_words(piece, q.yarn, combed_yarn);
    const auto table = [&](const LaidCloth& laid, const char* whose) {
        return alone(table_view(laid), life_width, life_height,
                     fmt::format("{}: the cloth across the table, {}", plan.article->title, whose),
                     fmt::format("{} of it. {}", table_size(q.units), answer));
    };
    auto near = cloth_near(plan, q);
    return {answer, std::move(near.about), std::move(near.near), table(yours, "from this yarn"),
            table(combed, "from a smooth combed yarn")};
}

}  // namespace gristwright::cli
