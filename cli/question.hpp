// What every command that takes a batch needs: the catalogue, the batch, its profile, and how the
// person wants the answer.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "catalog/notebook/hands.hpp"
#include "catalog/notebook/notebook.hpp"
#include "catalog/reference/catalogue.hpp"
#include "catalog/typed/batch_text.hpp"
#include "cli/command.hpp"
#include "cli/output/units.hpp"
#include "engine/caution/cautions.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::cli {

struct Question {
    std::string asked_about;  // the batch's file or remembered name; empty: all given by options
    std::shared_ptr<const catalog::Catalogue> catalogue;  // of all its copies
    catalog::MeasuredBatch measured;
    std::vector<HandsSeen> hands;               // by the other batches
    std::vector<catalog::SwatchText> swatches;  // of this one, where it is remembered
    YarnProfile yarn;  // with what its swatches and the person's hands have told
    Request request;
    Units units{UnitChoice::metric};
    bool json = false, working = false, insist = false;
    std::string which_yarn;  // where the skeins are several: which of them this is about
    std::shared_ptr<const Question> whole;  // ... and the same of all of them
    std::shared_ptr<Cautions> cautions;     // the catalogue's
};

inline constexpr Option units_option{"units", "metric",
                                     "metric, imperial or both; else as you typed", false,
                                     "metric|imperial|both"};
inline constexpr Option json_option{"json", "", "the answer as JSON (docs/schema)"};
inline constexpr Option notebook_option{"notebook", "FILE",
                                        "another notebook than the default one"};
inline constexpr Option date_option{"on", "2026-11-25", "the date, as you write it"};
// Options that give or correct a batch; that ask for a plan; that shape the answer.
std::vector<Option> batch_options();
std::vector<Option> plan_options();
std::vector<Option> answer_options();
std::vector<Option> together(std::initializer_list<std::vector<Option>> groups);

// The built-in catalogue and the person's own templates from their data folder.
catalog::Catalogue whole_catalogue();
// Which of those templates were left out, and why: for stderr.
std::vector<std::string> notes_on(const catalog::Catalogue& catalogue);

// Where the notebook is that --notebook names, or the default one; empty without a home folder.
std::filesystem::path notebook_place(const Arguments& arguments);
// That notebook.
catalog::Notebook notebook(const Arguments& arguments, catalog::Notebook::Mode mode);
// What Answer::stands says of a change that is kept.
inline constexpr const char* kept_already =
    "the notebook is changed already: do not repeat it (gristwright undo takes it back)";
// A name, not a file: neither a dot nor a folder in it.
bool is_remembered(const std::string& word);

// The texts of a batch: of a file, of the notebook, or empty, with what is typed over them.
catalog::BatchText batch_text(const Arguments& arguments, const std::string& batch,
                              const catalog::SpokenWords& spoken);

// What the notebook tells about the person's hands, the batch of that name left out.
std::vector<HandsSeen> hands_besides(const catalog::Notebook& book, const std::string& batch,
                                     const catalog::Catalogue& catalogue);

// The same without a batch, and also where there is no notebook; one that cannot be read is noted.
std::vector<HandsSeen> hands_if_known(const Arguments& arguments,
                                      const catalog::Catalogue& catalogue,
                                      std::vector<std::string>& notes);

// The yarn of a measured batch. What is unlikely is refused in the units it was typed in, unless
// insisted on.
YarnProfile likely_yarn(const catalog::MeasuredBatch& measured, const catalog::Catalogue& catalogue,
                        bool insist);

// The same with the habit of these hands and with what `swatches` have told.
YarnProfile informed_yarn(const catalog::MeasuredBatch& measured,
                          const std::vector<HandsSeen>& hands,
                          const std::vector<catalog::SwatchText>& swatches,
                          const catalog::Catalogue& catalogue, bool insist);
YarnProfile informed_yarn(const Question& q);

// The same but for capitals.
bool same_name(std::string_view a, std::string_view b);

// Where the skeins are several yarns, an answer is about one of them (--yarn), about each where
// all are asked for, or about the batch as it is measured and kept: then its profile is a mean
// that no skein has, and only its length, mass and agreement are told.
enum class Skeins { of_one_yarn, each_if_asked, all };
// `batch` names a batch file or a remembered batch, or is empty when all is given by options. What
// the swatches of a remembered batch and the person's hands have told is in the profile. A
// remembered batch goes by the name that finds it, whatever else it was called.
Question ask(const Arguments& arguments, const std::string& batch,
             Skeins skeins = Skeins::of_one_yarn);

// The units asked for, or `otherwise`.
Units units_of(const Arguments& arguments, std::string_view otherwise,
               const catalog::SpokenWords* names = nullptr);

// A length, or a share (0 to 1), given by an option. Throws with the option's name.
Length read_length_option(const Arguments& arguments, std::string_view option);
double read_share_option(const Arguments& arguments, std::string_view option);

}  // namespace gristwright::cli
