// A small linear programme that grows column by column: the most worth w.x with A x = b, x >= 0.
//
// Revised simplex with an explicit inverse of the basis (Dantzig's; Chvatal, Linear Programming,
// 1983, chapters 7 and 8 - from memory), in floating point and without any promise of exactness:
// it serves to find prices, and what is built on them is made safe elsewhere.
#pragma once

#include <cstddef>
#include <vector>

namespace gristwright::allocation {

class Linear {
  public:
    struct Entry {
        std::size_t row = 0;
        double amount = 0;
    };

    // Each row begins with a column of its own, 1 in that row, of the worth given: slack or
    // penalty.
    Linear(std::vector<double> right_hand, const std::vector<double>& worth_of_own);

    std::size_t add(double worth, std::vector<Entry> entries);  // gives the column's number
    bool solve(int most_pivots);                                // false: stopped before the best

    double price(std::size_t row) const { return price_[row]; }
    double worth() const;
    std::vector<double> amounts() const;  // by column

  private:
    struct Column {
        double worth = 0;
        std::vector<Entry> entries;
        bool basic = false;
    };

    double gain(const Column& column) const;
    std::size_t best_column() const;
    std::size_t leaving_row() const;
    void pivot(std::size_t column, std::size_t row);

    std::size_t rows_;
    std::vector<Column> columns_;
    std::vector<std::size_t> basis_;  // by row: the column
    std::vector<double> inverse_;     // of the basis, column by column
    std::vector<double> basic_;       // amounts, by row
    std::vector<double> price_;       // by row
    std::vector<double> direction_;   // of the column that enters, by row
};

}  // namespace gristwright::allocation
