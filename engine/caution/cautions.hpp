// A table of cautions made ready to be asked often: each fact that its conditions name is one bit.
#pragma once

#include <array>
#include <bitset>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "engine/caution/caution.hpp"

namespace gristwright {

class Cautions {
  public:
    static constexpr std::size_t most_facts = 256;
    // What is the case, as far as these cautions ask for it.
    using Known = std::bitset<most_facts>;

    // Throws OurMistake for a table that asks for more than `most_facts`.
    explicit Cautions(std::shared_ptr<const std::vector<Caution>> rows);

    void add_fact(std::string_view fact, Known& out) const;
    void add_facts(const Batch& batch, Known& out) const;
    void add_words(std::string_view text, Known& out) const;
    // Each step is read once, however many articles and questions it belongs to.
    void add_facts(const Template& article, const Fabrics& fabrics, Known& out);

    // In the table's order those that hold for any of these.
    std::vector<Caution> holding(const std::vector<Known>& any) const;

  private:
    // One word of `any`, or one that is lacking of `without`.
    struct Clause {
        Known any, without;
    };
    // So that a fact can be asked for without making a string of it.
    struct HashOfText {
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const {
            return std::hash<std::string_view>{}(text);
        }
    };
    template <class T>
    using ByText = std::unordered_map<std::string, T, HashOfText, std::equal_to<>>;

    Clause clause_of(std::string_view words);
    std::size_t bit_of(std::string_view fact);
    static bool holds(const std::vector<Clause>& condition, const Known& known);

    std::shared_ptr<const std::vector<Caution>> rows_;
    std::vector<std::vector<Clause>> conditions_;  // of each row
    ByText<std::size_t> bits_, bits_of_words_;     // of facts; of words said
    // Of the words, by their first letter, a bit for each length: few of a text come so near.
    std::array<std::uint32_t, 256> lengths_{};
    ByText<Known> of_step_;
};

}  // namespace gristwright
