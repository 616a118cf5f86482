#include "cli/output/split_words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

using allocation::Wish;

std::string sample_line(const std::string& name, const Sample& s, const allocation::SplitPart& part,
                        const SplitAsked::Fabric& fabric, const Question& q) {
    const bool knitted = s.linear == 0;
    const auto whole = [](double count, int repeat) {
        return repeat * std::max(1, static_cast<int>(std::lround(count / repeat)));
    };
    const double across = (knitted ? s.count : s.second_count) * part.size.si();
    const double along = (knitted ? s.second_count : s.count) * part.size.si();
    return fmt::format(
        "{} in {}: {} square finished, {} {} by {} {}; {}. It tells the {} to "
        "±{:.1f} % "
        "and the {} to ±{:.1f} %.",
        name, fabric.name, q.units.size(part.size), whole(across, fabric.across),
        knitted ? "stitches" : "ends", whole(along, fabric.along), knitted ? "rows" : "picks",
        q.units.yarn(part.metres), knitted ? "stitch gauge" : "picks", 100 * margin90(part.error),
        knitted ? "row gauge" : "sett", 100 * margin90(part.second_error));
}

// What a length is for: "Woven scarf (panel, weft)".
std::string target(const allocation::WindOff& cut, const SplitAsked& asked) {
    const auto& name = asked.request.wishes[cut.wish].name;
    return cut.piece.empty() ? name : fmt::format("{} ({})", name, cut.piece);
}

std::string article_line(const Wish& wish, const allocation::SplitPart& part, const Question& q,
                         double certainty) {
    const auto& t = *wish.plan->article;
    auto out =
        fmt::format("{}: {} {} from {}, with a {} chance that they suffice.", wish.name, t.measure,
                    q.units.size(part.size), q.units.yarn(part.metres), percent(certainty));
    if (part.size_when_known > part.size)
        out += fmt::format(
            " Once a sample is washed, weighed and measured, the same yarn may go "
            "as far as {}.",
            q.units.size(part.size_when_known));
    return out;
}

}  // namespace

char letter_of(const allocation::Split& split, std::size_t wish) {
    const auto before =
        std::count_if(split.parts.begin(), split.parts.begin() + static_cast<std::ptrdiff_t>(wish),
                      [](const auto& part) { return part.made; });
    return static_cast<char>('a' + before % 26);
}

std::string part_words(const allocation::Split& s, const SplitAsked& asked, std::size_t w,
                       const Question& q) {
    const auto& wish = asked.request.wishes[w];
    return capital(wish.sample
                       ? sample_line(wish.name, *wish.sample, s.parts[w], asked.fabrics[w], q)
                       : article_line(wish, s.parts[w], q, asked.request.certainty));
}

std::string cut_words(const allocation::WindOff& cut, const SplitAsked& asked, const Question& q) {
    const bool all = cut.ball_length < all_of_it;
    return fmt::format(
        "from {}: {}, {}, for the {}; {}", inert(q.yarn.skeins[cut.skein].name),
        q.units.yarn(cut.length), q.units.weighed(cut.mass), target(cut, asked),
        all ? std::string("that is all of it")
            : fmt::format("the ball then weighs {} ({} left)", q.units.weighed(cut.ball_mass),
                          q.units.yarn(cut.ball_length)));
}

std::string proof(const allocation::Allocation& a) {
    if (a.outcome == allocation::Allocation::Outcome::proven_best)
        return "No better split exists (proven).";
    const auto worth = a.list.worth;
    return fmt::format("The best split found; no other can be more than {:.1f} % better.",
                       100.0 * static_cast<double>(a.bound - worth) /
                           static_cast<double>(std::max<allocation::Points>(1, worth)));
}

}  // namespace gristwright::cli
