#include "cli/output/mind.hpp"

#include <algorithm>

#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

// In the table's order those that hold for any of these.
std::vector<Caution> any_of(const std::vector<Caution>& table, const std::vector<Facts>& all) {
    std::vector<Caution> out;
    for (const auto& caution : table)
        if (std::any_of(all.begin(), all.end(),
                        [&](const Facts& facts) { return holds(caution.when, facts); }))
            out.push_back(caution);
    return out;
}

Facts of_article(const Question& q, const Template& article, std::string_view said) {
    Facts out;
    add_facts(q.measured.batch, out);
    q.words->add_facts(article, q.catalogue->fabrics, out);
    q.words->add_words(said, out);
    return out;
}

}  // namespace

std::vector<Caution> cautions_on(const Question& q, const std::vector<const Template*>& articles,
                                 std::string_view said) {
    std::vector<Facts> all;
    for (const auto* article : articles) all.push_back(of_article(q, *article, said));
    if (articles.empty()) add_facts(q.measured.batch, all.emplace_back(Facts{"skein"}));
    return any_of(q.catalogue->cautions, all);
}

std::vector<Caution> cautions_on_words(const Question& q, std::string_view said) {
    Facts facts;
    q.words->add_words(said, facts);
    return any_of(q.catalogue->cautions, {facts});
}

std::vector<Caution> cautions_on_spinning(const catalog::Catalogue& catalogue,
                                          const Template& article) {
    Facts facts{"spin"};
    add_facts(Batch{}, facts);
    add_facts(article, catalogue.fabrics, facts);
    return any_of(catalogue.cautions, {facts});
}

std::vector<std::string> briefs(const std::vector<Caution>& cautions, bool harm_only) {
    std::vector<std::string> out;
    for (const auto& caution : cautions)
        if (!caution.brief.empty() && (caution.harm || !harm_only) &&
            std::find(out.begin(), out.end(), caution.brief) == out.end())
            out.push_back(caution.brief);
    return out;
}

std::vector<std::string> whole(const std::vector<Caution>& cautions) {
    std::vector<std::string> out;
    for (const auto& caution : cautions) out.push_back(caution.text);
    return out;
}

std::string with_care(std::string reply, const std::vector<Caution>& cautions, std::size_t most) {
    constexpr std::size_t said = 2;
    constexpr std::string_view of_holes = "holes or loose loops";  // a baby's, which is said once
    auto all = briefs(cautions, true);
    if (reply.find(of_holes) != std::string::npos)
        std::erase_if(all, [&](const auto& one) { return one.ends_with(of_holes); });
    if (all.size() > said) all.resize(said);
    for (const auto& one : all) {
        const auto sentence = " " + capital(one) + ".";
        if (characters(reply) + characters(sentence) <= most) reply += sentence;
    }
    return reply;
}

std::string care_line(const std::vector<Caution>& cautions) {
    const auto all = briefs(cautions);
    return all.empty() ? "" : labelled("Care:", joined(all, "; "), 0) + "\n";
}

}  // namespace gristwright::cli
