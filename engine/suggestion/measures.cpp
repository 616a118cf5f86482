#include <algorithm>

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/constants.hpp"
#include "engine/suggestion/limits.hpp"
#include "engine/suggestion/measure_said.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/units/constants.hpp"

namespace gristwright {
namespace {

using enum WordClass;
using Of = Amount::Of;

constexpr std::string_view shoe_systems[] = {"size",    "uk",    "us",      "eu",     "uk size",
                                             "us size", "men's", "women's", "mens",   "womens",
                                             "men",     "women", "ladies'", "ladies", "adult"};
constexpr double grown_up = 18;            // years
constexpr double no_baby = 2;              // years
constexpr double least_without_unit = 10;  // below it a count or a rib is as likely

class Measures {
  public:
    Measures(std::vector<Item>& items, Taken& out) : items_(items), out_(out) {}

    void take() {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (items_[i].amount && !items_[i].idle) take_one(i);
        for (auto& wanted : out_.wanted) put_in_order(wanted);
    }

  private:
    void take_one(std::size_t at) {
        const auto& amount = *items_[at].amount;
        take_system(amount.unit);
        if (amount.of == Of::gauge && !out_.gauge) out_.gauge = amount.gauge, mark(at);
        if (amount.of == Of::sett && !out_.sett) out_.sett = amount.sett, mark(at);
        // "a hat for my dad, I am 7": not the wearer's.
        if (is_own_age(items_, at) && out_.wearer != Wearer::unsaid) return mark(at);
        if (amount.of == Of::age || is_an_age(at) || follows_the_word(at))
            out_.years = amount.number, mark(at);
        const bool tells =
            follows_the_word(at) || (amount.of == Of::age && amount.number < grown_up);
        // "a bridesmaid, age 8"
        if (tells && (out_.wearer == Wearer::unsaid || out_.wearer == Wearer::adult)) {
            out_.wearer = amount.number < 1 ? Wearer::baby : Wearer::child;
            out_.body.clear();
        }
        // Who is so young is cared for as a baby, whatever the word: "the twins, 6 months".
        if (out_.wearer == Wearer::child && out_.years && *out_.years < no_baby)
            out_.wearer = Wearer::baby;
        if (is_of_somebody_grown(at)) mark(at);
        if (amount.of == Of::mass) take_mass(at);
        if (amount.of == Of::skeins && !out_.wanted.empty() &&
            (is_led_from(items_, at) || is_at_hand(at)))
            out_.at_hand_skeins = amount.number, mark(at);
        if (amount.of == Of::length) take_length(at);
        if (amount.of == Of::number && !amount.read) take_number(at);
    }

    void mark(std::size_t at) { items_[at].amount->read = true; }

    void take_number(std::size_t at) {
        // "3-6 months": an age, however it is told.
        const auto next = at + 1;
        if (next < items_.size() && items_[next].amount &&
            (items_[next].amount->of == Of::age || items_[next].amount->of == Of::time))
            return mark(at);
        if (is_of_a_shoe(at)) {
            const bool system = at > 0 && has(shoe_systems, items_[at - 1].text);
            out_.shoe =
                (!system || items_[at - 1].text == "size" ? "" : items_[at - 1].said + " ") +
                items_[at].said;
            if (at > 1 && (items_[at - 2].text == "us" || items_[at - 2].text == "uk"))
                out_.shoe = items_[at - 2].said + " " + out_.shoe;
            mark(at);
        }
        if (!items_[at].amount->read && is_bought_in(at)) take_bought_size(at);
        if (items_[at].amount->times_next) take_without_unit(at);
        if (is_measured_without_unit(at)) {
            out_.no_unit = items_[at].said + " " + items_[at + 1].said;
            if (items_[at + 1].as(tool) != "width") out_.bare = {items_[at].amount->number};
            mark(at);
        }
        // "a vest, size 8": of clothes.
        if (!items_[at].amount->read && out_.letters.empty() && at > 0 &&
            items_[at - 1].text == "size") {
            out_.letters = "size " + items_[at].said;
            mark(at);
        }
    }

    // "socks in 43", "a cardigan in 42": as they are bought.
    bool is_bought_in(std::size_t at) const {
        const double n = items_[at].amount->number;
        const bool ends = at + 1 == items_.size() || items_[at + 1].sign ||
                          items_[at + 1].first_word() == "for" || items_[at + 1].is(joiner);
        const bool led = at > 0 && (items_[at - 1].last_word() == "in" ||
                                    items_[at - 1].last_word() == "number");
        return ends && led && !items_[at].amount->times_next && n >= constants::shoe_eu_least &&
               n <= constants::greatest_clothes;
    }

    void take_bought_size(std::size_t at) {
        if (is_for_the_foot(out_) && items_[at].amount->number <= constants::shoe_eu_most) {
            if (out_.shoe.empty()) out_.shoe = items_[at].said, mark(at);
        } else if (out_.letters.empty() && items_[at - 1].last_word() == "in" && wants_clothes()) {
            out_.letters = "size " + items_[at].said;
            mark(at);
        }
    }

    bool wants_clothes() const {
        constexpr std::string_view clothes[] = {"pullover", "cardigan", "vest", "top",
                                                "jacket",   "dress",    "coat", "skirt"};
        return std::any_of(out_.wanted.begin(), out_.wanted.end(),
                           [&](const Wanted& w) { return has(clothes, w.kind); });
    }

    // Lengths and masses tell what they think in; a sett or a gauge only where nothing else does.
    void take_system(const std::string& written) {
        const auto is = [&](std::initializer_list<std::string_view> units) {
            return std::find(units.begin(), units.end(), written) != units.end();
        };
        if (is({"in", "ft", "yd", "oz", "lb"})) out_.imperial = true, measured_ = true;
        if (is({"m", "cm", "g", "kg"}) && !(measured_ && *out_.imperial))
            out_.imperial = false, measured_ = true;
        if (is({"epi", "dpi", "st/in"}) && !measured_) out_.imperial = true;
        if (is({"ends/cm"}) && !measured_) out_.imperial = false;
    }

    // "age 7", "ages 5": somebody small, whoever it is.
    bool follows_the_word(std::size_t at) const {
        const auto& amount = *items_[at].amount;
        if (amount.number >= grown_up || amount.times_next) return false;
        if (amount.of != Of::number && amount.of != Of::time) return false;
        return stands_after_age(items_, at) || is_of_ages(items_, at);
    }

    // "my nana who's 91": no count.
    bool is_of_somebody_grown(std::size_t at) const {
        const auto& amount = *items_[at].amount;
        if (amount.of != Of::number || amount.number < grown_up || at == 0) return false;
        if (is_own_age(items_, at)) return true;
        if (!stands_before_an_age(items_[at - 1].last_word())) return false;
        return std::any_of(items_.begin(), items_.end(), [&](const Item& i) {
            return i.sentence == items_[at].sentence && i.is(person);
        });
    }

    // Of somebody small: "a girl of 9", "my niece who is 8", "the twins (18 months)".
    bool is_an_age(std::size_t at) const {
        const auto& amount = *items_[at].amount;
        if (out_.wearer != Wearer::child && out_.wearer != Wearer::baby) return false;
        if (amount.of == Of::time) return amount.unit == "month" || amount.unit == "year";
        if (amount.of != Of::number || amount.times_next || amount.number >= grown_up) return false;
        if (at == 0) return false;
        const auto last = items_[at - 1].last_word();
        if (last == "of" || last == "(") return at > 1 && items_[at - 2].is(person);
        return stands_before_an_age(last);
    }

    // "size 10 feet", "socks, EU 42".
    bool is_of_a_shoe(std::size_t at) const {
        if (is_in_shoes(items_, at)) return true;
        if (at == 0) return false;
        return has(shoe_systems, items_[at - 1].text) &&
               (is_for_the_foot(out_) || tool_beside(items_, at, 2) == "foot");
    }

    // "180 by 20": nobody said of what.
    void take_without_unit(std::size_t at) {
        if (at + 1 >= items_.size() || out_.wanted.empty()) return;
        const auto& next = items_[at + 1];
        if (!next.amount || next.amount->of != Of::number || next.is(needle)) return;
        if (std::max(items_[at].amount->number, next.amount->number) < least_without_unit) return;
        out_.no_unit = items_[at].said + " by " + next.said;
        out_.bare = {items_[at].amount->number, next.amount->number};
        mark(at);
        mark(at + 1);
    }

    // "42 chest", "45 wide": a measure too.
    bool is_measured_without_unit(std::size_t at) const {
        if (at + 1 >= items_.size() || out_.wanted.empty() || !out_.no_unit.empty()) return false;
        const auto& next = items_[at + 1];
        if (!next.is(tool) || next.is(form) || items_[at].amount->number < least_without_unit)
            return false;
        const auto& of = next.as(tool);
        return of == "chest" || of == "size" || of == "width" || of == "head";
    }

    // "Is 535 m enough", "I have 320 m": what there is, not what it takes.
    bool is_at_hand(std::size_t at) const {
        if (items_[at].asks && at + 1 < items_.size() && items_[at + 1].is(topic)) return true;
        if (is_asked_of(items_, at) || limit_of(items_, at) == Limit::most) return true;
        if (is_drawn_from(at) || is_of_this_yarn(items_, at)) return true;
        for (std::size_t n = 1; n <= 4 && n <= at; ++n) {
            const auto& before = items_[at - n];
            if (before.is(tool) && before.as(tool) == "have") return true;
            if (before.is(tool) && before.as(tool) == "needs") return false;
        }
        return says_own_yarn(items_, at);
    }

    // "using up at least 200 g": told, since more than it takes is no figure of ours.
    bool is_a_least_amount(std::size_t at) {
        if (limit_of(items_, at) != Limit::least) return false;
        out_.left_out.push_back(limited(items_, at));
        mark(at);
        return true;
    }

    // "a hat out of 100 m", "gloves and a hat in 300 m": what there is for all of it.
    bool is_drawn_from(std::size_t at) const {
        if (at == 0 || items_[at - 1].clause != items_[at].clause) return false;
        const auto& before = items_[at - 1];
        if (before.text == "out of") return true;
        return out_.wanted.size() > 1 && (before.text == "in" || before.text == "from");
    }

    // The article that a measure belongs to: before it with no joiner between, else the next.
    Wanted* owner(std::size_t at) {
        if (out_.wanted.empty()) return nullptr;
        if (out_.wanted.size() == 1) return &out_.wanted.front();
        if (const auto next = thing_behind(items_, at); next != at)
            if (auto* found = thing(items_[next])) return found;
        for (auto i = at; i-- > 0;) {
            if (items_[i].is(joiner) && items_[i].as(joiner) != "with") break;
            if (auto* found = thing(items_[i])) return found;
        }
        for (auto i = at + 1; i < items_.size(); ++i)
            if (auto* found = thing(items_[i])) return found;
        return &out_.wanted.front();
    }

    Wanted* thing(const Item& item) {
        if (!is_thing(item)) return nullptr;
        for (auto& wanted : out_.wanted)
            if (wanted.said == item.text) return &wanted;
        return nullptr;
    }

    void take_mass(std::size_t at) {
        auto* to = owner(at);
        if (is_a_least_amount(at)) return;
        if (is_at_hand(at)) out_.at_hand_mass = items_[at].amount->mass, mark(at);
        if (!to || is_at_hand(at) || to->needs_mass || to->needs) return;
        to->needs_mass = items_[at].amount->mass;
        mark(at);
        to->needs_each = is_of_each(items_, at);
    }

    void take_length(std::size_t at) {
        const auto& amount = *items_[at].amount;
        const auto length = *amount.length;
        const auto what = tool_beside(items_, at, 3);
        const bool heddle = at + 1 < items_.size() && items_[at + 1].text == "rigid heddle";
        if (what == "loom" || what == "sett" || heddle) {
            out_.loom_width = length;
            return mark(at);
        }
        if (amount.unit == "mm" && what != "width" && what != "size" &&
            length <= millimetres(constants::thickest_needle)) {
            if (!out_.needle) out_.needle = length;
            if (*out_.needle == length) mark(at);
            return;
        }
        // A circular needle's own length stands right beside it.
        if (tool_beside(items_, at, 1) == "needle" && amount.unit != "mm") return mark(at);
        auto* to = owner(at);
        const bool thick = at + 1 < items_.size() && items_[at + 1].text == "thick";
        if (!to || thick || is_of_squares(items_, at, *to) || is_of_a_part(items_, at)) return;
        if (is_a_body_height(items_, at) || take_remainder(at)) return;  // told
        if (is_yarn(at, what))
            take_needs(at, *to);
        else if (!is_at_hand(at))
            take_size(at, what, *to);
    }

    // "I don't want to see one yard left over": all of it is to be used.
    bool take_remainder(std::size_t at) {
        if (!is_what_remains(items_, at)) return false;
        const bool denied = std::any_of(items_.begin(), items_.end(), [&](const Item& i) {
            return i.sentence == items_[at].sentence &&
                   (i.is(negation) || i.text.find("n't") != std::string::npos ||
                    i.first_word() == "no" || i.first_word() == "not");
        });
        if (!denied) return true;
        mark(at);
        if (out_.role == YarnRole::unsaid)
            out_.role = YarnRole::all, out_.role_said = items_[at].said;
        return true;
    }

    // Yards are of yarn unless they are said to be long or wide; so are more metres than cloth has.
    bool is_yarn(std::size_t at, const std::string& what) const {
        const auto& amount = *items_[at].amount;
        const bool of_cloth = what == "width" || what == "size";
        if (of_cloth || amount.times_next) return false;
        if (*amount.length >= metres(constants::longest_cloth)) return true;
        if (thing_behind(items_, at) != at) return false;
        if (amount.unit != "yd" && amount.unit != "m") return false;
        return *amount.length >= metres(constants::longest_cloth) || what == "needs" ||
               (amount.unit == "yd" && sentence_has(items_, at, "needs"));
    }

    void take_needs(std::size_t at, Wanted& to) {
        if (is_a_least_amount(at)) return;
        if (is_at_hand(at)) out_.at_hand = items_[at].amount->length, mark(at);
        if (is_at_hand(at) || to.needs) return;
        to.needs = items_[at].amount->length;
        mark(at);
        to.needs_each = is_of_each(items_, at);
    }

    // "for a teddy bear 12 inches tall": the bear is.
    bool is_of_the_wearer(std::size_t at) const {
        if (out_.worn_by.empty() || at == 0) return false;
        return items_[at - 1].said == out_.worn_by;
    }

    void take_size(std::size_t at, const std::string& what, Wanted& to) {
        if (to.sizes.size() >= 3 || is_of_the_wearer(at)) return;
        const auto length = *items_[at].amount->length;
        mark(at);
        const bool width = what == "width";
        if (to.sizes.empty())
            to.is_long = is_said_long(items_, at), to.is_tall = is_said_tall(items_, at);
        to.only_width = to.sizes.empty() && width;
        if (!to.sizes.empty() && widths_ > 0 && !width)
            to.sizes.insert(to.sizes.begin(), length);
        else
            to.sizes.push_back(length);
        if (width) ++widths_;
        said_ = said_ || width || what == "size";
    }

    // Two measures without a word: the longer one is the article's own.
    void put_in_order(Wanted& wanted) {
        if (!said_ && wanted.sizes.size() == 2 && wanted.sizes[0] < wanted.sizes[1])
            std::swap(wanted.sizes[0], wanted.sizes[1]);
        if (wanted.sizes.size() > 1) wanted.only_width = false;
        // "dishcloths at 30 m each": one of them is reckoned.
        if (wanted.needs_each && wanted.count < 2) wanted.plural = false;
        if (!wanted.needs_each || wanted.count < 2) return;
        if (wanted.needs) wanted.needs = *wanted.needs * wanted.count;
        if (wanted.needs_mass) wanted.needs_mass = *wanted.needs_mass * wanted.count;
        wanted.needs_each = false;
    }

    std::vector<Item>& items_;
    Taken& out_;
    int widths_ = 0;
    bool said_ = false;
    bool measured_ = false;  // a length or a mass has told the units
};

}  // namespace

void take_measures(std::vector<Item>& items, Taken& out) { Measures(items, out).take(); }

}  // namespace gristwright
