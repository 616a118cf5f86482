// What a notebook holds, as rows: plain structs in, plain structs out, inside the caller's
// transaction. Errors are SQLite's own, but for names and texts that cannot be: NotebookRefused.
//
// An implementation header of the notebook.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "catalog/notebook/file.hpp"
#include "catalog/notebook/notebook.hpp"

namespace gristwright::catalog {

// Everything that is kept under one name.
struct KeptBatch {
    std::string name;
    BatchText text;
    std::vector<SwatchText> swatches;
    std::optional<ProjectText> project;
    std::vector<WeighingText> weighings;  // none without a project
    std::vector<KeptSuggestion> suggestions;

    bool operator==(const KeptBatch&) const = default;
};

enum class BatchId : std::int64_t {};

std::vector<std::string> names_in(SQLite::Database& db);
std::vector<NamedBatch> newest_in(SQLite::Database& db, std::size_t most);
std::vector<SwatchedBatch> swatched_last_in(SQLite::Database& db, std::size_t most);
std::optional<BatchId> find_batch(SQLite::Database& db, const std::string& name);
BatchId need_batch(SQLite::Database& db, const std::string& name);  // refuses a name not there
NotebookRefused not_there(const std::string& name, const std::vector<std::string>& names);

BatchText read_text(SQLite::Database& db, BatchId batch);
std::vector<SwatchText> read_swatches(SQLite::Database& db, BatchId batch);
std::optional<ProjectText> read_project(SQLite::Database& db, BatchId batch);
std::vector<WeighingText> read_weighings(SQLite::Database& db, BatchId batch);
std::vector<KeptSuggestion> read_suggestions(SQLite::Database& db, BatchId batch);
std::vector<KeptBatch> read_everything(SQLite::Database& db);

BatchId write_batch(SQLite::Database& db, const std::string& name);  // refuses a name in use
void write_text(SQLite::Database& db, BatchId batch, const BatchText& text);  // in place of any
void write_swatch(SQLite::Database& db, BatchId batch, const SwatchText& swatch);
void write_project(SQLite::Database& db, BatchId batch, const ProjectText& project);
void write_weighing(SQLite::Database& db, BatchId batch, const WeighingText& weighing);
void write_suggestions(SQLite::Database& db, BatchId batch, const std::vector<KeptSuggestion>& all);
void write_everything(SQLite::Database& db, const std::vector<KeptBatch>& batches);
void erase_suggestions(SQLite::Database& db, BatchId batch);
void forget_hands_in(SQLite::Database& db);
void erase_batch(SQLite::Database& db, BatchId batch);

}  // namespace gristwright::catalog
