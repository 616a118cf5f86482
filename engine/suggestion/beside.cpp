#include "engine/suggestion/beside.hpp"

#include <algorithm>

#include "engine/suggestion/constants.hpp"
#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/limits.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

bool in_sentence(const std::vector<Item>& items, std::size_t at, std::size_t of) {
    return at < items.size() && items[at].sentence == items[of].sentence && !items[at].sign;
}

enum class OnLoom { neither, warp, waste };

// "warp", "warp for", "loom waste"; a yarn to be the warp ("on a cotton warp") is no length.
OnLoom on_loom(const Item& item) {
    constexpr std::string_view wastes[] = {"waste", "wastage", "lose", "loses", "losing"};
    if (has(wastes, item.last_word())) return OnLoom::waste;
    const bool begins = item.first_word() == "warp" || item.text == "a warp for";
    if (begins && !item.is(technique) && !item.is(fabric) && item.text != "warp yarn")
        return OnLoom::warp;
    return OnLoom::neither;
}

constexpr std::string_view between[] = {
    "of",    "for", "long", "length", "on",   "is",    "the",    "as",    "at",  "about", "to",
    "allow", "be",  "will", "plus",   "with", "would", "around", "total", "per", "each",  "in"};

// The item within two of the amount that says so; its own place: none does.
std::size_t loom_word(const std::vector<Item>& items, std::size_t at) {
    for (auto i = at + 1; i <= at + 3 && in_sentence(items, i, at); ++i) {
        const bool yarn = i > at + 1 && items[i - 1].last_word() == "of" &&
                          *items[at].amount->length >= metres(constants::longest_cloth);
        if (on_loom(items[i]) != OnLoom::neither && !yarn) return i;
        if (!has(between, items[i].first_word()) || items[i].amount) break;
    }
    // "warp a 2 m scarf": a verb.
    if (in_sentence(items, at + 1, at) && items[at + 1].is(article)) return at;
    for (auto i = at; i-- > 0 && i + 4 > at && in_sentence(items, i, at);) {
        if (on_loom(items[i]) != OnLoom::neither) return i;
        if (!has(between, items[i].first_word()) || items[i].amount) break;
    }
    return at;
}

// "I lose 27 inches" on a diet, or at the back of the loom.
bool is_of_a_loom(const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(),
                       [](const Item& i) { return i.is(tool) && i.as(tool) == "loom"; });
}

constexpr std::string_view suffices[] = {"do",     "enough", "suffice", "sufficient", "stretch",
                                         "cover",  "reach",  "make",    "go",         "work",
                                         "plenty", "last",   "get"};
constexpr std::string_view helps[] = {"be",   "really", "still", "just",
                                      "ever", "even",   "of",    "yarn"};
constexpr std::string_view made_from[] = {"from", "of", "with"};

constexpr std::string_view described[] = {
    "squares", "patch",    "patches", "cornered", "sided",  "pointed", "colour", "colours",
    "color",   "colors",   "tone",    "tones",    "strips", "panel",   "panels", "button",
    "finger",  "fingered", "season",  "seasons",  "shaft",  "layer",   "tier",   "way",
    "block",   "ply",      "piece",   "corner",   "point",  "stripe"};

bool is_behind_with(const std::vector<Item>& items, std::size_t at) {
    for (auto i = at; i-- > 0 && i + 5 > at && same_clause(items, i, at);) {
        const auto& item = items[i];
        if (item.last_word() == "with" || item.text == "plus" ||
            (item.is(joiner) && item.as(joiner) == "with"))
            return true;
        if (is_thing(item)) return false;
    }
    return false;
}

bool is_many(std::string_view person) {
    return person.ends_with("s") || person.ends_with("children") || person.ends_with("men") ||
           person.ends_with("people") || person.ends_with("kin");
}

}  // namespace

void take_loom_lengths(std::vector<Item>& items, Taken& out) {
    for (std::size_t at = 0; at < items.size(); ++at) {
        if (!items[at].amount || !items[at].amount->length || items[at].idle) continue;
        const auto word = loom_word(items, at);
        if (word == at || (items[word].first_word().starts_with("los") && !is_of_a_loom(items)))
            continue;
        const auto& amount = *items[at].amount;
        (on_loom(items[word]) == OnLoom::warp ? out.warp : out.loom_waste) = amount.length;
        if (!out.imperial)
            out.imperial = amount.unit == "in" || amount.unit == "ft" || amount.unit == "yd";
        items[at].idle = items[word].idle = true;
    }
}

// "500 m, is this enough for a vest?", "the 140 m skein alone, does it give a hat?": behind it the
// question, by a word that points back.
static bool is_asked_behind(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view points[] = {"this", "that", "it", "they", "those", "these"};
    constexpr std::string_view does[] = {"is", "does", "would", "will",
                                         "do", "can",  "could", "are"};
    constexpr std::string_view gives[] = {"give", "gives", "yield"};
    for (auto i = at; i-- > 0 && items[i].sentence == items[at].sentence;)
        if (items[i].is(tool) && items[i].as(tool) == "needs") return false;
    bool pointed = false;
    for (auto i = at + 1; i < items.size() && items[i].sentence == items[at].sentence; ++i) {
        const auto first = items[i].first_word(), last = items[i].last_word();
        pointed = pointed || (has(points, first) && has(does, items[i - 1].first_word())) ||
                  (has(does, first) && has(points, last));
        const bool enough = has(suffices, first) || has(suffices, last) || has(gives, first);
        if (pointed && enough) return true;
        if (!pointed && enough && i + 1 < items.size() && items[i + 1].text == "for") return true;
        if (is_thing(items[i]) && !pointed) return false;
    }
    return false;
}

bool is_asked_of(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].asks) return false;
    if (is_asked_behind(items, at)) return true;
    for (auto i = at + 1; i <= at + 3 && in_sentence(items, i, at); ++i) {
        if (has(suffices, items[i].first_word()) || has(suffices, items[i].last_word()))
            return true;
        if (!has(helps, items[i].first_word())) break;
    }
    return at > 0 && in_sentence(items, at - 1, at) && has(made_from, items[at - 1].last_word());
}

bool is_of_this_yarn(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view of_this[] = {"of this", "of yours", "of that", "of these"};
    constexpr std::string_view this_yarn[] = {"this", "yours", "that", "these", "your"};
    const auto next = at + 1;
    if (next >= items.size()) return false;
    if (has(of_this, items[next].text)) return true;
    // "14 oz of grey two-ply, and nobody has said waistcoat": of a colour, and of no thing.
    const auto of_a_thing = [&](const Item& i) {
        return i.clause == items[at].clause &&
               (is_thing(i) || i.is(WordClass::craft) || i.last_word() == "well" ||
                i.text == "too");  // "100 g of red as well"
    };
    if (items[next].text == "of" && next + 1 < items.size() &&
        items[next + 1].is(WordClass::colour) &&
        std::none_of(items.begin(), items.end(), of_a_thing))
        return true;
    return items[next].text == "of" && next + 1 < items.size() &&
           has(this_yarn, items[next + 1].first_word());
}

bool is_of_a_part(const std::vector<Item>& items, std::size_t at) {
    if (at == 0) return false;
    if (items[at - 1].text == "every") return true;
    for (auto i = at + 1; i < at + 4 && same_clause(items, at, i); ++i) {
        if (is_thing(items[i])) return false;
        if (items[i].is(part) || items[i].is(role) || items[i].is(form) || items[i].is(body))
            return is_behind_with(items, at);
    }
    return false;
}

bool is_of_squares(const std::vector<Item>& items, std::size_t at, const Wanted& to) {
    return at + 1 < items.size() && items[at + 1].text == "squares" && to.kind != "blanket" &&
           to.kind != "squares";
}

bool is_led_from(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view from[] = {"from", "with", "in",   "using", "of",
                                         "use",  "only", "just", "on",    "single"};
    if (at == 0 || !same_clause(items, at - 1, at) || limit_of(items, at) == Limit::least)
        return false;
    return has(from, items[at - 1].last_word());
}

std::size_t thing_behind(const std::vector<Item>& items, std::size_t at) {
    for (auto i = at + 1; i < items.size() && i <= at + 3; ++i) {
        if (is_thing(items[i])) return i;
        if (items[i].sign || items[i].is(joiner) || items[i].amount || items[i].is(tool) ||
            items[i].clause != items[at].clause || items[i].first_word() == "of" ||
            items[i].last_word() == "for")
            return at;
    }
    return at;
}

bool is_a_body_height(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view is[] = {"i'm",     "im", "he's", "hes",    "she's",
                                       "shes",    "he", "she",  "who",    "who's",
                                       "they're", "is", "am",   "stands", "being"};
    constexpr std::string_view passed[] = {"of",  "is",     "am",   "at",     "about", "nearly",
                                           "and", "almost", "only", "barely", "just",  "over",
                                           "a",   "all",    ",",    "(",      "long",  "whole"};
    const auto length = items[at].amount->length;
    if (!length || items[at].amount->times_next || *length < centimetres(constants::least_height) ||
        *length > centimetres(constants::greatest_height))
        return false;
    const auto next = at + 1;
    if (next < items.size() && !items[next].sign && items[next].is(tool) &&
        items[next].text != "tall")
        return false;
    if (thing_behind(items, at) != at) return false;
    for (auto i = at; i-- > 0 && i + 6 > at && items[i].sentence == items[at].sentence;) {
        if (is_thing(items[i])) return false;
        const bool who = items[i].is(person) && !items[i].as(person).starts_with("home") &&
                         !items[i].as(person).starts_with("animal");
        if (who || has(is, items[i].text) || has(is, items[i].last_word())) return true;
        const bool age = items[i].amount && !items[i].amount->length;
        const bool joined = items[at - 1].text == "and" && items[i].clause == items[at].clause;
        if (!age && !joined && !has(passed, items[i].text)) return false;
    }
    return false;
}

bool is_what_remains(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view remains[] = {"left",     "left over", "over",
                                            "leftover", "to spare",  "leftovers",
                                            "spare",    "behind",    "remaining"};
    return same_clause(items, at, at + 1) && has(remains, items[at + 1].text);
}

bool is_in_shoes(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view joins[] = {"in", "a", "in a", "his", "her", "in his", "in her"};
    constexpr std::string_view on_feet[] = {"shoe", "shoes", "boots", "trainers",
                                            "foot", "feet",  "boot"};
    auto i = at + 1;
    while (i < at + 4 && same_clause(items, at, i) && has(joins, items[i].text)) ++i;
    return same_clause(items, at, i) && has(on_feet, items[i].text) && items[at].amount->number > 0;
}

bool is_of_two_meanings(const Item& weight) {
    constexpr std::string_view words[] = {"worsted", "aran", "double knit"};
    return has(words, weight.text);
}

bool is_meant_as_weight(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view for_yarn[] = {"yarn", "weight", "wool", "skeins", "balls"};
    if (!is_of_two_meanings(items[at])) return true;
    if (at > 0) {
        const auto& before = items[at - 1];
        if (before.amount || before.text == "of" || before.text == "in") return true;
    }
    return at + 1 < items.size() && has(for_yarn, items[at + 1].text);
}

bool describes(const std::vector<Item>& items, std::size_t at) {
    const auto next = at + 1;
    if (!in_sentence(items, next, at)) return false;
    if (has(described, items[next].first_word())) return true;
    // Of a single article only a number right before it counts.
    for (auto i = next; i < next + 4 && in_sentence(items, i, at); ++i) {
        if (items[i].text == "x" || items[i].first_word() == "of" || items[i].is(joiner) ||
            items[i].first_word() == "for")
            return false;
        if (items[i].amount || items[i].is(person)) return false;
        if (items[i].live(article))
            return i > next && items[i].text.back() != 's' && items[i].text[0] >= 'a';
    }
    return false;
}

bool each_has_one(const std::vector<Item>& items, std::size_t at, const Wanted& wanted) {
    // "Five grandchildren. Mittens all round", "hats for my two nieces".
    constexpr std::string_view shared_out[] = {"all round", "each", "apiece", "everyone", "all"};
    const auto goes_round = [&](const Item& i) {
        return i.clause != items[at].clause && has(shared_out, i.text);
    };
    const bool own = at > 1 && (is_own(items[at - 1]) || items[at - 1].text == "all");
    const bool led = at > 0 && (items[own ? at - 2 : at - 1].last_word() == "for" ||
                                items[at - 1].text == "for all");
    if (!wanted.known.worn || !(led || ((wanted.plural || wanted.known.in_pairs) &&
                                        std::any_of(items.begin(), items.end(), goes_round))))
        return false;
    for (auto i = at + 1; i <= at + 2 && in_sentence(items, i, at); ++i)
        if (items[i].is(person)) return is_many(items[i].text);
    return false;
}

}  // namespace gristwright
