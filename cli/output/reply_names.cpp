#include "cli/output/reply_names.hpp"

#include <fmt/core.h>

#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

// "a hat", "an ear headband"; "mittens".
std::string with_article(const std::string& noun) {
    if (noun.back() == 's') return noun;
    const bool vowel = std::string_view("aeiou").find(noun[0]) != std::string_view::npos;
    return (vowel ? "an " : "a ") + noun;
}

// "scarves", "cosies", "swatches", "hats".
std::string plural_of(const std::string& kind) {
    if (kind.ends_with("scarf")) return kind.substr(0, kind.size() - 1) + "ves";
    if (kind.ends_with("sy")) return kind.substr(0, kind.size() - 1) + "ies";
    return kind + (kind.ends_with("ch") ? "es" : "s");
}

// "3 hats", "2 pairs of mitts".
std::string counted(const Wanted& wanted, const std::string& craft, const std::string& kind) {
    const bool many = kind.back() == 's';
    return fmt::format("{}{} {}{}", wanted.count, many && wanted.known.in_pairs ? " pairs of" : "",
                       craft.empty() ? "" : craft + " ", many ? kind : plural_of(kind));
}

}  // namespace

std::string listed(const std::vector<std::string>& parts, std::string_view last) {
    std::string out;
    for (std::size_t i = 0; i < parts.size(); ++i)
        out += (i == 0 ? "" : i + 1 == parts.size() ? fmt::format(" {} ", last) : ", ") + parts[i];
    return out;
}

// Whose it is, where each of several people has one.
static std::string for_whom(const Wanted& wanted) {
    switch (wanted.wearer) {
        case Wearer::baby:
            return " for a baby";
        case Wearer::child:
            return wanted.years ? fmt::format(" for a child of {:g}", *wanted.years)
                                : " for a child";
        case Wearer::adult:
            return wanted.body.empty() ? " for a grown-up" : " for a " + wanted.body;
        default:
            return "";
    }
}

std::string said_of(const ThingAnswer& thing) {
    const bool ours = thing.article && !thing.as_nearest;
    auto word = ours ? thing.wanted.kind : thing.wanted.said;
    const auto many = thing.wanted.count > 1;
    return (many ? counted(thing.wanted, "", word) : with_article(word)) + for_whom(thing.wanted);
}

std::string template_words(const SuggestionAnswer& a) {
    return fmt::format("{} ({})", with_article(uncapital(a.article->title)),
                       words(a.article->craft));
}

std::vector<std::string> left_out(const SuggestionAnswer& a) {
    std::vector<std::string> out;
    for (const auto& thing : a.things)
        if (!thing.article || thing.as_nearest) out.push_back(said_of(thing));
    for (const auto& unmade : a.taken.not_known) out.push_back(unmade.said);
    return out;
}

bool is_of_the_nearest(const SuggestionAnswer& a) {
    if (!a.answered || left_out(a).empty()) return false;
    const bool beside =
        a.things.size() > 1 && !a.things[a.main].as_nearest && a.taken.not_known.empty();
    return !beside;
}

static std::string named_alone(const ThingAnswer& thing) {
    const auto& kind = thing.article->article;
    const auto craft = words(thing.article->craft);
    if (thing.wanted.count > 1) return counted(thing.wanted, std::string(craft), kind);
    // By its title where that ends with the kind: "knitted bed socks", "a woven twill scarf".
    const auto title = uncapital(thing.article->title);
    const bool speaks = title.ends_with(kind) && !thing.wanted.fabric.named();
    const bool crafted = speaks && title.find(craft) != std::string::npos;
    const auto what = speaks ? title : kind;
    // Mitts and socks come in pairs: "knitted socks", but "a knitted hat".
    if (crafted) return with_article(what);
    return fmt::format("{}{} {}", kind.back() == 's' ? "" : "a ", craft, what);
}

std::string named(const ThingAnswer& thing) {
    if (!thing.article) return said_of(thing);
    const auto alone = named_alone(thing);
    const bool told = !thing.wanted.years && (alone.find("child") != std::string::npos ||
                                              alone.find("baby") != std::string::npos);
    return told ? alone : alone + for_whom(thing.wanted);
}

}  // namespace gristwright::cli
