// What an answer comes to in metres, once the template is chosen: what was stated, whether the
// metres reach, which sizes they reach for.
#pragma once

#include <optional>
#include <vector>

#include "engine/suggestion/answer.hpp"

namespace gristwright {

// What the row of that class has; nothing for a class that is not there.
template <class Row, class Get>
auto of_class(const std::vector<Row>& classes, std::optional<int> number, Get get)
    -> decltype(get(classes.front())) {
    for (const auto& c : classes)
        if (number && c.number == *number) return get(c);
    return {};
}

// What the amount that was stated comes to with this yarn.
void take_stated(const Suggestion& s, const Ground& ground, const Plan& plan, Length stated,
                 SuggestionAnswer& out);

// What the pieces take that were named alone: "just the sleeves".
void look_at_part(const Ground& ground, const Plan& plan, SuggestionAnswer& out);

void look_at_sett(const Suggestion& s, const Plan& plan, SuggestionAnswer& out);

void compare_metres(const Ground& ground, const Plan& plan, SuggestionAnswer& out);

// Whether the yarn they ask of, or the share of this that they name, would do.
void compare_at_hand(const Ground& ground, const Plan& plan, SuggestionAnswer& out);

// The finished length of one panel from so long a warp, its waste as said or as the template has
// it; nothing where the plan is not one panel, or nothing is left to weave.
std::optional<Length> off_this_warp(const Plan& plan, Length warp, std::optional<Length> waste);

// The largest of the sizes it comes in that the metres reach for.
void look_at_sizes(const Suggestion& s, const Ground& ground, const Plan& plan,
                   SuggestionAnswer& out);

// A pattern of many rows gets smaller by whole repeats.
void count_repeats(const Plan& plan, SuggestionAnswer& out);

Reach reach_of(const Estimate<Length>& need, const Plan& plan, double asked);

// What a question may want besides: the usual needle or sett, the largest size, how many.
void look_around(const Ground& ground, const Plan& plan, SuggestionAnswer& out);

// Of two strands held or plied together each metre takes so many of this yarn.
void count_in_strands(double strands, SuggestionAnswer& out);

}  // namespace gristwright
