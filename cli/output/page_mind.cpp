// Cautions: each stands once on the page under its number, and a card names the numbers.
#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/yarn_words.hpp"

namespace gristwright::cli {
namespace {

// Up to the first colon, semicolon or full stop: what a caution is about.
std::string beginning(const std::string& said) {
    return uncapital(said.substr(0, said.find_first_of(":;.")));
}

// The table's words for what it says, whoever says it.
std::string brief_of(const std::string& said, const std::vector<Caution>& table) {
    const auto row = std::find_if(table.begin(), table.end(), [&](const Caution& caution) {
        return caution.text == said && !caution.brief.empty();
    });
    return row == table.end() ? beginning(said) : row->brief;
}

}  // namespace

Minded::Minded(const Question& q, const std::vector<const JudgedPlan*>& plans) {
    for (const auto& said : cautions_at_work(q.yarn, q.units)) number(said);
    std::vector<const Template*> articles;
    for (const auto* judged : plans) articles.push_back(judged->plan.article.get());
    for (const auto& said : whole(cautions_on(q, articles))) number(said);
    for (const auto* judged : plans) held_[judged] = held_for(*judged, q);
    find_shared();
}

// Takes it up where it is new.
std::size_t Minded::number(const std::string& said) {
    const auto at = std::find(all_.begin(), all_.end(), said);
    const auto place = static_cast<std::size_t>(at - all_.begin());
    if (at == all_.end()) all_.push_back(said);
    return place + 1;
}

std::vector<Minded::Held> Minded::held_for(const JudgedPlan& judged, const Question& q) {
    std::vector<Held> out;
    for (const auto& said : cautions(judged.plan, q))
        out.push_back({number(said), brief_of(said, q.catalogue->cautions)});
    return out;
}

// Taken out of what is held for each.
void Minded::find_shared() {
    if (held_.size() < 2) return;
    const auto among = [](const std::vector<Held>& all, std::size_t number) {
        return std::any_of(all.begin(), all.end(),
                           [&](const Held& one) { return one.number == number; });
    };
    for (const auto& one : held_.begin()->second)
        if (std::all_of(held_.begin(), held_.end(),
                        [&](const auto& each) { return among(each.second, one.number); }))
            shared_.push_back(one);
    std::sort(shared_.begin(), shared_.end(),
              [](const Held& a, const Held& b) { return a.number < b.number; });
    for (auto& [judged, held] : held_)
        std::erase_if(held, [&](const Held& one) { return among(shared_, one.number); });
}

namespace {

PageData numbered(const auto& held) {
    PageData out{PageData::type::list};
    for (const auto& one : held) {
        PageData item;
        item.set("number", fmt::format("{}", one.number));
        item.set("brief", one.brief);
        out << item;
    }
    return out;
}

}  // namespace

PageData Minded::of_all() const { return numbered(shared_); }

PageData Minded::of(const JudgedPlan& judged) const { return numbered(held_.at(&judged)); }

std::vector<std::string> more_to_mind(const Question& q,
                                      const std::vector<const JudgedPlan*>& plans,
                                      const Minded& said) {
    auto out = Minded(q, plans).all();
    std::erase_if(out, [&](const std::string& one) {
        return std::find(said.all().begin(), said.all().end(), one) != said.all().end();
    });
    return out;
}

}  // namespace gristwright::cli
