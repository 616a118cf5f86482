// What a spinner keeps between one command and the next: batches as they were written down, washed
// swatches, the project that is running, the ball on the scale. One SQLite file.
//
// Everything is kept as the text that was typed; its meaning is read elsewhere each time, so a
// better reader makes better use of an old notebook. Every text must be valid UTF-8 without
// control characters and at most 10,000 bytes, or NotebookRefused.
#pragma once

#include <chrono>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/text/storage_failed.hpp"
#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/kept_texts.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {

// What was asked cannot be: a name that is taken or not there, a text that cannot be kept, a file
// that is newer, foreign or damaged. Nothing was changed.
struct NotebookRefused : Refused {
    using Refused::Refused;
};
// Another program was changing the notebook, for longer than we wait. Nothing was changed.
struct NotebookBusy : StorageFailed {
    using StorageFailed::StorageFailed;
};
// The file could not be read or written: permission, full disk, broken disk, no memory. The
// notebook holds what it held before, or the whole change if only the last confirmation was lost.
struct NotebookFailed : StorageFailed {
    using StorageFailed::StorageFailed;
};

// A suggestion as it was written: {"idea", "cabled hat"}, {"needs", "220yd"}.
using KeptSuggestion = std::map<std::string, std::string, std::less<>>;

struct ProjectText {
    std::string template_name;     // never empty
    std::string size, certainty;   // as typed; empty: not given
    std::string started;           // date, as the caller writes it
    std::string part{}, beside{};  // --as and --with; empty: all of it, no other yarn
    std::string yarn{};            // --yarn, of a batch of several; empty: the one with most metres

    bool operator==(const ProjectText&) const = default;
};

// How much a notebook holds.
struct NotebookContents {
    bool exists = false;  // there is a file
    int layout = 0;       // of the tables as this program reads them; 0 when there is no file
    int batches = 0, swatches = 0, projects = 0, weighings = 0, suggestions = 0;
    int changes = 0;          // that undo can take back, one after the other
    std::string last_change;  // what undo would take back: "add batch heron"; empty when none
};

struct NamedBatch {
    std::string name;
    BatchText text;
};

// A batch with its swatches, for what they tell about the hands that made them.
struct SwatchedBatch {
    std::string name;
    BatchText text;
    std::vector<SwatchText> swatches;  // oldest first
};

class Notebook {
  public:
    enum class Mode { read_only, change };

    // $XDG_DATA_HOME/gristwright/notebook.sqlite, else under $HOME/.local/share; empty when
    // neither is set to an absolute path.
    static std::filesystem::path usual_place();

    // Opening never makes a file; the first change does, private to its owner (folder 0700, file
    // 0600). A file that is not there reads as an empty notebook. In Mode::read_only nothing is
    // written and every change throws OurMistake; an older layout is read through a copy in
    // memory. In Mode::change an older layout is brought up to date at once, after a copy beside
    // it (notebook.sqlite.layout-1). `patience` is how long to wait for another program.
    static Notebook open(const std::filesystem::path& path, Mode mode,
                         std::chrono::milliseconds patience = std::chrono::seconds(3));
    Notebook(Notebook&&) noexcept;
    Notebook& operator=(Notebook&&) noexcept;
    ~Notebook();

    // What `work` looks at and changes here is one transaction: no other program changes anything
    // between a look and a change, and all is kept or nothing. What `work` throws comes out again.
    void at_once(const std::function<void()>& work);

    // Looking. Every function that takes the name of a batch refuses one that is not there, and
    // says which is near.
    std::vector<std::string> batch_names() const;  // in alphabetical order of their bytes
    // The `most` batches that were added last, in alphabetical order.
    std::vector<NamedBatch> newest_batches(std::size_t most) const;
    bool has_batch(std::string_view name) const;
    BatchText load_batch(std::string_view name) const;               // its notes are not kept
    std::vector<SwatchText> swatches(std::string_view batch) const;  // oldest first
    std::optional<ProjectText> project(std::string_view batch) const;
    std::vector<WeighingText> weighings(std::string_view batch) const;  // oldest first
    // At most `most` batches, the one swatched last first, with the swatches of the person's own
    // hands. A batch without such a swatch is not among them.
    std::vector<SwatchedBatch> swatched_last(std::size_t most) const;
    std::vector<KeptSuggestion> suggestions(std::string_view batch) const;  // oldest first
    NotebookContents describe() const;

    // Changing. Each is one transaction: all of it is kept, or none and an exception says why.
    // A name may not be empty, contain '/', begin with '-', a space or end in .toml or .csv (it
    // would be taken for a file).
    void add_batch(std::string_view name, const BatchText& text);        // refuses a name in use
    void change_batch(std::string_view name, const BatchText& overlay);  // as BatchText::overlay
    void remove_batch(std::string_view name);  // with its swatches, project and weighings
    void add_swatch(std::string_view batch, const SwatchText& swatch);
    // One project runs on a batch: starting another ends the one before and its weighings.
    void start_project(std::string_view batch, const ProjectText& project);
    void add_weighing(std::string_view batch, const WeighingText& weighing);  // needs a project
    // Adds to those remembered already. Each needs an idea.
    void add_suggestions(std::string_view batch, const std::vector<KeptSuggestion>& all);
    void remove_suggestions(std::string_view batch);
    // No swatch kept so far tells about the person's hands any more; each still tells about its
    // batch.
    void forget_hands();

    // Takes back the last change not yet taken back, whichever program made it, and says what it
    // was; nothing when there is none. The last 1,000 changes can be taken back.
    std::optional<std::string> undo();

    // A whole copy, private, as a notebook of its own. Refuses to overwrite.
    void backup(const std::filesystem::path& path) const;

    // Everything but the undo log. What is exported and imported is equal, to the byte when
    // exported again. Refuses text that is no such export, and names that are in use; takes all
    // or nothing, as one change.
    std::string export_json() const;
    void import_json(std::string_view text);

    // One line for each skein, with the batch's fields; safe to open in a spreadsheet.
    std::string export_csv() const;

  private:
    struct Inside;
    explicit Notebook(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

}  // namespace gristwright::catalog
