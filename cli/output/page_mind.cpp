// Cautions: each stands once on the page under its number, and a card names the numbers.
#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/page_parts.hpp"

namespace gristwright::cli {
namespace {

// Up to the first colon, semicolon or full stop: what a caution is about.
std::string beginning(const std::string& said) {
    auto out = said.substr(0, said.find_first_of(":;."));
    if (!out.empty() && out[0] >= 'A' && out[0] <= 'Z')
        out[0] = static_cast<char>(out[0] - 'A' + 'a');
    return out;
}

}  // namespace

Minded::Minded(const Question& q, const std::vector<const JudgedPlan*>& plans) {
    const auto add = [&](const std::vector<std::string>& said) {
        for (const auto& one : said)
            if (std::find(all_.begin(), all_.end(), one) == all_.end()) all_.push_back(one);
    };
    std::vector<const Template*> articles;
    for (const auto* judged : plans) articles.push_back(judged->plan.article.get());
    add(q.yarn.cautions);
    add(whole(cautions_on(q, articles)));
    for (const auto* judged : plans) add(own_cautions(judged->plan, q.yarn, q.units));
}

std::size_t Minded::number(const std::string& said) const {
    const auto at = std::find(all_.begin(), all_.end(), said);
    return at == all_.end() ? 0 : std::size_t(at - all_.begin()) + 1;
}

PageData Minded::of(const JudgedPlan& judged, const Question& q) const {
    PageData out{PageData::type::list};
    const auto add = [&](const std::string& said, const std::string& brief) {
        if (number(said) == 0) return;
        PageData one;
        one.set("number", fmt::format("{}", number(said)));
        one.set("brief", brief.empty() ? beginning(said) : brief);
        out << one;
    };
    for (const auto& said : own_cautions(judged.plan, q.yarn, q.units)) add(said, "");
    for (const auto& caution : cautions_on(q, {judged.plan.article.get()}))
        add(caution.text, caution.brief);
    return out;
}

}  // namespace gristwright::cli
