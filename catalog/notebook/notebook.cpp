#include "catalog/notebook/notebook.hpp"

#include <fmt/core.h>

#include <cstdlib>
#include <type_traits>
#include <utility>

#include "catalog/notebook/exchange.hpp"
#include "catalog/notebook/file.hpp"
#include "catalog/notebook/rows.hpp"
#include "catalog/notebook/schema.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {

namespace fs = std::filesystem;
using SQLite::Database;

struct Notebook::Inside {
    fs::path path;
    Opening opening;
    std::unique_ptr<Database> db;            // none while there is no file
    bool at_once = false;                    // looks and changes share one transaction,
    std::unique_ptr<Transaction> open = {};  // which the first of them begins

    // What `read` makes of one unchanging state; `otherwise` when there is no notebook yet.
    template <class Read, class Result = std::invoke_result_t<Read, Database&>>
    Result look(Read read, Result otherwise = {}) {
        if (!db) db = open_notebook(path, opening);
        if (!db) return otherwise;
        return in_our_words(path, [&] {
            if (at_once) {
                begin();
                return read(*db);
            }
            Transaction transaction(*db, Transaction::Kind::look);
            return read(*db);
        });
    }

    // As look, for what needs a batch of that name.
    template <class Read>
    auto look_at(std::string_view name, Read read) {
        const std::string wanted(name);
        using Result = std::invoke_result_t<Read, Database&, BatchId>;
        const auto found = look([&](Database& d) {
            return std::optional<Result>(std::in_place, read(d, need_batch(d, wanted)));
        });
        if (!found) throw not_there(wanted, {});
        return *found;
    }

    // All that `write` does, or nothing.
    template <class Write>
    void write_all_or_nothing(Write write) {
        if (opening.mode != Mode::change)
            throw OurMistake("a notebook opened for reading is not changed");
        if (!db) db = make_notebook(path, opening);
        in_our_words(path, [&] {
            if (at_once) {
                begin();
                write(*db);
                return;
            }
            Transaction transaction(*db, Transaction::Kind::change);
            write(*db);
            transaction.commit();
        });
    }

    // Nobody else can change the notebook from here to the end of at_once.
    void begin() {
        if (!open) open = std::make_unique<Transaction>(*db, Transaction::Kind::change);
    }

    // With a description, so that it can be taken back.
    template <class Write>
    void change(const std::string& said, Write write) {
        write_all_or_nothing([&](Database& d) {
            begin_undoable(d, said);
            write(d);
        });
    }

    template <class Write>
    void change_batch(std::string_view name, const char* said, Write write) {
        const std::string wanted(name);
        look_at(name, [](Database&, BatchId) { return true; });  // no file is made for a slip
        change(fmt::format("{} {}", said, name),
               [&](Database& d) { write(d, need_batch(d, wanted)); });
    }

    static void begin_undoable(Database& d, const std::string& said) {
        SQLite::Statement change(d, "INSERT INTO change (said) VALUES (?)");
        change.bind(1, said);
        change.exec();
        SQLite::Statement forget(d, "DELETE FROM change WHERE id <= ?");
        forget.bind(1, d.getLastInsertRowid() - undo_depth);
        forget.exec();
    }
};

namespace {

struct LastChange {
    std::int64_t id = 0;
    std::string said;
};

std::optional<LastChange> last_change(Database& db) {
    SQLite::Statement query(db, "SELECT id, said FROM change ORDER BY id DESC LIMIT 1");
    if (!query.executeStep()) return std::nullopt;
    return LastChange{query.getColumn(0).getInt64(), query.getColumn(1).getString()};
}

std::vector<std::string> steps_back(Database& db, const LastChange& change) {
    SQLite::Statement query(db, "SELECT sql FROM undo_step WHERE change = ? ORDER BY id DESC");
    query.bind(1, change.id);
    std::vector<std::string> out;
    while (query.executeStep()) out.push_back(query.getColumn(0).getString());
    return out;
}

// Going back writes steps of its own under the same change; they go with it.
void take_back(Database& db, const LastChange& change) {
    db.exec("PRAGMA defer_foreign_keys = ON");  // a cascade is undone in any order
    for (const auto& sql : steps_back(db, change)) SQLite::Statement(db, sql).exec();
    SQLite::Statement forget(db, "DELETE FROM change WHERE id = ?");
    forget.bind(1, change.id);
    forget.exec();
}

int count(Database& db, const char* table) {
    return db.execAndGet(fmt::format("SELECT count(*) FROM {}", table)).getInt();
}

NotebookContents contents(Database& db) {
    const auto last = last_change(db);
    return {true,
            static_cast<int>(notebook_steps().size()),
            count(db, "batch"),
            count(db, "swatch"),
            count(db, "project"),
            count(db, "weighing"),
            count(db, "suggestion"),
            count(db, "change"),
            last ? last->said : ""};
}

}  // namespace

Notebook::Notebook(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Notebook::Notebook(Notebook&&) noexcept = default;
Notebook& Notebook::operator=(Notebook&&) noexcept = default;
Notebook::~Notebook() = default;

fs::path Notebook::usual_place() {
    // Its own specification ignores a relative XDG_DATA_HOME; a relative HOME is none either.
    const auto folder = [](const char* name) {
        const char* value = std::getenv(name);
        const fs::path path = value ? value : "";
        return path.is_absolute() ? path : fs::path{};
    };
    if (const auto data = folder("XDG_DATA_HOME"); !data.empty())
        return data / "gristwright/notebook.sqlite";
    if (const auto home = folder("HOME"); !home.empty())
        return home / ".local/share/gristwright/notebook.sqlite";
    return {};
}

Notebook Notebook::open(const fs::path& path, Mode mode, std::chrono::milliseconds patience) {
    const Opening opening{mode, patience, notebook_steps()};
    return Notebook(std::make_unique<Inside>(Inside{path, opening, open_notebook(path, opening)}));
}

void Notebook::at_once(const std::function<void()>& work) {
    auto& now = *inside_;
    now.at_once = true;
    try {
        if (now.db) in_our_words(now.path, [&] { now.begin(); });
        work();
        if (now.open) in_our_words(now.path, [&] { now.open->commit(); });
    } catch (...) {
        now.at_once = false;
        now.open.reset();
        throw;
    }
    now.at_once = false;
    now.open.reset();
}

std::vector<std::string> Notebook::batch_names() const { return inside_->look(names_in); }

bool Notebook::has_batch(std::string_view name) const {
    const std::string wanted(name);
    return inside_->look([&](Database& db) { return find_batch(db, wanted).has_value(); });
}

BatchText Notebook::load_batch(std::string_view name) const {
    return inside_->look_at(name, read_text);
}

std::vector<SwatchText> Notebook::swatches(std::string_view batch) const {
    return inside_->look_at(batch, read_swatches);
}

std::optional<ProjectText> Notebook::project(std::string_view batch) const {
    return inside_->look_at(batch, read_project);
}

std::vector<WeighingText> Notebook::weighings(std::string_view batch) const {
    return inside_->look_at(batch, read_weighings);
}

std::vector<NamedBatch> Notebook::newest_batches(std::size_t most) const {
    return inside_->look([&](Database& db) { return newest_in(db, most); });
}

std::vector<SwatchedBatch> Notebook::swatched_last(std::size_t most) const {
    return inside_->look([&](Database& db) { return swatched_last_in(db, most); });
}

std::vector<KeptSuggestion> Notebook::suggestions(std::string_view batch) const {
    return inside_->look_at(batch, read_suggestions);
}

NotebookContents Notebook::describe() const { return inside_->look(contents); }

void Notebook::add_batch(std::string_view name, const BatchText& text) {
    inside_->change(fmt::format("add batch {}", name), [&](Database& db) {
        write_text(db, write_batch(db, std::string(name)), text);
    });
}

void Notebook::change_batch(std::string_view name, const BatchText& overlay) {
    inside_->change_batch(name, "change batch", [&](Database& db, BatchId batch) {
        auto text = read_text(db, batch);
        text.overlay(overlay);
        write_text(db, batch, text);
    });
}

void Notebook::remove_batch(std::string_view name) {
    inside_->change_batch(name, "remove batch", erase_batch);
}

void Notebook::add_swatch(std::string_view batch, const SwatchText& swatch) {
    inside_->change_batch(batch, "swatch of",
                          [&](Database& db, BatchId id) { write_swatch(db, id, swatch); });
}

void Notebook::start_project(std::string_view batch, const ProjectText& project) {
    const auto said = fmt::format("start {} with", project.template_name);
    inside_->change_batch(batch, said.c_str(),
                          [&](Database& db, BatchId id) { write_project(db, id, project); });
}

void Notebook::add_weighing(std::string_view batch, const WeighingText& weighing) {
    inside_->change_batch(batch, "weighing of",
                          [&](Database& db, BatchId id) { write_weighing(db, id, weighing); });
}

void Notebook::add_suggestions(std::string_view batch, const std::vector<KeptSuggestion>& all) {
    const auto said = fmt::format("{} suggestion{} to", all.size(), all.size() == 1 ? "" : "s");
    inside_->change_batch(batch, said.c_str(),
                          [&](Database& db, BatchId id) { write_suggestions(db, id, all); });
}

void Notebook::remove_suggestions(std::string_view batch) {
    inside_->change_batch(batch, "forget the suggestions to", erase_suggestions);
}

void Notebook::forget_hands() {
    if (inside_->look([](Database& db) { return count(db, "swatch"); }) == 0) return;
    inside_->change("forget the hands", forget_hands_in);
}

std::optional<std::string> Notebook::undo() {
    if (!inside_->look(last_change)) return std::nullopt;  // nothing is made or locked for that
    std::optional<std::string> out;
    inside_->write_all_or_nothing([&](Database& db) {
        const auto last = last_change(db);
        if (!last) return;
        take_back(db, *last);
        out = last->said;
    });
    return out;
}

void Notebook::backup(const fs::path& path) const {
    const bool done = inside_->look([&](Database& db) {
        copy_to_new_file(db, path);
        return true;
    });
    if (!done) throw NotebookRefused("there is no notebook yet, so nothing to copy");
}

std::string Notebook::export_json() const { return to_json(inside_->look(read_everything)); }

std::string Notebook::export_csv() const { return to_csv(inside_->look(read_everything)); }

void Notebook::import_json(std::string_view text) {
    const auto batches = from_json(text);
    inside_->change(
        fmt::format("import {} batch{}", batches.size(), batches.size() == 1 ? "" : "es"),
        [&](Database& db) { write_everything(db, batches); });
}

}  // namespace gristwright::catalog
