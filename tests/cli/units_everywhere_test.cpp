// A batch typed in yards is answered in yards, ounces and inches, one typed in metres in metres,
// grams and centimetres: nothing half and half.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <fstream>
#include <iterator>
#include <regex>

#include "cli/output/layout.hpp"
#include "cli/output/needle_names.hpp"
#include "cli/output/units_in_words.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::and_more;
using asked::holds;
using asked::Typed;

namespace {

// Needles are sold by their millimetres everywhere, fibre is graded in microns, and wraps are
// counted to the inch by spinners on either side.
std::string bare(std::string text) {
    text = std::regex_replace(text, std::regex("\\s+"), " ");
    text = std::regex_replace(text, std::regex("US [0-9./]+ \\([0-9.]+ mm\\)"), "US needles");
    text = std::regex_replace(text, std::regex("[0-9.]+ mm needles?|\\([0-9.]+ mm\\)"), "needles");
    return std::regex_replace(text, std::regex("[0-9.]+ ?wpi"), "wraps");
}

const std::regex metric_units(
    R"([0-9] ?(m|cm|mm|g|kg|tex|m/g|cm3/g)\b|/10 ?cm|/cm\b|\b[Mm]etres?\b|\b[Gg]rams?\b)");
const std::regex imperial_units(
    R"([0-9] ?(yd|oz|in|lb|ft|epi|tpi)\b(?! (the|order|all|every|round|row|one)\b)|yd/lb|st/in|/in\b|US [0-9]|\b[Yy]ards?\b|\b[Ii]nch(es)?\b|\b[Oo]unces?\b)");

// The first place, with what stands round it; empty: none.
std::string leak(const std::string& text, const std::regex& units) {
    std::smatch found;
    if (!std::regex_search(text, found, units)) return "";
    const auto at = static_cast<std::size_t>(found.position());
    return text.substr(at > 60 ? at - 60 : 0, 130);
}

// What a page shows, without its looks, its pictures' coordinates and its table of sources.
std::string shown(const std::string& html) {
    auto text = html.substr(0, html.find("Figures and sources"));
    for (const auto& [opens, closes] :
         {std::pair<std::string, std::string>{"<style", "</style>"}, {"<head", "</head>"}})
        for (auto at = text.find(opens); at != std::string::npos; at = text.find(opens))
            text.erase(at, text.find(closes, at) + closes.size() - at);
    return std::regex_replace(text, std::regex("<[^>]*>"), " ");
}

std::string said_and_noted(const std::string& command, const Typed& typed) {
    const auto answer = asked::run(command, typed);
    return answer.text + " " + answer.notes;
}

std::string file_text(const std::string& path) {
    std::ifstream in(path);
    return {std::istreambuf_iterator<char>(in), {}};
}

struct TypedBatch {
    const char* units;
    Typed options;
    std::string swatch_stitches, row_mass, size;
    const std::regex& foreign;
};

const TypedBatch typed_batches[] = {
    {"imperial",
     {"--skein",      "210yd/1.9oz",
      "--skein",      "190yd/1.7oz",
      "--wraps",      "13wpi",
      "--twist",      "5tpi",
      "--heddles",    "8epi,10epi",
      "--loom-width", "24in",
      "--needles",    "US 4,US 6,US 8",
      "--prep",       "carded",
      "--draw",       "long",
      "--ply",        "2",
      "--micron",     "26",
      "--staple",     "3in",
      "--scale",      "0.01oz"},
     "28/4in",
     "2oz",
     "30in",
     metric_units},
    {"metric",
     {"--skein",      "192m/54g", "--skein",     "174m/48g",      "--wraps",
      "13wpi",        "--twist",  "200 turns/m", "--heddles",     "30/10cm,40/10cm",
      "--loom-width", "60cm",     "--needles",   "3.5mm,4mm,5mm", "--prep",
      "carded",       "--draw",   "long",        "--ply",         "2",
      "--micron",     "26",       "--staple",    "75mm",          "--scale",
      "0.1g"},
     "28/10cm",
     "50g",
     "76cm",
     imperial_units},
};

}  // namespace

TEST_CASE("each command answers in the units that the batch was typed in, and in no other") {
    const std::pair<const char*, Typed> commands[] = {
        {"yarn", {}},
        {"makes", {}},
        {"makes", {"--all"}},
        {"makes", {"--long", "--all"}},
        {"compare", {"scarf"}},
        {"compare", {"blanket"}},
        {"compare", {"--would-be", "combed", "--all"}},
        {"answer", {"--idea", "a cabled hat"}},
        {"answer", {"--idea", "weave a shawl"}},
        {"answer", {"--idea", "a jumper"}},
        {"split", {"--sample", "knitted", "--sample", "woven", "--keep", "watch-cap"}},
        {"spin-more", {"basket-throw"}},
    };
    for (const auto& batch : typed_batches)
        for (const auto& [command, typed] : commands) {
            INFO(batch.units, ": ", command, " ", joined(typed, " "));
            CHECK(leak(bare(said_and_noted(command, and_more(typed, batch.options))),
                       batch.foreign) == "");
        }
}

TEST_CASE("every plan with its steps, reasons and cautions is in those units") {
    for (const auto& batch : typed_batches)
        for (const auto& name : asked::heron().catalogue->template_names()) {
            INFO(batch.units, ": ", name);
            const auto text = said_and_noted("plan", and_more({name, "--why"}, batch.options));
            CHECK(leak(bare(text), batch.foreign) == "");
            CHECK(holds(text, std::string(batch.units) == "imperial" ? " yd" : " m"));
        }
}

TEST_CASE("page and cards are in those units") {
    const asked::Folder folder;
    for (const auto& batch : typed_batches)
        for (const char* command : {"page", "card"}) {
            INFO(batch.units, ": ", command);
            const auto file = folder.file(fmt::format("{}-{}.html", batch.units, command));
            said_and_noted(command, and_more({"--out", file}, batch.options));
            CHECK(leak(bare(shown(file_text(file))), batch.foreign) == "");
        }
}

TEST_CASE("a remembered batch is swatched, begun and weighed in its units") {
    const asked::Folder folder;
    for (const auto& batch : typed_batches) {
        const Typed book{"--notebook", folder.file(std::string(batch.units) + ".sqlite")};
        said_and_noted("batch", and_more(and_more({"add", "moss"}, batch.options), book));
        const std::pair<const char*, Typed> commands[] = {
            {"swatch", {"moss", "--stitches", batch.swatch_stitches}},
            {"yarn", {"moss"}},
            {"start", {"garter-scarf", "moss", "--size", batch.size}},
            {"weigh", {"moss", "--row", "0", "--ball", batch.row_mass}},
            {"batch", {"show", "moss"}},
        };
        for (const auto& [command, typed] : commands) {
            INFO(batch.units, ": ", command);
            CHECK(leak(bare(said_and_noted(command, and_more(typed, book))), batch.foreign) == "");
        }
    }
}

TEST_CASE("lengths inside a template's words are said on a ruler in quarters") {
    const Units in(UnitChoice::imperial), cm(UnitChoice::metric);
    CHECK(in_units("leave 8 cm at each underarm", in) == "leave 3 1/4 in at each underarm");
    CHECK(in_units("a hem of 7 mm twice", in) == "a hem of 1/4 in twice");
    CHECK(in_units("Count every 10 cm.", in) == "Count every 4 in.");
    CHECK(in_units("48 cm high", in) == "19 in high");
    CHECK(in_units("cast on 10 stitches, 3 more", in) == "cast on 10 stitches, 3 more");
    CHECK(in_units("5 months, 2 mats", in) == "5 months, 2 mats");
    CHECK(in_units("leave 8 cm", cm) == "leave 8 cm");
}

TEST_CASE("needles go by their US size beside the millimetres, of which there may be none") {
    const auto names = us_needles(asked::heron().catalogue->spoken);
    const Units in(UnitChoice::imperial, names), both(UnitChoice::both, names);
    CHECK(in.needle(millimetres(3.5)) == "US 4 (3.5 mm)");
    CHECK(in.needle(millimetres(5)) == "US 8 (5 mm)");
    CHECK(in.needle(millimetres(2.4)) == "2.4 mm");
    CHECK(both.needle(millimetres(4)) == "4 mm (US 6)");
    CHECK(Units(UnitChoice::metric, names).needle(millimetres(4)) == "4 mm");
}
