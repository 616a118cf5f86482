#include "catalog/notebook/rescue.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

#include "catalog/notebook/exchange.hpp"
#include "catalog/notebook/file.hpp"
#include "catalog/notebook/rows.hpp"
#include "catalog/notebook/schema.hpp"
#include "catalog/text/characters.hpp"

namespace gristwright::catalog {
namespace {

namespace fs = std::filesystem;
using SQLite::Database;
using Cells = std::vector<std::string>;
using Rows = std::map<std::int64_t, Cells>;  // by the number of the row

constexpr std::int64_t most_single_rows = 100'000;  // looked up one by one between two ends

// One table, read as far as it can be.
class Salvage {
  public:
    Salvage(Database& db, std::string table, std::string_view columns)
        : db_(db), table_(std::move(table)), columns_(columns) {}

    Rows rows() {
        whole_ = take("ORDER BY id");
        if (whole_ || rows_.empty()) return rows_;
        const auto first_end = rows_.rbegin()->first;
        take("ORDER BY id DESC");
        between(first_end);
        return rows_;
    }
    bool whole() const { return whole_; }

  private:
    // Whether the end was reached.
    bool take(const std::string& which) try {
        SQLite::Statement query(
            db_, fmt::format("SELECT id, {} FROM {} NOT INDEXED {}", columns_, table_, which));
        while (query.executeStep()) {
            const auto id = query.getColumn(0).getInt64();
            if (rows_.find(id) != rows_.end()) return false;  // met what came from the other end
            Cells cells;
            for (int c = 1; c < query.getColumnCount(); ++c)
                cells.push_back(inert(query.getColumn(c).getString()));
            rows_.emplace(id, std::move(cells));
        }
        return true;
    } catch (const SQLite::Exception&) {
        return false;
    }

    void between(std::int64_t first_end) {
        const auto after = rows_.upper_bound(first_end);
        if (after == rows_.end()) return;
        const auto last = std::min(after->first, first_end + most_single_rows);
        for (auto id = first_end + 1; id < last; ++id) take(fmt::format("WHERE id = {}", id));
    }

    Database& db_;
    std::string table_, columns_;
    Rows rows_;
    bool whole_ = false;
};

class Rescue {
  public:
    Rescue(Database& db, int layout) : db_(db), layout_(layout) {}

    Rescued all() {
        for (const auto& [id, row] : rows("batch", "name")) batches_[id].name = row[0];
        take_skeins();
        take_swatches();
        take_project();
        if (layout_ > 1)
            for (const auto& [id, row] : rows("suggestion", "batch, said"))
                take_suggestion(batch(row[0]), row[1]);
        return result();
    }

  private:
    Rows rows(const char* table, std::string_view columns) {
        Salvage salvage(db_, table, columns);
        auto out = salvage.rows();
        if (!salvage.whole()) out_.damaged.emplace_back(table);
        return out;
    }

    KeptBatch& batch(const std::string& id) { return batches_[std::atoll(id.c_str())]; }

    void take_skeins() {
        std::map<std::string, Texts> own;
        if (layout_ > 2)
            for (const auto& [id, r] : rows("own", "skein, key, text, text_where"))
                own[r[0]][r[1]].push_back({r[2], r[3]});
        for (const auto& [id, r] : rows("skein",
                                        "batch, name, name_where, length, length_where, mass, "
                                        "mass_where, state, state_where")) {
            batch(r[0]).text.skeins.push_back(
                {{r[1], r[2]}, {r[3], r[4]}, {r[5], r[6]}, {r[7], r[8]}, own[std::to_string(id)]});
            ++out_.skeins;
        }
        for (const auto& [id, r] : rows("field", "batch, key, text, text_where"))
            batch(r[0]).text.fields[r[1]].push_back({r[2], r[3]});
    }

    void take_swatches() {
        std::map<std::string, std::map<std::string, std::string, std::less<>>> measured;
        for (const auto& [id, r] : rows("measure", "swatch, key, text"))
            measured[r[0]][r[1]] = r[2];
        for (const auto& [id, r] : rows(
                 "swatch", layout_ > 1 ? "batch, kind, date, own_hands" : "batch, kind, date, 1")) {
            batch(r[0]).swatches.push_back(
                {r[1] == "woven" ? SwatchText::Kind::woven : SwatchText::Kind::knitted,
                 measured[std::to_string(id)], r[2], r[3] != "0"});
            ++out_.swatches;
        }
    }

    // A weighing without its project says nothing.
    void take_project() {
        std::map<std::string, std::string> batch_of;
        for (const auto& [id, r] :
             rows("project", layout_ > 2
                                 ? "batch, template, size, certainty, started, part, beside, yarn"
                                 : "batch, template, size, certainty, started, '', '', ''")) {
            batch(r[0]).project = ProjectText{r[1], r[2], r[3], r[4], r[5], r[6], r[7]};
            batch_of[std::to_string(id)] = r[0];
        }
        for (const auto& [id, r] : rows("weighing", "project, row, length, ball, date")) {
            const auto found = batch_of.find(r[0]);
            if (found == batch_of.end()) continue;
            batch(found->second).weighings.push_back({r[1], r[2], r[3], r[4]});
            ++out_.weighings;
        }
    }

    void take_suggestion(KeptBatch& kept, const std::string& said) {
        KeptSuggestion out;
        const auto read = nlohmann::json::parse(said, nullptr, false);
        if (!read.is_object()) return;
        for (const auto& [key, text] : read.items())
            if (text.is_string()) out[key] = inert(text.get<std::string>());
        if (out.find("idea") == out.end()) return;
        kept.suggestions.push_back(std::move(out));
        ++out_.suggestions;
    }

    Rescued result() {
        std::vector<KeptBatch> kept;
        for (auto& [id, batch] : batches_) {
            if (batch.name.empty()) {
                batch.name = fmt::format("rescued-{}", id);
                out_.renamed.push_back(batch.name);
            }
            kept.push_back(std::move(batch));
        }
        std::sort(kept.begin(), kept.end(),
                  [](const KeptBatch& a, const KeptBatch& b) { return a.name < b.name; });
        out_.batches = kept.size();
        out_.json = to_json(kept);
        return std::move(out_);
    }

    Database& db_;
    int layout_;
    std::map<std::int64_t, KeptBatch> batches_;
    Rescued out_;
};

}  // namespace

Rescued rescue(const fs::path& path) {
    std::error_code none;
    if (!fs::exists(path, none))
        throw NotebookRefused(fmt::format("there is no notebook '{}'", path.string()));
    return in_our_words(path, [&] {
        const auto db = connect(path, std::chrono::seconds(3));
        const int layout = check_is_notebook(*db, path, static_cast<int>(notebook_steps().size()));
        db->exec("PRAGMA query_only = ON");
        auto out = Rescue(*db, layout).all();
        if (out.batches == 0 && !out.damaged.empty())
            throw NotebookRefused(
                fmt::format("nothing can be read of '{}'; it was left as it is", path.string()));
        return out;
    });
}

}  // namespace gristwright::catalog
