// Finished pieces that others published, each planned with a template of ours at the piece's size:
// tests/cases/finished_open.csv has the pieces and where each was read, finished_as.csv the
// template that stands for each, or why none can.
#pragma once

#include <string>
#include <vector>

#include "engine/estimate/estimate.hpp"
#include "engine/units/quantity.hpp"

namespace finished {

// From the yarn alone, on the needle that the piece names, or at the gauge that it names: where it
// names none, from the yarn alone.
enum class Known { yarn, needle, gauge };

struct Piece {
    std::string id, kind, what, taken_as, series;
    gristwright::Estimate<gristwright::Length> ours;
    gristwright::Length least, most;  // what was used, as far as it was published
    double grist = 0;                 // m/g, strands counted as one
    // mm: what the plan wants, and what the piece names (0: nothing).
    double needle_wanted = 0, needle_named = 0;

    // Ours to the nearest amount that the print allows; 1 within them.
    double ratio() const;
    double widening() const;    // our range must be so many times as wide to meet the print
    bool inside() const;        // our 90 % range meets the print
    double half_width() const;  // as makes prints it
};

const std::vector<Piece>& pieces(Known known);
const std::vector<std::string>& kinds();
std::vector<Piece> of_kind(const std::vector<Piece>& all, const std::string& kind);

double median(std::vector<double> of);

// The pieces that nothing of ours can stand for: "FK002: no size stated".
std::vector<std::string> left_out();

// The page's sections on them.
std::string section();
std::string needle_section();  // finished_needles.cpp

}  // namespace finished
