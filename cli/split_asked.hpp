// What a split is asked for: wishes read from --sample, --main and --piece, and the cut list that
// answers them. Shared by split, its picture and the page.
#pragma once

#include <deque>
#include <string>
#include <vector>

#include "cli/output/describe.hpp"
#include "engine/allocation/split.hpp"

namespace gristwright::cli {

// What is made out of the skeins, with the cloth that a sample is made in.
struct SplitAsked {
    allocation::SplitRequest request;
    std::deque<JudgedPlan> plans;
    struct Fabric {
        std::string name;           // empty for an article
        int across = 1, along = 1;  // repeats
    };
    std::vector<Fabric> fabrics;  // by wish
    double effort = 1;            // times the usual
};

// --sample, --main, --piece and what bears on them.
std::vector<Option> split_options();
bool asks_for_split(const Arguments& arguments);

// Throws Refused for what cannot be made, Misused for no wish at all.
SplitAsked asked_of(const Arguments& arguments, const Question& q);

// One more article to make, as it stands.
void add_article(SplitAsked& asked, const Question& q, const Template& article, bool main);

// The best split that the effort asked for finds. Says how far it is, and stops when interrupted.
allocation::Split split_for(const SplitAsked& asked, const Question& q);

// A ball with less left is used up: its last part needs no cut.
inline constexpr Length all_of_it = centimetres(50);
// What is left in a skein once its cuts and the reserve are off.
Length left_in(std::size_t skein, const allocation::Split& split, const Question& q);

}  // namespace gristwright::cli
