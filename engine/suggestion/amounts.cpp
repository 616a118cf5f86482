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
        join_parts(out_);
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

    // "a yard and a half", "a metre wide", "a pound of wool": one of them.
    bool is_one_of_a_unit() const {
        constexpr std::string_view plain[] = {"m", "cm", "in", "ft", "yd", "kg", "oz", "lb"};
        constexpr std::string_view by[] = {"by", "x", "of", "each", "square"};
        if (!says("a") && !says("an")) return false;
        const auto* what = unit(1);
        const auto* next = peek(2);
        if (!what || !has(plain, *what) || !next) return false;
        if (says("and", 2)) return word(3).value_or(1) < 1;
        return tells_a_side(*next) || has(by, next->text);
    }

    // "3/4", "1 3/4", "170", "a dozen", "half a".
    std::optional<double> take_number() {
        const auto* first = peek();
        if (is_one_of_a_unit()) {
            begin(1);
            now_.phrase = nullptr;
            return 1;
        }
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
        for (const char* word :
             {"to", "per", "/", "=", "in", "over", "for", "a", "an", "the", "each", "on", "auf"})
            if (says(word, n)) {
                ++n;
                break;
            }
        // "20 stitches on 10 cm", but not "on a 10 inch loom".
        const bool on = said_on_ || says("on") || says("auf");
        if (n == 0 && !said_on_) return {};
        if (says("the", n) || says("an", n)) ++n;
        const auto k = figure(n);
        if (on && (!k || *k > constants::counted_over_most)) return {};
        const auto* u = unit(n + (k ? 1 : 0));
        if (!u || (*u != "cm" && *u != "in")) {
            if (!k || *k != 10) return {};
            return use(n + 1), centimetres(10);  // "22 st to 10"
        }
        const auto over = read_length(fmt::format("{:g} {}", k.value_or(1), *u)).value;
        over_inches_ = *u == "in" && k.value_or(1) == 1;
        return use(n + (k ? 2 : 1)), over;
    }

    bool unit_is_a_preposition(const std::string& u) const {
        if (u != "in" || !says("in")) return false;
        const auto* next = peek(1);
        if (!next) return false;
        for (const auto c : {WordClass::colour, WordClass::fabric, WordClass::material,
                             WordClass::weight, WordClass::technique})
            if (next->is(c)) return true;
        // "he takes a 7 in shoes".
        if (next->is(WordClass::tool) && next->as(WordClass::tool) == "foot") return true;
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
        if (is_of_wraps()) return use(1), made(Of::wraps, [] {});
        const auto* u = unit();
        if (!u && is_a_heddle()) {
            use(1);
            return made(Of::sett, [&] { amount.sett = ends_per_inch(number); });
        }
        if ((!u || unit_is_a_preposition(*u)) &&
            (says("to") || says("per") || says("an") || says("/")))
            if (const auto what = counted_here(); !what.empty()) return counted(what, 0);
        if (!u || unit_is_a_preposition(*u)) return person_or_number();
        if (*u == "ft" && after_size()) return std::move(now_);  // "size 10 feet": of shoes
        // "5 dents per cm", "40 dents on 10 cm"; bare ones are to an inch.
        const bool over = says("per", 1) || says("to", 1) || says("/", 1) || says("on", 1);
        if (*u == "dpi" && over) return counted("ends");
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
        if ((says("x") || says("by") || says("times") || says("auf")) &&
            (figure(1) || (peek(1) && peek(1)->is(WordClass::number)))) {
            now_.amount->times_next = true;
            ++at_;
        }
        return std::move(now_);
    }

    // "it looks like 12 wraps", "5 wraps to the inch": round a ruler; "ten wraps for the choir" are
    // to be made.
    bool is_of_wraps() const {
        if (!says("wraps")) return false;
        if (now_.amount->number >= constants::least_wraps) return !says("for", 1);
        const auto* next = peek(1);
        return next && (next->first_word() == "per" || next->text.starts_with("to the inch"));
    }

    // "the 7.5 heddle", "a 12 reed": ends to an inch, where it is no metric one.
    bool is_a_heddle() const {
        return now_.amount->number <= constants::closest_heddle && (says("heddle") || says("reed"));
    }

    // "woven at 12 to the inch", "knitted at 5 to the inch": what is counted is told by the craft.
    std::string counted_here() const {
        bool stitches = false, ends = false;
        for (const auto& item : items_) {
            const auto* craft = item.is(WordClass::craft) ? &item.as(WordClass::craft) : nullptr;
            const auto* tool = item.is(WordClass::tool) ? &item.as(WordClass::tool) : nullptr;
            stitches = stitches || (craft && *craft == "knitted") ||
                       (tool && (*tool == "gauge" || *tool == "needle"));
            ends = ends || (craft && *craft == "woven") ||
                   (tool && (*tool == "sett" || *tool == "loom")) ||
                   (item.is(WordClass::unit) && item.as(WordClass::unit) == "ends") ||
                   item.first_word() == "warp" || item.last_word() == "warp" ||
                   item.first_word() == "weft" || item.last_word() == "weft";
        }
        return stitches == ends ? "" : stitches ? "st" : "ends";
    }

    // "28 sts and 36 rows to 4 in": the rows are over the same length.
    void pass_rows() {
        const std::size_t from = says("and") || says("&") || says(",") || says("x") ? 1 : 0;
        const auto* rows = unit(from + 1);
        if (figure(from) && rows && *rows == "row") use(from + 2);
    }

    Item counted(const std::string& what, std::size_t units = 1) {
        said_on_ = units > 0 && peek()->last_word() == "on";
        use(units);
        auto& amount = *now_.amount;
        amount.of = Of::other;
        if (what == "st") pass_rows();
        const auto over = take_over();
        if (!over) {
            if (units == 0) amount.of = Of::number;
            return std::move(now_);
        }
        if (what == "st") {
            amount.of = Of::gauge;
            if (over_inches_) amount.unit = "st/in";
            amount.gauge = Gauge::from_si(amount.number / over->si());
        } else if (what == "ends") {
            amount.of = Of::sett;
            if (over_inches_) amount.unit = "epi";
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

    const std::vector<Item>& items_;
    std::size_t at_ = 0;
    bool said_on_ = false;  // "stitches on" is one phrase of the table
    bool over_inches_ = false;
    Item now_;
    std::vector<Item> out_;
};

}  // namespace

std::vector<Item> with_amounts(const std::vector<Item>& items) { return Joiner(items).join(); }

}  // namespace gristwright
