#include <fmt/core.h>

#include <algorithm>

#include "engine/suggestion/constants.hpp"
#include "engine/suggestion/items.hpp"
#include "engine/units/reading.hpp"

namespace gristwright {
namespace {

using Of = Amount::Of;

// Reads on in the items from a place; every step says how far it came.
class Joiner {
  public:
    explicit Joiner(const std::vector<Item>& items) : items_(items) {}

    std::vector<Item> join() {
        while (at_ < items_.size()) {
            if (const auto number = take_number())
                out_.push_back(measured(*number));
            else
                out_.push_back(items_[at_++]);
        }
        multiply();
        return std::move(out_);
    }

  private:
    const Item* peek(std::size_t ahead = 0) const {
        return at_ + ahead < items_.size() ? &items_[at_ + ahead] : nullptr;
    }
    bool says(std::string_view text, std::size_t ahead = 0) const {
        const auto* item = peek(ahead);
        return item && item->text == text;
    }
    const std::string* unit(std::size_t ahead = 0) const {
        const auto* item = peek(ahead);
        return item && item->is(WordClass::unit) ? &item->as(WordClass::unit) : nullptr;
    }
    std::optional<double> figure(std::size_t ahead) const {
        const auto* item = peek(ahead);
        if (!item || !item->amount || item->phrase) return {};
        return item->amount->number;
    }

    std::optional<double> word(std::size_t ahead) const {
        const auto* item = peek(ahead);
        if (!item || !item->is(WordClass::number)) return {};
        return figure_of(item->as(WordClass::number));
    }

    // "a dozen", "half a", "thirty six".
    double take_word() {
        const double tens = word(0).value_or(0);
        const double ones = word(1).value_or(0);
        const bool compound = tens >= 20 && tens < 100 && ones >= 1 && ones < 10;
        begin(compound ? 2 : 1);
        return compound ? tens + ones : tens;
    }

    // "ten pairs of mitts": as many as there are pairs.
    void pass_pairs() {
        for (const char* pairs : {"pair", "pairs", "pair of", "pairs of", "prs"})
            if (says(pairs)) return use(1);
    }

    // "3/4", "1 3/4", "170", "a dozen", "half a".
    std::optional<double> take_number() {
        const auto* first = peek();
        if (first->is(WordClass::number)) {
            double value = take_word();
            if (value >= 1) value += take_and_a_half();
            if (value > 1) pass_pairs();
            return value;
        }
        if (!figure(0)) return {};
        const double whole = *figure(0);
        double value = whole;
        std::size_t taken = 1;
        if (says("/", 1) && figure(2) && whole < *figure(2))
            value = whole / *figure(2), taken = 3;
        else if (figure(1) && says("/", 2) && figure(3) && *figure(1) < *figure(3))
            value = whole + *figure(1) / *figure(3), taken = 4;
        begin(taken);
        value += take_and_a_half();
        if (value > 1) pass_pairs();
        return value;
    }

    // "22 and a half inches".
    double take_and_a_half() {
        const double part = says("and") ? word(1).value_or(1) : 1;
        if (part <= 0 || part >= 1) return 0;
        use(2);
        return part;
    }

    void begin(std::size_t items) {
        now_ = items_[at_];
        for (std::size_t i = 1; i < items; ++i) now_.said += items_[at_ + i].said;
        at_ += items;
    }
    void use(std::size_t items) {
        for (std::size_t i = 0; i < items; ++i) now_.said += " " + items_[at_ + i].said;
        at_ += items;
    }

    // "to 10 cm", "per inch", "/ 4 in", "over 10": what a count is counted over.
    std::optional<Length> take_over() {
        std::size_t n = 0;
        for (const char* word : {"to", "per", "/", "in", "over", "for", "a", "an", "the", "each"})
            if (says(word, n)) {
                ++n;
                break;
            }
        if (n == 0) return {};
        if (says("the", n)) ++n;
        const auto k = figure(n);
        const auto* u = unit(n + (k ? 1 : 0));
        if (!u || (*u != "cm" && *u != "in")) {
            if (!k || *k != 10) return {};
            return use(n + 1), centimetres(10);  // "22 st to 10"
        }
        const auto over = read_length(fmt::format("{:g} {}", k.value_or(1), *u)).value;
        return use(n + (k ? 2 : 1)), over;
    }

    bool unit_is_a_preposition(const std::string& u) const {
        if (u != "in" || !says("in")) return false;
        const auto* next = peek(1);
        if (!next) return false;
        for (const auto c : {WordClass::colour, WordClass::fabric, WordClass::material,
                             WordClass::weight, WordClass::technique})
            if (next->is(c)) return true;
        for (const char* word :
             {"a", "an", "the", "this", "that", "my", "your", "one", "total", "all"})
            if (next->first_word() == word) return true;
        return false;
    }

    bool after_size() const {
        const auto before = out_.empty() ? std::string_view() : std::string_view(out_.back().text);
        return before == "size" || before == "uk" || before == "us" || before == "eu";
    }

    Item measured(double number) {
        auto& amount = now_.amount.emplace();
        amount.number = number;
        if (says("/") && figure(1) && *figure(1) == 10 && number >= 10 && !unit(2)) {
            use(2);  // "50/10", as a heddle is named
            return made(Of::sett, [&] { amount.sett = ends_per_10cm(number); });
        }
        const auto* u = unit();
        if (!u || unit_is_a_preposition(*u)) return person_or_number();
        if (*u == "ft" && after_size()) return std::move(now_);  // "size 10 feet": of shoes
        amount.unit = *u;
        if (*u == "st" || *u == "row" || *u == "ends") return counted(*u);
        use(1);
        return with_unit(amount.unit);
    }

    // "six year old"
    Item person_or_number() {
        const auto* next = peek();
        if (next && next->is(WordClass::person) && next->text.find(" old") != std::string::npos) {
            const bool months = next->text.find('m') == 0;
            now_.amount->number /= months ? 12.0 : 1.0;
            now_.amount->of = Of::age;
        }
        if ((says("x") || says("by")) &&
            (figure(1) || (peek(1) && peek(1)->is(WordClass::number)))) {
            now_.amount->times_next = true;
            ++at_;
        }
        return std::move(now_);
    }

    // "28 sts and 36 rows to 4 in": the rows are over the same length.
    void pass_rows() {
        const std::size_t from = says("and") || says("&") || says(",") || says("x") ? 1 : 0;
        const auto* rows = unit(from + 1);
        if (figure(from) && rows && *rows == "row") use(from + 2);
    }

    Item counted(const std::string& what) {
        use(1);
        auto& amount = *now_.amount;
        amount.of = Of::other;
        if (what == "st") pass_rows();
        const auto over = take_over();
        if (!over) return std::move(now_);
        if (what == "st") {
            amount.of = Of::gauge;
            amount.gauge = Gauge::from_si(amount.number / over->si());
        } else if (what == "ends") {
            amount.of = Of::sett;
            amount.sett = Sett::from_si(amount.number / over->si());
        }
        return std::move(now_);
    }

    template <class Set>
    Item made(Of of, Set set) {
        now_.amount->of = of;
        set();
        now_.phrase = nullptr;
        return std::move(now_);
    }

    Item with_unit(const std::string& u) {
        auto& amount = *now_.amount;
        const auto text = fmt::format("{:.6f} {}", amount.number, u);
        if (amount.number <= 0) return made(Of::other, [] {});
        for (const char* length : {"m", "cm", "mm", "in", "ft", "yd"})
            if (u == length) {
                made_length(read_length(text).value);
                return std::move(now_);
            }
        for (const char* mass : {"g", "kg", "oz", "lb"})
            if (u == mass) return made(Of::mass, [&] { amount.mass = read_mass(text).value; });
        // The holes of a heddle hold an end each.
        if (u == "epi" || u == "dpi")
            return made(Of::sett, [&] { amount.sett = ends_per_inch(amount.number); });
        if (u == "ends/cm")
            return made(Of::sett, [&] { amount.sett = ends_per_cm(amount.number); });
        if (u == "st/in")
            return made(Of::gauge, [&] { amount.gauge = stitches_per_inch(amount.number); });
        if (u == "year" || u == "month") return aged(u == "month");
        if (u == "skein") return made(Of::skeins, [] {});
        return made(u == "wpi" ? Of::wraps : Of::other, [] {});
    }

    void made_length(Length length) {
        now_.amount->of = Of::length;
        now_.amount->length = length;
        now_.phrase = nullptr;
        if (says("x") || says("by")) {
            now_.amount->times_next = true;
            ++at_;
        }
    }

    // "six years old", "aged 6": else years and months tell when, not how old.
    Item aged(bool months) {
        const bool old = says("old") || says("of") || items_[at_ - 1].text == "yo";
        return made(old ? Of::age : Of::time, [&] {
            if (months) now_.amount->number /= 12;
        });
    }

    // "6 x 60 in" lends its unit; "4 x 100 g" and "3/4 of a 100 g" multiply.
    void multiply() {
        for (std::size_t i = 0; i + 1 < out_.size(); ++i) {
            auto& first = out_[i];
            if (!first.amount) continue;
            if (first.amount->of == Of::length) share_unit_with_next(i);
            if (first.amount->of == Of::skeins) multiply_skeins(i);
            if (first.amount->of != Of::number) continue;
            auto next = i + 1;
            const bool share = first.amount->number < 1 && first.amount->number > 0;
            while (share && next + 1 < out_.size() && next < i + 3 &&
                   (out_[next].text == "of" || out_[next].text == "a" || out_[next].text == "of a"))
                ++next;
            auto& second = out_[next];
            if (!second.amount || (next == i + 1 && !first.amount->times_next && !share)) continue;
            if (second.amount->of == Of::mass || share)
                scale(first, second);
            else if (second.amount->length && first.amount->times_next)
                lend_unit(first, *second.amount);
        }
    }

    static void scale(Item& by, Item& what) {
        if (what.amount->mass) what.amount->mass = *what.amount->mass * by.amount->number;
        if (what.amount->length) what.amount->length = *what.amount->length * by.amount->number;
        by.idle = true;
    }

    // "seven feet by two", "7 inches wide and 60 long": a bare number takes the unit before it.
    void share_unit_with_next(std::size_t at) {
        const bool times = out_[at].amount->times_next;
        for (auto i = at + 1; i < out_.size() && i <= at + 4; ++i) {
            auto& item = out_[i];
            if (item.sign && item.text != "," && item.text != "(") return;
            if (!item.amount) continue;
            if (item.amount->of != Of::number || item.is(WordClass::needle)) return;
            const bool sized = i + 1 < out_.size() && out_[i + 1].is(WordClass::tool) &&
                               (out_[i + 1].as(WordClass::tool) == "size" ||
                                out_[i + 1].as(WordClass::tool) == "width");
            if ((times && i == at + 1) || sized) lend_unit(item, *out_[at].amount);
            return;
        }
    }

    // "two skeins of 50 g".
    void multiply_skeins(std::size_t at) {
        const auto next = at + 1 < out_.size() && out_[at + 1].text == "of" ? at + 2 : at + 1;
        if (next < out_.size() && out_[next].amount && out_[next].amount->of == Of::mass)
            scale(out_[at], out_[next]);
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

    const std::vector<Item>& items_;
    std::size_t at_ = 0;
    Item now_;
    std::vector<Item> out_;
};

}  // namespace

std::vector<Item> with_amounts(const std::vector<Item>& items) { return Joiner(items).join(); }

}  // namespace gristwright
