#include "cli/output/ranked_lines.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/output/size_words.hpp"
#include "cli/output/table.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t few_samples = 2;

// "427 m ±27 %"
std::string metres_used(const Plan& plan, const Units& units) {
    return fmt::format("{} ±{:.0f} %", units.yarn(plan.need.mid), 100 * margin90(plan.need.spread));
}

std::string how_many(const Plan& plan) {
    const int times = times_over(plan);
    return times < 2 || plan.article->sample ? "" : fmt::format("{}", times);
}

Dye dye_of(Craft craft) { return craft == Craft::knitted ? Dye::knitted : Dye::woven; }

Dye dye_of(double score) {
    return serves(score) == Serves::well     ? Dye::heading
           : serves(score) == Serves::fairly ? Dye::knitted
                                             : Dye::lacking;
}

std::vector<Cell> row_of(const JudgedPlan& judged, const Units& units) {
    const auto& plan = judged.plan;
    const auto& t = *plan.article;
    auto size = Cell{short_size(plan, units)};
    if (smaller_than_ideal(plan)) size = {size.text + " *", Dye::lacking};
    return {{fmt::format("{:.0f}", judged.judgement.score), dye_of(judged.judgement.score)},
            {t.title},
            {std::string(words(t.craft)), dye_of(t.craft)},
            size,
            {units.yarn_range(plan.need)},
            {units.yarn(plan.left())},
            {how_many(plan)},
            {t.name}};
}

// With room for the title and the whole range.
Table wide_table() {
    return Table({{"   ", true},
                  {""},
                  {"craft"},
                  {"size"},
                  {"uses"},
                  {"left", true},
                  {"makes", true},
                  {"its name for plan"}});
}

// The name that `plan` takes says nearly what the title does. What one of them leaves matters less
// where the yarn makes several of any.
Table narrow_table(bool several) {
    return Table({{"   ", true},
                  {"name, for plan"},
                  {"craft", false, 2},
                  {"size"},
                  {"uses", true},
                  {"left", true, several ? 3 : 1},
                  {"makes", true, several ? 1 : 3}});
}

std::vector<Cell> narrow(const std::vector<Cell>& row, const JudgedPlan& judged,
                         const Units& units) {
    return {row[0], row[7], row[2], row[3], {metres_used(judged.plan, units)}, row[5], row[6]};
}

Table::Lines table_of(const std::vector<const JudgedPlan*>& plans, const Units& units) {
    const bool several = std::any_of(plans.begin(), plans.end(),
                                     [](const auto* j) { return !how_many(j->plan).empty(); });
    auto wide = wide_table(), slim = narrow_table(several);
    for (const auto* judged : plans) {
        const auto row = row_of(*judged, units);
        wide.add(row);
        slim.add(narrow(row, *judged, units));
    }
    return (wide.fits(table_width()) ? wide : slim).lines(table_width());
}

struct RankedPart {
    const char* title;
    const std::vector<JudgedPlan>* plans;
    std::size_t shown;
};

std::vector<RankedPart> parts_of(const Ranked& ranked, std::size_t most) {
    std::vector<RankedPart> out{{"What it is for", &ranked.best, most},
                                {"Also serves", &ranked.also, most},
                                {"To learn from", &ranked.samples, std::min(most, few_samples)}};
    for (auto& part : out) part.shown = std::min(part.shown, part.plans->size());
    return out;
}

// The first few and how many more, in one line.
std::string first_of(const std::vector<std::string>& names, std::size_t width) {
    std::string out;
    for (std::size_t n = 0; n < names.size(); ++n) {
        const auto next = (n > 0 ? ", " : "") + names[n];
        const auto rest = names.size() - n - 1;
        const auto tail = rest > 0 ? fmt::format(" and {} more", rest) : std::string();
        if (n > 0 && characters(out + next + tail) > width)
            return out + fmt::format(" and {} more", names.size() - n);
        out += next;
    }
    return out;
}

}  // namespace

std::string ranked_lines(const Ranked& ranked, std::size_t most, const Question& q) {
    const auto parts = parts_of(ranked, most);
    std::vector<const JudgedPlan*> shown;
    for (const auto& part : parts)
        for (std::size_t i = 0; i < part.shown; ++i) shown.push_back(&(*part.plans)[i]);
    if (shown.empty()) return "";
    const auto lines = table_of(shown, q.units);
    std::string out = "\n" + lines.head;
    auto line = lines.rows.begin();
    for (const auto& part : parts) {
        if (part.plans->empty()) continue;
        out += heading(part.title) + "\n";
        for (std::size_t i = 0; i < part.shown; ++i) out += *line++;
        if (const auto more = part.plans->size() - part.shown; more > 0)
            out += fmt::format("     and {} more: --all lists them\n", more);
    }
    const bool smaller = std::any_of(shown.begin(), shown.end(), [](const auto* judged) {
        return smaller_than_ideal(judged->plan);
    });
    return out + (smaller ? "     * smaller than it ought to be: the yarn goes no further\n" : "");
}

std::string out_of_reach_lines(const std::vector<JudgedPlan>& plans, std::size_t most,
                               const Question& q) {
    if (plans.empty()) return "";
    std::vector<std::string> said;
    for (std::size_t p = 0; p < std::min(most, plans.size()); ++p)
        said.push_back(fmt::format("{} by {}", plans[p].plan.article->title,
                                   q.units.yarn(plans[p].plan.short_by)));
    if (plans.size() > most) said.push_back(fmt::format("and {} more", plans.size() - most));
    return "\n" + heading("Out of reach even at the smallest useful size") + "\n" +
           wrapped(joined(said), 5) + "\n";
}

std::vector<NotServed> by_reason(const std::vector<JudgedPlan>& plans, const YarnProfile& yarn) {
    std::vector<NotServed> out;
    for (const auto& judged : plans) {
        // What costs most, a need or a wish.
        const auto con = said_against(judged.judgement, judged.plan, yarn);
        const auto why = con.empty() ? "any ordinary yarn serves it better" : con.front();
        auto at = std::find_if(out.begin(), out.end(), [&](const auto& r) { return r.why == why; });
        if (at == out.end()) at = out.insert(at, {why, {}});
        at->articles.push_back(judged.plan.article.get());
    }
    return out;
}

std::string not_served_lines(const std::vector<JudgedPlan>& plans, std::size_t most,
                             const Question& q) {
    if (plans.empty()) return "";
    auto reasons = by_reason(plans, q.yarn);
    std::stable_sort(reasons.begin(), reasons.end(), [](const auto& a, const auto& b) {
        return a.articles.size() > b.articles.size();
    });
    auto out = "\n" + heading("Wasted on it, or does not serve") + "\n";
    for (std::size_t r = 0; r < std::min(most, reasons.size()); ++r) {
        std::vector<std::string> titles;
        for (const auto* article : reasons[r].articles) titles.push_back(article->title);
        const auto begins = reasons[r].why + ": ";
        const auto used = 4 + characters(begins);
        const auto room = text_width() > used ? text_width() - used : 1;
        out += labelled("-", begins + first_of(titles, room), 2) + "\n";
    }
    if (reasons.size() > most)
        out += fmt::format("    and {} more reasons: --long gives them\n", reasons.size() - most);
    return out;
}

}  // namespace gristwright::cli
