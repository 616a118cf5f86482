#include "catalog/typed/amount_reading.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "catalog/typed/headings.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/constants.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view right_amount = "such as 440yd, 400m or 150g";
constexpr WantedMeasure wanted{"an amount of yarn", right_amount};

// A pattern's "at least" and "up to" both say what to have at hand.
constexpr std::array before_amount{
    "up to",     "at most",       "at least",     "no more than", "more than", "under",
    "less than", "not more than", "over",         "max.",         "max",       "maximum",
    "min.",      "min",           "minimum",      "between",      "from",      "needs",
    "takes",     "uses",          "<=",           ">=",           "<",         ">",
    "total",     "total of",      "approximately"};
constexpr std::array behind{"+",       "or so",  "or more",  "or less",    "max.",    "max",
                            "maximum", "min.",   "min",      "minimum",    "total",   "in total",
                            "needed",  "in all", "of yarn",  "altogether", "yarn",    "each",
                            "(ish)",   "ish",    "(approx)", "(approx.)",  "(about)", "ball",
                            "skein",   "hank",   "cake",     "cone",       "bobbin",  "bump",
                            "ea.",     "ea",     "apiece"};
constexpr std::array balls{"balls",   "ball",   "skeins", "skein",   "hanks",      "hank",  "cakes",
                           "cake",    "cones",  "cone",   "bobbins", "bobbin",     "bumps", "bump",
                           "lengths", "pieces", "bits",   "minis",   "mini skeins"};
// What a part of the whole is for.
constexpr std::array parts{"mc",
                           "cc",
                           "main colour",
                           "main color",
                           "main",
                           "contrast",
                           "warp",
                           "weft",
                           "contrast colour",
                           "contrast color",
                           "ground",
                           "pattern",
                           "in the warp",
                           "in the weft",
                           "for warp",
                           "for weft",
                           "for the warp",
                           "for the weft",
                           ":"};

// "300+ yd", "300 + yd" is what to have at hand, as "at least 300 yd" is.
std::string without_plus(std::string typed) {
    for (auto at = typed.find('+'); at != std::string::npos; at = typed.find('+', at + 1))
        if (const auto end = typed.find_last_not_of(" +", at);
            end != std::string::npos && ascii::is_digit(typed[end]))
            typed[at] = ' ';
    return plain(typed);
}

class AmountReader {
  public:
    explicit AmountReader(const std::string& text)
        : text_(text), plain_(without_plus(plain(text))), from_(plain_) {}

    AmountOfYarn read() {
        if (bare_number(text_))
            throw Refused(
                fmt::format("cannot read '{0}': it lacks its unit; write {0}yd, {0}m or, "
                            "as a mass, {0}g",
                            shown(text_)));
        while (from_.any(before_amount)) {
        }
        bool in_parts = take_part();
        const double times = take_times();
        auto first = take_range();
        in_parts = take_part() || in_parts;
        if (times == 1) take_sum(in_parts, first);
        const bool of_several = from_.any(balls) && times == 1 && plain_.back() == 's';
        if (of_several) ask_how_much();
        while (from_.any(behind)) {
        }
        const auto again = take_again(first);
        while (from_.any(behind) || from_.sign(')')) {
        }
        if (!from_.done())
            throw Unreadable(text_, fmt::format("'{}' is left over", shown(from_.rest())),
                             right_amount);
        const bool second = again && first.unit.dimension == Dimension::mass &&
                            again->unit.dimension == Dimension::length;
        return amount(second ? *again : first, times);
    }

  private:
    [[noreturn]] void ask_how_much() const {
        throw Unclear(text_, "any amount, since it does not say how much is in one",
                      "such as 3 x 50g, or 440yd");
    }

    // "3 x ", "3 balls of ", and the 3 of "3 50g balls".
    double take_times() {
        auto probe = from_;
        const auto number = probe.number(Fractions::none);
        if (number && number->step == 1 && probe.any(std::array{"x", "*"}))
            return from_ = probe, number->value;
        if (number && probe.any(balls)) {
            if (!probe.any(std::array{"of", "@", "at", "x", "*", "each"}) &&
                !(probe.sign('(') && plain_.find("each") != std::string::npos))
                ask_how_much();
            return from_ = probe, number->value;
        }
        return take_counted_balls();
    }

    double take_counted_balls() {
        const auto rest = from_.rest();
        const auto space = rest.find(' ');
        const bool counted = space != std::string_view::npos && space < 3 &&
                             std::all_of(rest.begin(), rest.begin() + static_cast<long>(space),
                                         [](char c) { return c >= '0' && c <= '9'; });
        if (!counted) return 1;
        Scanner probe(rest.substr(space + 1));
        const auto size = probe.number(Fractions::none);
        if (!size || !take_unit(probe) || !probe.any(balls)) return 1;
        Scanner whole(rest);
        const auto joined = whole.number(Fractions::none);
        const auto count = Scanner(rest.substr(0, space)).number(Fractions::none);
        if (!count) return 1;
        if (joined && joined->value > size->value)
            throw Unclear(text_,
                          fmt::format("{} x {}, or {} in one", plainly(count->value),
                                      plainly(size->value), plainly(joined->value)),
                          "such as 3 x 50g");
        from_ = Scanner(rest.substr(space + 1));
        return count->value;
    }

    static bool take_to(Scanner& from) {
        return from.sign('-') || from.take("to") || from.take("and");
    }

    bool take_part() {
        bool taken = false;
        while (from_.any(parts)) taken = true;
        return taken;
    }

    // "500 yd MC, 120 yd CC", "280 yd + 190 yd": one amount in its parts.
    void take_sum(bool in_parts, Measure& sum) {
        for (;;) {
            auto ahead = from_;
            const bool plus = ahead.any(std::array{"+", "plus", "&"});
            if (!plus && !(in_parts && ahead.any(std::array{",", "and", ";", "/"}))) return;
            while (ahead.any(parts)) {
            }
            if (auto number = ahead; !number.number(Fractions::any)) return;
            from_ = ahead;
            const auto next = checked(take_measure(from_, text_, wanted));
            if (next.unit.dimension != sum.unit.dimension)
                throw Unreadable(text_, "a length and a mass make no sum", right_amount);
            sum.si += next.si;
            take_part();
        }
    }

    // The upper end: what one is asked to have.
    Measure take_range() {
        auto probe = from_;
        take_about(probe);
        const auto low = probe.number(Fractions::any);
        if (low && take_to(probe)) {
            from_ = probe;
            const auto high = checked(take_measure(from_, text_, wanted));
            if (low->value * high.unit.si >= high.si) refuse_order();
            return high;
        }
        const auto one = checked(take_measure(from_, text_, wanted));
        auto ahead = from_;
        if (!take_to(ahead)) return one;
        if (auto number = ahead; !number.number(Fractions::any)) return one;
        from_ = ahead;
        const auto two = checked(take_measure(from_, text_, wanted));
        if (two.unit.dimension != one.unit.dimension || two.si <= one.si) refuse_order();
        return two;
    }

    [[noreturn]] void refuse_order() const {
        throw Unreadable(text_, "the range runs backwards", "such as 150-200yd");
    }

    Measure checked(const Measure& m) const {
        if (m.other)
            throw Unclear(text_, fmt::format("{} or {}", m.way(m.si), m.way(*m.other)),
                          "without the mark");
        constexpr double foot = in_metres(inches(12));
        if (m.unit.dimension == Dimension::length && m.unit.si < foot)
            throw Unreadable(text_, "this is a size, and an amount of yarn is wanted here",
                             right_amount);
        return m;
    }

    // "4 oz (440 yd)", "440 yd / 400 m": the same amount in another way.
    std::optional<Measure> take_again(const Measure& first) {
        const bool stroke = from_.sign('/');
        if (!stroke && !from_.any(std::array{"(", "=", ",", "or"})) return {};
        const auto again = checked(take_measure(from_, text_, wanted));
        const bool alike = again.unit.dimension == first.unit.dimension;
        if (!alike && stroke)
            throw Unclear(text_, "an amount of yarn, or a grist", "such as 440yd, or 150g");
        if (alike && std::abs(again.si / first.si - 1) > constants::label_rounding)
            throw Unclear(text_, "two amounts, which are not the same", "once");
        return again;
    }

    static AmountOfYarn amount(const Measure& m, double times) {
        if (m.unit.dimension == Dimension::length) return {metres(m.si * times), {}};
        return {{}, kilograms(m.si * times)};
    }

    const std::string& text_;
    std::string plain_;
    Scanner from_;
};

// "1000 (1150, 1300) yd", "S 800 M 950 L 1100 m".
bool is_by_size(const std::string& typed) {
    const auto bracket = typed.find('(');
    const bool listed = bracket != std::string::npos && bracket > 0 &&
                        typed.find(',', bracket) != std::string::npos &&
                        bare_number(typed.substr(0, bracket));
    Scanner from(typed);
    int sizes = 0;
    constexpr std::array letters{"xxl", "xs", "xl", "s", "m", "l", "small", "medium", "large"};
    while (from.any(letters)) {
        from.sign(':');
        if (!from.number(Fractions::any)) break;
        ++sizes;
        if (auto unit = from; take_unit(unit) && (unit.done() || !ascii::is_digit(unit.rest()[0])))
            from = unit;
        from.any(std::array{",", ";", "/"});
    }
    return listed || sizes > 1;
}

}  // namespace

AmountOfYarn read_amount(const std::string& text) {
    try {
        return AmountReader(text).read();
    } catch (const Unclear&) {
        throw;
    } catch (const Unreadable& why) {
        const auto typed = plain(text);
        if (is_by_size(typed))
            throw Unclear(text, "an amount for each of several sizes",
                          "for the one that is meant, such as 950m");
        for (const std::string_view ball : balls)
            if (const auto at = typed.find(ball); at != std::string::npos && at > 0)
                throw Unclear(text, "any amount, since it does not say how much is in one",
                              "such as 3 x 50g, or 440yd");
        if (typed.find_first_of("0123456789") != std::string::npos) throw;
        throw Refused(fmt::format("'{}' is neither a length nor a mass; write it {}", shown(text),
                                  right_amount));
    }
}

}  // namespace gristwright::catalog
