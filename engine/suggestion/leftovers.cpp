#include "engine/suggestion/leftovers.hpp"

#include <algorithm>
#include <cmath>

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/limits.hpp"
#include "engine/suggestion/link.hpp"
#include "engine/suggestion/particulars.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/suggestion/tails.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::size_t most_left_out = 5;  // a longer list is no reading
constexpr std::string_view goes_before[] = {"a", "an", "the", "one", "some", "two", "my", "extra"};
constexpr std::string_view whom[] = {"me", "you", "him", "us", "it", "them"};
constexpr std::string_view how_far[] = {"long", "tall", "wide", "deep"};
constexpr std::string_view wishes[] = {"would", "preferred", "preferably", "ideally", "if"};
// What may stand before an article and describes nothing.
constexpr std::string_view no_names[] = {"after",  "try",     "want",     "vote",   "suggest",
                                         "before", "between", "against",  "choose", "pick",
                                         "rest",   "lot",     "remainder"};

class Leftovers {
  public:
    Leftovers(const std::vector<Item>& items, Taken& out) : items_(items), out_(out) {}

    void find() {
        if (out_.wanted.empty()) return;
        for (const auto& said : tails_of(items_))
            if (out_.letters.empty() || !said.ends_with(out_.letters)) tell(said);
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (!counts(i)) continue;
            if (items_[i].amount)
                of_amount(i);
            else if (is_size_word(i))
                of_size(items_[i]);
            else if (const auto said = said_in_full(items_, i); !said.empty())
                tell(said);
            else if (was_not_taken(items_[i]) || stands_as_part(i))
                tell(i);
        }
    }

  private:
    // Still to be read, in a sentence that speaks of the thing or in a scrap beside it.
    bool counts(std::size_t at) const {
        const auto& item = items_[at];
        if (item.amount && item.amount->of != Amount::Of::number) return !item.idle && !item.out;
        if (item.idle || item.out || item.sign ||
            (item.phrase == nullptr && !item.amount && !item.unknown && !item.bent))
            return false;
        std::size_t words = 0;
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const auto& other = items_[i];
            if (other.sentence != item.sentence || other.sign) continue;
            if (is_thing(other) && !other.idle) return true;
            // Praise of a thing ("a squishy cowl") is no talk of something else.
            if (other.is(remark) && !(other.as(remark) == "praise" && before_article(items_, i)))
                return false;
            ++words;
        }
        return words < 5;
    }

    // "with a flip top", "plus thumb holes": behind "with", however it is described.
    bool behind_with(std::size_t at) const {
        for (auto i = at; i-- > 0 && same_clause(items_, i, at);) {
            const auto& item = items_[i];
            if (is_plain(items_[at]) && (item.is(part) || is_trimming(item))) return false;
            if (item.last_word() == "with" || (item.is(joiner) && item.as(joiner) == "with"))
                return true;
            const bool sized = item.is(filler) && item.as(filler) == "size";
            const bool passes = has(goes_before, item.text) || is_plain(item) || item.amount ||
                                sized || item.is(part) || is_trimming(item) || item.is(colour) ||
                                item.is(fabric) || item.is(form) || item.is(craft) ||
                                item.is(number) || item.is(body) || item.is(technique) ||
                                (item.is(joiner) && item.as(joiner) == "and");
            if (!passes || item.is(article)) return false;
        }
        return false;
    }

    bool stands_as_part(std::size_t at) const {
        const auto& item = items_[at];
        // "a 180 cm span": of what is measured.
        const bool measured = at > 0 && items_[at - 1].amount && items_[at - 1].amount->length &&
                              !is_of_a_part(items_, at - 1);
        if (is_wanted(item) || is_verb(at) || measured) return false;
        if (out_.one_alone && item.text == "single") return false;
        if (is_another_yarn(at) || is_a_colour_of_it(at)) return true;
        if (is_trimming(item) || is_of_making(item)) return true;
        if (is_strange_beside(at) || is_one_of_a_set(at)) return true;
        if (at > 0 && items_[at - 1].amount && describes(items_, at - 1)) return false;
        if (item.is(part) && (!item.is(article) || behind_with(at)) && !item.is(role)) return true;
        if (item.is(body)) return behind_with(at);
        const bool thing = item.is(everyday) && item.as(everyday) == "thing";
        if (item.is(filler) || item.is(person) || !(is_plain(item) || thing)) return false;
        return before_article(items_, at) || behind_with(at);
    }

    // "towel set: one bath, one hand, one face cloth".
    bool is_one_of_a_set(std::size_t at) const {
        if (at < 2 || !is_plain(items_[at]) || !same_clause(items_, at - 1, at)) return false;
        if (!items_[at - 1].amount || items_[at - 1].amount->of != Amount::Of::number) return false;
        const bool begins = items_[at - 2].sign || items_[at - 2].is(joiner);
        return begins && (at + 1 == items_.size() || items_[at + 1].sign ||
                          items_[at + 1].is(joiner) || items_[at + 1].is(article));
    }

    // A word in no table, behind the thing in its clause: "a cowl, all zorped".
    bool is_strange_beside(std::size_t at) const {
        if (!items_[at].unknown || items_[at].capital) return false;
        for (auto i = at; i-- > 0 && i + 5 > at && same_clause(items_, i, at);) {
            if (is_thing(items_[i])) return true;
            if (items_[i].last_word() == "for" || items_[i].is(person)) return false;  // whoever
        }
        return false;
    }

    // "held with mohair", "in cotton", "a silk scarf": a fibre that nobody took.
    bool is_another_yarn(std::size_t at) const {
        const auto& item = items_[at];
        if (!item.is(material) || is_trimming(item) || item.text == out_.material_said)
            return false;
        if (item.as(material) == "yarn" || item.asks) return false;
        const auto& kind = item.as(material);
        const bool preferred = at + 1 < items_.size() && has(wishes, items_[at + 1].first_word()) &&
                               (kind == "plant" || kind == "silk" || kind == "man made");
        return behind_with(at) || preferred ||
               (out_.material.empty() && before_article(items_, at));
    }

    // "a red hat", "in moss green": the yarn has its own colour.
    bool is_a_colour_of_it(std::size_t at) const {
        const auto& item = items_[at];
        if (!item.is(colour) || !is_a_colour(item) || out_.colours > 1 || item.asks) return false;
        const bool in = at > 0 && (items_[at - 1].text == "in" || items_[at - 1].is(colour));
        const bool alone = at > 0 && items_[at - 1].text.find_first_of(",;:(") == 0 &&
                           (at + 1 == items_.size() || items_[at + 1].sign);
        return in || alone || before_article(items_, at);
    }

    // "would suit me", "I'm after a bag".
    bool is_verb(std::size_t at) const {
        if (has(no_names, items_[at].text)) return true;
        return same_clause(items_, at, at + 1) && has(whom, items_[at + 1].first_word());
    }

    bool is_wanted(const Item& item) const {
        return any_wanted([&](const Wanted& w) { return w.said == item.text; });
    }

    bool is_size_word(std::size_t at) const {
        const auto& item = items_[at];
        if (has(how_far, item.text) && !item.asks)
            return (before_article(items_, at) || is_before_ones(at)) &&
                   (at == 0 || !items_[at - 1].amount);
        if (!item.is(filler) || item.as(filler) != "size" || item.asks) return false;
        if (at > 0 && items_[at - 1].first_word() == "too") return false;
        const auto next = at + 1;
        if (same_clause(items_, at, next) && items_[next].first_word() == "of") return false;
        if (same_clause(items_, at, next) && items_[next].is(part) && behind_with(next))
            return false;
        // "short of yardage", "big 6.5 mm needles": of something else.
        return !same_clause(items_, at, next) || describes_too(items_[next]) ||
               is_thing(items_[next]) || items_[next].is(joiner) || items_[next].is(body) ||
               items_[next].is(filler);
    }

    bool is_before_ones(std::size_t at) const {
        return same_clause(items_, at, at + 1) &&
               (items_[at + 1].text == "ones" || items_[at + 1].text == "one");
    }

    void of_size(const Item& item) {
        if (!out_.wanted.front().sizes.empty() || !out_.letters.empty() || !out_.shoe.empty())
            return;
        if (out_.how_big.find(item.text) == std::string::npos)
            out_.how_big += (out_.how_big.empty() ? "" : ", ") + item.text;
    }

    void of_amount(std::size_t at) {
        const auto& item = items_[at];
        if (item.amount->read || (at > 0 && items_[at - 1].is(fabric))) return;
        if (at > 0 && items_[at - 1].last_word().starts_with("turn")) return;  // "turns 70"
        if (item.amount->of == Amount::Of::number && item.amount->number <= 1) return;
        if (is_of_people(at) || is_a_yarn_count(at)) return;
        if (describes(items_, at) || item.amount->of == Amount::Of::time) return;
        auto said = limited(items_, at);
        const bool bare = item.amount->of == Amount::Of::number;
        if (bare && at > 0 && items_[at - 1].last_word() == "size") said = "size " + said;
        if (bare && same_clause(items_, at, at + 1) && !items_[at + 1].amount &&
            (is_plain(items_[at + 1]) || items_[at + 1].is(part) || is_trimming(items_[at + 1]) ||
             items_[at + 1].is(everyday) || items_[at + 1].is(tool) || items_[at + 1].is(body)))
            said += " " + items_[at + 1].said;
        tell(said);
    }

    // "for two kids", "aged 4 and 8".
    bool is_of_people(std::size_t at) const {
        const auto many = items_[at].amount->number;
        const auto is_counted = [&](const Wanted& w) { return w.count == std::lround(many); };
        const auto is_worn = [](const Wanted& w) { return w.known.worn; };
        if (same_clause(items_, at, at + 1) && items_[at + 1].is(person))
            return out_.wanted.size() > 1 || many < 2 || !items_[at + 1].text.ends_with('s') ||
                   any_wanted(is_counted) || !any_wanted(is_worn);
        const auto months = [](double years) { return std::lround(12 * years); };
        return any_wanted([&](const Wanted& w) {
            return w.years && months(*w.years) == months(items_[at].amount->number);
        });
    }

    // "20/2 cotton": of another yarn.
    bool is_a_yarn_count(std::size_t at) const {
        const auto stroke = [&](std::size_t i) {
            return i < items_.size() && items_[i].text == "/";
        };
        return stroke(at + 1) || (at > 0 && stroke(at - 1));
    }

    template <class Has>
    bool any_wanted(Has has_it) const {
        return std::any_of(out_.wanted.begin(), out_.wanted.end(), has_it);
    }

    // A trade word that another of its class had gone before.
    bool was_not_taken(const Item& item) const {
        if (item.asks && item.is(topic)) return false;
        if (item.is(article)) return stands_beside(item) || is_another(item);
        if (item.is(form) && !item.is(tool) && !item.is(fabric)) {
            const auto& means = item.as(form) == "?" ? item.text : item.as(form);
            const auto sign = means.find('>');
            if (sign != std::string::npos)
                return !any_wanted([&](auto& w) { return w.kind == means.substr(sign + 1); });
            return !any_wanted([&](const Wanted& w) { return w.form == means; });
        }
        if (item.is(fabric) && item.is(weight) && out_.weight == item.as(weight)) return false;
        if (item.is(fabric)) return !has_fabric(item);
        if (item.is(role)) {
            const auto named = yarn_role_named(item.as(role));
            return named && *named != out_.role && *named != YarnRole::part &&
                   *named != YarnRole::with_another;
        }
        if (item.is(weight))
            return out_.weight != item.as(weight) && !is_of_two_meanings(item) &&
                   item.text != "sport";
        return item.is(needle) && !was_mended(item.text) && out_.shoe.empty() &&
               out_.letters.empty();
    }

    bool has_fabric(const Item& item) const {
        const auto named = fabric_of(item);
        return out_.fabric == named ||
               any_wanted([&](const Wanted& w) { return w.fabric == named; });
    }

    bool was_mended(const std::string& text) const {
        return std::any_of(out_.taken_as.begin(), out_.taken_as.end(),
                           [&](const auto& as) { return as.starts_with(text + " as"); });
    }

    // "a sock blanket": an article that another stands behind, and whose form it does not give.
    bool stands_beside(const Item& item) const {
        const auto at = static_cast<std::size_t>(&item - items_.data());
        if (!same_clause(items_, at, at + 1) || !items_[at + 1].live(article)) return false;
        const auto kind = kind_of(item);
        return !any_wanted([&](const Wanted& w) {
            return w.kind == kind || w.said == item.text ||
                   (!w.form.empty() && item.as(article).find(w.form) != std::string::npos);
        });
    }

    // "worn like a bandana": an article that was not taken for one of those wanted.
    bool is_another(const Item& item) const {
        const auto at = static_cast<std::size_t>(&item - items_.data());
        if (at == 0 || !item.live(article)) return false;
        constexpr std::string_view likens[] = {"like", "resembling", "than", "that", "which"};
        const bool one = at > 1 && has(goes_before, items_[at - 1].text);
        if (!has(likens, items_[one ? at - 2 : at - 1].last_word())) return false;
        const auto kind = kind_of(item);
        return !any_wanted([&](const Wanted& w) { return w.kind == kind || w.said == item.text; });
    }

    // With the words before it that describe it: "picot edge", "three buttons".
    void tell(std::size_t at) {
        auto said = items_[at].said;
        for (auto i = at;
             i-- > 0 && same_clause(items_, i, at) && !items_[i].idle && is_plain(items_[i]);)
            said = items_[i].said + " " + said;
        if (at > 0 && items_[at - 1].is(body) && behind_with(at))
            said = items_[at - 1].said + " " + said;
        const auto* amount = at > 0 && same_clause(items_, at - 1, at) && items_[at - 1].amount
                                 ? &*items_[at - 1].amount
                                 : nullptr;
        if (amount && (amount->number < 1 || (amount->length && is_of_a_part(items_, at - 1))))
            said = items_[at - 1].said + " " + said;
        tell(said);
    }

    void tell(const std::string& said) {
        const auto known = [&](const std::string& other) {
            return other.find(said) != std::string::npos;
        };
        const auto unmade = [&](const Unmade& u) { return known(u.said) || said == u.said; };
        if (std::any_of(out_.not_known.begin(), out_.not_known.end(), unmade)) return;
        if (std::any_of(out_.left_out.begin(), out_.left_out.end(), known)) return;
        std::erase_if(out_.left_out,
                      [&](const auto& other) { return said.find(other) != std::string::npos; });
        if (out_.left_out.size() < most_left_out) out_.left_out.push_back(said);
    }

    const std::vector<Item>& items_;
    Taken& out_;
};

}  // namespace

void find_leftovers(const std::vector<Item>& items, Taken& out) { Leftovers(items, out).find(); }

}  // namespace gristwright
