#include "cli/topics.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/reference/catalogue.hpp"
#include "catalog/text/nearest.hpp"
#include "cli/exit_codes.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

std::string exit_codes() {
    std::string out = "Exit codes: what a script learns from the program\n\n";
    for (const auto& [code, meaning] : exit_meanings)
        out += labelled(fmt::format("{:>4}  ", int{code}), meaning, 2) + "\n";
    return out + "\nThe answer is on the standard output, everything else on the standard error.\n";
}

std::string fineness(const FibrePart& fibre) {
    const auto low = fibre.micron_low, high = fibre.micron_high;
    if (!low || !high) return "fineness not stated";
    return fmt::format("{:g} to {:g} micron", in_microns(*low), in_microns(*high));
}

std::string fibres(const catalog::Catalogue& known) {
    std::string out =
        "Fibres: those that the table knows, by the name that --fibre takes\n\n"
        "A fibre of your own: --micron and --staple beside its name.\n\n";
    std::size_t widest = 0;
    for (const auto& fibre : known.fibres) widest = std::max(widest, characters(fibre.name));
    for (const auto& fibre : known.fibres)
        out += labelled(padded(fibre.name, widest), fineness(fibre), 2) + "\n";
    return out;
}

std::string fabrics(const catalog::Catalogue& known) {
    std::string out =
        "Fabrics: the stitches and weaves that samples, swatches and templates name\n\n"
        "Knitted, metres an area against stocking stitch at one gauge:\n";
    for (const auto& fabric : known.fabrics.knitted)
        out += fmt::format("  {} x {:.2f}\n", padded(fabric.name, 30), fabric.metres);
    out += "\nWoven:\n";
    for (const auto& weave : known.fabrics.weaves)
        out += fmt::format(
            "  {} {}\n", padded(weave.name, 30),
            weave.shafts > 2 ? fmt::format("{} shafts", weave.shafts) : std::string("one heddle"));
    return out;
}

std::vector<HelpTopic> all_topics() {
    const auto known = catalog::built_in();  // help needs no template of one's own to be right
    return {{"units", std::string(embedded::help_units)},
            {"marks", std::string(embedded::help_marks)},
            {"certainty", std::string(embedded::help_certainty)},
            {"wraps", std::string(embedded::help_wraps)},
            {"fibres", fibres(known)},
            {"fabrics", fabrics(known)},
            {"exit-codes", exit_codes()}};
}

}  // namespace

const std::vector<HelpTopic>& topics() {
    static const auto all = all_topics();
    return all;
}

std::vector<std::string> topic_names() { return catalog::names_of(topics()); }

std::string_view about(const HelpTopic& topic) {
    const std::string_view text = topic.text;
    const auto begin = text.find(": ") + 2;
    return text.substr(begin, text.find('\n') - begin);
}

}  // namespace gristwright::cli
