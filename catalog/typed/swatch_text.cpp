#include "catalog/typed/swatch_text.hpp"

#include <fmt/core.h>

#include <charconv>

#include "catalog/reference/choices.hpp"
#include "catalog/text/named_reading.hpp"
#include "catalog/text/nearest.hpp"
#include "catalog/typed/written_reading.hpp"
#include "engine/units/constants.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

const std::string* given(const SwatchText& text, std::string_view key) {
    const auto found = text.measured.find(key);
    return found == text.measured.end() || found->second.empty() ? nullptr : &found->second;
}

Length length_of(const std::string& text) { return read_length(text).value; }

// "41cm"; nothing woven yet may be written with or without a unit.
Length read_woven_length(const std::string& text) {
    const bool none =
        text.find('0') != std::string::npos && text.find_first_not_of("0cm ") == std::string::npos;
    return none ? Length{} : length_of(text);
}

double number(const std::string& text, double low, double high) {
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc{} || read.ptr != text.data() + text.size() || !(value >= low) ||
        !(value <= high))
        throw Unreadable(text, fmt::format("this is no number from {:g} to {:g}", low, high),
                         "plainly");
    return value;
}

// In millimetres, as it is kept; the trade's sizes are read where they are typed.
Length read_needle_size(const std::string& text) {
    const auto out = length_of(text);
    if (out < millimetres(constants::finest_needle) ||
        out > millimetres(constants::thickest_needle))
        throw Unreadable(text, "there is no such needle", "such as 4mm");
    return out;
}

Firmness read_firmness(const std::string& text) {
    if (const auto* found = meant(firmnesses, text)) return *found;
    throw Unreadable(text, "this is no firmness", "as lace, drapey, ordinary, firm or sock");
}

bool read_yes(const std::string& text) {
    if (text == "yes") return true;
    if (text == "no") return false;
    throw Unreadable(text, "this is neither", "as yes or no");
}

Finish read_finish(const std::string& text) {
    if (const auto* found = meant(finishes, text)) return *found;
    throw Unreadable(text, "this is no finish", "as light, 'open or fulled' or 'hard fulled'");
}

}  // namespace

Counted read_counted(const std::string& text) {
    const auto stroke = text.find('/');
    if (stroke == std::string::npos)
        throw Unreadable(text, "this is no count over a length", "such as 28/10.3cm");
    const Counted out{number(text.substr(0, stroke), 1, 10'000),
                      length_of(text.substr(stroke + 1))};
    const double per_inch = out.threads / in_inches(out.over);
    const double least = constants::coarsest_gauge, most = constants::finest_gauge;
    if (per_inch < least || per_inch > most)
        throw Unreadable(text,
                         fmt::format("that is {:.3g} to the inch; knitting has {:g} to {:g}",
                                     per_inch, least, most),
                         "such as 28/10.3cm");
    return out;
}

std::pair<Length, Length> read_sides(const std::string& text) {
    const auto times = text.find('x');
    if (times == std::string::npos)
        throw Unreadable(text, "these are no two sides", "such as 15.2x14.8cm");
    auto first = text.substr(0, times);
    const auto second = text.substr(times + 1);
    if (first.find_first_not_of("0123456789.,/ ") == std::string::npos) {
        const auto unit = second.find_first_not_of("0123456789.,/ ");
        if (unit != std::string::npos) first += second.substr(unit);
    }
    return {length_of(first), length_of(second)};
}

double read_look(const std::string& text) {
    const auto stroke = text.find('/');
    if (stroke == std::string::npos || text.substr(stroke + 1) != "5")
        throw Unreadable(text, "this is no look", "such as 4/5: 0 blurred, 5 every stitch clear");
    return number(text.substr(0, stroke), 0, 5) / 5;
}

KnittedSwatch read_knitted(const SwatchText& text) {
    KnittedSwatch out;
    const auto* stitches = given(text, "stitches");
    if (!stitches) throw Refused("a knitted swatch needs --stitches 28/10.3cm");
    out.stitches = read_named("stitches", *stitches, read_counted);
    if (const auto* rows = given(text, "rows")) out.rows = read_named("rows", *rows, read_counted);
    if (const auto* size = given(text, "sides")) {
        const auto sides = read_named("sides", *size, read_sides);
        out.width = sides.first;
        out.length = sides.second;
    }
    if (const auto* mass = given(text, "mass")) {
        const auto read =
            read_named("mass", *mass, [](const std::string& t) { return read_mass(t); });
        out.mass = read.value;
        out.scale_step = read.step;
    }
    if (const auto* needle = given(text, "needle"))
        out.needle = read_named("needle", *needle, read_needle_size);
    if (const auto* washed = given(text, "washed"))
        out.washed = read_named("washed", *washed, read_yes);
    if (const auto* insisted = given(text, "insist"))
        out.insisted = read_named("insist", *insisted, read_yes);
    out.look = look_of(text);
    if (const auto* firmness = given(text, "firmness"))
        out.firmness = read_named("firmness", *firmness, read_firmness);
    return out;
}

WovenSwatch read_woven(const SwatchText& text) {
    WovenSwatch out;
    const auto* finished = given(text, "finished");
    if (!finished) throw Refused("a woven swatch needs --finished 17.1x21.4cm");
    const auto sides = read_named("finished", *finished, read_sides);
    out.width = sides.first;
    out.length = sides.second;
    if (const auto* reed = given(text, "reed"))
        out.reed_width = read_named("reed", *reed, length_of);
    if (const auto* woven = given(text, "woven"))
        out.woven_length = read_named("woven", *woven, length_of);
    out.look = look_of(text);
    if (!out.reed_width && !out.woven_length)
        throw Refused(
            "a woven swatch needs its width in the heddle, --reed 20cm, or its length off tension, "
            "--woven 24cm");
    return out;
}

const KnitFabric& fabric_of(const SwatchText& text, const Fabrics& fabrics) {
    const auto* written = given(text, "fabric");
    const std::string name = written ? *written : "stocking stitch";
    if (const auto* found = fabrics.knitted_named(name)) return *found;
    throw Refused(fmt::format("fabric: there is no stitch '{}'{}", name,
                              did_you_mean_or_all(name, names_of(fabrics.knitted))));
}

std::optional<double> look_of(const SwatchText& text) {
    const auto* look = given(text, "look");
    if (!look) return {};
    return read_named("look", *look, read_look);
}

std::optional<std::size_t> skein_called(const std::string& name,
                                        const std::vector<std::string>& skeins) {
    const auto typed = as_spoken(name);
    for (const bool spoken : {false, true})
        for (std::size_t i = 0; i < skeins.size(); ++i) {
            if (skeins[i] == name) return i;
            const auto known = as_spoken(skeins[i]);
            if (spoken && (known == typed || known == "skein " + typed)) return i;
        }
    return {};
}

std::optional<std::size_t> yarn_of(const SwatchText& text, const Batch& batch,
                                   const Agreement& agreement) {
    if (agreement.yarns.size() < 2) return 0;
    const auto* from = given(text, "from");
    const auto skein = from ? skein_called(*from, names_of(batch.skeins)) : std::nullopt;
    if (!skein) return {};
    return agreement.yarn_with(*skein);
}

Evidence evidence_of(const std::vector<SwatchText>& swatches, const YarnProfile& yarn,
                     const Fabrics& fabrics) {
    Evidence known = yarn.evidence;
    for (const auto& text : swatches) {
        if (text.kind == SwatchText::Kind::woven) {
            const auto* finish = given(text, "finish");
            observe(read_woven(text),
                    finish ? read_named("finish", *finish, read_finish) : Finish::light, yarn.hair,
                    known);
            continue;
        }
        observe(read_knitted(text), fabric_of(text, fabrics), yarn, known);
    }
    return known;
}

// "96", "34 of the body", "34 of sleeve 2": which piece that is the plan knows.
void read_row(const std::string& text, Weighing& out) {
    const auto of = text.find(" of ");
    out.row = number(text.substr(0, of), 0, 1e6);
    if (of == std::string::npos) return;
    out.piece = trimmed(text.substr(of + 4));
    if (out.piece.empty()) throw Unreadable(text, "this names no piece", "such as 34 of sleeve 2");
}

Weighing read_weighing(const WeighingText& text) {
    Weighing out;
    out.ball =
        read_named("ball", text.ball, [](const std::string& t) { return read_mass(t).value; });
    if (text.row.empty())
        out.woven = read_named("woven", text.length, read_woven_length);
    else
        read_named("row", text.row, [&](const std::string& t) {
            read_row(t, out);
            return out.row;
        });
    return out;
}

}  // namespace gristwright::catalog
