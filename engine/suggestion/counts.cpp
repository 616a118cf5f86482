#include "engine/suggestion/counts.hpp"

#include <algorithm>
#include <cmath>

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

// "men's size 44", "turns 70": no count.
bool names_a_number(const Item& before) {
    return before.last_word() == "size" || before.text == "cast on" ||
           before.last_word() == "turns" || before.last_word() == "turning" ||
           before.last_word() == "turned";
}

class Counts {
  public:
    Counts(std::vector<Item>& items, const std::vector<std::size_t>& places, Taken& out)
        : items_(items), places_(places), out_(out) {}

    void give_each(std::size_t i, int people) {
        if (auto* to = last_before(i); to && (to->plural || to->known.in_pairs) && to->count == 1)
            to->count = people;
    }

    bool is_before_people(std::size_t i) const {
        return items_[i].text == "twin" && i + 1 < items_.size() && items_[i + 1].is(person);
    }

    // "for each of the twins", not "for the mother of twins" nor "I have twins".
    bool is_for_them(std::size_t at) const {
        if (at > 1 && items_[at - 1].last_word() == "of" && items_[at - 2].is(person)) return false;
        for (auto i = at; i-- > 0 && items_[i].clause == items_[at].clause;)
            if (items_[i].first_word() == "for" || items_[i].last_word() == "for") return true;
        return at + 1 < items_.size() && items_[at + 1].live(article);
    }

    // "hats for the twins", "for my twin nephews": one each.
    void take_twins() {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (!is_for_them(i))
                continue;
            else if (items_[i].text.starts_with("twin") &&
                     (items_[i].is(person) || is_before_people(i)))
                give_each(i, 2);
            else if (items_[i].text == "triplets")
                give_each(i, 3);
    }

    // "mother and daughter hats": one each.
    void take_two_people() {
        for (std::size_t i = 0; i + 3 < items_.size(); ++i) {
            if (!items_[i].is(person) || !items_[i + 2].is(person)) continue;
            if (!items_[i + 1].is(joiner) || items_[i + 1].as(joiner) != "and") continue;
            for (std::size_t n = 0; n < places_.size(); ++n)
                if (places_[n] == i + 3 && out_.wanted[n].plural && out_.wanted[n].count == 1)
                    out_.wanted[n].count = 2;
        }
    }

    // "six beanies", "nine of them", "cowls for two sisters".
    void take() {
        take_twins();
        take_two_people();
        take_all_counts();
        take_one_more();
        take_repeats();
    }

    // "two towels and one with stripes".
    void take_one_more() {
        constexpr std::string_view goes_on[] = {"with", "in", "for", "that", "which"};
        for (std::size_t i = 2; i + 1 < items_.size(); ++i) {
            const auto& one = items_[i];
            const bool joined = items_[i - 1].is(joiner) && items_[i - 1].as(joiner) == "and";
            if (!joined || (one.text != "one" && one.text != "another") ||
                !has(goes_on, items_[i + 1].first_word()))
                continue;
            const bool told_apart =
                std::any_of(items_.begin(), items_.begin() + static_cast<std::ptrdiff_t>(i),
                            [](const Item& before) { return before.text == "one"; });
            auto* to = last_before(i);
            if (to && to->count > 1 && !told_apart) ++to->count;
        }
    }

    // "a hat for me, a hat for you", "a scarf and another scarf": as many as are named.
    void take_repeats() {
        constexpr std::string_view more[] = {"another", "second", "third"};
        for (std::size_t n = 0; n < places_.size(); ++n) {
            auto& wanted = out_.wanted[n];
            if (wanted.count > 1 || (wanted.plural && !wanted.known.in_pairs)) continue;
            for (auto i = places_[n] + 1; i < items_.size(); ++i) {
                if (!items_[i].live(article) || items_[i].text != wanted.said) continue;
                const bool for_one =
                    is_for_somebody(i) && is_for_somebody(places_[n]) && !is_an_or_before(i);
                if (for_one || has(more, items_[i - 1].last_word())) ++wanted.count;
            }
        }
    }

    bool is_for_somebody(std::size_t at) const {
        return at + 1 < items_.size() && items_[at + 1].first_word() == "for";
    }

    bool is_an_or_before(std::size_t at) const {
        for (auto i = at; i-- > 0 && i + 4 > at;)
            if (items_[i].is(joiner) && items_[i].as(joiner) == "or") return true;
        return false;
    }

    void take_all_counts() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            auto& item = items_[i];
            if (!item.amount || item.amount->of != Amount::Of::number || item.idle) continue;
            if (stands_after_age(items_, i) || is_of_ages(items_, i) || describes(items_, i))
                continue;
            if (i > 0 && names_a_number(items_[i - 1])) continue;
            if (is_in_shoes(items_, i) || is_of_a_foot(i)) continue;
            if (is_of_a_size(i)) continue;
            // "how many pairs of socks" asks for the number.
            if (i > 0 && items_[i - 1].text.starts_with("how many")) {
                item.idle = true;
                continue;
            }
            const double n = is_a_pair(i) ? 2 : item.amount->number;
            if (n < 2 || n > 999 || n != std::floor(n)) continue;
            if (auto* to = counted(i)) {
                to->count = static_cast<int>(n);
                item.idle = true;
            }
        }
    }

    // "men's 9 socks", "women's 8": of the foot.
    bool is_of_a_foot(std::size_t at) const {
        constexpr std::string_view whose[] = {"men's",   "mens",   "women's", "womens",
                                              "ladies'", "ladies", "eu",      "uk"};
        return at > 0 && has(whose, items_[at - 1].text) && is_for_the_foot(out_);
    }

    // "12 by 12": sides, and no count.
    bool is_of_a_size(std::size_t at) const {
        const auto bare = [&](std::size_t i) {
            return i < items_.size() && items_[i].amount &&
                   items_[i].amount->of == Amount::Of::number;
        };
        return (items_[at].amount->times_next && bare(at + 1)) ||
               (at > 0 && bare(at - 1) && items_[at - 1].amount->times_next);
    }

    // "towels, set of 4".
    bool is_set_of(std::size_t at) const {
        if (at < 1) return false;
        const auto& before = items_[at - 1].text;
        const bool set = at > 1 && before == "of" && items_[at - 2].text.starts_with("set");
        return (set || before == "set of" || before == "sets of") && ends_here(at);
    }

    // "a pair of cushions", "potholders, pair": of what does not come in pairs.
    bool is_a_pair(std::size_t at) {
        if (items_[at].text.find("pair") == std::string::npos) return false;
        const auto* to = counted(at);
        return to && to->plural && !to->known.in_pairs;
    }

    // "Cushions for a settle, two.": a number with nothing else beside it.
    bool stands_alone(std::size_t at) const {
        constexpr std::string_view hedges[] = {"say", "about", "maybe", "perhaps"};
        constexpr std::string_view verbs[] = {"do",   "make",  "have", "need", "want", "take",
                                              "like", "weave", "knit", "get",  "love", "use"};
        const bool ends = at + 1 == items_.size() || items_[at + 1].sign;
        if (ends && at > 0 && has(verbs, items_[at - 1].last_word())) return true;
        const auto first = at > 1 && has(hedges, items_[at - 1].text) ? at - 1 : at;
        return first > 0 && items_[first - 1].sign &&
               items_[first - 1].text.find_first_of(",.;:-") == 0 &&
               (at + 1 == items_.size() || items_[at + 1].sign);
    }

    // "Four of us said a hat".
    bool is_said(std::size_t from, std::size_t to) const {
        constexpr std::string_view says[] = {"said", "say",   "says",    "think",     "thought",
                                             "vote", "voted", "suggest", "suggested", "reckon"};
        for (auto i = from + 1; i < to; ++i)
            if (has(says, items_[i].last_word())) return true;
        return false;
    }

    Wanted* counted(std::size_t at) {
        constexpr std::string_view one_of_it[] = {"a", "an", "one", "the"};
        if (is_set_of(at)) return last_before(at);
        if (stands_alone(at)) {
            auto* to = last_before(at);
            return to && (to->said.ends_with('s') || to->known.in_pairs) ? to : nullptr;
        }
        if (is_for_so_many(at) || is_times(at)) {
            auto* to = last_before(at);
            return to && (to->plural || is_times(at)) ? to : nullptr;
        }
        for (auto i = at + 1; i < items_.size() && i <= at + 5; ++i) {
            const auto& item = items_[i];
            if (item.text == "for a" ||
                (item.text == "for" && i + 1 < items_.size() && has(one_of_it, items_[i + 1].text)))
                return nullptr;                          // "120 for a cowl"
            if (item.text == "squares") return nullptr;  // "eight squares for a blanket"
            if (item.text.substr(0, 2) == "of" && item.text != "of" && last_before(at))
                return last_before(at);
            if (item.is(person)) {
                auto* to = last_before(at);
                auto* one = !to && out_.wanted.size() == 1 ? &out_.wanted.front() : to;
                if (one && each_has_one(items_, at, *one)) return one;
                if (at > 0 && items_[at - 1].text.substr(0, 3) == "for")
                    return to && to->plural ? to : nullptr;
            }
            const bool is_single = has(one_of_it, items_[i - 1].text) && is_said(at, i);
            for (std::size_t n = 0; n < places_.size(); ++n)
                if (places_[n] == i) return is_single ? nullptr : &out_.wanted[n];
            // "two 70 inch long scarves".
            if (item.amount && item.amount->of == Amount::Of::number && is_of_a_size(i)) continue;
            const bool length = item.amount && item.amount->length;
            const bool of_length = items_[i - 1].amount && items_[i - 1].amount->length;
            const bool measure = (item.is(unit) || item.is(tool)) && !item.is(form) && !of_length;
            if (item.sign || (item.amount && !length) || item.is(joiner) || measure) return nullptr;
            if (item.text == "of" && i + 1 < items_.size() && items_[i + 1].text == "them")
                return last_before(at);
        }
        return nullptr;
    }

    // "place mats for six": nothing else is counted before the clause ends.
    bool is_for_so_many(std::size_t at) const {
        if (at == 0) return false;
        const auto& before = items_[at - 1].text;
        if (before != "for" && before.substr(before.find_last_of(' ') + 1) != "for") return false;
        return ends_here(at);
    }

    bool ends_here(std::size_t at) const {
        return at + 1 == items_.size() || items_[at + 1].sign || items_[at + 1].is(joiner) ||
               items_[at + 1].clause != items_[at].clause;
    }

    // "mug mats x 8", "hats (4)".
    bool is_times(std::size_t at) const {
        if (at == 0 || items_[at].amount->times_next) return false;
        const auto& before = items_[at - 1].text;
        const bool closed = at + 1 < items_.size() && items_[at + 1].text == ")";
        return (before == "x" && at > 1 && items_[at - 2].is(article)) ||
               (before == "(" && closed && at > 1 && items_[at - 2].is(article));
    }

    Wanted* last_before(std::size_t at) {
        for (auto n = places_.size(); n-- > 0;)
            if (places_[n] < at) return &out_.wanted[n];
        return nullptr;
    }

    std::vector<Item>& items_;
    const std::vector<std::size_t>& places_;  // of out_.wanted
    Taken& out_;
};

}  // namespace

void take_counts(std::vector<Item>& items, const std::vector<std::size_t>& places, Taken& out) {
    Counts(items, places, out).take();
}

}  // namespace gristwright
