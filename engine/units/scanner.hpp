// Takes numbers, words and signs from the left of a plain text (plain.hpp). An implementation
// header of the readers of this room.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace gristwright {

// A number as written. "1.200" and "1,200" may be read in two ways: `thousands` is the second.
struct Number {
    double value = 0;
    double step = 1;  // one unit of the last digit written
    std::optional<double> thousands;
    char mark = 0;  // the point or comma that makes it unclear
};

enum class Fractions { none, mixed, any };  // "28/2in" is no fraction, "5 1/2" may be, "3/4" too

class Scanner {
  public:
    explicit Scanner(std::string_view plain) : rest_(plain) {}

    bool done() const { return rest_.empty(); }
    std::string_view rest() const { return rest_; }

    // Each takes what it names from the front, with the spaces behind it, or nothing.
    std::optional<Number> number(Fractions fractions);
    std::string_view word();  // letters; or the sign of inches or feet
    std::string_view next_word() const;
    bool take(std::string_view word);  // exactly this word
    bool sign(char sign);
    template <class Words>
    bool any(const Words& words) {
        for (const std::string_view word : words)
            if (take(word)) return true;
        return false;
    }

  private:
    void drop(std::size_t size);
    std::string_view rest_;
};

// "~220m", "about 220 m": takes the word or sign.
bool take_about(Scanner& from);

// A number that was said to be near: its step is the place of its last figure that is not zero.
Number rounded(Number number);

// "1.2", "1200", "0.25": a number as plainly as can be.
std::string plainly(double value);

}  // namespace gristwright
