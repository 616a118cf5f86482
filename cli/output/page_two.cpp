// Two yarns side by side: their cloth, their figures, and what each of them is better for.
#include <fmt/core.h>

#include <algorithm>
#include <kainjow/mustache.hpp>

#include "cli/output/charts.hpp"
#include "cli/output/cloth_picture.hpp"
#include "cli/output/embedded.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/page_sections.hpp"
#include "cli/output/two_yarns.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_rows = 8, longest_name_of_two = 80;

std::string name_of(const Question& q) {
    const auto& name = q.measured.batch.name;
    return name.empty() ? "Your batch" : shortened(inert(name), longest_name_of_two);
}

// Of the articles that both reach for the one whose cloth has most to read.
const InBoth* to_draw(const std::vector<InBoth>& all) {
    const InBoth* out = nullptr;
    for (const auto& both : all) {
        if (both.a.plan.reach == Reach::short_of || both.b.plan.reach == Reach::short_of) continue;
        if (!out || definition_wanted(both.a.plan) > definition_wanted(out->a.plan)) out = &both;
    }
    return out;
}

PageData yarn_data(const Question& q, const std::string& letter, const JudgedPlan* drawn) {
    PageData out;
    out.set("letter", letter);
    out.set("name", name_of(q));
    if (!drawn) return out;
    const auto view = cloth_across(drawn->plan, q, "from yarn " + letter);
    PageData cloth;
    cloth.set("picture", view.picture.inlined("two" + letter));
    cloth.set("article", drawn->plan.article->title);
    cloth.set("about", view.about);
    out.set("cloth", cloth);
    return out;
}

PageData fact(const std::string& name, const std::string& a, const std::string& b) {
    PageData out;
    out.set("name", name);
    out.set("a", a);
    out.set("b", b);
    out.set("abar", "");
    out.set("bbar", "");
    return out;
}

std::string bar(double share) {
    return "<span class=\"bar\">" + share_bar(share).silent() + "</span>";
}

PageData facts(const Question& a, const Question& b) {
    PageData out{PageData::type::list};
    out << fact("Length, washed", a.units.yarn_range(a.yarn.length),
                a.units.yarn_range(b.yarn.length))
        << fact("Grist", a.units.grist(a.yarn.linear_density.mid),
                a.units.grist(b.yarn.linear_density.mid))
        << fact("Weight class", capital(class_line(a.yarn)), capital(class_line(b.yarn)));
    for (std::size_t t = 0; t < trait_count; ++t) {
        const double of_a = a.yarn.traits[t].value, of_b = b.yarn.traits[t].value;
        auto row = fact(capital(std::string(words(static_cast<TraitName>(t)))),
                        fmt::format("{:.2f}", of_a), fmt::format("{:.2f}", of_b));
        row.set("abar", bar(of_a));
        row.set("bbar", bar(of_b));
        out << row;
    }
    return out;
}

PageData part_data(const PartOfBoth& part, const Question& a, const Question& b) {
    PageData out, rows{PageData::type::list};
    const auto shown = std::min(most_rows, part.articles.size());
    for (std::size_t i = 0; i < shown; ++i) {
        const auto& both = *part.articles[i];
        PageData row;
        row.set("title", both.a.plan.article->title);
        row.set("craft", std::string(words(both.a.plan.article->craft)));
        row.set("a", score_words(both.a));
        row.set("b", score_words(both.b));
        row.set("asize", reached_size(both.a, a.units));
        row.set("bsize", reached_size(both.b, a.units));
        row.set("decides", deciding(both, a, b));
        rows << row;
    }
    out.set("title", fmt::format("{} ({})", part.title, part.articles.size()));
    out.set("rows", rows);
    if (shown < part.articles.size())
        out.set("more", fmt::format("{}", part.articles.size() - shown));
    return out;
}

std::string titles_of(const PartOfBoth& part) {
    std::vector<std::string> out;
    for (const auto* both : part.articles) out.push_back(both->a.plan.article->title);
    return joined(out);
}

std::string verdict(const std::vector<PartOfBoth>& parts, const Question& a, const Question& b) {
    const auto count = [&](std::size_t part) {
        const auto many = parts[part].articles.size();
        return fmt::format("{} article{}", many, many == 1 ? "" : "s");
    };
    return fmt::format("A, {}, is the better for {}; B, {}, for {}; {} are about alike.",
                       name_of(a), count(0), name_of(b), count(1), parts[2].articles.size());
}

}  // namespace

std::string two_section(const Question& a, const Question& b) {
    const auto all = in_both(a, b, "");
    const auto parts = parts_of(all);
    const auto* drawn = to_draw(all);
    PageData out, yarns{PageData::type::list}, tables{PageData::type::list};
    yarns << yarn_data(a, "A", drawn ? &drawn->a : nullptr)
          << yarn_data(b, "B", drawn ? &drawn->b : nullptr);
    for (std::size_t i = 0; i < 2; ++i)
        if (!parts[i].articles.empty()) tables << part_data(parts[i], a, b);
    set_text(out, "alike", titles_of(parts[2]));
    out.set("verdict", verdict(parts, a, b));
    out.set("yarns", yarns);
    out.set("facts", facts(a, b));
    out.set("parts", tables);
    return rendered(embedded::page_two, out);
}

}  // namespace gristwright::cli
