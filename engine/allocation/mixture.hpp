// Which mixture of cutting patterns is worth most, and at which prices: the restricted master
// programme of cutting.hpp.
#pragma once

#include <utility>
#include <vector>

#include "engine/allocation/decisions.hpp"
#include "engine/allocation/linear.hpp"
#include "engine/allocation/pattern.hpp"

namespace gristwright::allocation {

// Prices are found in floating point; lengths and points are whole everywhere else.
inline double as_double(Cm x) { return static_cast<double>(x); }

// What a piece pays, in micro-points.
struct Prices {
    std::vector<double> per_cm;     // of its length, by piece; 0 for a piece in one skein
    std::vector<double> per_skein;  // for every skein that serves it, by piece; may be negative
};

struct SkeinPattern {
    std::size_t skein = 0;
    bool opened = true;
    std::vector<Pattern::Use> uses;
};

// How far the mixture wants each thing, 0 to 1.
struct Wants {
    std::vector<double> made, opened;   // by piece; by skein
    std::vector<double> served, gross;  // by skein and piece, row by row; gross in cm
};

// Of patterns that these decisions allow. The model, the decisions and the patterns outlive it.
class Mixture {
  public:
    Mixture(const Model& model, const Decisions& decisions);

    void add(const SkeinPattern& pattern);
    void solve();
    Prices prices() const;
    double worth() const;  // micro-points
    Wants wants() const;
    std::vector<std::pair<const SkeinPattern*, double>> patterns() const;  // and how much of each

  private:
    std::size_t balance(std::size_t j) const { return j; }
    std::size_t count(std::size_t j) const { return m_.pieces + j; }
    std::size_t once(std::size_t j) const { return 2 * m_.pieces + j; }
    std::size_t skein(std::size_t i) const { return 3 * m_.pieces + i; }
    void add_piece(std::size_t j);
    void add_joined(std::size_t j);

    const Model& m_;
    const Decisions& d_;
    std::vector<double> penalties_;  // by row, of what is not balanced
    Linear linear_;
    std::vector<std::pair<std::size_t, const SkeinPattern*>> patterns_;  // by column
    std::vector<std::pair<std::size_t, std::size_t>> made_;  // column and the piece it makes
};

}  // namespace gristwright::allocation
