#include "cli/output/article_words.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/assembled.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/schematic.hpp"

namespace gristwright::cli {
namespace {

std::string lower(std::string text) {
    if (!text.empty() && text[0] >= 'A' && text[0] <= 'Z')
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    return text;
}

// "two", "three", ...; figures from seven on.
std::string number_word(int n) {
    constexpr std::string_view small[] = {"no", "one", "two", "three", "four", "five", "six"};
    return n >= 0 && n < 7 ? std::string(small[n]) : fmt::format("{}", n);
}

std::string ply_words(const Batch& batch) {
    if (batch.plies == 0) return "";
    return batch.plies == 1 ? "singles of " : number_word(batch.plies) + "-ply ";
}

std::string fibre_words(const Batch& batch) {
    std::vector<std::string> said;
    for (const auto& part : batch.fibre)
        said.push_back(part.name.empty() ? "wool" : inert(part.name));
    if (said.empty()) return batch.plies == 1 ? "a fibre not given" : "yarn, its fibre not given";
    if (said.size() == 1) return said[0];
    const auto last = said.back();
    said.pop_back();
    return joined(said) + " and " + last;
}

std::string making_words(const Batch& batch) {
    std::vector<std::string> said;
    if (batch.preparation != Preparation::unknown)
        said.emplace_back(batch.preparation == Preparation::carded ? "carded" : "combed");
    if (batch.draw != Draw::unknown)
        said.emplace_back(batch.draw == Draw::long_draw ? "drawn long" : "drawn short");
    return said.empty() ? "" : ", " + joined(said, " and ");
}

bool is_many(const Template& t) {
    const auto& kind = t.article;
    return kind.back() == 's' || lower(t.title).find(kind + "s") != std::string::npos;
}

std::string enough_for(const Plan& plan) {
    const int times = times_over(plan);
    if (times < 2) return "";
    const auto& t = *plan.article;
    return fmt::format(" (enough for {}{})", number_word(times),
                       t.kind.in_pairs ? " pairs"
                       : is_many(t)    ? " sets"
                                       : "");
}

std::string with_article(const Template& t) {
    const auto title = lower(t.title);
    if (is_many(t)) return title;
    const bool vowel = std::string_view("aeiou").find(title[0]) != std::string_view::npos;
    return (vowel ? "an " : "a ") + title;
}

std::string rectangle_words(const Plan& plan, const Units& units) {
    const auto& first = plan.pieces.front();
    if (first.piece->count > 1 && is_many(*plan.article))
        return units.sizes(first.outline.length, first.outline.width) + " each";
    auto together = assembled(plan);
    together.fringe.clear();
    const auto box = together.bounds(false);
    return units.sizes(centimetres(std::max(box.width(), box.height())),
                       centimetres(std::min(box.width(), box.height())));
}

}  // namespace

std::string yarn_in_words(const Batch& batch) {
    return ply_words(batch) + fibre_words(batch) + making_words(batch);
}

std::string size_in_words(const Plan& plan, const Units& units) {
    const auto& t = *plan.article;
    const auto& o = plan.pieces.front().outline;
    const auto measured = fmt::format("{} {}", t.measure, units.size(plan.size));
    if (t.fitted) return measured;
    switch (o.shape) {
        case Shape::rectangle:
            return rectangle_words(plan, units);
        case Shape::triangle:
        case Shape::half_circle:
        case Shape::crescent:
            return units.sizes(centimetres(flat(o).width), centimetres(flat(o).height));
        case Shape::tube:
            return fmt::format("{} round, {} high", units.size(o.width), units.size(o.length));
        default:
            return measured;
    }
}

std::string made_in_words(const Plan& plan, const Units& units) {
    return fmt::format("{}, {}{}", with_article(*plan.article), size_in_words(plan, units),
                       enough_for(plan));
}

std::string judged_in_words(const JudgedPlan& judged) {
    const auto& t = *judged.plan.article;
    return fmt::format("{} ({}): {}, suitability {:.0f} of 100", t.title, words(t.craft),
                       words(serves(judged.judgement.score)), judged.judgement.score);
}

std::string answer_in_words(const Question& q, const std::vector<const JudgedPlan*>& best) {
    auto out =
        fmt::format("{} of {}", q.units.yarn(q.yarn.length.mid), yarn_in_words(q.measured.batch));
    constexpr std::size_t most_named = 3;
    std::vector<std::string> makes;
    for (const auto* one : best)
        if (makes.size() < most_named) makes.push_back(made_in_words(one->plan, q.units));
    if (makes.empty()) return out + ": too little for any article that it would serve.";
    return out + ": " + joined(makes, "; or ") + ".";
}

}  // namespace gristwright::cli
