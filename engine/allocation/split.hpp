// A batch's skeins split over samples, a main project and further articles: the spinner's question
// turned into an allocation, and its answer turned back into what to wind off. Two steps: what is
// made and how large, article by article; then where each of their pieces comes from.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/allocation/allocate.hpp"
#include "engine/allocation/pieces.hpp"
#include "engine/allocation/why.hpp"
#include "engine/evidence/samples.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::allocation {

// One thing to make. A sample and the main project are required; an article is wished.
struct Wish {
    std::string name;
    std::optional<Sample> sample;  // else `plan`
    std::optional<Plan> plan;
    bool main = false;
    double suitability = 1;                 // 0..1, what an article's metres are worth
    std::optional<std::size_t> only_from;   // a skein
    int joins = 4;                          // at most, of each of its pieces; a sample has none
    std::function<Plan(Length)> at_size{};  // the article at another size; none: as `plan`
};

enum class JoinCost { low, usual, high };

struct SplitRequest {
    std::vector<Wish> wishes;
    JoinCost join_cost = JoinCost::usual;
    Length reserve;           // for mending, kept in one skein
    bool whole_warp = false;  // every warp from one skein
    double certainty = 0.90;  // that what is set aside for an article suffices
    double good_enough =
        constants::good_enough;  // error of a sample beyond which metres are better used elsewhere
};

// Wound off in this order.
struct WindOff {
    std::size_t skein = 0, wish = 0;
    std::string piece;  // of the article; empty: a sample, or an article of one piece
    Length length;      // with its tail
    Mass mass;
    Length ball_length;  // what the skein holds afterwards
    Mass ball_mass;
};

struct SplitPart {
    bool made = false;
    Length metres;                       // without tails
    Length size;                         // a sample's side, an article's measure
    double error = 0, second_error = 0;  // of a sample
    Length
        size_when_known;  // an article's, once the samples of its craft have taught what they can
};

struct [[nodiscard]] Split {
    Problem problem;
    Allocation allocation;
    std::vector<LaidPiece> pieces;  // of all that is made
    Problem placing;                // of these pieces, and where they come from
    Allocation placed;
    bool by_piece = true;          // false: no way was found to cut the pieces one by one
    std::vector<SplitPart> parts;  // by wish
    std::vector<WindOff> cuts;     // skein by skein, the main project last
    std::vector<Unmet> unmet;      // wished and not made
    bool stopped = false;          // by the effort's stop token: then this is the best so far
    std::optional<More> lacking;   // when impossible: the least length more, in one skein

    bool found() const { return allocation.found(); }
};

// Throws Refused for no wishes, or for a whole warp that no skein can hold.
Split split(const YarnProfile& yarn, const SplitRequest& request, const Effort& effort = {});

}  // namespace gristwright::allocation
