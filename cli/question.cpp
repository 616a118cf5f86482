#include "cli/question.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <optional>

#include "catalog/reference/own_templates.hpp"
#include "catalog/text/named_reading.hpp"
#include "catalog/typed/skein_own.hpp"
#include "catalog/typed/swatch_text.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/yarns.hpp"
#include "engine/cloth/gauge_range.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::cli {
namespace {

namespace fs = std::filesystem;

// Which key of a batch each option fills.
struct Filled {
    std::string_view option, key;
};
constexpr Filled filled[] = {
    {"name", "name"},
    {"prep", "preparation"},
    {"draw", "draw"},
    {"ply", "plies"},
    {"fibre", "fibre"},
    {"micron", "micron"},
    {"staple", "staple"},
    {"wraps", "wraps"},
    {"wraps-how", "wraps_how"},
    {"twist", "twist"},
    {"gauge", "gauge"},
    {"scale", "scale"},
    {"measured", "measured"},
    {"heddles", "heddles"},
    {"loom-width", "loom_width"},
    {"loom-waste", "loom_waste"},
    {"fringe", "fringe"},
    {"shafts", "shafts"},
    {"needles", "needles"},
    {"made", "made"},
    {"yarn-colour", "colour"},
};

catalog::BatchText typed_batch(const Arguments& arguments, const catalog::SpokenWords& spoken) {
    catalog::BatchText text;
    for (const auto& skein : arguments.all("skein"))
        for (auto& one : catalog::read_skeins_said(skein, "--skein", spoken))
            text.skeins.push_back(std::move(one));
    for (const auto& [option, key] : filled)
        for (const auto& value : arguments.all(option))
            text.fields[std::string(key)].push_back({value, "--" + std::string(option)});
    if (arguments.has("variegated")) text.fields["variegated"] = {{"yes", "--variegated"}};
    return text;
}

Request request_of(const Arguments& arguments) {
    Request out;
    if (arguments.has("certainty")) {
        out.certainty = read_share_option(arguments, "certainty");
        if (out.certainty < 0.5 || out.certainty > 0.999)
            throw Refused("--certainty is from 50 to 99.9 %");
    }
    if (arguments.has("size")) out.size = read_length_option(arguments, "size");
    if (arguments.has("spare")) out.keep = read_length_option(arguments, "spare");
    return out;
}

// The texts of the remembered batch, else of the file, if there is one; what was typed over them.
catalog::BatchText texts_of(const Arguments& arguments, const std::string& batch,
                            const std::optional<catalog::Notebook>& book,
                            const catalog::SpokenWords& spoken) {
    auto out = book            ? book->load_batch(batch)
               : batch.empty() ? catalog::BatchText{}
                               : catalog::read_batch_file(batch);
    out.overlay(typed_batch(arguments, spoken));
    return out;
}

Units typed_in(const catalog::MeasuredBatch& measured) {
    return Units(measured.yards ? UnitChoice::imperial : UnitChoice::metric);
}

// The notebook, for a batch that is remembered.
std::optional<catalog::Notebook> book_of(const Arguments& arguments, const std::string& batch) {
    if (!is_remembered(batch)) return {};
    return notebook(arguments, catalog::Notebook::Mode::read_only);
}

}  // namespace

Units units_of(const Arguments& arguments, std::string_view otherwise,
               const catalog::SpokenWords* names) {
    const auto word = arguments.text("units", otherwise);
    if (word == "metric") return Units{UnitChoice::metric};
    return Units{word == "imperial" ? UnitChoice::imperial : UnitChoice::both,
                 names ? us_needles(*names) : NeedleNames{}};
}

std::vector<Option> batch_options() {
    return {
        {"skein", "139m/38.5g",
         "length and mass of a skein, as washed; once for each; where they are not alike, what it "
         "is of its own: '139m/38.5g wraps 14wpi fibre BFL colour teal'",
         true},
        {"name", "Heron", "what to call the batch"},
        {"wraps", "16wpi", "wraps round a ruler, laid side by side; or 6.3 wraps/cm"},
        {"wraps-how", "packed", "laid, or packed to refusal", false, "", "laid"},
        {"prep", "carded",
         "how the fibre was prepared: carded, combed, rolag, top, woollen or another"},
        {"draw", "long", "how it was drafted: long, short, supported or another"},
        {"ply", "2", "number of plies; 1 for singles"},
        {"twist", "5tpi", "plied turns; or 200 turns/m"},
        {"fibre", "Corriedale", "a fibre of the table; for a blend 'Corriedale 70%', repeated",
         true},
        {"micron", "24-27", "fibre diameter, for a fibre of your own"},
        {"staple", "75mm", "staple length, or 70-90mm"},
        {"made", "chain-ply",
         "how it is built or left, once for each: thick-and-thin, core-spun, boucle, chain-ply, "
         "cabled, energised, fulled, overplied, underplied, Z-plied",
         true},
        {"variegated", "", "colour changes break up the surface"},
        {"yarn-colour", "teal", "of the yarn, for pictures: a name or #4a8c8c; once for each",
         true},
        {"gauge", "27st/10cm", "stocking stitch, counted on a washed swatch of this yarn"},
        {"scale", "0.1g", "what the scale reads to; else as the masses are written"},
        {"measured", "washed", "when lengths were taken: washed, off the reel, on the reel"},
        {"heddles", "30/10cm,40/10cm",
         "rigid heddles or reeds you own; the hole too if you measured it: '10 epi hole 1.5mm'",
         true},
        {"loom-width", "60cm", "weaving width of your loom"},
        {"loom-waste", "45cm",
         "what your loom leaves of each end; the outer fringes are cut of it"},
        {"fringe", "12cm", "of what has a fringe, at each end; 0cm for none"},
        {"shafts", "2", "2 for one rigid heddle"},
        {"needles", "3mm,3.5mm", "needles you own", true},
        notebook_option,
        {"insist", "", "take unlikely measurements as they are"},
    };
}

std::vector<Option> plan_options() {
    return {
        {"certainty", "90", "wished chance that the yarn does not run out, 50 to 99.9 %", false, "",
         "90"},
        {"spare", "10m", "metres to leave unused, for a sample or for mending"},
        yarn_option,
    };
}

std::vector<Option> answer_options() {
    return {
        units_option,
        {"working", "", "show each step with its figures, marks and sources"},
        json_option,
    };
}

std::vector<Option> together(std::initializer_list<std::vector<Option>> groups) {
    std::vector<Option> out;
    for (const auto& group : groups) out.insert(out.end(), group.begin(), group.end());
    return out;
}

catalog::Catalogue whole_catalogue() {
    auto catalogue = catalog::built_in();
    const auto place = catalog::Notebook::usual_place();
    if (place.empty()) return catalogue;  // no home, no templates of one's own
    catalog::add_own_templates(catalogue, place.parent_path() / "templates");
    return catalogue;
}

fs::path notebook_place(const Arguments& arguments) {
    return arguments.has("notebook") ? fs::path(arguments.text("notebook"))
                                     : catalog::Notebook::usual_place();
}

std::vector<std::string> notes_on(const catalog::Catalogue& catalogue) {
    std::vector<std::string> out;
    for (const auto& bad : catalogue.left_out)
        out.push_back(fmt::format("your template is left out: {}", bad.why));
    return out;
}

catalog::Notebook notebook(const Arguments& arguments, catalog::Notebook::Mode mode) {
    const auto place = notebook_place(arguments);
    if (place.empty())
        throw Refused(
            "there is no folder to keep a notebook in: set HOME or XDG_DATA_HOME, or say "
            "--notebook FILE");
    return catalog::Notebook::open(place, mode);
}

bool is_remembered(const std::string& word) {
    return !word.empty() && word.find_first_of("/.") == std::string::npos;
}

catalog::BatchText batch_text(const Arguments& arguments, const std::string& batch,
                              const catalog::SpokenWords& spoken) {
    return texts_of(arguments, batch, book_of(arguments, batch), spoken);
}

std::vector<HandsSeen> hands_besides(const catalog::Notebook& book, const std::string& batch,
                                     const catalog::Catalogue& catalogue) {
    return catalog::without(
        catalog::hands_seen(book.swatched_last(catalog::batches_of_hands + 1), catalogue), batch);
}

std::vector<HandsSeen> hands_if_known(const Arguments& arguments,
                                      const catalog::Catalogue& catalogue,
                                      std::vector<std::string>& notes) {
    if (notebook_place(arguments).empty()) return {};
    try {
        return hands_besides(notebook(arguments, catalog::Notebook::Mode::read_only), "",
                             catalogue);
    } catch (const Refused& error) {
        notes.push_back(fmt::format("your hands are not counted: {}", error.what()));
    } catch (const catalog::StorageFailed& error) {
        notes.push_back(fmt::format("your hands are not counted: {}", error.what()));
    }
    return {};
}

YarnProfile likely_yarn(const catalog::MeasuredBatch& measured, const catalog::Catalogue& catalogue,
                        bool insist) {
    try {
        return profile(measured.batch, catalogue.yarn, insist);
    } catch (const ImplausibleYarn& unlikely) {
        if (!unlikely.doubt) throw;
        throw Refused(fmt::format("{} (--insist takes it as it is)",
                                  words(*unlikely.doubt, typed_in(measured))));
    }
}

YarnProfile informed_yarn(const catalog::MeasuredBatch& measured,
                          const std::vector<HandsSeen>& hands,
                          const std::vector<catalog::SwatchText>& swatches,
                          const catalog::Catalogue& catalogue, bool insist) {
    auto yarn = likely_yarn(measured, catalogue, insist);
    if (measured.batch.washed_gauge && !insist && yarn.agreement.yarns.size() < 2)
        if (const auto far = far_from_yarn(*measured.batch.washed_gauge, yarn))
            throw Refused(fmt::format("the gauge: {} (--insist takes it as it is)",
                                      words(*far, typed_in(measured))));
    learn_from(hands, make_up_of(measured.batch), yarn.evidence);
    return informed(yarn, catalog::evidence_of(swatches, yarn, catalogue.fabrics));
}

YarnProfile informed_yarn(const Question& q) {
    return informed_yarn(q.measured, q.hands, q.swatches, *q.catalogue, q.insist);
}

bool same_name(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](char x, char y) { return ascii::lower(x) == ascii::lower(y); });
}

// The first that is asked for is not taken apart before the program ends: that would only take
// time.
static std::shared_ptr<const catalog::Catalogue> lasting(catalog::Catalogue catalogue) {
    auto out = std::make_shared<const catalog::Catalogue>(std::move(catalogue));
    static const auto& first = *new std::shared_ptr<const catalog::Catalogue>(out);
    static_cast<void>(first);
    return out;
}

Question ask(const Arguments& arguments, const std::string& batch, Skeins skeins) {
    Question q;
    q.asked_about = batch;
    q.catalogue = lasting(whole_catalogue());
    q.cautions = std::make_shared<Cautions>(
        std::shared_ptr<const std::vector<Caution>>(q.catalogue, &q.catalogue->cautions));
    const auto book = book_of(arguments, batch);
    if (book && !book->has_batch(batch) && q.catalogue->template_named(batch))
        throw Refused(
            fmt::format("'{}' is a template, not a batch: the template comes first, then the batch "
                        "(a file, or the name of a remembered one)",
                        batch));
    q.measured =
        catalog::interpret(texts_of(arguments, batch, book, q.catalogue->spoken), *q.catalogue);
    const auto notes = notes_on(*q.catalogue);
    q.measured.notes.insert(q.measured.notes.end(), notes.begin(), notes.end());
    q.request = request_of(arguments);
    q.units = units_of(arguments, q.measured.yards ? "imperial" : "metric", &q.catalogue->spoken);
    if (q.units.imperial()) q.measured.owned.sold_by = SoldBy::by_the_inch;
    q.json = arguments.has("json");
    q.working = arguments.has("working");
    q.hands = book ? hands_besides(*book, batch, *q.catalogue)
                   : hands_if_known(arguments, *q.catalogue, q.measured.notes);
    q.swatches = book ? book->swatches(batch) : std::vector<catalog::SwatchText>{};
    q.insist = arguments.has("insist");
    q.yarn = informed_yarn(q);
    const bool each = skeins == Skeins::each_if_asked && arguments.text("yarn") == "all";
    if (skeins != Skeins::all && !each) take_one_yarn(arguments.text("yarn"), q);
    if (q.json && !q.which_yarn.empty()) q.measured.notes.push_back(q.which_yarn);
    if (q.request.keep > q.yarn.length.mid)
        throw Refused(fmt::format("--spare {} is more than the {} that there is",
                                  q.units.yarn(q.request.keep), q.units.yarn(q.yarn.length.mid)));
    if (book && !same_name(q.measured.batch.name, batch)) q.measured.batch.name = batch;
    return q;
}

Length read_length_option(const Arguments& arguments, std::string_view option) {
    return catalog::read_named("--" + std::string(option), arguments.text(option),
                               [](const std::string& text) {
                                   // nothing that is asked for reaches a kilometre
                                   return read_length(text, {Length{}, metres(999)}).value;
                               });
}

double read_share_option(const Arguments& arguments, std::string_view option) {
    return catalog::read_named("--" + std::string(option), arguments.text(option), read_share);
}

}  // namespace gristwright::cli
