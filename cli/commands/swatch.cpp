#include "cli/commands/swatch.hpp"

#include <fmt/core.h>

#include <nlohmann/json.hpp>

#include "catalog/text/named_reading.hpp"
#include "catalog/typed/needle_reading.hpp"
#include "catalog/typed/swatch_text.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/yarns.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;
using catalog::SwatchText;

constexpr std::string_view keys[] = {"stitches", "rows",   "sides",    "mass", "needle",
                                     "look",     "fabric", "firmness", "reed", "woven",
                                     "finished", "finish", "from"};

SwatchText typed(const Arguments& arguments) {
    const bool knitted = arguments.has("stitches"), woven = arguments.has("finished");
    if (knitted == woven)
        throw Misused("swatch is knitted (--stitches 28/10.3cm) or woven (--finished 17.1x21.4cm)");
    SwatchText out;
    out.kind = knitted ? SwatchText::Kind::knitted : SwatchText::Kind::woven;
    for (const auto key : keys)
        if (arguments.has(key)) out.measured[std::string(key)] = arguments.text(key);
    if (arguments.has("insist")) out.measured["insist"] = "yes";
    if (knitted) out.measured["washed"] = arguments.has("unwashed") ? "no" : "yes";
    out.date = arguments.text("on");
    out.own_hands = !arguments.has("other-hands");
    return out;
}

// The trade's size is kept in millimetres, which mean the same in every country.
void take_needle(const catalog::SpokenWords& spoken, SwatchText& swatch) {
    const auto found = swatch.measured.find("needle");
    if (found == swatch.measured.end()) return;
    if (swatch.kind == SwatchText::Kind::woven)
        throw Misused("--needle is for a knitted swatch; --reed tells of a woven one");
    const auto needle = catalog::read_named("needle", found->second, [&](const std::string& text) {
        return catalog::read_needle(text, spoken);
    });
    found->second = fmt::format("{:g}mm", in_millimetres(needle));
}

// Of several yarns it is one of: by the skein that it was made of.
void take_its_yarn(SwatchText& swatch, Question& q) {
    if (const auto from = swatch.measured.find("from"); from != swatch.measured.end())
        from->second = q.measured.batch.skeins[skein_named(q, "from", from->second)].name;
    if (!several_yarns(q)) return;
    const auto yarn = catalog::yarn_of(swatch, q.measured.batch, q.yarn.agreement);
    if (!yarn)
        throw Refused(fmt::format(
            "the skeins of {} are {} yarns, and a swatch is of one: say --from and the skein",
            inert(q.measured.batch.name), q.yarn.agreement.yarns.size()));
    take_yarn(*yarn, q);
}

std::string told(const Question& q) {
    const auto& known = q.yarn.evidence;
    std::string out;
    if (known.gauge)
        out += fmt::format("  stocking stitch {}, ± {:.1f} %\n",
                           q.units.counted_gauge(known.gauge->mid), 100 * known.gauge->margin90());
    if (known.needle)
        out += fmt::format("  knitted on {}, which the plans of that gauge name\n",
                           q.units.needle(*known.needle));
    if (known.rows)
        out +=
            fmt::format("  rows for their stitches {:+.1f} % of what the table says, ± {:.1f} %\n",
                        100 * (known.rows->mid - 1), 100 * known.rows->margin90());
    if (!known.weighed.empty())
        out += fmt::format("  yarn to an area of {} {:+.1f} % of what the table says, ± {:.1f} %\n",
                           known.weighed.back().fabric, 100 * (known.weighed.back().metres.mid - 1),
                           100 * known.weighed.back().metres.margin90());
    if (known.width_kept)
        out += fmt::format("  width lost from heddle to finished {:.1f} %, ± {:.1f}\n",
                           100 * (1 - known.width_kept->mid),
                           100 * known.width_kept->margin90() * known.width_kept->mid);
    if (known.length_kept)
        out += fmt::format("  length lost from loom to finished {:.1f} %, ± {:.1f}\n",
                           100 * (1 - known.length_kept->mid),
                           100 * known.length_kept->margin90() * known.length_kept->mid);
    if (!known.looks.empty())
        out += fmt::format("  how clearly stitches read {:.2f} of 1, ± {:.2f}\n",
                           q.yarn.trait(TraitName::definition).value,
                           margin90(q.yarn.trait(TraitName::definition).spread));
    for (const auto& question : questions(known)) out += labelled("Question:", question, 2) + "\n";
    return out;
}

Json told_json(const Question& q, std::size_t swatches) {
    const auto& known = q.yarn.evidence;
    const auto share = [](const std::optional<Estimate<double>>& e) {
        return e ? range(*e) : Json(nullptr);
    };
    auto out = json_answer("swatch");
    out["batch"] = inert(q.measured.batch.name);
    out["swatches"] = swatches;
    out["stocking_stitches_per_10cm"] =
        known.gauge ? range({in_stitches_per_10cm(known.gauge->mid), known.gauge->spread})
                    : Json(nullptr);
    out["needle_mm"] = known.needle ? Json(number(in_millimetres(*known.needle))) : Json(nullptr);
    out["rows_against_table"] = share(known.rows);
    out["metres_per_area_against_table"] =
        known.weighed.empty() ? Json(nullptr) : range(known.weighed.back().metres);
    out["width_kept"] = share(known.width_kept);
    out["length_kept"] = share(known.length_kept);
    out["definition"] = number(q.yarn.trait(TraitName::definition).value);
    out["stands_on"] = texts(standings(known));
    out["questions"] = texts(questions(known));
    return out;
}

Answer run_swatch(const Arguments& arguments) {
    const auto& name = arguments.words[0];
    auto swatch = typed(arguments);
    auto book = notebook(arguments, Notebook::Mode::change);
    Question q;
    book.at_once([&] {
        // Read it before it is kept: what makes no sense is refused.
        q = ask(arguments, name, Skeins::all);
        take_needle(q.catalogue->spoken, swatch);
        take_its_yarn(swatch, q);
        q.swatches.push_back(swatch);
        q.insist = true;
        q.yarn = informed_yarn(q);
        book.add_swatch(name, swatch);
    });
    const auto notes = joined(q.measured.notes, "\n");
    if (arguments.has("json"))
        return {dumped(told_json(q, q.swatches.size())), notes, 0, kept_already};
    const auto count = q.swatches.size();
    const auto of =
        q.whole ? fmt::format("{}'s {}", inert(name), inert(swatch.measured["from"])) : inert(name);
    return {
        fmt::format("Kept. With {} swatch{} {} now knows:\n", count, count == 1 ? "" : "es", of) +
            told(q),
        notes, 0, kept_already};
}

}  // namespace

Command swatch_command() {
    return {"swatch",
            "Keeps what a swatch told. Every later answer about the batch stands on it.",
            "NAME",
            1,
            1,
            together({{{"stitches", "28/10.3cm", "knitted: stitches counted over a length"},
                       {"rows", "39/10.1cm", "knitted: rows counted over a length"},
                       {"sides", "15.2x14.8cm", "knitted: width and length of the whole swatch"},
                       {"mass", "4.1g", "knitted: its mass, without the tails"},
                       {"needle", "4mm", "knitted: the needle it was made on; plans then name it"},
                       {"from", "B", "the skein it is of, where they are several yarns"},
                       {"insist", "", "count its mass, however little that is for its stitches"},
                       {"unwashed", "", "it is not washed yet"},
                       {"fabric", "garter", "knitted: the stitch, else stocking stitch"},
                       {"firmness", "drapey", "knitted: lace, drapey, ordinary, firm or sock",
                        false, "lace|drapey|ordinary|firm|sock"},
                       {"reed", "20cm", "woven: width in the heddle"},
                       {"woven", "24cm", "woven: length off tension, unwashed"},
                       {"finished", "17.1x21.4cm", "woven: finished width and length"},
                       {"finish", "light", "woven: light, 'open or fulled' or 'hard fulled'", false,
                        "light|open or fulled|hard fulled"},
                       {"other-hands", "", "made by somebody else: it tells nothing about yours"},
                       {"look", "4/5", "how clearly its stitches read, 0/5 to 5/5"},
                       date_option,
                       json_option,
                       notebook_option}}),
            run_swatch,
            "heron --stitches 28/10.3cm --rows 39/10.1cm --needle 4mm"};
}

}  // namespace gristwright::cli
