#include "catalog/reference/tables.hpp"

#include <array>
#include <charconv>
#include <set>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/spelt_out.hpp"
#include "catalog/text/table_row.hpp"
#include "engine/suggestion/lexicon.hpp"
#include "engine/suggestion/taken.hpp"
#include "engine/units/failure.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright::catalog {
namespace {

WeightClass weight_class(const Row& row) {
    return {row.whole("number"),        row.text("name"),          row.maybe("st_per_4in_lo"),
            row.maybe("st_per_4in_hi"), row.maybe("needle_mm_lo"), row.maybe("needle_mm_hi"),
            row.maybe("wpi_lo"),        row.maybe("wpi_hi"),       row.maybe("yd_per_lb_lo"),
            row.maybe("yd_per_lb_hi"),  row.text("source")};
}

WoolGrade wool_grade_row(const Row& row) {
    return {row.text("blood"),
            row.text("count"),
            microns(row.number("micron_lo")),
            microns(row.number("micron_hi")),
            microns(row.number("max_sd_micron")),
            row.text("source")};
}

TraitRow trait_row(const Row& row) {
    TraitRow out;
    out.trait = row.word("trait", trait_named);
    out.driver = row.word("driver", driver_named);
    out.from = row.number("from");
    out.to = row.number("to");
    if (out.from == out.to) throw row.wrong("from and to must differ");
    out.adds = row.number("adds");
    out.more = row.text("more");
    out.less = row.text("less");
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    return out;
}

BodySize body_size_row(const Row& row) {
    BodySize out{row.text("who"),
                 row.text("measure"),
                 centimetres(row.number("low_cm")),
                 centimetres(row.number("mid_cm")),
                 centimetres(row.number("high_cm")),
                 row.word("mark", mark_named),
                 row.text("source")};
    if (body_named(out.who) != out.who) throw row.wrong("who: nobody is called so");
    if (!(Length{} < out.low && out.low <= out.mid && out.mid <= out.high))
        throw row.wrong("low, mid and high must rise");
    return out;
}

// "cables/", "/2/2 twill": on the needles and on the loom; empty is allowed on one side.
bool names_fabric(const std::string& means, const Fabrics& fabrics) {
    const auto stroke = means.find('/');
    if (stroke == std::string::npos || means.size() < 2) return false;
    const auto knitted = means.substr(0, stroke), woven = means.substr(stroke + 1);
    return (knitted.empty() || fabrics.knitted_named(knitted)) &&
           (woven.empty() || fabrics.weave_named(woven));
}

// What is wrong with a meaning of that class; nullptr: nothing.
const char* wrong_meaning(WordClass of, std::string means, const Fabrics& fabrics) {
    const auto without_last = [&](std::string_view end) {
        if (means.size() > end.size() && means.substr(means.size() - end.size()) == end)
            means.resize(means.size() - end.size());
    };
    switch (of) {
        case WordClass::article:
            without_last("&");
            if (means.empty()) return "an article means a kind, or '?'";
            if (const auto at = means.find('@');
                at != std::string::npos && !wearer_named(means.substr(at + 1)))
                return "there is no such wearer";
            return nullptr;
        case WordClass::fabric:
            return names_fabric(means, fabrics)
                       ? nullptr
                       : "a fabric stands in the table of knitted fabrics or of weaves";
        case WordClass::role:
            return yarn_role_named(means) ? nullptr : "there is no such role";
        case WordClass::person:
            without_last(" for");
            for (const std::string_view body : {":man", ":woman", ":newborn"}) without_last(body);
            return wearer_named(means) || means == "kin" ? nullptr : "there is no such wearer";
        case WordClass::topic:
            without_last("?");
            without_last("!");
            return topic_named(means) ? nullptr : "there is no such topic";
        case WordClass::tone:
            return is_tone(means) ? nullptr : "there is no such tone";
        default:
            return nullptr;
    }
}

// "a pair of", "set of four", "a trio of".
bool counts_things(const std::string& number) {
    return number.find("pair") != std::string::npos || number.find("set ") != std::string::npos ||
           number.find("trio") != std::string::npos;
}

std::vector<std::string> words_of_row(const Row& row) {
    try {
        return spelt_out(row.text("word"));
    } catch (const Refused& error) {
        throw row.wrong(fmt::format("word: {}", error.what()));
    }
}

Density density_of(const std::string& kind, const std::string& category) {
    using namespace constants;
    if (kind == "silk") return grams_per_cm3(silk_density);
    if (kind == "plant")
        return grams_per_cm3(category == "seed hair" ? cotton_density : bast_density);
    if (category == "regenerated cellulose") return grams_per_cm3(viscose_density);
    if (category == "synthetic") return grams_per_cm3(nylon_density);
    return grams_per_cm3(wool_density);
}

// "0.62", or "0.35-0.89" where a group or disagreeing sources leave a range.
double level_end(const Row& row, std::string_view text) {
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc{} || read.ptr != text.data() + text.size() || value < 0 || value > 1)
        throw row.wrong(fmt::format("'{}' is no level from 0 to 1", text));
    return value;
}

std::optional<Level> level(const Row& row, Behaviour which) {
    const std::string column(words(which));
    const auto& text = row.text(column);
    if (text.empty()) return {};
    const auto dash = text.find('-');
    const auto low = level_end(row, std::string_view(text).substr(0, dash));
    const auto high =
        dash == std::string::npos ? low : level_end(row, std::string_view(text).substr(dash + 1));
    if (high < low) throw row.wrong(fmt::format("{}: '{}' runs downwards", column, text));
    const auto mark = row.word(column + "_mark", mark_named);
    if (mark == Mark::read || mark == Mark::cited)
        throw row.wrong(column + ": no page has levels from 0 to 1: derived at best");
    return Level{low, high, mark};
}

// The mark that "from memory - unverified (diameter); upper staple read" begins with.
std::optional<Mark> how_known(std::string_view said) {
    for (const auto mark : {Mark::read, Mark::cited, Mark::derived, Mark::memory, Mark::judgement})
        if (said.substr(0, words(mark).size()) == words(mark)) return mark;
    return {};
}

FibrePart fibre(const Row& row) {
    FibrePart out;
    out.name = row.text("name");
    out.kind = row.text("kind");
    out.category = row.text("category");
    if (out.category == "silk") out.kind = "silk";
    const auto density = row.maybe("density");
    out.density = density ? grams_per_cm3(*density) : density_of(out.kind, out.category);
    for (std::size_t b = 0; b < behaviour_count; ++b)
        out.behaviour.levels[b] = level(row, static_cast<Behaviour>(b));
    const auto read = [&](std::string_view column, double unit) -> std::optional<Length> {
        const auto value = row.maybe(column);
        if (!value) return {};
        return metres(*value * unit);
    };
    out.micron_low = read("micron_lo", 1e-6);
    out.micron_high = read("micron_hi", 1e-6);
    out.staple_low = read("staple_lo_mm", 1e-3);
    out.staple_high = read("staple_hi_mm", 1e-3);
    out.felting = row.text("felting");
    out.source = row.text("source");
    out.mark = row.word("how_known", how_known);
    return out;
}

}  // namespace

std::optional<Mark> mark_named(std::string_view word) {
    if (word == "common practice") return Mark::common_practice;
    for (const auto mark : {Mark::read, Mark::cited, Mark::derived, Mark::memory, Mark::judgement})
        if (words(mark) == word) return mark;
    return {};
}

std::vector<WeightClass> read_weight_classes(const std::string& text, const std::string& file) {
    return read_rows(text, file, weight_class, {"number"});
}

std::vector<WoolGrade> read_wool_grades(const std::string& text, const std::string& file) {
    return read_rows(text, file, wool_grade_row);
}
std::vector<TraitRow> read_traits(const std::string& text, const std::string& file) {
    return read_rows(text, file, trait_row);
}
std::vector<BodySize> read_body_sizes(const std::string& text, const std::string& file) {
    return read_rows(text, file, body_size_row, {"who", "measure"});
}
std::string read_words(const std::string& text, const std::string& file, const Fabrics& fabrics,
                       SpokenWords& spoken) {
    const auto csv = read_csv(text, file);
    std::string out;
    std::set<std::pair<std::string, WordClass>> seen;
    for (const auto& line : csv.rows) {
        const Row row(csv, line, file);
        const auto of = row.word("class", word_class_named);
        const auto& means = row.text("means");
        if (const auto* wrong = wrong_meaning(of, means, fabrics)) throw row.wrong(wrong);
        for (const auto& word : words_of_row(row)) {
            if (!seen.emplace(word, of).second)
                throw row.wrong(fmt::format("'{}' stands twice in its class", word));
            if (of == WordClass::number && !counts_things(word))
                spoken.add("number", word, {means, ""});
            if (of == WordClass::tool && means == "letters")
                spoken.add("size letters", word, {"letters", ""});
            out += word + '\t' + row.text("class") + '\t' + means + '\n';
        }
    }
    return out;
}
std::vector<FibrePart> read_fibres(const std::string& text, const std::string& file) {
    return read_rows(text, file, fibre, {"name"});
}

}  // namespace gristwright::catalog
