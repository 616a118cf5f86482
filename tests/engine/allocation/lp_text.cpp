#include "tests/engine/allocation/lp_text.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace gristwright::allocation {
namespace {

double in_metres(Cm length) { return static_cast<double>(length) / 100; }
double points(Points worth) { return static_cast<double>(worth) / 1e6; }

class Writer {
  public:
    explicit Writer(const Problem& p) : p_(p) {}

    std::string write() {
        for (std::size_t j = 0; j < p_.pieces.size(); ++j) piece(j);
        for (std::size_t i = 0; i < p_.skeins.size(); ++i) skein(i);
        if (p_.reserve > 0) reserve();
        for (const auto& pair : p_.same) same(pair);
        for (const auto& pair : p_.different) different(pair);
        return "Maximize\n obj:" + objective_ + "\nSubject To\n" + rows_ + "Bounds\n" + bounds_ +
               "Binary\n" + binaries_ + "End\n";
    }

  private:
    void gain(double by, const std::string& name) {
        objective_ += fmt::format(" {:+.9f} {}\n", by, name);
    }
    void row(const std::string& text) { rows_ += fmt::format(" r{}: {}\n", ++count_, text); }
    void binary(const std::string& name) { binaries_ += " " + name + "\n"; }

    static std::string x(std::size_t i, std::size_t j) { return fmt::format("x{}_{}", i, j); }
    static std::string y(std::size_t i, std::size_t j) { return fmt::format("y{}_{}", i, j); }
    bool meet(std::size_t i, std::size_t j) const {
        return p_.mismatch.empty() || p_.mismatch[i][j].has_value();
    }
    Points cost(std::size_t i, std::size_t j) const {
        return p_.mismatch.empty() ? 0 : *p_.mismatch[i][j];
    }

    void piece(std::size_t j) {
        const auto& piece = p_.pieces[j];
        gain(points(piece.value + piece.join_cost), fmt::format("z{}", j));
        binary(fmt::format("z{}", j));
        std::string demand, serving;
        for (std::size_t i = 0; i < p_.skeins.size(); ++i) {
            if (!meet(i, j)) continue;
            pair(i, j);
            demand += fmt::format("+ {} - {} {} ", x(i, j), in_metres(p_.tail), y(i, j));
            serving += fmt::format("+ {} ", y(i, j));
        }
        demand += fmt::format("- {} z{} ", in_metres(piece.least), j);
        for (std::size_t k = 0; k < piece.stretch.size(); ++k) demand += stretch(j, k);
        row(demand + "= 0");
        row(serving + fmt::format("- z{} >= 0", j));
        row(serving + fmt::format("- {} z{} <= 0", piece.max_joins + 1, j));
        row(serving + fmt::format("- {} w{} - z{} <= 0", piece.max_joins + 1, j, j));
        binary(fmt::format("w{}", j));  // in several skeins
        if (piece.required) row(fmt::format("z{} = 1", j));
    }

    std::string stretch(std::size_t j, std::size_t k) {
        const auto& s = p_.pieces[j].stretch[k];
        const auto name = fmt::format("p{}_{}", j, k);
        gain(points(s.per_cm) * 100, name);
        row(fmt::format("{} - {} z{} <= 0", name, in_metres(s.length), j));
        return "- " + name + " ";
    }

    void pair(std::size_t i, std::size_t j) {
        const auto& piece = p_.pieces[j];
        const double most = in_metres(std::min(p_.skeins[i].length, piece.most() + p_.tail));
        const double segment = in_metres(p_.shortest + p_.tail);
        gain(-points(piece.join_cost), y(i, j));
        gain(-points(cost(i, j)) * 100, x(i, j));
        binary(y(i, j));
        row(fmt::format("{} - {} {} <= 0", x(i, j), most, y(i, j)));
        row(fmt::format("{} - {} {} >= 0", x(i, j),
                        in_metres(std::min(p_.shortest, piece.least) + p_.tail), y(i, j)));
        if (piece.least < p_.shortest)
            row(fmt::format("{} - {} {} - {} w{} >= -{}", x(i, j), segment, y(i, j), segment, j,
                            segment));
        row(fmt::format("{} - u{} <= 0", y(i, j), i));
        row(fmt::format("{} - z{} <= 0", y(i, j), j));
    }

    void skein(std::size_t i) {
        gain(-points(p_.skeins[i].bonus), fmt::format("u{}", i));
        binary(fmt::format("u{}", i));
        std::string used;
        for (std::size_t j = 0; j < p_.pieces.size(); ++j)
            if (meet(i, j)) used += fmt::format("+ {} ", x(i, j));
        if (p_.reserve > 0) used += fmt::format("+ {} q{} ", in_metres(p_.reserve), i);
        if (!used.empty()) row(used + fmt::format("<= {}", in_metres(p_.skeins[i].length)));
    }

    void reserve() {
        std::string sum;
        for (std::size_t i = 0; i < p_.skeins.size(); ++i) {
            sum += fmt::format("+ q{} ", i);
            binary(fmt::format("q{}", i));
        }
        row(sum + "= 1");
    }

    // What is missing may not serve: 0.
    std::string term(const char* sign, std::size_t i, std::size_t j) const {
        return meet(i, j) ? fmt::format("{} {} ", sign, y(i, j)) : "";
    }

    void same(const TwoPieces& pair) {
        for (std::size_t i = 0; i < p_.skeins.size(); ++i)
            for (const auto& [a, b] :
                 {std::pair(pair.first, pair.second), std::pair(pair.second, pair.first)})
                if (meet(i, a))
                    row(term("+", i, a) + term("-", i, b) + fmt::format("+ z{} <= 1", b));
    }

    void different(const TwoPieces& pair) {
        for (std::size_t i = 0; i < p_.skeins.size(); ++i)
            if (meet(i, pair.first) && meet(i, pair.second))
                row(term("+", i, pair.first) + term("+", i, pair.second) + "<= 1");
    }

    const Problem& p_;
    std::string objective_, rows_, bounds_, binaries_;
    int count_ = 0;
};

}  // namespace

std::string lp_text(const Problem& problem) { return Writer(problem).write(); }

double constant_of(const Problem& problem) {
    double sum = 0;
    for (const auto& s : problem.skeins) sum += points(s.bonus);
    return sum;
}

}  // namespace gristwright::allocation
