#include "cli/yarns.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>

#include "catalog/text/nearest.hpp"
#include "catalog/typed/swatch_text.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/kinds.hpp"

namespace gristwright::cli {
namespace {

std::string skein_names(const Batch& batch, const std::vector<std::size_t>& places) {
    std::vector<std::string> names;
    for (const auto place : places) names.push_back(inert(batch.skeins[place].name));
    return joined(names);
}

double mean_tex(const Batch& batch, const std::vector<std::size_t>& places) {
    Length length;
    Mass mass;
    for (const auto place : places) {
        length += batch.skeins[place].length;
        mass += batch.skeins[place].mass;
    }
    return in_tex(mass / length);
}

// What its skeins say of themselves: ", teal, BFL"; empty: nothing.
std::string of_itself(const Batch& batch, const std::vector<std::size_t>& places) {
    const auto& skein = batch.skeins[places.front()];
    std::string out;
    if (!skein.colour.empty()) out += ", " + inert(skein.colour);
    for (const auto& part : skein.fibre) out += ", " + inert(part.name);
    if (skein.wraps) out += fmt::format(", {:.0f} wpi", in_wraps_per_inch(skein.wraps->count));
    return out;
}

std::string described(const Batch& batch, const Agreement& found, std::size_t yarn) {
    const auto& places = found.yarns[yarn];
    return fmt::format("yarn {} ({}, {:.0f} tex{})", yarn + 1, skein_names(batch, places),
                       mean_tex(batch, places), of_itself(batch, places));
}

// The colours of that yarn, for pictures; several along it break up the surface.
void take_colours(std::size_t first, Question& q) {
    if (q.measured.skein_colours.empty()) return;
    q.measured.colours = q.measured.skein_colours[first];
    if (q.measured.colours.size() > 1) q.measured.batch.variegated = true;
}

std::size_t longest(const Batch& batch, const Agreement& found) {
    const auto metres_of = [&](const std::vector<std::size_t>& places) {
        Length sum;
        for (const auto place : places) sum += batch.skeins[place].length;
        return sum;
    };
    std::size_t best = 0;
    for (std::size_t y = 1; y < found.yarns.size(); ++y)
        if (metres_of(found.yarns[y]) > metres_of(found.yarns[best])) best = y;
    return best;
}

std::vector<std::string> each_described(const Batch& batch, const Agreement& found) {
    std::vector<std::string> out;
    for (std::size_t y = 0; y < found.yarns.size(); ++y) out.push_back(described(batch, found, y));
    return out;
}

// The place of the yarn asked for by its number.
std::size_t numbered(const std::string& asked, const Batch& batch, const Agreement& found) {
    std::size_t number = 0;
    const auto read = std::from_chars(asked.data(), asked.data() + asked.size(), number);
    if (read.ec == std::errc{} && read.ptr == asked.data() + asked.size() && number >= 1 &&
        number <= found.yarns.size())
        return number - 1;
    throw Refused(fmt::format("--yarn {}: there is {}; give its number", inert(asked),
                              joined(each_described(batch, found))));
}

// One measure for unlike yarns is no yarn's own.
void note_shared_measures(Question& q) {
    const auto& batch = q.measured.batch;
    auto& notes = q.measured.notes;
    if (batch.wraps && !batch.skeins.front().wraps)
        notes.push_back(
            "the wraps are taken for each of these yarns: said skein by skein they tell them "
            "apart");
    if (batch.washed_gauge)
        notes.push_back(
            "the gauge is taken for each of these yarns: a swatch is of one of them, so give it "
            "with that yarn's skeins alone");
}

// Those knitted or woven of that yarn.
std::vector<catalog::SwatchText> swatches_of(std::size_t yarn, const Question& q) {
    std::vector<catalog::SwatchText> out;
    for (const auto& swatch : q.swatches)
        if (catalog::yarn_of(swatch, q.measured.batch, q.yarn.agreement) == yarn)
            out.push_back(swatch);
    return out;
}

bool tells_no_yarn(const Question& q) {
    return std::any_of(q.swatches.begin(), q.swatches.end(), [&](const auto& swatch) {
        return !catalog::yarn_of(swatch, q.measured.batch, q.yarn.agreement);
    });
}

}  // namespace

bool several_yarns(const Question& q) { return q.yarn.agreement.yarns.size() > 1; }

void take_yarn(std::size_t yarn, Question& q) {
    const auto whole = std::make_shared<const Question>(q);
    const auto& places = whole->yarn.agreement.yarns[yarn];
    take_colours(places.front(), q);
    q.measured.batch = with_skeins(whole->measured.batch, places);
    q.swatches = swatches_of(yarn, *whole);
    q.yarn = informed_yarn(q);
    q.whole = whole;
}

void take_one_yarn(const std::string& asked, Question& q) {
    const auto batch = q.measured.batch;
    const auto found = q.yarn.agreement;
    if (found.yarns.size() < 2) {
        if (!asked.empty() && asked != "all") static_cast<void>(numbered(asked, batch, found));
        return take_colours(found.yarns.front().front(), q);
    }
    if (asked == "all")
        throw Refused(
            fmt::format("--yarn all: this is of one yarn, and the skeins are {}; give "
                        "the number of one (makes and plan take all)",
                        joined(each_described(batch, found))));
    const auto yarn = asked.empty() ? longest(batch, found) : numbered(asked, batch, found);
    note_shared_measures(q);
    if (tells_no_yarn(q))
        q.measured.notes.push_back(
            "a swatch that does not say of which skein it is tells nothing here: swatch NAME "
            "--from SKEIN");
    take_yarn(yarn, q);
    std::vector<std::string> others;
    for (std::size_t y = 0; y < found.yarns.size(); ++y)
        if (y != yarn) others.push_back(described(batch, found, y));
    q.which_yarn =
        fmt::format("the skeins are {} yarns; this is about {}, not {} (--yarn takes another)",
                    found.yarns.size(), described(batch, found, yarn), joined(others, " or "));
}

std::vector<Question> of_each_yarn(const Question& q) {
    std::vector<Question> out;
    const auto count = q.yarn.agreement.yarns.size();
    for (std::size_t y = 0; count > 1 && y < count; ++y) take_yarn(y, out.emplace_back(q));
    return out;
}

const Question& whole_batch(const Question& q) { return q.whole ? *q.whole : q; }

std::string yarn_of_several(const Question& q, std::size_t yarn) {
    const auto& places = q.yarn.agreement.yarns[yarn];
    const auto one = profile(with_skeins(q.measured.batch, places), q.catalogue->yarn, true);
    return fmt::format("{}{}: {}, {}; {}, {}", skein_names(q.measured.batch, places),
                       of_itself(q.measured.batch, places), q.units.yarn(one.length.mid),
                       q.units.mass(one.mass), q.units.thickness(one.linear_density.mid),
                       class_line(one));
}

std::string yarn_heading(const Question& q, std::size_t yarn, std::size_t indent) {
    return "\n" + heading(fmt::format("Yarn {}", yarn + 1)) + "\n" +
           wrapped(yarn_of_several(q, yarn), indent) + "\n";
}

std::size_t skein_named(const Question& q, std::string_view option, const std::string& name) {
    const auto names = catalog::names_of(q.measured.batch.skeins);
    if (const auto found = catalog::skein_called(name, names)) return *found;
    throw Refused(fmt::format("--{}: there is no skein '{}'{}; there are: {}", option, inert(name),
                              catalog::did_you_mean(name, names), joined(names)));
}

}  // namespace gristwright::cli
