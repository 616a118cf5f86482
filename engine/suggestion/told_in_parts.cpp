// Measures that are told in two pieces, once each piece has its number and its unit.
#include <algorithm>

#include "engine/suggestion/constants.hpp"
#include "engine/suggestion/items.hpp"

namespace gristwright {
namespace {

using Of = Amount::Of;

constexpr double inches_in_a_foot = 12;
constexpr double centimetres_in_a_metre = 100;
constexpr double widest_range = 2;  // "two 30 inch cushions": a count, "24-30 inches" a range

class Parts {
  public:
    explicit Parts(std::vector<Item>& items) : items_(items) {}

    void join() {
        lend_unit_of_all();
        for (std::size_t i = 0; i < items_.size(); ++i) {
            add_inches(i);
            add_centimetres(i);
            add_half(i);
        }
        for (std::size_t i = 0; i + 1 < items_.size(); ++i) {
            if (!items_[i].amount) continue;
            join_range(i);
            multiply(i);
        }
    }

  private:
    bool is_amount(std::size_t at, Of of) const {
        return at < items_.size() && items_[at].amount && items_[at].amount->of == of &&
               !items_[at].idle;
    }
    bool says(std::size_t at, std::string_view text) const {
        return at < items_.size() && items_[at].text == text;
    }

    bool says_each(std::size_t at) const {
        constexpr std::string_view words[] = {"each", "apiece", "ones", "per", "a ball", "a skein"};
        return at < items_.size() && has(words, items_[at].text);
    }

    // "cushion 16x16, runner 14x60 (all inches)": of every size that has none.
    void lend_unit_of_all() {
        for (std::size_t i = 1; i < items_.size(); ++i) {
            const auto& item = items_[i];
            const bool ends = i + 1 == items_.size() || items_[i + 1].sign;
            if (!item.is(WordClass::unit) || item.text == "in" || !ends ||
                !(says(i - 1, "all") || says(i - 1, "all in")))
                continue;
            const auto& unit = item.as(WordClass::unit);
            if (unit != "in" && unit != "cm") continue;
            Amount one;
            one.number = 1, one.unit = unit, one.length = unit == "in" ? inches(1) : centimetres(1);
            for (std::size_t n = 0; n < items_.size(); ++n) {
                const bool times = is_amount(n, Of::number) && items_[n].amount->times_next;
                const bool timed = is_amount(n, Of::number) && n > 0 && items_[n - 1].amount &&
                                   items_[n - 1].amount->times_next;
                if (times || timed) lend_unit(items_[n], one);
            }
        }
    }

    // The second piece goes into the first.
    void swallow(std::size_t at, std::size_t count) {
        for (std::size_t n = 1; n <= count; ++n) {
            items_[at].said += " " + items_[at + n].said;
            if (items_[at + n].amount && items_[at + n].amount->times_next)
                items_[at].amount->times_next = true;
        }
        const auto first = items_.begin() + static_cast<std::ptrdiff_t>(at) + 1;
        items_.erase(first, first + static_cast<std::ptrdiff_t>(count));
    }

    // "5 ft 6 in", "five foot six": no more inches than a foot has, and no measure of their own
    // ("six foot, 8 wide").
    void add_inches(std::size_t at) {
        if (!is_amount(at, Of::length) || items_[at].amount->unit != "ft" ||
            items_[at].amount->times_next || at + 1 >= items_.size() || !items_[at + 1].amount)
            return;
        const auto& more = *items_[at + 1].amount;
        if (more.number <= 0 || more.number >= inches_in_a_foot) return;
        const bool inches = more.of == Of::length && more.unit == "in";
        const bool bare = more.of == Of::number && !is_followed_by_a_thing(at + 1);
        if (!inches && !bare) return;
        items_[at].amount->length = *items_[at].amount->length + gristwright::inches(more.number);
        items_[at].amount->number += more.number / inches_in_a_foot;
        swallow(at, 1);
    }

    // "1m20", "1 m 20": so many centimetres more, of two figures.
    void add_centimetres(std::size_t at) {
        if (!is_amount(at, Of::length) || items_[at].amount->unit != "m" ||
            items_[at].amount->times_next || !is_amount(at + 1, Of::number))
            return;
        const double more = items_[at + 1].amount->number;
        if (more < 10 || more > 99 || items_[at + 1].said.size() != 2) return;
        if (is_followed_by_a_thing(at + 1)) return;
        items_[at].amount->length = *items_[at].amount->length + centimetres(more);
        items_[at].amount->number += more / centimetres_in_a_metre;
        swallow(at, 1);
    }

    // "six foot two hats": a count.
    bool is_followed_by_a_thing(std::size_t at) const {
        return at + 1 < items_.size() && !items_[at + 1].sign &&
               items_[at + 1].is(WordClass::article) && !items_[at + 1].is(WordClass::joiner) &&
               !items_[at].amount->times_next;
    }

    // "a yard and a half", "two metres and a quarter".
    void add_half(std::size_t at) {
        const bool measure = is_amount(at, Of::length) || is_amount(at, Of::mass);
        if (!measure || !says(at + 1, "and") || !is_amount(at + 2, Of::number)) return;
        auto& amount = *items_[at].amount;
        const double part = items_[at + 2].amount->number;
        if (part <= 0 || part >= 1 || amount.number <= 0) return;
        const double times = (amount.number + part) / amount.number;
        if (amount.length) amount.length = *amount.length * times;
        if (amount.mass) amount.mass = *amount.mass * times;
        amount.number += part;
        swallow(at, 2);
    }

    // "24-26 inches", "150 to 180 cm", "between 2 and 3 oz": the upper end is reckoned with.
    void join_range(std::size_t at) {
        if (!is_amount(at, Of::number) || items_[at].is(WordClass::needle) ||
            items_[at].amount->times_next)
            return;
        const bool between = at > 0 && items_[at - 1].last_word() == "between";
        const bool word =
            says(at + 1, "to") || says(at + 1, "or") || (between && says(at + 1, "and"));
        const auto to = at + (word ? 2 : 1);
        if (to >= items_.size() || !items_[to].amount) return;
        // A dash begins a clause and leaves no item.
        if (!word && items_[to].clause == items_[at].clause) return;
        const auto& upper = *items_[to].amount;
        const double lower = items_[at].amount->number;
        if (!upper.length && !upper.mass) return;
        if (lower >= upper.number || lower * widest_range < upper.number) return;
        items_[to].said =
            items_[at].said + (word ? " " + items_[at + 1].said + " " : "-") + items_[to].said;
        items_[at].idle = true;
    }

    // "6 x 60 in" lends its unit; "4 x 100 g", "four 100 g balls", "3/4 of a 100 g" multiply.
    void multiply(std::size_t at) {
        auto& first = items_[at];
        if (first.amount->of == Of::length) share_unit_with_next(at);
        if (first.amount->of == Of::skeins) multiply_skeins(at);
        if (first.amount->of != Of::number || first.idle) return;
        auto next = at + 1;
        const bool share = first.amount->number < 1 && first.amount->number > 0;
        while (share && next + 1 < items_.size() && next < at + 3 &&
               (says(next, "of") || says(next, "a") || says(next, "of a")))
            ++next;
        auto& second = items_[next];
        if (!second.amount) return;
        const bool balls = second.amount->of == Of::mass && is_of_balls(next + 1);
        if (next == at + 1 && !first.amount->times_next && !share && !balls) return;
        if (second.amount->of == Of::mass || share)
            scale(at, next);
        else if (second.amount->length && first.amount->times_next)
            lend_unit(first, *second.amount);
    }

    bool is_of_balls(std::size_t at) const {
        return at < items_.size() && items_[at].is(WordClass::unit) &&
               items_[at].as(WordClass::unit) == "skein";
    }

    // Of all of them, and no longer "each".
    void scale(std::size_t by, std::size_t what) {
        auto& amount = *items_[what].amount;
        if (amount.mass) amount.mass = *amount.mass * items_[by].amount->number;
        if (amount.length) amount.length = *amount.length * items_[by].amount->number;
        items_[by].idle = true;
        for (auto i = what + 1; i <= what + 2 && i < items_.size(); ++i)
            if (says_each(i)) items_[i].text = "in all";
    }

    // "seven feet by two", "7 inches wide and 60 long": a bare number takes the unit before it.
    void share_unit_with_next(std::size_t at) {
        const bool times = items_[at].amount->times_next;
        for (auto i = at + 1; i < items_.size() && i <= at + 4; ++i) {
            auto& item = items_[i];
            if (item.sign && item.text != "," && item.text != "(") return;
            if (!item.amount) continue;
            if (item.amount->of != Of::number || item.is(WordClass::needle)) return;
            const bool sized = i + 1 < items_.size() && tells_a_side(items_[i + 1]);
            const bool by = says(i - 1, "by") || says(i - 1, "x");
            if ((times && i == at + 1) || sized || by) lend_unit(item, *items_[at].amount);
            return;
        }
    }

    // "two skeins of 50 g", "6 balls at 50 g each", "3 hanks (100 g)"; "12 balls of aran (50 g
    // ones)", "2 balls, 100 g": of each only where that is said, or in brackets and too light for
    // all.
    void multiply_skeins(std::size_t at) {
        using enum WordClass;
        constexpr std::string_view leads[] = {"of", "at", "@", "(", ","};
        bool named = false;
        auto next = at + 1;
        for (; next < items_.size() && next < at + 6 && !items_[next].amount; ++next) {
            const auto& item = items_[next];
            if (item.sentence != items_[at].sentence) return;
            if (has(leads, item.text)) continue;
            named = true;
            if (!item.is(weight) && !item.is(material) && !item.is(colour) && !item.is(unit))
                return;
        }
        if (!is_amount(next, Of::mass) && !(is_amount(next, Of::length) && says_each(next + 1)))
            return;
        const auto& mass = items_[next].amount->mass;
        const bool light =
            says(next - 1, "(") && mass &&
            *mass * (1 / items_[at].amount->number) < grams(constants::lightest_ball);
        if (says_each(next + 1) || light || !(named || says(at + 1, ","))) scale(at, next);
    }

    static void lend_unit(Item& to, const Amount& from) {
        to.amount->of = Of::length;
        to.amount->unit = from.unit;
        to.amount->length = *from.length * (to.amount->number / from.number);
        // "1.2 m by 60": no cloth is 60 m wide.
        if (from.unit == "m" && *to.amount->length > metres(constants::longest_cloth))
            to.amount->unit = "cm", to.amount->length = centimetres(to.amount->number);
        to.phrase = nullptr;
    }

    std::vector<Item>& items_;
};

}  // namespace

void join_parts(std::vector<Item>& items) { Parts(items).join(); }

}  // namespace gristwright
