// Counts over a length: wraps, twist, gauge and sett.
#include <fmt/core.h>

#include <array>
#include <cmath>
#include <span>

#include "engine/units/constants.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright {
namespace {

using namespace constants;

constexpr double inch = in_metres(inches(1)), centimetre = in_metres(centimetres(1));

struct InOneWord {
    std::string_view word;
    double over;  // m
};

struct Rate {
    WantedMeasure wanted;
    std::span<const std::string_view> counted;  // what may stand behind the count
    std::span<const InOneWord> in_one_word;     // "wpi"
    const Constant &least, &most;               // per inch
};

constexpr std::string_view wraps_counted[] = {"wraps", "wrap", "w"};
constexpr InOneWord wraps_word[] = {
    {"wpi", inch}, {"w.p.i.", inch}, {"wpcm", centimetre}, {"wpc", centimetre}};
constexpr std::string_view twist_counted[] = {"turns", "turn", "twists", "twist", "t"};
constexpr InOneWord twist_word[] = {
    {"tpi", inch}, {"t.p.i.", inch}, {"tpm", 1}, {"tpcm", centimetre}, {"tpc", centimetre}};
constexpr std::string_view gauge_counted[] = {"stitches", "stitch", "sts", "st", "s"};
constexpr InOneWord gauge_word[] = {{"spi", inch}, {"s.p.i.", inch}};
constexpr std::string_view row_counted[] = {"rows", "row",  "rws", "rw", "rounds",
                                            "rnd",  "rnds", "rds", "r"};
constexpr std::string_view sett_counted[] = {"ends",    "end",   "e",      "picks", "p",
                                             "threads", "warps", "thread", "dents", "dent"};
constexpr InOneWord sett_word[] = {{"epi", inch},        {"e.p.i.", inch},   {"ppi", inch},
                                   {"p.p.i.", inch},     {"d.p.i.", inch},   {"dpi", inch},
                                   {"epcm", centimetre}, {"epc", centimetre}};

constexpr Rate wraps_rate{{"a wraps count", "such as 16wpi or 6.3 wraps/cm"},
                          wraps_counted,
                          wraps_word,
                          fewest_wraps,
                          most_wraps};
constexpr Rate twist_rate{
    {"a twist", "such as 5tpi or 200 turns/m"}, twist_counted, twist_word, least_twist, most_twist};
constexpr Rate gauge_rate{{"a gauge", "such as 28st/10cm or 7 st/in"},
                          gauge_counted,
                          gauge_word,
                          coarsest_gauge,
                          finest_gauge};
constexpr Rate sett_rate{{"a sett", "such as 40/10cm, 10 epi or 12 ends/in"},
                         sett_counted,
                         sett_word,
                         widest_sett,
                         closest_sett};

struct Counted {
    double low = 0, high = 0;  // the same unless a range was typed
    double over = 0;           // m
    bool bare = false;         // without a length it is counted over

    double per_metre() const { return (low + high) / 2 / over; }
};

Unreadable refused(std::string_view text, std::string_view why, const Rate& rate) {
    return {text, why, rate.wanted.right};
}

double count_of(Scanner& from, std::string_view text, const Rate& rate) {
    take_about(from);
    const auto number = from.number(Fractions::mixed);
    if (!number) throw refused(text, "the number is missing or unclear", rate);
    if (!(number->value > 0)) throw refused(text, "it must be more than zero", rate);
    from.any(std::array{"ish", "-ish", "or so"});
    // Thousands of turns to the metre are met; thousands of anything to an inch are not.
    return number->thousands && &rate == &twist_rate ? *number->thousands : number->value;
}

// "in one word" in front or behind: "wpi 14", "14 wpi".
std::optional<double> take_one_word(Scanner& from, const Rate& rate) {
    for (const auto& one : rate.in_one_word)
        if (from.take(one.word)) return one.over;
    return {};
}

bool take_stroke(Scanner& from) {
    return from.any(std::array{"/", "per", "over a", "over", "to the", "to an", "to a", "to", "=",
                               "in a", "in", "on a", "on", "across a", "across"});
}

// "10 cm", "cm", "inch", "4\"": what it is counted over, behind the stroke.
double take_over(Scanner& from, std::string_view text, const Rate& rate) {
    double count = 1;
    const bool said = !from.done() && unit_word(from.next_word()) == nullptr;
    if (said) {
        const auto number = from.number(Fractions::mixed);
        if (!number || !(number->value > 0))
            throw refused(text, "the length it is counted over is unclear", rate);
        count = number->value;
    }
    const auto* unit = take_unit(from);
    if (!unit || unit->dimension != Dimension::length)
        throw refused(text, "the length it is counted over is unclear", rate);
    return count * unit->si;
}

void check(const Counted& counted, std::string_view text, const Rate& rate) {
    const double per_inch = counted.per_metre() * inch;
    if (per_inch < rate.least || per_inch > rate.most)
        throw refused(text,
                      fmt::format("{} lies between {} and {} per inch", rate.wanted.name,
                                  plainly(rate.least), plainly(rate.most)),
                      rate);
}

// The count, its range, and what is counted. `from` stands at the stroke or at a word like wpi.
Counted take_count(Scanner& from, std::string_view text, const Rate& rate) {
    Counted out;
    const bool between = from.take("between");
    out.low = out.high = count_of(from, text, rate);
    auto ahead = from;
    // "14 to 15", but "14 to the inch"
    if (ahead.sign('-') || ahead.take("to") || (between && ahead.take("and")))
        if (auto probe = ahead; probe.number(Fractions::mixed)) {
            from = ahead;
            out.high = count_of(from, text, rate);
        }
    if (out.high < out.low) throw refused(text, "the range runs backwards", rate);
    return out;
}

// "gauge: 22 st/10cm", "sett 12 epi": what is wanted here anyway.
void take_label(Scanner& from) {
    constexpr std::array labels{"gauge",        "tension", "sett", "twist",
                                "rigid heddle", "heddle",  "reed"};
    if (from.any(labels)) from.any(std::array{":", "="});
}

Counted take_rate(Scanner& from, std::string_view text, const Rate& rate) {
    take_label(from);
    if (const auto over = take_one_word(from, rate)) {
        from.any(std::array{":", "="});
        auto out = take_count(from, text, rate);
        out.over = *over;
        return out;
    }
    auto out = take_count(from, text, rate);
    if (const auto over = take_one_word(from, rate)) {
        out.over = *over;
        return out;
    }
    from.sign('-');  // "10-dent"
    from.any(rate.counted);
    from.sign('.');
    if (from.done() || !take_stroke(from)) {
        out.bare = true;
        return out;
    }
    out.over = take_over(from, text, rate);
    return out;
}

[[noreturn]] void refuse_rest(const Scanner& from, std::string_view text, const Rate& rate) {
    const auto other = measured_by(from.next_word());
    throw refused(text,
                  other.empty()
                      ? fmt::format("'{}' is left over", shown(from.rest()))
                      : fmt::format("this is {}, and {} is wanted here", other, rate.wanted.name),
                  rate);
}

Counted read_whole(std::string_view text, const Rate& rate) {
    const auto typed = plain(text);
    Scanner from(typed);
    const auto out = take_rate(from, text, rate);
    if (!from.done()) refuse_rest(from, text, rate);
    if (!out.bare) check(out, text, rate);
    return out;
}

}  // namespace

WrapsCount read_wraps_count(std::string_view text) {
    auto counted = read_whole(text, wraps_rate);
    const bool bare = counted.bare;
    if (bare) counted.over = inch;
    check(counted, text, wraps_rate);
    return {Wraps::from_si(counted.per_metre()), metres(counted.over), bare};
}

Wraps read_wraps(std::string_view text) { return read_wraps_count(text).count; }

namespace {

char take_direction(Scanner& from) {
    for (const char direction : {'s', 'z'})
        if (const std::string_view word(&direction, 1); from.take(word)) {
            from.sign('-');
            from.any(std::array{"twist", "ply", "plied"});
            from.sign(',');
            return direction == 's' ? 'S' : 'Z';
        }
    return 0;
}

std::optional<double> take_degrees(Scanner& from) {
    auto probe = from;
    take_about(probe);
    const auto number = probe.number(Fractions::mixed);
    if (!number || !probe.any(std::array{"degrees", "degree", "deg.", "deg"})) return {};
    from = probe;
    return number->value;
}

}  // namespace

TwistReading read_twist_or_angle(std::string_view text) {
    const auto typed = plain(text);
    Scanner from(typed);
    TwistReading out;
    out.direction = take_direction(from);
    out.degrees = take_degrees(from);
    if (out.degrees && (*out.degrees < 1 || *out.degrees > 80))
        throw refused(text, "a ply lies at 1 to 80 degrees to its yarn", twist_rate);
    if (!out.degrees) {
        const auto counted = take_rate(from, text, twist_rate);
        if (counted.bare && from.done())
            throw Unclear(text, "turns per inch, per centimetre or per metre",
                          "such as 5tpi or 200 turns/m");
        if (counted.bare) throw refused(text, "it is no count of turns", twist_rate);
        check(counted, text, twist_rate);
        out.twist = Twist::from_si(counted.per_metre());
    }
    from.any(std::array{"twist", "in the ply", "in ply", "plied"});
    from.sign(',');
    if (!out.direction) out.direction = take_direction(from);
    if (!from.done())
        throw refused(text, fmt::format("'{}' is left over", shown(from.rest())), twist_rate);
    return out;
}

Twist read_twist(std::string_view text) {
    const auto out = read_twist_or_angle(text);
    if (!out.twist) throw refused(text, "an angle is no count of turns", twist_rate);
    return *out.twist;
}

namespace {

[[noreturn]] void ask_gauge_over(std::string_view text) {
    throw Unclear(text, "stitches to 10 cm (4 in) or to the inch",
                  "such as 22st/10cm or 5.5 st/in");
}

// " x 30 rows" behind the stitches.
std::optional<double> take_rows(Scanner& from, std::string_view text) {
    if (!from.any(std::array{"x", "by", "and", "&", "+", ","})) return {};
    const double rows = count_of(from, text, gauge_rate);
    from.any(row_counted);
    from.sign('.');
    return rows;
}

}  // namespace

GaugeReading read_gauge_and_rows(std::string_view text) {
    const auto typed = plain(text);
    Scanner from(typed);
    auto stitches = take_rate(from, text, gauge_rate);
    if (stitches.bare && from.any(row_counted))
        throw refused(text, "this counts rows, and stitches are wanted", gauge_rate);
    const auto rows = take_rows(from, text);
    if (stitches.bare && from.done()) ask_gauge_over(text);
    if (stitches.bare && rows && take_stroke(from))
        stitches.over = take_over(from, text, gauge_rate);
    double rows_over = stitches.over;
    // One length for both stands behind both: "over 4 in on 4 mm" counts no rows over a needle.
    if (rows && !stitches.bare && !from.done() && take_stroke(from))
        rows_over = take_over(from, text, gauge_rate);
    from.any(std::array{"square", "squared", "sq.", "sq", "swatch"});  // as wide as it is high
    if (!from.done()) refuse_rest(from, text, gauge_rate);
    check(stitches, text, gauge_rate);
    GaugeReading out{Gauge::from_si(stitches.per_metre()), {}};
    if (rows) out.rows = Gauge::from_si(*rows / rows_over);
    return out;
}

Gauge read_gauge(std::string_view text) { return read_gauge_and_rows(text).stitches; }

namespace {

// "30/10", as metric heddles are called: to 10 cm.
std::optional<double> metric_name(std::string_view typed) {
    Scanner from(typed);
    from.take("metric");
    const auto count = from.number(Fractions::none);
    if (count && from.sign('/') && from.take("10") && from.done()) return count->value * 10;
    return {};
}

Sett checked_sett(double per_metre, std::string_view text) {
    check({per_metre, per_metre, 1, false}, text, sett_rate);
    return Sett::from_si(per_metre);
}

}  // namespace

Sett read_sett(std::string_view text) {
    const auto typed = plain(text);
    if (const auto named = metric_name(typed)) return checked_sett(*named, text);
    const auto counted = read_whole(text, sett_rate);
    if (counted.bare) throw Unclear(text, "to the inch or to 10 cm", "such as 10 epi or 40/10cm");
    return Sett::from_si(counted.per_metre());
}

Sett read_heddle(std::string_view text) {
    const auto typed = plain(text);
    Scanner from(typed);
    const auto count = from.number(Fractions::none);
    from.sign('-');
    const bool dents = count && count->value > 0 && from.any(std::array{"dents", "dent"});
    from.any(std::array{"heddle", "reed"});
    if (dents && from.done())
        return checked_sett(count->value / inch, text);  // the trade's dent heddles are by the inch
    return read_sett(text);
}

}  // namespace gristwright
