#include <fmt/core.h>

#include <nlohmann/json.hpp>

#include "catalog/notebook/query.hpp"

namespace gristwright::catalog {
namespace {

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

void write_kept(SQLite::Database& db, const KeptBatch& kept) {
    const auto batch = write_batch(db, kept.name);
    write_text(db, batch, kept.text);
    for (const auto& swatch : kept.swatches) write_swatch(db, batch, swatch);
    if (kept.project) write_project(db, batch, *kept.project);
    for (const auto& weighing : kept.weighings) write_weighing(db, batch, weighing);
    write_suggestions(db, batch, kept.suggestions);
}

}  // namespace

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
    const std::string kind = kept_kinds[static_cast<std::size_t>(swatch.kind)];
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
