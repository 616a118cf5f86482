#include "engine/allocation/linear.hpp"

#include <numeric>

namespace gristwright::allocation {
namespace {

constexpr double least_gain = 1e-9;
constexpr double least_pivot = 1e-9;

}  // namespace

Linear::Linear(std::vector<double> right_hand, const std::vector<double>& worth_of_own)
    : rows_(right_hand.size()),
      basis_(rows_),
      inverse_(rows_ * rows_),
      basic_(std::move(right_hand)),
      price_(worth_of_own),
      direction_(rows_) {
    std::iota(basis_.begin(), basis_.end(), std::size_t{0});
    for (std::size_t r = 0; r < rows_; ++r) {
        columns_.push_back({worth_of_own[r], {{r, 1}}, true});
        inverse_[r * rows_ + r] = 1;
    }
}

std::size_t Linear::add(double worth, std::vector<Entry> entries) {
    columns_.push_back({worth, std::move(entries)});
    return columns_.size() - 1;
}

double Linear::gain(const Column& column) const {
    double out = column.worth;
    for (const auto& e : column.entries) out -= price_[e.row] * e.amount;
    return out;
}

// columns_.size() when none gains.
std::size_t Linear::best_column() const {
    std::size_t best = columns_.size();
    double most = least_gain;
    for (std::size_t c = 0; c < columns_.size(); ++c) {
        if (columns_[c].basic) continue;
        const double g = gain(columns_[c]);
        if (g > most) most = g, best = c;
    }
    return best;
}

// The row that reaches zero first; of equals the one with the safest pivot. rows_: none.
std::size_t Linear::leaving_row() const {
    std::size_t best = rows_;
    double least = 0;
    for (std::size_t r = 0; r < rows_; ++r) {
        if (direction_[r] < least_pivot) continue;
        const double ratio = basic_[r] / direction_[r];
        if (best == rows_ || ratio < least - 1e-12 ||
            (ratio < least + 1e-12 && direction_[r] > direction_[best]))
            least = ratio, best = r;
    }
    return best;
}

void Linear::pivot(std::size_t column, std::size_t row) {
    const double g = gain(columns_[column]);
    const double step = basic_[row] / direction_[row];
    for (std::size_t r = 0; r < rows_; ++r) basic_[r] -= step * direction_[r];
    basic_[row] = step;
    for (std::size_t c = 0; c < rows_; ++c) {
        double* const at = &inverse_[c * rows_];
        if (at[row] == 0) continue;
        const double part = at[row] / direction_[row];
        for (std::size_t r = 0; r < rows_; ++r) at[r] -= part * direction_[r];
        at[row] = part;
        price_[c] += g * part;
    }
    columns_[basis_[row]].basic = false;
    columns_[column].basic = true;
    basis_[row] = column;
}

bool Linear::solve(int most_pivots) {
    while (most_pivots-- > 0) {
        const auto column = best_column();
        if (column == columns_.size()) return true;
        direction_.assign(rows_, 0);
        for (const auto& e : columns_[column].entries)
            for (std::size_t r = 0; r < rows_; ++r)
                direction_[r] += e.amount * inverse_[e.row * rows_ + r];
        const auto row = leaving_row();
        if (row == rows_) return false;
        pivot(column, row);
    }
    return false;
}

double Linear::worth() const {
    double out = 0;
    for (std::size_t r = 0; r < rows_; ++r) out += columns_[basis_[r]].worth * basic_[r];
    return out;
}

std::vector<double> Linear::amounts() const {
    std::vector<double> out(columns_.size());
    for (std::size_t r = 0; r < rows_; ++r) out[basis_[r]] = basic_[r];
    return out;
}

}  // namespace gristwright::allocation
