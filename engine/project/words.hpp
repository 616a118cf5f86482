// A template's steps with the plan's own numbers filled in for the words in braces.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/project/plan.hpp"
#include "engine/project/shaping.hpp"

namespace gristwright {

// Writes quantities as the person wants to read them.
struct Writing {
    std::function<std::string(Length)> size, yarn;
    std::function<std::string(Mass)> mass;
    std::function<std::string(Length)> needle;  // 0: the one that the swatch was knitted on
    std::function<std::string(const Shaping&)> shaping{};
    std::function<std::string(int from, int to)> change{};  // "increase evenly to 160 stitches"
};

// Its steps as this article is worked: one that begins "[fringe] " is said where there is one,
// "[no fringe] " where there is none. They are parts of the article's own. Throws Refused for
// another condition.
std::vector<std::string_view> steps_said(const Template& article);

// "{body.rows} rows" -> "188 rows". Throws Refused for a word it does not know; a
// template that was checked with `check_words` never does.
std::string filled_in(std::string_view step, const Plan& plan, const Writing& writing);

// Throws Refused naming the first word in braces that this template cannot fill in.
void check_words(std::string_view step, const Template& article);

}  // namespace gristwright
