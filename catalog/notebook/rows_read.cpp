#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "catalog/notebook/query.hpp"
#include "catalog/text/nearest.hpp"

namespace gristwright::catalog {

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
                        "remembers one; a file is named with its ending, as heron.toml",
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
            out.push_back(
                {kind == kept_kinds[0] ? SwatchText::Kind::knitted : SwatchText::Kind::woven,
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

}  // namespace gristwright::catalog
