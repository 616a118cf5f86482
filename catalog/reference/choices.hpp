// The words of what can be chosen, each list once: templates, tables and swatches share them.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "engine/project/template.hpp"

namespace gristwright::catalog {

template <class Means>
using Choices = std::vector<std::pair<std::string, Means>>;

inline const Choices<Craft> crafts{{"knitted", Craft::knitted}, {"woven", Craft::woven}};
inline const Choices<Skill> skills{{"first project", Skill::first_project},
                                   {"some practice", Skill::some_practice},
                                   {"experienced", Skill::experienced}};
inline const Choices<Touches> touching{
    {"skin", Touches::skin}, {"clothes", Touches::clothes}, {"nothing", Touches::nothing}};
inline const Choices<Firmness> firmnesses{{"lace", Firmness::lace},
                                          {"drapey", Firmness::drapey},
                                          {"ordinary", Firmness::ordinary},
                                          {"firm", Firmness::firm},
                                          {"sock", Firmness::sock}};
inline const Choices<Finish> finishes{{"light", Finish::light},
                                      {"open or fulled", Finish::open_or_fulled},
                                      {"hard fulled", Finish::hard_fulled}};

// What a word means, or nullptr.
template <class Means>
const Means* meant(const Choices<Means>& choices, std::string_view word) {
    for (const auto& [said, means] : choices)
        if (said == word) return &means;
    return nullptr;
}

// The word for it; empty: it has none.
template <class Means>
std::string_view word_for(const Choices<Means>& choices, Means means) {
    for (const auto& [said, meaning] : choices)
        if (meaning == means) return said;
    return "";
}

}  // namespace gristwright::catalog
