// What every command that takes a batch needs: the catalogue, the batch, its profile, and how the
// person wants the answer.
#pragma once

#include <string>
#include <vector>

#include "catalog/batch_text.hpp"
#include "catalog/catalogue.hpp"
#include "cli/command.hpp"
#include "cli/output/units.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::cli {

struct Question {
    catalog::Catalogue catalogue;
    catalog::MeasuredBatch measured;
    YarnProfile yarn;
    Request request;
    Units units{UnitChoice::metric};
    bool json = false, working = false;
};

// Options that give or correct a batch; that ask for a plan; that shape the answer.
std::vector<Option> batch_options();
std::vector<Option> plan_options();
std::vector<Option> answer_options();
std::vector<Option> together(std::initializer_list<std::vector<Option>> groups);

// The built-in catalogue and the person's own templates from their data folder.
catalog::Catalogue whole_catalogue();

// `file` names a batch file, or is empty when all is given by options.
Question ask(const Arguments& arguments, const std::string& file);

// A length given by an option. Throws with the option's name.
Length read_length_option(const Arguments& arguments, std::string_view option);

// The template of that name or path, kept in `catalogue`. Throws std::invalid_argument with the
// nearest name.
const Template& find_template(catalog::Catalogue& catalogue, const std::string& name);

}  // namespace gristwright::cli
