// Bodies by the words people use for them: "child 6", "woman M", "6 months".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/estimate/constant.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

// A row of catalog/tables/body_sizes.csv: of the body, not of what is worn.
struct BodySize {
    std::string who;      // as `body_named` writes it
    std::string measure;  // as templates name it: "round the head"
    Length low, mid, high;
    Mark mark = Mark::judgement;
    std::string source;
};

// "age 6", "6 years" and "child 6" are one; so are "baby 6 months" and "6 mo"; "women's L" is
// "woman L". What names nobody comes back as it was written.
std::string body_named(std::string_view said);

// The row of that body and measure, or nullptr.
const BodySize* body_size(const std::vector<BodySize>& rows, std::string_view who,
                          std::string_view measure);

}  // namespace gristwright
