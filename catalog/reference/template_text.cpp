#include "catalog/reference/template_text.hpp"

#include <algorithm>

#include "catalog/reference/choices.hpp"
#include "catalog/reference/own_fabric.hpp"
#include "catalog/text/nearest.hpp"
#include "catalog/text/toml_text.hpp"
#include "engine/caution/caution.hpp"
#include "engine/project/order.hpp"
#include "engine/project/role.hpp"
#include "engine/project/words.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::array<const char*, asked_count> wish_keys{"definition",   "drape",      "softness",
                                                         "wear",         "warmth",     "elasticity",
                                                         "warp_fitness", "consistency"};
const Choices<Spacing> spacings{{"open", Spacing::open},
                                {"scarf", Spacing::scarf},
                                {"general", Spacing::general},
                                {"firm", Spacing::firm}};
const Choices<Loom> looms{{"warped", Loom::warped}, {"pins", Loom::pins}};
const Choices<Grows> growing{{"neither", Grows::neither},
                             {"width", Grows::width},
                             {"length", Grows::length},
                             {"both", Grows::both}};
// What a template by itself may say of this batch's part; the rest is asked for.
const Choices<Role> parts_played{{"weft", Role::weft}, {"colour", Role::colour}};
const Choices<Shape> shapes = [] {
    Choices<Shape> out;
    for (int s = 0; s <= static_cast<int>(Shape::taper); ++s)
        out.emplace_back(words(static_cast<Shape>(s)), static_cast<Shape>(s));
    return out;
}();

const Choices<Follows> followed = [] {
    Choices<Follows> out;
    for (std::size_t f = 0; f < follows_count; ++f)
        out.emplace_back(words(static_cast<Follows>(f)), static_cast<Follows>(f));
    return out;
}();

Length length_of(const std::string& written) { return read_length(written).value; }

// Fringe and loom waste may be none at all.
Length length_or_none(const std::string& written) {
    return written == "0" || written == "0cm" || written == "0 cm" ? Length{} : length_of(written);
}

void check_fabric(TomlTable& from, const Template& t, const PieceTemplate& piece,
                  const Fabrics& fabrics) {
    const bool knitted = t.craft == Craft::knitted;
    if (t.own.knitted_named(piece.fabric) || t.own.weave_named(piece.fabric)) return;
    if (knitted ? fabrics.knitted_named(piece.fabric) != nullptr
                : fabrics.weave_named(piece.fabric) != nullptr)
        return;
    throw from.wrong("fabric", not_one_of(piece.fabric, knitted ? names_of(fabrics.knitted)
                                                                : names_of(fabrics.weaves)));
}

// Where a size goes with a measure of the body that grows less than the article does.
void read_following(TomlTable& from, PieceTemplate& piece) {
    const auto read = [&](const char* key, Follows& to) {
        if (from.has(key)) to = from.word(key, followed);
    };
    read("width_with", piece.follows.width);
    read("length_with", piece.follows.length);
    piece.follows.narrow = piece.follows.width;
    read("narrow_with", piece.follows.narrow);
}

void read_counting(TomlTable& from, PieceTemplate& piece) {
    constexpr int most = 1000;
    auto& c = piece.counting;
    c.multiple = from.whole_or("multiple", 1, 1, most);
    if (from.has("stitches_of")) c.stitches_of = from.text("stitches_of");
    c.part = from.whole_or("part", 1, 1, most);
    c.begins = from.whole_or("begins", 0, 0, most);
    c.by = from.whole_or("by", 0, 0, most);
    c.every = from.whole_or("every", 0, 0, most);
    c.doubles = from.whole_or("doubles", 0, 0, most);
    c.steps = from.whole_or("steps", 0, 0, most);
    if (from.has("along")) c.along = from.text("along");
    if (from.has("within")) c.within = from.text("within");
    if (from.has("turns")) c.turns = from.text("turns");
    if (from.has("gusset_of")) c.gusset_of = from.text("gusset_of");
    if (from.has("underarm")) c.underarm = from.measure("underarm", length_of);
    c.in_rounds = from.flag("in_rounds");
    if (c.begins > 0 && c.by == 0 && c.doubles == 0)
        throw from.wrong("begins", "needs by, the stitches of one shaping row, or doubles");
    if (!(c.turns + c.gusset_of).empty() && piece.outline.shape != Shape::taper)
        throw from.wrong("shape", "a heel's turn and its gusset are tapers");
    if (!c.gusset_of.empty() && c.within.empty())
        throw from.wrong("gusset_of", "needs within, the foot whose rounds it is among");
    if (c.underarm.si() > 0 && piece.outline.shape != Shape::taper)
        throw from.wrong("underarm", "only a yoke has underarms, and a yoke is a taper");
}

// Pieces that a count names.
void check_counted(TomlTable& from, const Template& t) {
    const auto stands = [&](const std::string& name) {
        return std::any_of(t.pieces.begin(), t.pieces.end(),
                           [&](const PieceTemplate& p) { return p.name == name; });
    };
    for (const auto& p : t.pieces) {
        for (const auto* named : {&p.counting.stitches_of, &p.counting.along, &p.counting.within,
                                  &p.counting.turns, &p.counting.gusset_of})
            if (!named->empty() && (!stands(*named) || *named == p.name))
                throw from.wrong("piece", fmt::format("the {} names '{}', which is no other piece",
                                                      p.name, *named));
        if (p.counting.underarm.si() > 0 && !(stands("body") && stands("sleeve")))
            throw from.wrong("piece", "a yoke with underarms joins a body and a sleeve");
    }
}

PieceTemplate read_piece(TomlTable from, const Template& t, const Fabrics& fabrics) {
    PieceTemplate piece;
    piece.name = from.text("name");
    piece.fabric = from.text("fabric");
    check_fabric(from, t, piece, fabrics);
    piece.outline.shape = from.word("shape", shapes);
    if (t.craft == Craft::woven && piece.outline.shape != Shape::rectangle)
        throw from.wrong("shape", "a woven piece is a rectangle");
    piece.outline.width = from.measure("width", length_of);
    if (one_measure(piece.outline.shape))
        piece.outline.length = piece.outline.width;
    else
        piece.outline.length = from.measure("length", length_of);
    if (piece.outline.shape == Shape::taper && !from.has("gusset_of"))  // which comes to a point
        piece.outline.narrow = from.measure("narrow", length_of);
    piece.grows = from.word("grows", growing);
    read_following(from, piece);
    if (t.craft == Craft::knitted) read_counting(from, piece);
    piece.count = from.whole_or("count", 1, 1, 100);
    piece.yarn = from.whole_or("yarn", 1, 1, 2);
    piece.unbroken = from.flag("unbroken");
    piece.narrow_first = from.flag("narrow_first");
    if (piece.narrow_first && piece.outline.shape != Shape::taper)
        throw from.wrong("narrow_first", "only a taper has a narrow end");
    if (from.has("needles")) {
        if (from.text("needles") != "smaller")
            throw from.wrong("needles", "is smaller, or left out where all are the same");
        piece.on_smaller = true;
    }
    from.nothing_else();
    return piece;
}

void read_size(TomlTable from, Template& t) {
    t.measure = from.text("measure");
    t.smallest = from.measure("smallest", length_of);
    t.ideal = from.measure("ideal", length_of);
    t.largest = from.measure("largest", length_of);
    t.fitted = from.flag("fitted");
    if (!(t.smallest <= t.ideal && t.ideal <= t.largest))
        throw from.wrong("ideal", "must lie between smallest and largest");
    from.nothing_else();
}

// The order in which the pieces are worked.
void read_worked(TomlTable& from, Template& t) {
    t.worked = from.texts("worked");
    try {
        order_of_work(t);
    } catch (const Refused& error) {
        throw from.wrong("worked", error.what());
    }
}

// The trade's weight classes by their numbers.
const std::vector<std::string> weights{"lace",   "super fine", "fine",        "light",
                                       "medium", "bulky",      "super bulky", "jumbo"};

void read_weights(TomlTable& from, Template& t) {
    const auto pair = from.texts("weights");
    const auto number = [&](const std::string& name) {
        const auto found = std::find(weights.begin(), weights.end(), name);
        if (found == weights.end()) throw from.wrong("weights", not_one_of(name, weights));
        return static_cast<int>(found - weights.begin());
    };
    if (pair.size() != 2) throw from.wrong("weights", "must be two: the finest and the thickest");
    t.finest = number(pair[0]);
    t.thickest = number(pair[1]);
    if (t.finest > t.thickest) throw from.wrong("weights", "the finest comes first");
}

void read_cloth(TomlTable from, Template& t) {
    read_weights(from, t);
    if (t.craft == Craft::knitted) {
        t.firmness = from.word("firmness", firmnesses);
    } else {
        t.spacing = from.word("spacing", spacings);
        t.finish = from.word("finish", finishes);
        if (from.has("loom")) t.loom = from.word("loom", looms);
        t.fringe = from.measure("fringe", length_or_none);
        if (from.has("hem")) t.hem = from.measure("hem", length_or_none);
        t.loom_waste = from.measure("loom_waste", length_or_none);
        if (t.loom == Loom::pins && (t.fringe.si() > 0 || t.loom_waste.si() > 0))
            throw from.wrong("loom", "on pins there is neither fringe nor loom waste: 0cm each");
    }
    from.nothing_else();
}

void read_wishes(TomlTable from, Template& t) {
    for (std::size_t w = 0; w < asked_count; ++w) {
        if (!from.has(wish_keys[w])) continue;
        const auto pair = from.numbers(wish_keys[w], 2);
        for (const double value : pair)
            if (value < 0 || value > 1)
                throw from.wrong(wish_keys[w], "both numbers are from 0 to 1");
        t.wishes[w] = {pair[0], pair[1]};
    }
    from.nothing_else();
}

void read_words(TomlTable from, Template& t) {
    t.steps = from.texts("steps");
    t.cautions = from.texts("cautions");
    for (const auto& step : t.steps) try {
            check_words(step, t);
        } catch (const Refused& error) {
            throw from.wrong("steps", fmt::format("{} in \"{}\"", error.what(), step));
        }
    if (t.steps.empty()) throw from.wrong("steps", "at least one step is needed");
    from.nothing_else();
}

// A name that the tables have stays theirs.
void read_own(TomlTable& from, Template& t, const Fabrics& fabrics) {
    const auto check = [&](std::string_view key, const std::string& name, bool taken) {
        if (taken) throw from.wrong(key, fmt::format("'{}' stands in the table already", name));
    };
    if (t.craft == Craft::knitted && from.has("stitch"))
        for (auto& table : from.tables("stitch")) {
            t.own.knitted.push_back(read_own_stitch(std::move(table)));
            const auto& name = t.own.knitted.back().name;
            check("stitch", name, fabrics.knitted_named(name) != nullptr);
        }
    if (t.craft == Craft::woven && from.has("weave"))
        for (auto& table : from.tables("weave")) {
            t.own.weaves.push_back(read_own_weave(std::move(table)));
            const auto& name = t.own.weaves.back().name;
            check("weave", name, fabrics.weave_named(name) != nullptr);
        }
}

// A thing for a baby has nothing to catch in or to tighten.
void check_for_baby(TomlTable& from, const Template& t, const Fabrics& fabrics) {
    const auto facts = facts_of(t, fabrics);
    const auto refuse = [&](const std::string& what) {
        throw from.wrong("for_baby", "a thing for a baby has " + what);
    };
    if (facts.contains("loops")) refuse("no holes, floats or loose loops: choose a closed fabric");
    for (const char* word : {"fringe", "tassel", "cord", "ribbon", "tie", "drawstring", "strap"})
        if (facts.contains(std::string(says) + word))
            refuse(fmt::format("no cords of any kind, and a step says '{}'", word));
}

}  // namespace

Template read_template(std::string_view text, const std::string& name, const std::string& file,
                       const Fabrics& fabrics) {
    const auto parsed = parse_plain_toml(text, file);
    TomlTable from(parsed, file, "");
    Template t;
    t.name = name;
    t.origin = file;
    t.title = from.text("title");
    t.article = from.text("article");
    t.about = from.text("about");
    t.craft = from.word("craft", crafts);
    t.skill = from.word("skill", skills);
    t.touches = from.word("touches", touching);
    t.for_baby = from.flag("for_baby");
    t.sample = from.flag("sample");
    read_size(from.table("size"), t);
    read_cloth(from.table("cloth"), t);
    read_own(from, t, fabrics);
    for (auto& piece : from.tables("piece"))
        t.pieces.push_back(read_piece(std::move(piece), t, fabrics));
    check_counted(from, t);
    read_worked(from, t);
    read_wishes(from.table("wants"), t);
    if (from.has("role")) t = in_role(std::move(t), from.word("role", parts_played));
    read_words(from.table("words"), t);
    if (t.for_baby) check_for_baby(from, t, fabrics);
    from.nothing_else();
    return t;
}

}  // namespace gristwright::catalog
