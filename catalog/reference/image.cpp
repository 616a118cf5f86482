#include "catalog/reference/image.hpp"

#include <sqlite3.h>

#include <algorithm>
#include <charconv>
#include <map>
#include <stdexcept>

#include "catalog/reference/image_rows.hpp"

namespace gristwright::catalog {

std::string packed(const std::vector<double>& levels) {
    std::string out;
    for (const double level : levels) out += fmt::format("{:.4f} ", level);
    return out;
}

void unpack(std::string_view text, std::vector<double>& out) {
    while (!text.empty()) {
        double level = 0;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), level);
        if (read.ec != std::errc{}) throw std::runtime_error("the catalogue's standing is damaged");
        out.push_back(level);
        text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()) + 1);
    }
}

std::string packed(const std::vector<std::string>& words) {
    std::string out;
    for (const auto& word : words) out += word + "|";
    return out;
}

void unpack(std::string_view text, std::vector<std::string>& out) {
    while (!text.empty()) {
        const auto bar = text.find('|');
        out.emplace_back(text.substr(0, bar));
        text.remove_prefix(bar + 1);
    }
}

std::string packed(const Listed& listed) {
    return (listed.none_of ? "!" : "") + packed(listed.words);
}

void unpack(std::string_view text, Listed& out) {
    out.none_of = text.starts_with('!');
    if (out.none_of) text.remove_prefix(1);
    unpack(text, out.words);
}

namespace {

std::vector<SpokenRow> spoken_rows(const SpokenWords& spoken) {
    std::vector<SpokenRow> out;
    for (const auto& [list, words] : spoken.lists)
        for (const auto& [word, said] : words) out.push_back({list, word, said});
    return out;
}

std::vector<LevelRow> level_rows(const std::vector<FibrePart>& fibres) {
    std::vector<LevelRow> out;
    for (const auto& fibre : fibres)
        for (std::size_t b = 0; b < behaviour_count; ++b)
            if (const auto& level = fibre.behaviour.levels[b])
                out.push_back({fibre.name, b, *level});
    return out;
}

// What a template holds besides its own columns.
struct Parts {
    std::vector<PieceRow> pieces;
    std::vector<WishRow> wishes;
    std::vector<SayingRow> sayings;
    std::vector<StandingRow> standings;

    void add(const Template& t) {
        int place = 0;
        for (const auto& piece : t.pieces) pieces.push_back({t.name, place++, piece});
        for (std::size_t w = 0; w < asked_count; ++w)
            if (t.wishes[w].weight > 0) wishes.push_back({t.name, w, t.wishes[w]});
        place = 0;
        for (const auto& step : t.steps) sayings.push_back({t.name, true, place++, step});
        place = 0;
        for (const auto& said : t.cautions) sayings.push_back({t.name, false, place++, said});
        standings.push_back({t.name, t.calling->levels});
    }
};

void write_templates(SQLite::Database& db, const std::vector<Template>& templates) {
    Parts parts;
    for (const auto& t : templates) parts.add(t);
    write_rows(db, templates);
    write_rows(db, parts.pieces);
    write_rows(db, parts.wishes);
    write_rows(db, parts.sayings);
    write_rows(db, parts.standings);
}

// The rows stand in the order of the fibres.
void read_behaviour(SQLite::Database& db, std::vector<FibrePart>& fibres) {
    auto fibre = fibres.begin();
    for (const auto& row : rows_of<LevelRow>(db)) {
        fibre =
            std::find_if(fibre, fibres.end(), [&](const auto& f) { return f.name == row.fibre; });
        if (fibre == fibres.end()) throw std::runtime_error("a behaviour of an unknown fibre");
        fibre->behaviour.levels.at(row.behaviour) = row.level;
    }
}

void read_templates(SQLite::Database& db, const std::vector<DemandFor>& needs,
                    std::vector<Template>& templates) {
    templates = rows_of<Template>(db);
    std::map<std::string, Template*, std::less<>> named;
    for (auto& t : templates) t.origin = "built in", named[t.name] = &t;
    for (auto& row : rows_of<PieceRow>(db))
        named.at(row.article)->pieces.push_back(std::move(row.piece));
    for (const auto& row : rows_of<WishRow>(db))
        named.at(row.article)->wishes.at(row.asked) = row.wish;
    for (auto& row : rows_of<SayingRow>(db)) {
        auto& t = *named.at(row.article);
        (row.step ? t.steps : t.cautions).push_back(std::move(row.text));
    }
    for (auto& row : rows_of<StandingRow>(db)) {
        auto& t = *named.at(row.article);
        t.calling =
            std::make_shared<const Calling>(Calling{demands_of(t, needs), std::move(row.levels)});
    }
}

// The bytes as a database: read only and not copied, since SQLite never writes to or frees them.
SQLite::Database opened(std::span<const unsigned char> image) {
    // One thread reads it, once: no locks.
    SQLite::Database db(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX);
    auto* bytes = const_cast<unsigned char*>(image.data());
    const auto size = static_cast<sqlite3_int64>(image.size());
    if (sqlite3_deserialize(db.getHandle(), "main", bytes, size, size,
                            SQLITE_DESERIALIZE_READONLY) != SQLITE_OK)
        throw std::runtime_error("the built-in catalogue cannot be opened");
    const int version = db.execAndGet("PRAGMA user_version").getInt();
    if (version != image_version)
        throw std::runtime_error(fmt::format("the catalogue has layout {}, this program reads {}",
                                             version, image_version));
    return db;
}

}  // namespace

void write_image(const Catalogue& c, const std::string& path) {
    SQLite::Database db(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    SQLite::Transaction transaction(db);
    write_rows(db, c.yarn.classes);
    write_rows(db, c.yarn.grades);
    write_rows(db, c.yarn.traits);
    write_rows(db, c.fabrics.knitted);
    write_rows(db, c.fabrics.weaves);
    write_rows(db, c.bodies);
    write_rows(db, std::vector<PackedWords>{{c.words}});
    write_rows(db, spoken_rows(c.spoken));
    write_rows(db, c.fibres);
    write_rows(db, level_rows(c.fibres));
    write_rows(db, c.cautions);
    write_rows(db, c.needs);
    write_rows(db, c.ordinary);
    write_templates(db, c.templates);
    db.exec(fmt::format("PRAGMA user_version = {}", image_version));
    transaction.commit();
    db.exec("VACUUM");
}

Catalogue read_image(std::span<const unsigned char> image) {
    auto db = opened(image);
    Catalogue out;
    out.yarn.classes = rows_of<WeightClass>(db);
    out.yarn.grades = rows_of<WoolGrade>(db);
    out.yarn.traits = rows_of<TraitRow>(db);
    out.fabrics.knitted = rows_of<KnitFabric>(db);
    out.fabrics.weaves = rows_of<Weave>(db);
    out.bodies = rows_of<BodySize>(db);
    for (auto& row : rows_of<PackedWords>(db)) out.words = std::move(row.packed);
    for (auto& row : rows_of<SpokenRow>(db))
        out.spoken.lists[row.list].emplace(std::move(row.word), std::move(row.said));
    out.fibres = rows_of<FibrePart>(db);
    read_behaviour(db, out.fibres);
    out.cautions = rows_of<Caution>(db);
    out.needs = rows_of<DemandFor>(db);
    out.ordinary = rows_of<OrdinaryYarn>(db);
    read_templates(db, out.needs, out.templates);
    return out;
}

}  // namespace gristwright::catalog
