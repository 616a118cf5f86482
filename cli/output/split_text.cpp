#include "cli/output/split_text.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/other_cuts.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/split_words.hpp"
#include "cli/roles.hpp"
#include "engine/allocation/constants.hpp"

namespace gristwright::cli {
namespace {

using allocation::Split;

std::string bars(const Split& s, const Question& q) {
    constexpr std::size_t usual_bar = 56;
    Length longest;
    std::size_t name_width = 5;
    for (const auto& skein : q.yarn.skeins) {
        longest = std::max(longest, skein.length);
        name_width = std::max(name_width, std::min<std::size_t>(14, characters(skein.name)));
    }
    const double widest = static_cast<double>(std::min(usual_bar, text_width() - name_width - 3));
    std::string out;
    for (std::size_t i = 0; i < q.yarn.skeins.size(); ++i) {
        std::string bar;
        double drawn = 0;
        const auto draw = [&](Length length, char with) {
            drawn += length / longest * widest;
            while (static_cast<double>(bar.size()) + 0.5 < drawn) bar += with;
        };
        for (const auto& cut : s.cuts)
            if (cut.skein == i) draw(cut.length, letter_of(s, cut.wish));
        if (s.placed.list.reserve == i)
            draw(centimetres(static_cast<double>(s.problem.reserve)), '~');
        draw(left_in(i, s, q), '.');
        out += fmt::format("  {} {}\n", padded(inert(q.yarn.skeins[i].name), name_width), bar);
    }
    return out;
}

std::string key(const Split& s, const SplitAsked& asked) {
    std::vector<std::string> said;
    for (std::size_t w = 0; w < s.parts.size(); ++w)
        if (s.parts[w].made)
            said.push_back(fmt::format("{} {}", letter_of(s, w), asked.request.wishes[w].name));
    if (s.placed.list.reserve) said.emplace_back("~ reserve for mending");
    said.emplace_back(". left over");
    return wrapped(joined(said), 2) + "\n";
}

std::string parts(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        if (!s.parts[w].made) continue;
        out += labelled(fmt::format("{}", letter_of(s, w)), part_words(s, asked, w, q), 2) + "\n";
    }
    return out;
}

std::string cut_list(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    int number = 0;
    for (const auto& cut : s.cuts) {
        out += labelled(fmt::format("{:>2}.", ++number), cut_words(cut, asked, q), 2) + "\n";
    }
    return out +
           wrapped(fmt::format("Every length includes a tail of {}.",
                               q.units.size(centimetres(double(s.problem.tail)))),
                   2) +
           "\n";
}

std::string more_words(const allocation::More& more, const Question& q) {
    return fmt::format("{} more in {}", q.units.yarn(centimetres(double(more.length))),
                       inert(q.yarn.skeins[more.skein].name));
}

std::string why_not(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    for (const auto& one : s.unmet) {
        std::vector<std::string> said{std::string(words(one.limit))};
        if (one.beside) said.push_back(more_words(*one.beside, q) + " would allow it too");
        if (one.instead && !one.loses.empty()) {
            std::vector<std::string> lost;
            for (const auto piece : one.loses) lost.push_back(asked.request.wishes[piece].name);
            said.push_back("it could be made instead of the " + joined(lost, " and the "));
        } else if (one.instead) {
            said.emplace_back("it could be made now, at the cost of size, joins or whole skeins");
        }
        if (!one.beside && !one.instead)
            said.emplace_back(one.settled
                                  ? "no length more in one skein would allow it"
                                  : "more was not settled; a larger --effort may settle it");
        out += labelled(
                   "-",
                   fmt::format("{}: {}.", asked.request.wishes[one.piece].name, joined(said, "; ")),
                   2) +
               "\n";
    }
    return out;
}

std::string impossible(const Split& s, const SplitAsked& asked, const Question& q) {
    std::vector<std::string> required;
    for (const auto& wish : asked.request.wishes)
        if (wish.sample || wish.main) required.push_back("the " + wish.name);
    auto out = wrapped(fmt::format("Impossible: the skeins do not hold {} together.",
                                   joined(required, " and ")),
                       0) +
               "\n";
    if (s.lacking)
        out += wrapped(fmt::format("{} would make it possible; so would a smaller sample, a lower "
                                   "certainty, or a smaller main project.",
                                   capital(more_words(*s.lacking, q))),
                       0) +
               "\n";
    return out;
}

std::string wasteful(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        const auto& sample = asked.request.wishes[w].sample;
        if (!sample || !s.parts[w].made || sample->linear == 0) continue;
        const auto waste = metres(sample->linear * s.parts[w].size.si());
        if (waste > s.parts[w].metres * constants::much_waste)
            out += wrapped(fmt::format("Of the woven sample's yarn {} are loom waste: another "
                                       "yarn as warp, or a pin frame, would teach as much.",
                                       q.units.yarn(waste)),
                           2) +
                   "\n";
    }
    return out;
}

// Skeins that differ show where they meet, unless they are worked by turns.
std::string by_turns(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    if (!s.by_piece)
        out += wrapped(
                   "The parts of the articles could not be cut one by one: the list goes by "
                   "article, and a join may fall inside a part.",
                   2) +
               "\n";
    if (q.yarn.agreement.answer == SameYarn::same || q.yarn.agreement.answer == SameYarn::differ)
        return out;  // several yarns are not worked by turns
    const auto sure = q.yarn.agreement.answer == SameYarn::alternate
                          ? "its skeins are hardly"
                          : "we cannot be sure that its skeins are";
    for (std::size_t j = 0; j < s.pieces.size(); ++j) {
        std::vector<std::string> skeins;
        const auto& wish = asked.request.wishes[s.pieces[j].wish];
        if (!wish.plan || wish.plan->article->craft != Craft::knitted) continue;
        for (const auto& cut : s.placed.list.cuts)
            if (cut.piece == j) skeins.push_back(inert(q.yarn.skeins[cut.skein].name));
        if (skeins.size() < 2) continue;
        const auto& piece = s.pieces[j].name;
        out += wrapped(fmt::format("{}{}: {} one yarn. Alternate {} every two rows while "
                                   "both last: that hides the change better than a join.",
                                   wish.name, piece.empty() ? "" : " (" + piece + ")", sure,
                                   joined(skeins, " and ")),
                       2) +
               "\n";
    }
    return out;
}

// Of the other yarn: how much to have, and how to cut it where it is one of this batch.
std::string other_yarn_cuts(const Arguments& arguments, const Split& s, const SplitAsked& asked,
                            const Question& q) {
    const auto shared = shared_plan(s, asked);
    if (!shared) return "";
    auto out = "\n" + heading("The other yarn") + "\n" + other_yarn_text(*shared, q);
    const auto other = other_cuts(arguments, *shared, asked, q);
    if (!other) return out;
    if (!other->split.found())
        return out +
               wrapped(
                   "Its skeins do not hold it at that size: a smaller --keep, or a lower "
                   "certainty.",
                   2) +
               "\n";
    return out + cut_list(other->split, other->asked, other->question);
}

}  // namespace

std::vector<const Template*> articles_of(const SplitAsked& asked) {
    std::vector<const Template*> out;
    for (const auto& judged : asked.plans) out.push_back(judged.plan.article.get());
    return out;
}

std::string split_text(const Split& s, const SplitAsked& asked, const Question& q,
                       const Arguments& arguments) {
    auto out = wrapped(batch_line(q), 0) + "\n\n";
    if (!s.found()) return out + impossible(s, asked, q);
    out += parts(s, asked, q) + "\n" + heading("Skeins") + "\n" + bars(s, q) + key(s, asked);
    out += "\n" + heading("Cut list, in the order to wind off") + "\n" + cut_list(s, asked, q);
    out += other_yarn_cuts(arguments, s, asked, q);
    if (!s.unmet.empty()) out += "\n" + heading("Not made, and why") + "\n" + why_not(s, asked, q);
    const auto mind = wasteful(s, asked, q) + by_turns(s, asked, q);
    if (!mind.empty()) out += "\n" + heading("Mind") + "\n" + mind;
    return out + "\n" + care_line(cautions_on(q, articles_of(asked))) + stands_on(q.yarn) +
           proof(s.allocation) + "\n";
}

}  // namespace gristwright::cli
