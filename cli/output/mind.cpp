#include "cli/output/mind.hpp"

#include <algorithm>

#include "cli/output/layout.hpp"

namespace gristwright::cli {
std::vector<Caution> cautions_on(const Question& q, const std::vector<const Template*>& articles,
                                 std::string_view said) {
    Cautions::Known always;
    q.cautions->add_facts(q.measured.batch, always);
    q.cautions->add_words(said, always);
    if (articles.empty()) q.cautions->add_fact("skein", always);
    std::vector all(std::max<std::size_t>(articles.size(), 1), always);
    for (std::size_t i = 0; i < articles.size(); ++i)
        q.cautions->add_facts(*articles[i], q.catalogue->fabrics, all[i]);
    return q.cautions->holding(all);
}

std::vector<Caution> cautions_on_words(const Question& q, std::string_view said) {
    Cautions::Known known;
    q.cautions->add_words(said, known);
    return q.cautions->holding({known});
}

std::vector<Caution> cautions_on_spinning(const catalog::Catalogue& catalogue,
                                          const Template& article) {
    Cautions cautions(std::make_shared<const std::vector<Caution>>(catalogue.cautions));
    Cautions::Known known;
    cautions.add_fact("spin", known);
    cautions.add_facts(Batch{}, known);
    cautions.add_facts(article, catalogue.fabrics, known);
    return cautions.holding({known});
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
