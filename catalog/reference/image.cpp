#include "catalog/reference/image.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/core.h>
#include <sqlite3.h>

#include <algorithm>
#include <charconv>
#include <map>
#include <stdexcept>

#include "catalog/reference/image_schema.hpp"

namespace gristwright::catalog {
namespace {

// Binds the values in order and runs the statement once.
class Insert {
  public:
    Insert(SQLite::Database& db, const std::string& table, int columns)
        : statement_(db, fmt::format("INSERT INTO {} VALUES ({}?)", table, places(columns - 1))) {}

    template <class... Values>
    void operator()(const Values&... values) {
        int at = 0;
        (put(++at, values), ...);
        statement_.exec();
        statement_.reset();
        statement_.clearBindings();
    }

  private:
    static std::string places(int count) {
        std::string out;
        while (count-- > 0) out += "?,";
        return out;
    }
    void put(int at, const std::optional<double>& v) {
        if (v) statement_.bind(at, *v);
    }
    void put(int at, const std::optional<Length>& v) {
        if (v) statement_.bind(at, v->si());
    }
    template <class Whole>
        requires std::is_enum_v<Whole> || std::is_same_v<Whole, bool>
    void put(int at, const std::optional<Whole>& v) {
        if (v) statement_.bind(at, static_cast<int>(*v));
    }
    void put(int at, Length v) { statement_.bind(at, v.si()); }
    void put(int at, double v) { statement_.bind(at, v); }
    void put(int at, const std::string& v) { statement_.bind(at, v); }
    template <class Whole>
        requires std::is_enum_v<Whole> || std::is_integral_v<Whole>
    void put(int at, Whole v) {
        statement_.bind(at, static_cast<int>(v));
    }

    SQLite::Statement statement_;
};

// Reads the columns of the current row in order.
class Columns {
  public:
    explicit Columns(SQLite::Statement& row) : row_(row) {}

    template <class T>
    Columns& operator>>(T& out) {
        take(row_.getColumn(at_++), out);
        return *this;
    }

  private:
    static void take(const SQLite::Column& c, double& out) { out = c.getDouble(); }
    static void take(const SQLite::Column& c, std::string& out) { out = c.getString(); }
    static void take(const SQLite::Column& c, Length& out) { out = metres(c.getDouble()); }
    static void take(const SQLite::Column& c, Density& out) {
        out = Density::from_si(c.getDouble());
    }
    template <class T>
    static void take(const SQLite::Column& c, std::optional<T>& out) {
        if (c.isNull()) return out.reset();
        T value{};
        take(c, value);
        out = value;
    }
    template <class Whole>
        requires std::is_enum_v<Whole> || std::is_integral_v<Whole>
    static void take(const SQLite::Column& c, Whole& out) {
        out = static_cast<Whole>(c.getInt());
    }

    SQLite::Statement& row_;
    int at_ = 0;
};

template <class Row, class Read>
std::vector<Row> read_all(SQLite::Database& db, const std::string& table, Read read) {
    SQLite::Statement query(db, "SELECT * FROM " + table);
    std::vector<Row> out;
    while (query.executeStep()) {
        Columns columns(query);
        read(columns, out.emplace_back());
    }
    return out;
}

void write_tables(SQLite::Database& db, const Catalogue& c) {
    Insert weight_class(db, "weight_class", 11);
    for (const auto& r : c.yarn.classes)
        weight_class(r.number, r.name, r.stitches_4in_low, r.stitches_4in_high, r.needle_mm_low,
                     r.needle_mm_high, r.wpi_low, r.wpi_high, r.yd_per_lb_low, r.yd_per_lb_high,
                     r.source);
    Insert grade(db, "wool_grade", 6);
    for (const auto& r : c.yarn.grades)
        grade(r.blood, r.count, r.low, r.high, r.most_deviation, r.source);
    Insert trait_row(db, "trait_row", 9);
    for (const auto& r : c.yarn.traits)
        trait_row(r.trait, r.driver, r.from, r.to, r.adds, r.more, r.less, r.mark, r.source);
    Insert knitted(db, "knitted_fabric", 18);
    for (const auto& r : c.fabrics.knitted)
        knitted(r.name, r.metres, r.metres_low, r.metres_high, r.stitches, r.rows, r.growth,
                r.growth_low, r.growth_high, r.stitch_repeat, r.row_repeat, r.definition,
                r.openness, r.loose_loops, r.mark, r.source, r.chart, r.longest_strand);
    Insert weave(db, "weave", 17);
    for (const auto& r : c.fabrics.weaves)
        weave(r.name, r.interlacing.threads, r.interlacing.intersections, r.sett, r.picks,
              r.warp_float, r.weft_float, r.shafts, r.take_up, r.most_in_hole, r.end_repeat,
              r.pick_repeat, r.definition, r.loose_loops, r.mark, r.source, r.chart);
    Insert body(db, "body_size", 7);
    for (const auto& r : c.bodies) body(r.who, r.measure, r.low, r.mid, r.high, r.mark, r.source);
    Insert words(db, "words", 1);
    words(c.words);
    Insert spoken(db, "spoken", 4);
    for (const auto& [list, words] : c.spoken.lists)
        for (const auto& [word, said] : words) spoken(list, word, said.means, said.note);
    Insert fibre(db, "fibre", 10);
    for (const auto& r : c.fibres)
        fibre(r.name, r.kind, r.category, r.density.si(), r.micron_low, r.micron_high, r.staple_low,
              r.staple_high, r.felting, r.source);
    Insert behaviour(db, "fibre_behaviour", 5);
    for (const auto& r : c.fibres)
        for (std::size_t b = 0; b < behaviour_count; ++b)
            if (const auto& level = r.behaviour.levels[b])
                behaviour(r.name, b, level->low, level->high, level->mark);
}

// Levels from 0 to 1 as text, four places each: one column instead of many rows.
std::string levels_text(const std::vector<double>& levels) {
    std::string out;
    for (const double level : levels) out += fmt::format("{:.4f} ", level);
    return out;
}

std::vector<double> levels_of(std::string_view text) {
    std::vector<double> out;
    while (!text.empty()) {
        double level = 0;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), level);
        if (read.ec != std::errc{}) throw std::runtime_error("the catalogue's standing is damaged");
        out.push_back(level);
        text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()) + 1);
    }
    return out;
}

std::string joined(const Listed& listed) {
    std::string out = listed.none_of ? "!" : "";
    for (const auto& word : listed.words) out += word + "|";
    return out;
}

Listed listed(std::string_view text) {
    Listed out;
    out.none_of = text.starts_with('!');
    if (out.none_of) text.remove_prefix(1);
    while (!text.empty()) {
        const auto bar = text.find('|');
        out.words.emplace_back(text.substr(0, bar));
        text.remove_prefix(bar + 1);
    }
    return out;
}

void write_needs(SQLite::Database& db, const Catalogue& c) {
    Insert need(db, "need", 14);
    for (const auto& r : c.needs)
        need(joined(r.article), joined(r.fabric), r.craft, r.touches, r.hard_fulled, r.for_baby,
             r.demand.trait, r.demand.enough, r.demand.lacking, r.demand.left, r.demand.reason,
             r.demand.remedy, r.demand.mark, r.demand.source);
    Insert ordinary(db, "ordinary_yarn", 5);
    for (const auto& r : c.ordinary)
        ordinary(r.fibre, r.preparation, r.draw, r.plies, r.metres_per_gram);
    Insert standing(db, "standing", 2);
    for (const auto& t : c.templates) standing(t.name, levels_text(t.calling->levels));
}

void read_needs(SQLite::Database& db, Catalogue& c) {
    c.needs = read_all<DemandFor>(db, "need", [](Columns& in, DemandFor& r) {
        std::string articles, fabrics;
        auto& d = r.demand;
        in >> articles >> fabrics >> r.craft >> r.touches >> r.hard_fulled >> r.for_baby >>
            d.trait >> d.enough >> d.lacking >> d.left >> d.reason >> d.remedy >> d.mark >>
            d.source;
        r.article = listed(articles);
        r.fabric = listed(fabrics);
    });
    c.ordinary = read_all<OrdinaryYarn>(db, "ordinary_yarn", [](Columns& in, OrdinaryYarn& r) {
        in >> r.fibre >> r.preparation >> r.draw >> r.plies >> r.metres_per_gram;
    });
}

void write_cautions(SQLite::Database& db, const std::vector<Caution>& cautions) {
    Insert caution(db, "caution", 6);
    for (const auto& r : cautions) caution(r.when, r.text, r.brief, r.harm, r.mark, r.source);
}

std::vector<Caution> read_cautions(SQLite::Database& db) {
    return read_all<Caution>(db, "caution", [](Columns& in, Caution& r) {
        in >> r.when >> r.text >> r.brief >> r.harm >> r.mark >> r.source;
    });
}

void write_templates(SQLite::Database& db, const std::vector<Template>& templates) {
    Insert article(db, "template", 24), piece(db, "piece", 14), wish(db, "wish", 4),
        saying(db, "saying", 4);
    for (const auto& t : templates) {
        article(t.name, t.title, t.article, t.about, t.craft, t.skill, t.touches, t.for_baby,
                t.sample, t.measure, t.smallest, t.ideal, t.largest, t.fitted, t.finest, t.thickest,
                t.firmness, t.spacing, t.finish, t.loom, t.fringe, t.hem, t.loom_waste, t.role);
        int place = 0;
        for (const auto& p : t.pieces)
            piece(t.name, place++, p.name, p.fabric, p.outline.shape, p.outline.width,
                  p.outline.length, p.outline.narrow, p.grows, p.count, p.yarn, p.unbroken,
                  p.of_warp, p.of_weft);
        for (std::size_t w = 0; w < asked_count; ++w)
            if (t.wishes[w].weight > 0) wish(t.name, w, t.wishes[w].at_least, t.wishes[w].weight);
        place = 0;
        for (const auto& step : t.steps) saying(t.name, std::string("step"), place++, step);
        place = 0;
        for (const auto& said : t.cautions) saying(t.name, std::string("caution"), place++, said);
    }
}

// The rows stand in the order of the fibres.
void read_behaviour(SQLite::Database& db, std::vector<FibrePart>& fibres) {
    SQLite::Statement rows(db, "SELECT * FROM fibre_behaviour");
    auto fibre = fibres.begin();
    while (rows.executeStep()) {
        Columns in(rows);
        std::string name;
        std::size_t which = 0;
        Level level;
        in >> name >> which >> level.low >> level.high >> level.mark;
        fibre = std::find_if(fibre, fibres.end(), [&](const auto& f) { return f.name == name; });
        if (fibre == fibres.end()) throw std::runtime_error("a behaviour of an unknown fibre");
        fibre->behaviour.levels.at(which) = level;
    }
}

void read_tables(SQLite::Database& db, Catalogue& c) {
    c.yarn.classes = read_all<WeightClass>(db, "weight_class", [](Columns& in, WeightClass& r) {
        in >> r.number >> r.name >> r.stitches_4in_low >> r.stitches_4in_high >> r.needle_mm_low >>
            r.needle_mm_high >> r.wpi_low >> r.wpi_high >> r.yd_per_lb_low >> r.yd_per_lb_high >>
            r.source;
    });
    c.yarn.grades = read_all<WoolGrade>(db, "wool_grade", [](Columns& in, WoolGrade& r) {
        in >> r.blood >> r.count >> r.low >> r.high >> r.most_deviation >> r.source;
    });
    c.yarn.traits = read_all<TraitRow>(db, "trait_row", [](Columns& in, TraitRow& r) {
        in >> r.trait >> r.driver >> r.from >> r.to >> r.adds >> r.more >> r.less >> r.mark >>
            r.source;
    });
    c.fabrics.knitted = read_all<KnitFabric>(db, "knitted_fabric", [](Columns& in, KnitFabric& r) {
        in >> r.name >> r.metres >> r.metres_low >> r.metres_high >> r.stitches >> r.rows >>
            r.growth >> r.growth_low >> r.growth_high >> r.stitch_repeat >> r.row_repeat >>
            r.definition >> r.openness >> r.loose_loops >> r.mark >> r.source >> r.chart >>
            r.longest_strand;
    });
    c.fabrics.weaves = read_all<Weave>(db, "weave", [](Columns& in, Weave& r) {
        in >> r.name >> r.interlacing.threads >> r.interlacing.intersections >> r.sett >> r.picks >>
            r.warp_float >> r.weft_float >> r.shafts >> r.take_up >> r.most_in_hole >>
            r.end_repeat >> r.pick_repeat >> r.definition >> r.loose_loops >> r.mark >> r.source >>
            r.chart;
    });
    c.bodies = read_all<BodySize>(db, "body_size", [](Columns& in, BodySize& r) {
        in >> r.who >> r.measure >> r.low >> r.mid >> r.high >> r.mark >> r.source;
    });
    SQLite::Statement words(db, "SELECT * FROM words");
    if (words.executeStep()) Columns(words) >> c.words;
    SQLite::Statement spoken(db, "SELECT * FROM spoken");
    while (spoken.executeStep()) {
        std::string list, word;
        Spoken said;
        Columns in(spoken);
        in >> list >> word >> said.means >> said.note;
        c.spoken.lists[list].emplace(std::move(word), std::move(said));
    }
    c.fibres = read_all<FibrePart>(db, "fibre", [](Columns& in, FibrePart& r) {
        in >> r.name >> r.kind >> r.category >> r.density >> r.micron_low >> r.micron_high >>
            r.staple_low >> r.staple_high >> r.felting >> r.source;
    });
    read_behaviour(db, c.fibres);
}

// The rows of a template's own tables, handed to `read` with the template they belong to.
template <class Read>
void read_parts(SQLite::Database& db, const std::string& query,
                const std::map<std::string, Template*>& by_name, Read read) {
    SQLite::Statement rows(db, query);
    std::string name;
    while (rows.executeStep()) {
        Columns in(rows);
        in >> name;
        read(in, *by_name.at(name));
    }
}

void read_templates(SQLite::Database& db, const std::vector<DemandFor>& needs,
                    std::vector<Template>& templates) {
    templates = read_all<Template>(db, "template ORDER BY name", [](Columns& in, Template& t) {
        in >> t.name >> t.title >> t.article >> t.about >> t.craft >> t.skill >> t.touches >>
            t.for_baby >> t.sample >> t.measure >> t.smallest >> t.ideal >> t.largest >> t.fitted >>
            t.finest >> t.thickest >> t.firmness >> t.spacing >> t.finish >> t.loom >> t.fringe >>
            t.hem >> t.loom_waste >> t.role;
        t.origin = "built in";
    });
    std::map<std::string, Template*> by_name;
    for (auto& t : templates) by_name[t.name] = &t;
    read_parts(db,
               "SELECT template, name, fabric, shape, width_m, length_m, narrow_m, grows, alike, "
               "yarn, unbroken, of_warp, of_weft FROM piece ORDER BY template, place",
               by_name, [](Columns& in, Template& t) {
                   auto& p = t.pieces.emplace_back();
                   in >> p.name >> p.fabric >> p.outline.shape >> p.outline.width >>
                       p.outline.length >> p.outline.narrow >> p.grows >> p.count >> p.yarn >>
                       p.unbroken >> p.of_warp >> p.of_weft;
               });
    read_parts(db, "SELECT template, levels FROM standing", by_name, [&](Columns& in, Template& t) {
        std::string levels;
        in >> levels;
        t.calling =
            std::make_shared<const Calling>(Calling{demands_of(t, needs), levels_of(levels)});
    });
    read_parts(db, "SELECT * FROM wish", by_name, [](Columns& in, Template& t) {
        std::size_t asked = 0;
        in >> asked;
        in >> t.wishes.at(asked).at_least >> t.wishes.at(asked).weight;
    });
    read_parts(db, "SELECT template, kind, text FROM saying ORDER BY template, kind, place",
               by_name, [](Columns& in, Template& t) {
                   std::string kind, text;
                   in >> kind >> text;
                   (kind == "step" ? t.steps : t.cautions).push_back(text);
               });
}

}  // namespace

void write_image(const Catalogue& catalogue, const std::string& path) {
    SQLite::Database db(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    SQLite::Transaction transaction(db);
    db.exec(image_schema);
    write_tables(db, catalogue);
    write_cautions(db, catalogue.cautions);
    write_needs(db, catalogue);
    write_templates(db, catalogue.templates);
    db.exec(fmt::format("PRAGMA user_version = {}", image_version));
    transaction.commit();
    db.exec("VACUUM");
}

Catalogue read_image(std::span<const unsigned char> image) {
    // One thread reads it, once: no locks.
    SQLite::Database db(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX);
    // Read only, and not copied: SQLite never writes to or frees the bytes.
    auto* bytes = const_cast<unsigned char*>(image.data());
    const auto size = static_cast<sqlite3_int64>(image.size());
    if (sqlite3_deserialize(db.getHandle(), "main", bytes, size, size,
                            SQLITE_DESERIALIZE_READONLY) != SQLITE_OK)
        throw std::runtime_error("the built-in catalogue cannot be opened");
    const int version = db.execAndGet("PRAGMA user_version").getInt();
    if (version != image_version)
        throw std::runtime_error(fmt::format("the catalogue has layout {}, this program reads {}",
                                             version, image_version));
    Catalogue out;
    read_tables(db, out);
    out.cautions = read_cautions(db);
    read_needs(db, out);
    read_templates(db, out.needs, out.templates);
    return out;
}

}  // namespace gristwright::catalog
