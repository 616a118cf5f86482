#include "cli/roles.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "catalog/text/named_reading.hpp"
#include "catalog/text/nearest.hpp"
#include "cli/article_asked.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/size_words.hpp"
#include "cli/output/table.hpp"
#include "cli/yarns.hpp"
#include "engine/cloth/sett.hpp"
#include "engine/project/constants.hpp"
#include "engine/project/role.hpp"
#include "engine/suitability/constants.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/described.hpp"

namespace gristwright::cli {
namespace {

constexpr double most_points = 100;
constexpr double better_by = 10;       // points that make a part worth naming
constexpr std::size_t most_named = 4;  // of such articles

bool doubles(Role role) { return role == Role::doubled || role == Role::plied_again; }

OtherYarn bought(const std::string& name) {
    const auto grist = catalog::read_named(
        "--with", name, [](const std::string& text) { return read_described_yarn(text); });
    return {name,
            grist,
            packed_diameter(grist, described_close_packing(name)),
            {},
            described_hair(name)};
}

// "cotton 8/2" -> "8/2 cotton"; empty: nothing in it is counted, so it is a batch's name.
std::string counted_first(const std::string& name) {
    constexpr std::string_view digits = "0123456789";
    if (name.find_first_of(digits) == 0) return name;
    const auto space = name.find_last_of(' ');
    if (space == std::string::npos) return "";
    const auto count = name.substr(space + 1);
    if (count.find_first_of(digits) != 0 || count.find('/') == std::string::npos) return "";
    return count + " " + name.substr(0, space);
}

// "heron", or "odds yarn 2" where its skeins are several.
OtherYarn kept(const Arguments& arguments, const std::string& name, Question& q) {
    Arguments of_that;
    for (const auto* option : {"notebook", "insist"})
        if (arguments.has(option)) of_that.options[option] = arguments.all(option);
    const auto which = name.rfind(" yarn ");
    if (which != std::string::npos)
        of_that.options["yarn"] = {name.substr(which + std::string_view(" yarn ").size())};
    const auto that = ask(of_that, name.substr(0, which));
    if (!that.which_yarn.empty())
        q.measured.notes.push_back(fmt::format("--with {}: {}", inert(name), that.which_yarn));
    auto out = as_other(inert(name), that.yarn);
    out.colours = that.measured.colours;
    return out;
}

OtherYarn other_yarn(const Arguments& arguments, Question& q) {
    const auto name = arguments.text("with");
    if (name.empty()) return {};
    if (!yarn_of_same_batch(arguments).empty())
        return as_other(inert(name), of_other_yarn(arguments, q).yarn);
    const auto count_first = counted_first(name);
    return count_first.empty() ? kept(arguments, name, q) : bought(count_first);
}

// What two strands of a batch are as one yarn; `measured` becomes the batch of them.
YarnProfile held_double(Role role, catalog::MeasuredBatch& measured, const Question& q,
                        bool insist) {
    measured.batch = two_strands(measured.batch, role);
    auto out = informed_yarn(measured, q.hands, {}, *q.catalogue, insist);
    out.cautions.push_back({Beware::two_strands, std::string(words(role))});
    return out;
}

const char* asked_of_other(Role role) {
    switch (role) {
        case Role::weft:
            return "smooth, plied, strong enough for the loom's tension: tug a wetted end, and "
                   "draw it ten times along the heddle's edge";
        case Role::warp:
            return "soft enough for the use; finer or thicker shows as the order of the cloth";
        case Role::border:
            return "of the same grist, or the edge ripples or draws in";
        default:
            return "of the same grist and as stable in the wash";
    }
}

// Metres to be had against what there is.
std::string in_hand(const Plan& plan, const Units& units) {
    if (!plan.other.length) return "";
    const auto had = *plan.other.length;
    if (had >= plan.second_to_have) return fmt::format("; there are {}: enough", units.yarn(had));
    return fmt::format("; there are {}: short by {}", units.yarn(had),
                       units.yarn(plan.second_to_have - had));
}

std::string unlike(const Plan& plan, const Question& q) {
    if (plan.other.grist.si() <= 0 || plan.article->craft == Craft::woven) return "";
    const double ratio = plan.other.grist / q.yarn.linear_density.mid;
    if (std::max(ratio, 1 / ratio) <= 1 + constants::alternated_grist) return "";
    return wrapped(fmt::format("{} is {} and this batch {}: in one fabric they pucker; "
                               "choose one nearer in grist, or hold the finer double.",
                               plan.other.name, q.units.thickness(plan.other.grist),
                               q.units.thickness(q.yarn.linear_density.mid)),
                   2) +
           "\n";
}

// A yarn beside this one is not passed over where nothing is left for it.
void need_two(const Arguments& arguments, const Template& article) {
    if (!arguments.has("with") || takes_two(article)) return;
    throw Refused(fmt::format(
        "--with {}: {} is made of one yarn; say which part this batch has in "
        "it: --as {}",
        inert(arguments.text("with")), article.title,
        article.craft == Craft::woven ? "weft, warp, border or colour" : "border or colour"));
}

struct InPart {
    JudgedPlan judged;
    double gained = 0;  // points, or more than any where it alone reaches
    Role role{};
};

double worth(const JudgedPlan& judged) {
    return judged.plan.reach == Reach::short_of ? 0 : judged.judgement.score;
}

// Held double it is the article as it stands, of another yarn.
std::shared_ptr<const Template> in_part(const Template& article, Role role, const Question& q) {
    return role == Role::doubled ? q.catalogue->templates.shared(article)
                                 : std::make_shared<const Template>(in_role(article, role));
}

void offer(const Template& whole, Role role, const YarnProfile& yarn, const Question& q,
           double alone, std::vector<InPart>& out) {
    const double most = best_score(whole, role, yarn);  // few need to be planned
    if (most - alone < better_by || serves(most) > Serves::fairly) return;
    InPart part{judged_plan(in_part(whole, role, q), yarn, q.catalogue->fabrics, q.measured.owned,
                            q.request),
                0, role};
    part.gained = worth(part.judged) - alone;
    const bool small =
        part.judged.plan.need.mid < part.judged.plan.have.mid * constants::worth_a_part;
    if (!small && part.gained >= better_by && serves(calls_for(part.judged)) <= Serves::fairly)
        out.push_back(std::move(part));
}

std::map<std::string_view, double> alone_worth(const Ranked& ranked) {
    std::map<std::string_view, double> out;
    for (const auto* part :
         {&ranked.best, &ranked.also, &ranked.samples, &ranked.short_of, &ranked.unfit})
        for (const auto& judged : *part) out[judged.plan.article->name] = worth(judged);
    return out;
}

// Two strands of a thick yarn are thicker still: that stops no answer.
YarnProfile doubled(const Question& q) {
    auto measured = q.measured;
    return held_double(Role::doubled, measured, q, true);
}

const char* as_typed(Role role) { return role == Role::doubled ? "double" : "weft"; }

std::vector<Cell> row_of(const InPart& part, const Question& q) {
    const auto& plan = part.judged.plan;
    const bool two = plan.second_to_have.si() > 0;
    const auto mark = smaller_than_ideal(plan) ? " *" : "";
    return {{fmt::format("{:.0f}", part.judged.judgement.score)},
            {fmt::format("{} --as {}", plan.article->name, as_typed(part.role))},
            {short_size(plan, q.units) + mark},
            {q.units.yarn(plan.need.mid)},
            {two ? q.units.yarn(plan.second_to_have) : ""}};
}

std::string doubled_text(const Plan& plan, const Question& q) {
    const auto role = plan.article->role;
    if (!doubles(role)) return "";
    const double strands = role == Role::doubled ? 2 : 2 / (1 - constants::plying_takes_up);
    return wrapped(fmt::format("This batch is {}: that is {} of the single yarn.", words(role),
                               q.units.yarn(plan.need.mid * strands)),
                   2) +
           "\n";
}

}  // namespace

std::vector<Option> role_options() {
    return {
        {"as", "weft",
         "what part the batch plays: weft on another warp, warp under another weft, border, one "
         "of two colours, held double, plied again",
         false, "whole|weft|warp|border|colour|double|plied", "whole"},
        {"with", "8/2 cotton",
         "the other yarn: its count, its length to a weight (400m/100g), a batch, or 'yarn 2' of "
         "this one; else an ordinary one of the same grist"}};
}

OtherYarn as_other(const std::string& name, const YarnProfile& yarn) {
    return {name, yarn.linear_density.mid, yarn.packed_diameter, yarn.length.mid, yarn.hair};
}

std::string yarn_of_same_batch(const Arguments& arguments) {
    constexpr std::string_view said = "yarn ";
    const auto with = arguments.text("with");
    return with.rfind(said, 0) == 0 ? with.substr(said.size()) : "";
}

Question of_other_yarn(const Arguments& arguments, const Question& q) {
    auto out = whole_batch(q);
    take_one_yarn(yarn_of_same_batch(arguments), out);
    if (catalog::names_of(out.yarn.skeins) == catalog::names_of(q.yarn.skeins))
        throw Refused(
            fmt::format("--with {}: that is the yarn this is about; its other yarns stand in "
                        "gristwright yarn, and --yarn says which this is about",
                        inert(arguments.text("with"))));
    return out;
}

Template part_played(const Arguments& arguments, Template article, Question& q) {
    q.request.other = other_yarn(arguments, q);
    const auto role = role_named(arguments.text("as", "whole")).value_or(Role::whole);
    if (doubles(role)) q.yarn = held_double(role, q.measured, q, arguments.has("insist"));
    if (role == Role::whole) {
        need_two(arguments, article);
        return article;
    }
    return catalog::read_named("--as", arguments.text("as"), [&](const std::string&) {
        return in_role(std::move(article), role);
    });
}

Arguments as_begun(const Arguments& arguments, const catalog::ProjectText& project) {
    auto out = arguments;
    const std::pair<const char*, const std::string*> said[] = {
        {"as", &project.part}, {"with", &project.beside}, {"yarn", &project.yarn}};
    for (const auto& [option, text] : said)
        if (!text->empty()) out.options[option] = {*text};
    return out;
}

Plan plan_begun(const Arguments& arguments, const catalog::ProjectText& project, Question& q) {
    q.request.size = read_length(project.size).value;
    if (!project.certainty.empty()) q.request.certainty = read_share(project.certainty);
    const auto article = find_template(*q.catalogue, project.template_name);
    return judged_plan(part_played(as_begun(arguments, project), article, q), q).plan;
}

std::string other_yarn_text(const Plan& plan, const Question& q) {
    if (plan.second_yarn.si() <= 0) return doubled_text(plan, q);
    const auto& other = plan.other;
    const bool named = !other.name.empty();
    const auto what = named ? fmt::format("{} ({})", other.name, q.units.thickness(other.grist))
                            : std::string("another yarn");
    auto out = fmt::format("Besides, about {} of {}", q.units.yarn(plan.second_yarn), what);
    out += fmt::format(": have {}", q.units.yarn(plan.second_to_have));
    if (named) out += fmt::format(", {}", q.units.mass(plan.second_to_have * other.grist));
    out += in_hand(plan, q.units);
    auto text = wrapped(out + ".", 2) + "\n";
    if (plan.article->role != Role::whole)
        text =
            wrapped(fmt::format("This batch is {}.", words(plan.article->role)), 2) + "\n" + text;
    if (!named)
        text += wrapped(fmt::format("The other yarn: {} as this one is taken; {}.",
                                    q.units.thickness(q.yarn.linear_density.mid),
                                    asked_of_other(plan.article->role)),
                        2) +
                "\n";
    return text + unlike(plan, q);
}

std::string better_in_part(const Ranked& alone, const Question& q, std::string_view craft) {
    const auto had = alone_worth(alone);
    const auto two = doubled(q);
    std::vector<InPart> parts;
    for (const auto& article : q.catalogue->templates) {
        if (article.sample || article.role != Role::whole) continue;
        if (!craft.empty() && craft != words(article.craft)) continue;
        const auto found = had.find(article.name);
        const double by_itself = found == had.end() ? 0 : found->second;
        if (by_itself + better_by > most_points) continue;
        // On a frame with pins warp and weft are one thread.
        if (article.craft == Craft::woven && article.loom != Loom::pins)
            offer(article, Role::weft, q.yarn, q, by_itself, parts);
        offer(article, Role::doubled, two, q, by_itself, parts);
    }
    if (parts.empty()) return "";
    std::stable_sort(parts.begin(), parts.end(), [](const auto& a, const auto& b) {
        return calls_for(a.judged) > calls_for(b.judged);
    });
    std::map<Role, std::size_t> said;
    Table table(
        {{"   ", true}, {"for plan"}, {"size"}, {"uses", true}, {"and of another", true, 1}});
    for (const auto& part : parts)
        if (said[part.role]++ < most_named) table.add(row_of(part, q));
    const auto lines = table.lines(table_width());
    return "\n" + heading("Serves better as a part, or doubled") + "\n" + lines.head +
           joined(lines.rows, "");
}

}  // namespace gristwright::cli
