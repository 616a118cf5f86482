#include "cli/output/split_working.hpp"

#include <fmt/core.h>

#include "cli/output/layout.hpp"
#include "cli/output/working.hpp"
#include "engine/allocation/constants.hpp"
#include "engine/evidence/constants.hpp"

namespace gristwright::cli {
namespace {

using allocation::Split;

// Points for the skeins that the parts leave whole.
double kept_whole(const Split& s) {
    double out = 0;
    for (std::size_t i = 0; i < s.placing.skeins.size(); ++i)
        if (s.placed.list.taken_from(i) == 0) out += double(s.placing.skeins[i].bonus) / 1e6;
    return out;
}

}  // namespace

std::string split_working(const Split& s, const SplitAsked& asked) {
    auto out = "\n" + heading("Working") + "\n";
    out += wrapped(fmt::format("branch and bound over whole centimetres, {} nodes; worth {:.2f} "
                               "points, no split is worth more than {:.2f}",
                               s.allocation.nodes, double(s.allocation.list.worth) / 1e6,
                               double(s.allocation.bound) / 1e6),
                   2) +
           "\n";
    for (std::size_t j = 0; j < s.problem.pieces.size(); ++j) {
        const auto& p = s.problem.pieces[j];
        out += wrapped(
                   fmt::format("{}: at least {:.2f} m, at most {:.2f} m, at most {} joins{}",
                               asked.request.wishes[j].name, double(p.least) / 100,
                               double(p.most()) / 100, p.max_joins, p.required ? ", required" : ""),
                   2) +
               "\n";
    }
    std::vector<std::string> metre;
    const auto worths = allocation::worth_of_a_metre(s.problem, s.allocation);
    for (std::size_t i = 0; i < worths.size(); ++i)
        metre.push_back(
            fmt::format("{:.2f} in {}", double(worths[i]) / 1e6, s.problem.skeins[i].name));
    out += wrapped("a metre more would be worth, in points: " + inert(joined(metre)), 2) + "\n";
    out += wrapped(fmt::format("then each part at its length: joins and coarser weft cost {:.2f} "
                               "points, no way of cutting them costs less than {:.2f}",
                               kept_whole(s) - double(s.placed.list.worth) / 1e6,
                               kept_whole(s) - double(s.placed.bound) / 1e6),
                   2) +
           "\n";
    for (const auto& p : s.placing.pieces)
        out += wrapped(fmt::format("{}: {:.2f} m, at most {} joins at {:g} points", p.name,
                                   double(p.least) / 100, p.max_joins, double(p.join_cost) / 1e6),
                       2) +
               "\n";
    for (const auto& c : {constants::worth_of_main, constants::worth_of_growth,
                          constants::worth_of_knowing, constants::worth_of_whole,
                          constants::unevenness, constants::read_error, constants::swatch_metres})
        out +=
            wrapped(fmt::format("{} = {:g} {} [{}]", c.name, c.value, c.unit, words(c.mark)), 6) +
            "\n";
    return out + not_shown();
}

}  // namespace gristwright::cli
