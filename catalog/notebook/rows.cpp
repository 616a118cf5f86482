#include "catalog/notebook/rows.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "catalog/notebook/text.hpp"
#include "catalog/text/nearest.hpp"

namespace gristwright::catalog {
namespace {

// Binds values in order, checking every text on its way in; reads columns in order.
class Query {
  public:
    template <class... Values>
    Query(SQLite::Database& db, const char* sql, const Values&... values) : statement_(db, sql) {
        (bind(values), ...);
    }

    bool next() {
        column_ = 0;
        return statement_.executeStep();
    }
    void run() { statement_.exec(); }

    Query& operator>>(std::string& out) {
        out = statement_.getColumn(column_++).getString();
        if (out.find('\0') != std::string::npos)  // it would cut a message short
            throw NotebookRefused(
                "a text in the notebook has a zero byte in it, so the file is damaged: go back to "
                "a backup");
        return *this;
    }
    Query& operator>>(std::int64_t& out) {
        out = statement_.getColumn(column_++).getInt64();
        return *this;
    }
    Query& operator>>(Written& out) { return *this >> out.text >> out.where; }

  private:
    void bind(const std::string& value) {
        check_kept_text(value);
        statement_.bind(++bound_, value);
    }
    void bind(const Written& value) {
        bind(value.text);
        bind(value.where);
    }
    void bind(BatchId value) { bind(static_cast<std::int64_t>(value)); }
    void bind(std::int64_t value) { statement_.bind(++bound_, value); }

    SQLite::Statement statement_;
    int bound_ = 0, column_ = 0;
};

void write_own(SQLite::Database& db, std::int64_t skein, const Texts& own) {
    for (const auto& [key, texts] : own) {
        std::int64_t place = 0;
        for (const auto& text : texts)
            Query(db,
                  "INSERT INTO own (skein, key, place, text, text_where) VALUES (?, ?, ?, ?, ?)",
                  skein, key, place++, text)
                .run();
    }
}

void write_skeins(SQLite::Database& db, BatchId batch, const std::vector<SkeinText>& skeins) {
    std::int64_t place = 0;
    for (const auto& s : skeins) {
        Query(db,
              "INSERT INTO skein (batch, place, name, name_where, length, length_where, mass, "
              "mass_where, state, state_where) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
              batch, place++, s.name, s.length, s.mass, s.state)
            .run();
        write_own(db, db.getLastInsertRowid(), s.own);
    }
}

void write_field(SQLite::Database& db, BatchId batch, const std::string& key,
                 const std::vector<Written>& texts) {
    std::int64_t place = 0;
    for (const auto& text : texts)
        Query(db, "INSERT INTO field (batch, key, place, text, text_where) VALUES (?, ?, ?, ?, ?)",
              batch, key, place++, text)
            .run();
}

std::optional<std::int64_t> project_of(SQLite::Database& db, BatchId batch) {
    Query query(db, "SELECT id FROM project WHERE batch = ?", batch);
    if (!query.next()) return std::nullopt;
    std::int64_t id = 0;
    query >> id;
    return id;
}

constexpr const char* kinds[] = {"knitted", "woven"};

void write_kept(SQLite::Database& db, const KeptBatch& kept) {
    const auto batch = write_batch(db, kept.name);
    write_text(db, batch, kept.text);
    for (const auto& swatch : kept.swatches) write_swatch(db, batch, swatch);
    if (kept.project) write_project(db, batch, *kept.project);
    for (const auto& weighing : kept.weighings) write_weighing(db, batch, weighing);
    write_suggestions(db, batch, kept.suggestions);
}

}  // namespace

std::vector<std::string> names_in(SQLite::Database& db) {
    Query query(db, "SELECT name FROM batch ORDER BY name");
    std::vector<std::string> out;
    while (query.next()) query >> out.emplace_back();
    return out;
}

std::vector<NamedBatch> newest_in(SQLite::Database& db, std::size_t most) {
    Query query(db,
                "SELECT id, name FROM (SELECT id, name FROM batch ORDER BY id DESC LIMIT ?) "
                "ORDER BY name",
                static_cast<std::int64_t>(most));
    std::vector<NamedBatch> out;
    while (query.next()) {
        std::int64_t id = 0;
        auto& batch = out.emplace_back();
        query >> id >> batch.name;
        batch.text = read_text(db, BatchId{id});
    }
    return out;
}

std::vector<SwatchedBatch> swatched_last_in(SQLite::Database& db, std::size_t most) {
    Query query(db,
                "SELECT s.batch, b.name FROM swatch s JOIN batch b ON b.id = s.batch "
                "WHERE s.own_hands = 1 ORDER BY s.id DESC");
    std::vector<SwatchedBatch> out;
    std::set<std::int64_t> had;
    while (out.size() < most && query.next()) {
        std::int64_t id = 0;
        std::string name;
        query >> id >> name;
        if (!had.insert(id).second) continue;
        out.push_back({name, read_text(db, BatchId{id}), read_swatches(db, BatchId{id})});
        auto& swatches = out.back().swatches;
        swatches.erase(std::remove_if(swatches.begin(), swatches.end(),
                                      [](const SwatchText& s) { return !s.own_hands; }),
                       swatches.end());
    }
    return out;
}

std::optional<BatchId> find_batch(SQLite::Database& db, const std::string& name) {
    Query query(db, "SELECT id FROM batch WHERE name = ?", name);
    if (!query.next()) return std::nullopt;
    std::int64_t id = 0;
    query >> id;
    return BatchId{id};
}

NotebookRefused not_there(const std::string& name, const std::vector<std::string>& names) {
    if (names.empty())
        return NotebookRefused(
            fmt::format("no batch '{}' is remembered, and no other: gristwright batch add NAME ... "
                        "remembers one; "
                        "a file is named with its ending, as heron.toml",
                        name));
    const auto near = did_you_mean(name, names);
    return NotebookRefused(
        fmt::format("no batch '{}' is remembered{}", name,
                    near.empty() ? "; gristwright batch list shows those that are" : near));
}

BatchId need_batch(SQLite::Database& db, const std::string& name) {
    if (const auto found = find_batch(db, name)) return *found;
    throw not_there(name, names_in(db));
}

BatchText read_text(SQLite::Database& db, BatchId batch) {
    BatchText out;
    Query skeins(db,
                 "SELECT id, name, name_where, length, length_where, mass, mass_where, state, "
                 "state_where FROM skein WHERE batch = ? ORDER BY place",
                 batch);
    std::map<std::int64_t, std::size_t> places;
    while (skeins.next()) {
        std::int64_t id = 0;
        auto& s = out.skeins.emplace_back();
        skeins >> id >> s.name >> s.length >> s.mass >> s.state;
        places[id] = out.skeins.size() - 1;
    }
    Query own(db,
              "SELECT o.skein, o.key, o.text, o.text_where FROM own o JOIN skein s ON s.id = "
              "o.skein WHERE s.batch = ? ORDER BY o.skein, o.key, o.place",
              batch);
    while (own.next()) {
        std::int64_t skein = 0;
        std::string key;
        own >> skein >> key;
        own >> out.skeins[places.at(skein)].own[key].emplace_back();
    }
    Query fields(db, "SELECT key, text, text_where FROM field WHERE batch = ? ORDER BY key, place",
                 batch);
    while (fields.next()) {
        std::string key;
        fields >> key;
        fields >> out.fields[key].emplace_back();
    }
    return out;
}

std::vector<SwatchText> read_swatches(SQLite::Database& db, BatchId batch) {
    std::vector<SwatchText> out;
    Query rows(db,
               "SELECT s.id, s.kind, s.date, s.own_hands, ifnull(m.key, ''), ifnull(m.text, '') "
               "FROM swatch s LEFT JOIN measure m ON m.swatch = s.id WHERE s.batch = ? "
               "ORDER BY s.id",
               batch);
    std::int64_t last = 0;
    while (rows.next()) {
        std::int64_t id = 0, own_hands = 0;
        std::string kind, date, key, text;
        rows >> id >> kind >> date >> own_hands >> key >> text;
        if (id != last || out.empty())
            out.push_back({kind == kinds[0] ? SwatchText::Kind::knitted : SwatchText::Kind::woven,
                           {},
                           date,
                           own_hands != 0});
        last = id;
        if (!key.empty()) out.back().measured[key] = text;
    }
    return out;
}

std::optional<ProjectText> read_project(SQLite::Database& db, BatchId batch) {
    Query query(db,
                "SELECT template, size, certainty, started, part, beside, yarn FROM project WHERE "
                "batch = ?",
                batch);
    if (!query.next()) return std::nullopt;
    ProjectText out;
    query >> out.template_name >> out.size >> out.certainty >> out.started >> out.part >>
        out.beside >> out.yarn;
    return out;
}

std::vector<WeighingText> read_weighings(SQLite::Database& db, BatchId batch) {
    Query query(db,
                "SELECT w.row, w.length, w.ball, w.date FROM weighing w JOIN project p ON "
                "w.project = p.id WHERE p.batch = ? ORDER BY w.id",
                batch);
    std::vector<WeighingText> out;
    while (query.next()) {
        auto& w = out.emplace_back();
        query >> w.row >> w.length >> w.ball >> w.date;
    }
    return out;
}

std::vector<KeptSuggestion> read_suggestions(SQLite::Database& db, BatchId batch) {
    Query query(db, "SELECT said FROM suggestion WHERE batch = ? ORDER BY id", batch);
    std::vector<KeptSuggestion> out;
    std::string said;
    while (query.next()) {
        query >> said;
        auto& kept = out.emplace_back();
        const auto read = nlohmann::json::parse(said, nullptr, false);
        for (const auto& [key, text] : read.items())
            if (text.is_string()) kept[key] = text.get<std::string>();
    }
    return out;
}

std::vector<KeptBatch> read_everything(SQLite::Database& db) {
    std::vector<KeptBatch> out;
    for (auto& name : names_in(db)) {
        const auto batch = need_batch(db, name);
        out.push_back({std::move(name), read_text(db, batch), read_swatches(db, batch),
                       read_project(db, batch), read_weighings(db, batch),
                       read_suggestions(db, batch)});
    }
    return out;
}

BatchId write_batch(SQLite::Database& db, const std::string& name) {
    check_batch_name(name);
    if (find_batch(db, name))
        throw NotebookRefused(fmt::format("a batch '{}' is remembered already", name));
    Query(db, "INSERT INTO batch (name) VALUES (?)", name).run();
    return BatchId{db.getLastInsertRowid()};
}

void write_text(SQLite::Database& db, BatchId batch, const BatchText& text) {
    Query(db, "DELETE FROM skein WHERE batch = ?", batch).run();
    Query(db, "DELETE FROM field WHERE batch = ?", batch).run();
    write_skeins(db, batch, text.skeins);
    for (const auto& [key, texts] : text.fields) write_field(db, batch, key, texts);
}

void write_swatch(SQLite::Database& db, BatchId batch, const SwatchText& swatch) {
    const std::string kind = kinds[static_cast<std::size_t>(swatch.kind)];
    Query(db, "INSERT INTO swatch (batch, kind, date, own_hands) VALUES (?, ?, ?, ?)", batch, kind,
          swatch.date, std::int64_t{swatch.own_hands})
        .run();
    const auto id = db.getLastInsertRowid();
    for (const auto& [key, text] : swatch.measured)
        Query(db, "INSERT INTO measure (swatch, key, text) VALUES (?, ?, ?)", id, key, text).run();
}

void write_project(SQLite::Database& db, BatchId batch, const ProjectText& project) {
    if (project.template_name.empty())
        throw NotebookRefused("a project needs the name of a template");
    Query(db, "DELETE FROM project WHERE batch = ?", batch).run();
    Query(db,
          "INSERT INTO project (batch, template, size, certainty, started, part, beside, yarn) "
          "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
          batch, project.template_name, project.size, project.certainty, project.started,
          project.part, project.beside, project.yarn)
        .run();
}

void write_weighing(SQLite::Database& db, BatchId batch, const WeighingText& w) {
    if (w.row.empty() == w.length.empty())
        throw NotebookRefused("a weighing says how far the piece has come: a row or a length");
    if (w.ball.empty()) throw NotebookRefused("a weighing needs the mass of the ball");
    const auto project = project_of(db, batch);
    if (!project) throw NotebookRefused("nothing is being made of this batch yet: start it first");
    Query(db, "INSERT INTO weighing (project, row, length, ball, date) VALUES (?, ?, ?, ?, ?)",
          *project, w.row, w.length, w.ball, w.date)
        .run();
}

void write_suggestions(SQLite::Database& db, BatchId batch,
                       const std::vector<KeptSuggestion>& all) {
    SQLite::Statement insert(db, "INSERT INTO suggestion (batch, said) VALUES (?, ?)");
    for (const auto& suggestion : all) {
        const auto idea = suggestion.find("idea");
        if (idea == suggestion.end() || idea->second.empty())
            throw NotebookRefused("a suggestion needs its idea");
        for (const auto& [key, text] : suggestion) check_kept_text(text);
        const auto said = nlohmann::json(suggestion).dump();
        check_kept_text(said);
        insert.bind(1, static_cast<std::int64_t>(batch));
        insert.bind(2, said);
        insert.exec();
        insert.reset();
    }
}

void erase_suggestions(SQLite::Database& db, BatchId batch) {
    Query(db, "DELETE FROM suggestion WHERE batch = ?", batch).run();
}

void forget_hands_in(SQLite::Database& db) {
    Query(db, "UPDATE swatch SET own_hands = 0 WHERE own_hands = 1").run();
}

void write_everything(SQLite::Database& db, const std::vector<KeptBatch>& batches) {
    for (const auto& kept : batches) write_kept(db, kept);
}

void erase_batch(SQLite::Database& db, BatchId batch) {
    Query(db, "DELETE FROM batch WHERE id = ?", batch).run();
}

}  // namespace gristwright::catalog
