// The reference tables as reviewed text (catalog/tables/*.csv), each row with its source.
//
// Every reader takes the file's text and the name to use in complaints, and throws BadText with
// the line for a missing column, an unreadable number or a word that is not in the list.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/spoken.hpp"
#include "engine/project/body.hpp"
#include "engine/project/template.hpp"
#include "engine/suggestion/suggestion.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright::catalog {

std::vector<WeightClass> read_weight_classes(const std::string& text, const std::string& file);
std::vector<WoolGrade> read_wool_grades(const std::string& text, const std::string& file);
std::vector<TraitRow> read_traits(const std::string& text, const std::string& file);
std::vector<KnitFabric> read_knitted_fabrics(const std::string& text, const std::string& file);
std::vector<Weave> read_weaves(const std::string& text, const std::string& file);
// Rows known only from memory are marked so in their source.
std::vector<FibrePart> read_fibres(const std::string& text, const std::string& file);

std::vector<BodySize> read_body_sizes(const std::string& text, const std::string& file);

// A word for a fabric names rows of these fabrics.
// The table of words, checked and packed into lines as engine/suggestion/lexicon.hpp reads them;
// its numbers fill the list "number" too, but for pairs and sets, which count things and no
// amounts; its letters of sizes the list "size letters".
std::string read_words(const std::string& text, const std::string& file, const Fabrics& fabrics,
                       SpokenWords& spoken);

std::optional<Mark> mark_named(std::string_view word);

}  // namespace gristwright::catalog
