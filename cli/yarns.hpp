// A batch whose skeins are several yarns: which of them an answer is about.
#pragma once

#include <string>

#include "cli/question.hpp"

namespace gristwright::cli {

inline constexpr Option yarn_option{"yarn", "2",
                                    "where the skeins are several yarns, which one: its number; "
                                    "makes and plan take all, each by itself; else the one with "
                                    "most metres"};

// The skeins in `q` are several yarns, and no one of them is taken yet.
bool several_yarns(const Question& q);

// Leaves in `q` that yarn alone: its skeins, its colours, what was swatched of it, its profile.
void take_yarn(std::size_t yarn, Question& q);

// The same of the one asked for by its number (empty: the one with most metres), and says in words
// which it is. Of one yarn nothing is taken and nothing said.
// Throws Refused for a yarn that is not there, and for all of them.
void take_one_yarn(const std::string& asked, Question& q);

// What is asked, of each of the yarns by itself, in their order; empty: the skeins are one yarn.
std::vector<Question> of_each_yarn(const Question& q);

// The batch again whole, where `q` is about one yarn of several.
const Question& whole_batch(const Question& q);

// "skein 3: 300 m, 52 g; 173 tex, lace by its grist": the one in that place.
std::string yarn_of_several(const Question& q, std::size_t yarn);
// "Yarn 2", and the same in a line below it.
std::string yarn_heading(const Question& q, std::size_t yarn, std::size_t indent);

// The skein that is called so. Throws Refused with the option's name.
std::size_t skein_named(const Question& q, std::string_view option, const std::string& name);

}  // namespace gristwright::cli
