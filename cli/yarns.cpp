#include "cli/yarns.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>

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

// The place of the yarn asked for by its number.
std::size_t numbered(const std::string& asked, const Batch& batch, const Agreement& found) {
    std::size_t number = 0;
    const auto read = std::from_chars(asked.data(), asked.data() + asked.size(), number);
    if (read.ec == std::errc{} && read.ptr == asked.data() + asked.size() && number >= 1 &&
        number <= found.yarns.size())
        return number - 1;
    std::vector<std::string> there;
    for (std::size_t y = 0; y < found.yarns.size(); ++y)
        there.push_back(described(batch, found, y));
    throw Refused(fmt::format("--yarn {}: there is {}; give its number, or all", inert(asked),
                              joined(there)));
}

}  // namespace

std::string take_one_yarn(const std::string& asked, const Agreement& found, Question& q) {
    const auto batch = q.measured.batch;
    if (asked == "all") return "";
    const auto yarn = asked.empty() ? longest(batch, found) : numbered(asked, batch, found);
    take_colours(found.yarns[yarn].front(), q);
    if (found.yarns.size() < 2) return "";
    if (batch.wraps && !batch.skeins.front().wraps)
        q.measured.notes.push_back(
            "the wraps are taken for each of these yarns: said skein by skein they tell them "
            "apart");
    q.measured.batch = with_skeins(batch, found.yarns[yarn]);
    std::vector<std::string> others;
    for (std::size_t y = 0; y < found.yarns.size(); ++y)
        if (y != yarn) others.push_back(described(batch, found, y));
    return fmt::format(
        "the skeins are {} yarns; this is about {}, not {} (--yarn takes another, or "
        "all)",
        found.yarns.size(), described(batch, found, yarn), joined(others, " or "));
}

std::vector<Question> of_each_yarn(const Arguments& arguments, const std::string& batch,
                                   const Question& q) {
    std::vector<Question> out;
    const auto count = q.yarn.agreement.yarns.size();
    for (std::size_t y = 1; count > 1 && y <= count; ++y) {
        auto asked = arguments;
        asked.options["yarn"] = {fmt::format("{}", y)};
        out.push_back(ask(asked, batch, Skeins::of_one_yarn));
    }
    return out;
}

std::string yarn_of_several(const Question& q, std::size_t yarn) {
    const auto& places = q.yarn.agreement.yarns[yarn];
    const auto one = profile(with_skeins(q.measured.batch, places), q.catalogue.yarn, true);
    return fmt::format("{}{}: {}, {}; {}, {}", skein_names(q.measured.batch, places),
                       of_itself(q.measured.batch, places), q.units.yarn(one.length.mid),
                       q.units.mass(one.mass), q.units.thickness(one.linear_density.mid),
                       class_line(one));
}

}  // namespace gristwright::cli
