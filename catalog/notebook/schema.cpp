#include "catalog/notebook/schema.hpp"

#include <fmt/core.h>

namespace gristwright::catalog {
namespace {

// Which column holds what is said in notebook.hpp; *_where is Written::where.
constexpr const char* tables_1 = R"sql(
CREATE TABLE batch (
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 80)) STRICT;
CREATE TABLE skein (
  id INTEGER PRIMARY KEY, batch INTEGER NOT NULL REFERENCES batch ON DELETE CASCADE,
  place INTEGER NOT NULL CHECK (place >= 0),
  name TEXT NOT NULL, name_where TEXT NOT NULL, length TEXT NOT NULL, length_where TEXT NOT NULL,
  mass TEXT NOT NULL, mass_where TEXT NOT NULL, state TEXT NOT NULL, state_where TEXT NOT NULL,
  UNIQUE (batch, place)) STRICT;
CREATE TABLE field (
  id INTEGER PRIMARY KEY, batch INTEGER NOT NULL REFERENCES batch ON DELETE CASCADE,
  key TEXT NOT NULL CHECK (key <> ''), place INTEGER NOT NULL CHECK (place >= 0),
  text TEXT NOT NULL, text_where TEXT NOT NULL, UNIQUE (batch, key, place)) STRICT;
CREATE TABLE swatch (
  id INTEGER PRIMARY KEY, batch INTEGER NOT NULL REFERENCES batch ON DELETE CASCADE,
  kind TEXT NOT NULL CHECK (kind IN ('knitted', 'woven')), date TEXT NOT NULL) STRICT;
CREATE INDEX swatch_batch ON swatch (batch);
CREATE TABLE measure (
  id INTEGER PRIMARY KEY, swatch INTEGER NOT NULL REFERENCES swatch ON DELETE CASCADE,
  key TEXT NOT NULL CHECK (key <> ''), text TEXT NOT NULL, UNIQUE (swatch, key)) STRICT;
CREATE TABLE project (
  id INTEGER PRIMARY KEY, batch INTEGER NOT NULL UNIQUE REFERENCES batch ON DELETE CASCADE,
  template TEXT NOT NULL CHECK (template <> ''), size TEXT NOT NULL, certainty TEXT NOT NULL,
  started TEXT NOT NULL) STRICT;
CREATE TABLE weighing (
  id INTEGER PRIMARY KEY, project INTEGER NOT NULL REFERENCES project ON DELETE CASCADE,
  row TEXT NOT NULL, length TEXT NOT NULL, ball TEXT NOT NULL CHECK (ball <> ''),
  date TEXT NOT NULL, CHECK ((row = '') <> (length = ''))) STRICT;
CREATE INDEX weighing_project ON weighing (project);
CREATE TABLE change (id INTEGER PRIMARY KEY, said TEXT NOT NULL CHECK (said <> '')) STRICT;
CREATE TABLE undo_step (
  id INTEGER PRIMARY KEY, change INTEGER NOT NULL REFERENCES change ON DELETE CASCADE,
  sql TEXT NOT NULL) STRICT;
CREATE INDEX undo_step_change ON undo_step (change);
)sql";

// Which swatches tell about the person's hands; suggestions, each a JSON object of its texts.
constexpr const char* tables_2 = R"sql(
ALTER TABLE swatch ADD COLUMN own_hands INTEGER NOT NULL DEFAULT 1 CHECK (own_hands IN (0, 1));
DROP TRIGGER undo_INSERT_swatch;
DROP TRIGGER undo_DELETE_swatch;
DROP TRIGGER undo_UPDATE_swatch;
CREATE TABLE suggestion (
  id INTEGER PRIMARY KEY, batch INTEGER NOT NULL REFERENCES batch ON DELETE CASCADE,
  said TEXT NOT NULL CHECK (said LIKE '{%}')) STRICT;
CREATE INDEX suggestion_batch ON suggestion (batch);
)sql";

// What a skein says of itself; the part that a batch plays in its project.
constexpr const char* tables_3 = R"sql(
CREATE TABLE own (
  id INTEGER PRIMARY KEY, skein INTEGER NOT NULL REFERENCES skein ON DELETE CASCADE,
  key TEXT NOT NULL CHECK (key <> ''), place INTEGER NOT NULL CHECK (place >= 0),
  text TEXT NOT NULL, text_where TEXT NOT NULL, UNIQUE (skein, key, place)) STRICT;
ALTER TABLE project ADD COLUMN part TEXT NOT NULL DEFAULT '';
ALTER TABLE project ADD COLUMN beside TEXT NOT NULL DEFAULT '';
ALTER TABLE project ADD COLUMN yarn TEXT NOT NULL DEFAULT '';
DROP TRIGGER undo_INSERT_project;
DROP TRIGGER undo_DELETE_project;
DROP TRIGGER undo_UPDATE_project;
)sql";

// One trigger: `inverse` is an SQL expression that yields the SQL to run.
std::string trigger(std::string_view table, std::string_view event, const std::string& inverse) {
    return fmt::format(
        "CREATE TRIGGER undo_{1}_{0} AFTER {1} ON {0} BEGIN INSERT INTO undo_step (change, sql) "
        "VALUES ((SELECT max(id) FROM change), {2}); END;\n",
        table, event, inverse);
}

std::string step_1() {
    using Columns = std::vector<std::string_view>;
    return tables_1 + undo_triggers("batch", Columns{"name"}) +
           undo_triggers("skein",
                         Columns{"batch", "place", "name", "name_where", "length", "length_where",
                                 "mass", "mass_where", "state", "state_where"}) +
           undo_triggers("field", Columns{"batch", "key", "place", "text", "text_where"}) +
           undo_triggers("swatch", Columns{"batch", "kind", "date"}) +
           undo_triggers("measure", Columns{"swatch", "key", "text"}) +
           undo_triggers("project", Columns{"batch", "template", "size", "certainty", "started"}) +
           undo_triggers("weighing", Columns{"project", "row", "length", "ball", "date"});
}

std::string step_2() {
    using Columns = std::vector<std::string_view>;
    return tables_2 + undo_triggers("swatch", Columns{"batch", "kind", "date", "own_hands"}) +
           undo_triggers("suggestion", Columns{"batch", "said"});
}

std::string step_3() {
    using Columns = std::vector<std::string_view>;
    return tables_3 + undo_triggers("own", Columns{"skein", "key", "place", "text", "text_where"}) +
           undo_triggers("project", Columns{"batch", "template", "size", "certainty", "started",
                                            "part", "beside", "yarn"});
}

}  // namespace

std::string undo_triggers(std::string_view table, std::span<const std::string_view> columns) {
    std::string names = "id", values = "quote(old.id)", settings;
    for (const auto column : columns) {
        names += fmt::format(", {}", column);
        values += fmt::format(" || ', ' || quote(old.{})", column);
        settings += fmt::format("{}'{} = ' || quote(old.{})",
                                settings.empty() ? "" : " || ', ' || ", column, column);
    }
    return trigger(table, "INSERT", fmt::format("'DELETE FROM {} WHERE id = ' || new.id", table)) +
           trigger(
               table, "DELETE",
               fmt::format("'INSERT INTO {} ({}) VALUES (' || {} || ')'", table, names, values)) +
           trigger(table, "UPDATE",
                   fmt::format("'UPDATE {} SET id = ' || old.id || ', ' || {} || ' WHERE id = ' "
                               "|| new.id",
                               table, settings));
}

const std::vector<LayoutStep>& notebook_steps() {
    static const std::vector<LayoutStep> steps{step_1, step_2, step_3};
    return steps;
}

}  // namespace gristwright::catalog
