// Laying pieces where they belong, for the kinds of article that assembled() knows.
#pragma once

#include <initializer_list>
#include <string_view>

#include "cli/output/assembled.hpp"
#include "cli/output/schematic.hpp"

namespace gristwright::cli {

// Its middle below at `foot`, turned round it; mirrored, it is turned the other way.
Pose standing(Flat size, Point foot, double turn = 0, bool mirrored = false);

class Laying {
  public:
    explicit Laying(const Plan& plan) : plan_(plan) {}

    const Plan& plan() const { return plan_; }
    // The piece of that name while there is a copy of it to lay, or nullptr.
    const PlanPiece* next(std::string_view name) const;
    Flat size(std::string_view name) const;  // 0 x 0 where there is none

    // An outline of that size; a cap that something stands on is a tube.
    Placed& lay(const PlanPiece& piece, Flat size, const Pose& pose, bool capped = true);
    // Any shape, by two lines that its rows pass between.
    Placed& lay_between(const PlanPiece& piece, const Line& from, const Line& to);
    // Names from below upwards, each in the middle over the last; where the top is.
    double stack(std::initializer_list<std::string_view> upwards, Point foot);
    double stack(const std::vector<std::string_view>& upwards, Point foot);
    // What is left of all pieces, beneath everything else.
    Assembled done();

  private:
    std::size_t laid(const PlanPiece& piece) const;
    const PlanPiece* left_over() const;

    const Plan& plan_;
    Assembled out_;
};

void lay_worn_on_body(Laying& laying);  // pullovers, cardigans
void lay_front_and_back(Laying& laying);
void lay_pair_of_hands(Laying& laying);
void lay_pair_of_feet(Laying& laying);
void lay_with_edge(Laying& laying);  // shawls

}  // namespace gristwright::cli
