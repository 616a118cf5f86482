#include "engine/suggestion/people.hpp"

#include <algorithm>

#include "engine/suggestion/in_full.hpp"

namespace gristwright {
namespace {

using enum WordClass;

// Of any age: a son may be forty.
constexpr std::string_view kin[] = {"son",
                                    "sons",
                                    "daughter",
                                    "daughters",
                                    "nephew",
                                    "nephews",
                                    "niece",
                                    "nieces",
                                    "grandson",
                                    "grandsons",
                                    "granddaughter",
                                    "granddaughters",
                                    "grandchild",
                                    "grandchildren",
                                    "grandkid",
                                    "grandkids",
                                    "boy",
                                    "boys",
                                    "girl",
                                    "girls",
                                    "lad",
                                    "lads",
                                    "lass",
                                    "kid",
                                    "kids",
                                    "child",
                                    "children",
                                    "twins",
                                    "triplets",
                                    "dd",
                                    "ds",
                                    "dgd",
                                    "dgs",
                                    "dsd",
                                    "dss",
                                    "youngster",
                                    "godson",
                                    "goddaughter",
                                    "stepson",
                                    "stepdaughter",
                                    "bairn",
                                    "neice",
                                    "baby brother",
                                    "baby sister",
                                    "my baby brother",
                                    "my baby sister"};
// "My baby brother" may be either.
constexpr std::string_view of_any_age[] = {"brother", "sister", "cousin"};
constexpr std::string_view ends_of[] = {"'s", "s'"};
constexpr std::string_view toys[] = {"doll", "dolls",  "dolly", "teddy",  "bear",  "toy",
                                     "toys", "rabbit", "bunny", "monkey", "puppet"};

constexpr double grown_at = 16;  // years: a son of that age wears what a grown-up does

bool is_of_a_person(const Item& item) { return item.is(person) && !item.is(article); }

bool is_grown_up(const Item& item) {
    return is_of_a_person(item) && item.as(person).starts_with("adult");
}

bool owns(const Item& item) {
    return std::any_of(std::begin(ends_of), std::end(ends_of),
                       [&](std::string_view end) { return item.said.ends_with(end); });
}

// The grown-up or the toy whose word follows, with nothing but what describes it between.
bool is_only_of(const std::vector<Item>& items, std::size_t at, bool grown) {
    constexpr std::size_t reach = 3;
    for (auto i = at + 1; i <= at + reach && same_clause(items, at, i); ++i) {
        if (is_grown_up(items[i]))
            return owns(items[at]) || grown || !has(of_any_age, items[i].text);
        if (has(toys, items[i].text)) return owns(items[at]);
        if (!is_plain(items[i]) && !items[i].is(colour) && !items[i].is(everyday)) return false;
        if (items[i].is(joiner) || items[i].is(filler)) return false;
    }
    return false;
}

// "my six foot son": feet of a person, and none of the piece.
bool is_height_of(const std::vector<Item>& items, std::size_t at) {
    const auto& amount = items[at].amount;
    if (!amount || !amount->length || amount->unit != "ft") return false;
    for (auto i = at + 1; i <= at + 2 && same_clause(items, at, i); ++i) {
        if (items[i].is(article)) return false;
        if (is_of_a_person(items[i])) return true;
    }
    constexpr std::string_view before[] = {"he's", "she's", "he is", "she is", "who's", "who is"};
    if (at == 0) return false;
    return has(before, items[at - 1].text) ||
           (at > 1 && items[at - 1].text == "is" &&
            (items[at - 2].text == "he" || items[at - 2].text == "she" ||
             items[at - 2].text == "who" || is_of_a_person(items[at - 2])));
}

// "at uni", "he's 34", "my 45 year old daughter", "six foot": what only a grown-up can be.
bool tells_of_a_grown_up(const std::vector<Item>& items, std::size_t at) {
    constexpr double tall = 62;  // inches
    if (items[at].sounds("grown")) return true;
    const auto& amount = items[at].amount;
    if (is_height_of(items, at)) return *amount->length >= inches(tall);
    if (!amount || amount->number < grown_at || amount->number > 110) return false;
    if (amount->of == Amount::Of::age) return true;
    return amount->of == Amount::Of::number && at > 0 &&
           stands_before_an_age(items[at - 1].last_word()) &&
           (at + 1 == items.size() || items[at + 1].sign || items[at + 1].is(joiner) ||
            !same_clause(items, at, at + 1));
}

bool may_be_grown(const Item& item) {
    return is_of_a_person(item) && has(kin, without_possessive(item.text));
}

// "my niece, 18 months", "a nephew of 10 months", "my niece, 4-5 years": nothing between that tells
// of something else.
bool stands_behind_kin(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view passed[] = {",",   "(",      "of",   "is",  "she's", "he's", "who's",
                                           "who", "who is", "aged", "age", "at",    "to",   "and"};
    for (auto i = at; i-- > 0 && i + 6 > at;) {
        if (may_be_grown(items[i])) return true;
        if (!items[i].amount && !has(passed, items[i].text)) return false;
    }
    return false;
}

// "she's 6", "(7)", "aged 5", "my 6 year old niece", "my little niece", "for my nieces, 4 and 6".
bool tells_of_a_small_one(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view small[] = {"little", "wee", "tiny", "young", "baby", "toddler"};
    constexpr std::string_view is[] = {"she's", "he's", "is", "they're"};
    const auto& amount = items[at].amount;
    const auto next = at + 1;
    if (!amount)
        return has(small, items[at].last_word()) &&
               ((same_clause(items, at, next) && is_of_a_person(items[next])) ||
                (at > 0 && has(is, items[at - 1].last_word())));
    if (amount->number >= grown_at) return false;
    if (amount->of == Amount::Of::age) return true;
    if (amount->of == Amount::Of::time)
        return (amount->unit == "month" || amount->unit == "year") && stands_behind_kin(items, at);
    if (amount->of != Amount::Of::number || at == 0) return false;
    const auto last = items[at - 1].last_word();
    const bool of_somebody =
        (last == "of" || last == "(") && at > 1 && is_of_a_person(items[at - 2]);
    const bool ends = next == items.size() || items[next].sign || items[next].is(joiner) ||
                      !same_clause(items, at, next);
    return of_somebody || stands_after_age(items, at) ||
           (ends && (stands_before_an_age(last) || (last == "," && stands_behind_kin(items, at))));
}

void make_small(std::vector<Item>& items, std::size_t at) {
    for (auto i = at; i-- > 0;)
        if (may_be_grown(items[i])) {
            items[i].small = true;
            return;
        }
    for (auto i = at + 1; i < at + 3 && same_clause(items, at, i); ++i)
        if (may_be_grown(items[i])) items[i].small = true;
}

// Of several the one that stands next before it, else the first behind.
void make_grown(std::vector<Item>& items, std::size_t at) {
    if (at + 1 < items.size() && items[at + 1].last_word() == "old") {
        items[at + 1].grown = true;
        for (auto i = at + 2; i < at + 4 && same_clause(items, at, i); ++i)
            if (may_be_grown(items[i])) items[i].grown = true;
        if (!is_of_a_person(items[at + 1])) return;
    }
    for (auto i = at; i-- > 0;)
        if (may_be_grown(items[i])) {
            items[i].grown = true;
            return;
        }
    const auto behind =
        std::find_if(items.begin() + static_cast<std::ptrdiff_t>(at), items.end(), may_be_grown);
    if (behind != items.end()) behind->grown = true;
}

}  // namespace

void settle_people(std::vector<Item>& items) {
    bool grown = false;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (tells_of_a_grown_up(items, i)) make_grown(items, i), grown = true;
        if (tells_of_a_small_one(items, i)) make_small(items, i);
        // "He is 6'2\"" is told as no size of the piece, "my six foot son" tells who he is.
        if (is_height_of(items, i) && i + 1 < items.size() && !items[i + 1].sign)
            items[i].idle = true;
    }
    for (std::size_t i = 0; i < items.size(); ++i)
        if (is_of_a_person(items[i]) && !is_grown_up(items[i]) && is_only_of(items, i, grown))
            items[i].idle = true;
}

}  // namespace gristwright
